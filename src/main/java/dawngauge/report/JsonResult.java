package dawngauge.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Advice;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.Reason;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.advice.TripChance;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.ledger.Ledger;
import dawngauge.problem.Problem;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The forecast as JSON; figures in SI and U.S. units side by side, null where not known. */
public final class JsonResult {

  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final JsonNodeFactory nodes = JsonNodeFactory.instance;
  private final Trip trip;
  private final UnitSystem units;
  private final @Nullable WheelPosition only;

  private JsonResult(Trip trip, UnitSystem units, @Nullable WheelPosition only) {
    this.trip = trip;
    this.units = units;
    this.only = only;
  }

  /**
   * The text.
   *
   * @param trip the trip
   * @param advice what was computed, or null where no time is known
   * @param problems what is missing or assumed
   * @param fitness what is wrong with the rig, worst first
   * @param units units of the sentences in it
   * @param only the one position to write, or null for all
   */
  public static String of(
      Trip trip,
      @Nullable Advice advice,
      List<Problem> problems,
      List<Defect> fitness,
      UnitSystem units,
      @Nullable WheelPosition only) {
    ObjectNode root = new JsonResult(trip, units, only).root(advice, problems, fitness);
    try {
      return MAPPER.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode root(@Nullable Advice advice, List<Problem> problems, List<Defect> fitness) {
    ObjectNode root = nodes.objectNode();
    root.put("format", "dawngauge forecast");
    root.put("version", 1);
    root.put("name", trip.name());
    root.put("mark", advice == null ? null : advice.mark().word());
    TripChance chance = advice == null ? null : TripChance.of(advice);
    put(root, "chanceUnderFloorTrip", chance == null ? null : new Ratio(chance.chance()));
    root.put("chanceNotKnownFor", chance == null ? null : chance.notKnown());
    ArrayNode findings = root.putArray("fitness");
    for (Defect defect : fitness) {
      findings
          .addObject()
          .put("severity", defect.severity().word())
          .put("code", defect.code().name())
          .put("where", defect.where())
          .put("what", defect.what().in(units))
          .put("toDo", defect.toDo().in(units))
          .put("authority", defect.authority().text());
    }
    ArrayNode stops = root.putArray("stops");
    if (advice != null) {
      advice.stops().forEach(stop -> stops.add(stop(stop)));
    }
    ArrayNode untimed = root.putArray("stopsWithoutTime");
    for (int i = stops.size(); i < trip.route().stops().size(); i++) {
      Stop stop = trip.route().stops().get(i);
      untimed
          .addObject()
          .put("number", i + 1)
          .put("id", stop.id())
          .put("place", stop.place())
          .put("kind", stop.kind().word());
    }
    ArrayNode missing = root.putArray("problems");
    for (Problem problem : problems) {
      ObjectNode node = missing.addObject();
      node.put("code", problem.code().name());
      node.put("severity", problem.code().severity().name().toLowerCase(Locale.ROOT));
      node.put("where", problem.where());
      node.put("text", problem.text());
    }
    ArrayNode cautions = root.putArray("cautions");
    Ledger.CAUTIONS.forEach(cautions::add);
    return root;
  }

  private ObjectNode stop(StopAdvice advised) {
    Itinerary.Visit visit = advised.stop().visit();
    ObjectNode node = nodes.objectNode();
    node.put("number", visit.index() + 1);
    node.put("id", visit.stop().id());
    node.put("place", visit.stop().place());
    node.put("kind", visit.stop().kind().word());
    node.put("arrive", Times.of(visit.arrive(), visit.zone()));
    node.put("leave", Times.of(visit.leave(), visit.zone()));
    double elevation = advised.stop().elevation();
    put(node, "elevation", Double.isNaN(elevation) ? null : new Elevation(elevation));
    put(node, "airOnArrival", temperature(advised.stop().airOnArrival()));
    put(node, "airOnLeaving", temperature(advised.stop().airOnLeaving()));
    Phrase given = advised.stop().airGiven();
    node.put("airGiven", given == null ? null : given.in(units));
    node.put("mark", advised.mark().word());
    ArrayNode routine = node.putArray("routine");
    advised.routine().forEach(line -> routine.add(line.text().in(units)));
    ArrayNode tires = node.putArray("tires");
    for (TireAdvice tire : advised.tires()) {
      if (only == null || tire.tire().fitted().position().equals(only)) {
        tires.add(tire(tire));
      }
    }
    ArrayNode offers = node.putArray("offers");
    for (OfferAdvice offer : advised.offers()) {
      ObjectNode entry = offers.addObject();
      entry.put("what", offer.offer().what());
      put(entry, "weight", offer.offer().weight().value());
      entry.put("mark", offer.mark().word());
      Mass most = offer.most();
      put(entry, "most", most == null ? null : most);
      reasons(entry, offer.reasons());
    }
    ArrayNode cautions = node.putArray("legCautions");
    advised.legCautions().forEach(caution -> cautions.add(caution.in(units)));
    return node;
  }

  private ObjectNode tire(TireAdvice advised) {
    ObjectNode node = nodes.objectNode();
    WheelPosition position = advised.tire().fitted().position();
    node.put("tire", trip.rig().shortForm(position));
    node.put("position", position.words());
    node.put("tireId", advised.tire().fitted().tire().id());
    node.put("mark", advised.mark().word());
    node.put("byEstimate", advised.tire().limits().estimated());
    TireFigures.words(advised.tire()).forEach(node::put);
    node.put("firm", TireFigures.firm(advised));
    TireFigures.of(advised).forEach((name, quantity) -> put(node, name, quantity));
    reasons(node, advised.reasons());
    return node;
  }

  private void reasons(ObjectNode node, List<Reason> reasons) {
    ArrayNode array = node.putArray("reasons");
    for (Reason reason : reasons) {
      ObjectNode entry = array.addObject();
      entry.put("mark", reason.mark().word());
      entry.put("text", reason.text().in(units));
    }
  }

  private static @Nullable Quantity temperature(double kelvins) {
    return Double.isNaN(kelvins) ? null : new Temperature(kelvins);
  }

  private static void put(ObjectNode node, String name, @Nullable Quantity quantity) {
    if (quantity == null) {
      node.putNull(name);
      return;
    }
    ObjectNode figure = node.putObject(name);
    BothUnits.unitsOf(quantity.kind())
        .forEach((unitName, unit) -> figure.put(unitName, BothUnits.number(quantity, unit)));
  }
}
