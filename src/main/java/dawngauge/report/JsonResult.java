package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Advice;
import dawngauge.advice.Habit;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.advice.TripChance;
import dawngauge.fitness.Defect;
import dawngauge.problem.Problem;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The forecast as JSON; figures in SI and U.S. units side by side, null where not known. */
public final class JsonResult {

  private final JsonPage page;
  private final @Nullable WheelPosition only;

  private JsonResult(JsonPage page, @Nullable WheelPosition only) {
    this.page = page;
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
    JsonPage page = new JsonPage("forecast", trip, units);
    new JsonResult(page, only).write(trip, advice, problems, fitness);
    return page.text();
  }

  private void write(
      Trip trip, @Nullable Advice advice, List<Problem> problems, List<Defect> fitness) {
    ObjectNode root = page.root();
    root.put("mark", advice == null ? null : advice.mark().word());
    TripChance chance = advice == null ? null : TripChance.of(advice);
    JsonPage.put(root, "chanceUnderFloorTrip", chance == null ? null : new Ratio(chance.chance()));
    root.put("chanceNotKnownFor", chance == null ? null : chance.notKnown());
    page.fitness(fitness);
    ArrayNode stops = root.putArray("stops");
    if (advice != null) {
      advice.stops().forEach(stop -> stop(stops.addObject(), stop));
    }
    ArrayNode untimed = root.putArray("stopsWithoutTime");
    for (int i = stops.size(); i < trip.route().stops().size(); i++) {
      stop(untimed.addObject(), i, trip.route().stops().get(i));
    }
    page.problems(problems);
  }

  private static void stop(ObjectNode node, int index, Stop stop) {
    JsonPage.stop(node, index, stop);
    node.put("kind", stop.kind().word());
  }

  private void stop(ObjectNode node, StopAdvice advised) {
    Itinerary.Visit visit = advised.stop().visit();
    stop(node, visit.index(), visit.stop());
    JsonPage.times(node, visit);
    JsonPage.put(node, "elevation", advised.stop().elevation(), Elevation::new);
    JsonPage.put(node, "airOnArrival", advised.stop().airOnArrival(), Temperature::new);
    JsonPage.put(node, "airOnLeaving", advised.stop().airOnLeaving(), Temperature::new);
    page.put(node, "airGiven", advised.stop().airGiven());
    node.put("mark", advised.mark().word());
    page.phrases(node, "routine", advised.routine().stream().map(Habit::text).toList());
    ArrayNode tires = node.putArray("tires");
    for (TireAdvice tire : advised.tires()) {
      if (only == null || tire.tire().fitted().position().equals(only)) {
        tire(tires.addObject(), tire);
      }
    }
    ArrayNode offers = node.putArray("offers");
    for (OfferAdvice offer : advised.offers()) {
      ObjectNode entry = offers.addObject();
      entry.put("what", offer.offer().what());
      JsonPage.put(entry, "weight", offer.offer().weight().value());
      entry.put("mark", offer.mark().word());
      JsonPage.put(entry, "most", offer.most());
      page.reasons(entry, offer.reasons());
    }
    page.phrases(node, "legCautions", advised.legCautions());
  }

  private void tire(ObjectNode node, TireAdvice advised) {
    FittedTire fitted = advised.tire().fitted();
    page.tire(node, fitted.position(), fitted.tire().id());
    node.put("mark", advised.mark().word());
    node.put("byEstimate", advised.tire().limits().estimated());
    TireFigures.words(advised.tire()).forEach(node::put);
    node.put("firm", TireFigures.firm(advised));
    TireFigures.of(advised).forEach((name, quantity) -> JsonPage.put(node, name, quantity));
    page.reasons(node, advised.reasons());
  }
}
