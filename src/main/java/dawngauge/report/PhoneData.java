package dawngauge.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Mark;
import dawngauge.advice.ReadTable;
import dawngauge.advice.StopReadTables;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.LiveLines;
import dawngauge.ledger.ReadWords;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the page for the phone looks up: by stop, state of the tires, minute and tire the figures at
 * which something else is told, and the words of it. Pressures in the units shown, minutes since
 * the epoch.
 */
final class PhoneData {

  /** Pressures are written so finely; a tenth of what the coarsest gauge shows, or less. */
  private static final int DECIMALS = 3;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final PhonePage.Parts parts;
  private final ReadWords words;
  private final Map<Told, Integer> told = new LinkedHashMap<>();

  /** What is told of a reading: its mark, then what to do, strongest first. */
  private record Told(Mark mark, List<String> lines) {

    /** Of two, the one with the stronger mark or else with more to do is the more careful. */
    int care() {
      long weaker = Stream.of(Mark.values()).filter(each -> each.compareTo(mark) < 0).count();
      return (int) weaker * LINES + Math.min(lines.size(), LINES - 1);
    }
  }

  private static final int LINES = 20;

  private PhoneData(PhonePage.Parts parts) {
    this.parts = parts;
    this.words = new ReadWords(parts.trip(), parts.units());
  }

  /** As text for a data block of the page: no tag can begin in it. */
  static String of(PhonePage.Parts parts) {
    try {
      return MAPPER.writeValueAsString(new PhoneData(parts).root()).replace("<", "\\u003c");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode root() {
    Trip trip = parts.trip();
    UnitSystem units = parts.units();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", Taken.FORMAT);
    root.put("version", Taken.VERSION);
    root.put("trip", trip.name());
    root.put("fingerprint", parts.fingerprint());
    root.put("made", parts.made().truncatedTo(ChronoUnit.SECONDS).toString());
    root.put("unit", units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol());
    root.put("decimals", units == UnitSystem.US ? 0 : 2);
    root.put("longestNote", Taken.LONGEST_NOTE);
    root.put("tried", gaugeTried());
    root.put("followed", trip.plan().followed());
    ArrayNode gauges = root.putArray("gauges");
    trip.rig().gauges().stream().map(Gauge::name).forEach(gauges::add);
    JsonPage.strings(root, "cautions", Ledger.CAUTIONS.subList(1, Ledger.CAUTIONS.size()));
    ArrayNode stops = root.putArray("stops");
    for (StopReadTables stop : parts.stops()) {
      stop(stops.addObject(), stop);
    }
    ArrayNode texts = root.putArray("texts");
    ArrayNode care = root.putArray("care");
    for (Told each : told.keySet()) {
      ArrayNode text = texts.addArray().add(each.mark().word());
      each.lines().forEach(text::add);
      care.add(each.care());
    }
    return root;
  }

  /** Another gauge shows something else of the same tire; empty where none was tried. */
  private String gaugeTried() {
    return parts.stops().stream()
        .flatMap(stop -> stop.tables().stream())
        .flatMap(table -> table.slots().stream())
        .flatMap(slot -> slot.tires().stream())
        .map(tire -> tire.check().reading().gauge())
        .findFirst()
        .orElse("");
  }

  private void stop(ObjectNode node, StopReadTables stop) {
    Itinerary.Visit at = parts.advice().stops().get(stop.visit()).stop().visit();
    node.put("id", at.stop().id());
    node.put("place", at.stop().place());
    node.put("number", stop.visit() + 1);
    ZoneRules clock = at.zone().getRules();
    node.put("offset", clock.getOffset(at.arrive()).getTotalSeconds() / 60);
    ZoneOffsetTransition turn = clock.nextTransition(at.arrive());
    if (turn != null) {
      node.put("turn", minute(turn.getInstant()));
      node.put("after", turn.getOffsetAfter().getTotalSeconds() / 60);
    }
    node.put("from", minute(at.arrive()));
    node.put("to", minute(at.leave()));
    node.put("usual", stop.usual().word());
    ArrayNode tires = node.putArray("tires");
    LogEdits.fittedAt(parts.trip(), at.arrive())
        .forEach(
            (position, tire) ->
                tires
                    .addObject()
                    .put("id", tire.id())
                    .put("short", parts.trip().rig().shortForm(position))
                    .put("words", position.words())
                    .put("left", position.slot().isLeft()));
    ArrayNode tables = node.putArray("tables");
    for (ReadTable table : stop.tables()) {
      table(tables.addObject(), table, at);
    }
  }

  private void table(ObjectNode node, ReadTable table, Itinerary.Visit at) {
    node.put("state", table.state().word());
    ArrayNode times = node.putArray("times");
    table.slots().forEach(slot -> times.add(minute(slot.time())));
    ArrayNode slots = node.putArray("slots");
    for (ReadTable.Slot slot : table.slots()) {
      ObjectNode tires = slots.addObject();
      for (ReadTable.OfTire tire : slot.tires()) {
        ObjectNode of = tires.putObject(tire.tire());
        expected(of, tire.check());
        ArrayNode from = of.putArray("from");
        ArrayNode say = of.putArray("say");
        for (ReadTable.Band band : tire.bands()) {
          from.add(number(band.from()));
          Told means = new Told(band.low().mark(), words.lines(band, at.zone()));
          say.add(told.computeIfAbsent(means, key -> told.size()));
        }
        double top = tire.bands().isEmpty() ? 0 : tire.bands().get(tire.bands().size() - 1).to();
        of.put("top", number(top));
      }
    }
  }

  private void expected(ObjectNode node, ReadingCheck check) {
    if (check.first()) {
      return;
    }
    double spread = LiveLines.spread(check);
    node.put("expected", number(check.expected()));
    node.put("low", number(check.expected() - spread));
    node.put("high", number(check.expected() + spread));
    node.put("open", check.braked());
    node.put("least", number(check.leastExpected()));
    if (Double.isFinite(check.mostExpected())) {
      node.put("most", number(check.mostExpected()));
    }
  }

  private double number(double pascals) {
    double scale = Math.pow(10, DECIMALS);
    return Math.round(
            new GaugePressure(pascals).in(parts.units().unitOf(QuantityKind.GAUGE_PRESSURE))
                * scale)
        / scale;
  }

  private static long minute(Instant time) {
    return Math.floorDiv(time.getEpochSecond(), 60);
  }
}
