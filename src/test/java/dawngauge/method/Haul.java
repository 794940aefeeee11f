package dawngauge.method;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.cli.Run;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * A demo haul, as it is or with what no demo holds.
 *
 * @param name what is done to it
 * @param text the trip file
 */
record Haul(String name, String text) {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String SPRING = "spring-fleece-haul";
  private static final String AUTUMN = "autumn-stock-haul";

  private interface Edit {
    void on(ObjectNode trip);
  }

  static Stream<Haul> all() {
    return Stream.of(
        of(SPRING, "as it is", trip -> {}),
        of(AUTUMN, "as it is", trip -> {}),
        of(SPRING + "-logged", "as it is", trip -> {}),
        of(SPRING, "no rows", Haul::withoutRows),
        of(SPRING, "no tickets", trip -> rig(trip).remove("tickets")),
        of(AUTUMN, "no tickets", trip -> rig(trip).remove("tickets")),
        of(AUTUMN, "a reading in the sun alone", trip -> trip.withArray("log").remove(3)),
        of(SPRING, "own target", trip -> axle(trip, 0, 0).put("target", "58 psi")),
        of(SPRING, "a flat dual", trip -> tire(trip, 3).withArray("damage").add("flat")),
        of(SPRING, "a flat trailer tire", trip -> tire(trip, 6).withArray("damage").add("flat")),
        of(SPRING, "room for speed", trip -> type(trip, 2).put("maxColdPressure", "95 psi")),
        of(SPRING, "a warm runner", trip -> tire(trip, 6).put("heatFactor", 1.3)),
        of(SPRING, "earlier trips", Haul::withEarlierTrips),
        of(SPRING, "a pass with its air", Haul::withAirOnThePass),
        of(SPRING, "a valley at dawn", Haul::withValley),
        of(AUTUMN, "measured warmth and air", Haul::withMeasured),
        of(AUTUMN, "forecast by lead", trip -> ambient(trip, 6).remove("uncertainty")),
        of(AUTUMN, "typical days behind the hours", Haul::withTypicalDays));
  }

  private static void withEarlierTrips(ObjectNode trip) {
    tire(trip, 6).put("heatFactor", 1.2).put("heatRecord", "1.2 ± 0.08");
    tire(trip, 8).put("heatRecord", "1.4 ± 0.05"); // far from the factor in use
    tire(trip, 7).put("heatFactor", 0.9).put("heatRecord", "0.9 ± 0.4");
  }

  private static Haul of(String demo, String name, Edit edit) {
    try {
      Path file = Path.of("demo-data", demo + ".dawngauge");
      ObjectNode trip = (ObjectNode) MAPPER.readTree(Files.readString(file));
      edit.on(trip);
      return new Haul(demo + ", " + name, MAPPER.writeValueAsString(trip));
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private static ObjectNode rig(ObjectNode trip) {
    return (ObjectNode) trip.get("rig");
  }

  private static ObjectNode axle(ObjectNode trip, int vehicle, int axle) {
    return (ObjectNode) rig(trip).get("vehicles").get(vehicle).get("axles").get(axle);
  }

  private static ObjectNode tire(ObjectNode trip, int index) {
    return (ObjectNode) rig(trip).get("tires").get(index);
  }

  private static ObjectNode type(ObjectNode trip, int index) {
    return (ObjectNode) rig(trip).get("tireTypes").get(index);
  }

  private static ObjectNode ambient(ObjectNode trip, int index) {
    return (ObjectNode) trip.get("ambient").get(index);
  }

  private static void withoutRows(ObjectNode trip) {
    type(trip, 0).remove("rows");
    ((ObjectNode) axle(trip, 0, 0).get("label").get(0)).put("loadRange", "E");
  }

  private static void withAirOnThePass(ObjectNode trip) {
    JsonNode leg = trip.get("route").get("stops").get(0).get("leg");
    ((ObjectNode) leg.get("profile").get(0)).put("ambient", "5 °F");
  }

  private static void withValley(ObjectNode trip) {
    JsonNode leg = trip.get("route").get("stops").get(0).get("leg");
    ObjectNode point = ((ObjectNode) leg).withArray("profile").addObject();
    point.put("distance", "66 mi").put("elevation", "4100 ft");
    ambient(trip, 2).putObject("source").put("kind", "measured");
    ambient(trip, 4).putObject("source").put("kind", "measured");
    ambient(trip, 9).putObject("source").put("kind", "measured"); // one day of two
    ambient(trip, 11).putObject("source").put("kind", "measured");
  }

  private static void withMeasured(ObjectNode trip) {
    JsonNode log = trip.get("log");
    ((ObjectNode) log.get(15)).put("tireTemperature", "33 °C");
    ((ObjectNode) log.get(1)).put("air", "7 °C");
    ((ObjectNode) log.get(5)).put("tireTemperature", "9 °C");
  }

  private static void withTypicalDays(ObjectNode trip) {
    ObjectNode hourly = ambient(trip, 6);
    for (int i = hourly.get("hours").size() - 1; i > 2; i--) {
      hourly.withArray("hours").remove(i);
    }
    ObjectNode days = trip.withArray("ambient").addObject();
    days.put("stop", "golden").put("date", "2027-10-15").put("low", "-1 °C").put("high", "9 °C");
    days.put("uncertainty", "4 °C");
    days.putObject("source").put("kind", "typical");
  }

  Trip trip() {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new Planner(SettingsFile.defaults(), java.util.List.of())
        .store()
        .open(new ByteArrayInputStream(bytes))
        .get();
  }

  JsonNode forecast() throws IOException {
    return MAPPER.readTree(Run.ofText(text, "forecast", "-", "--format", "json").out());
  }

  @Override
  public String toString() {
    return name;
  }
}
