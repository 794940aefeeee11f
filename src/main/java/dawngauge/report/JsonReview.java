package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.ReviewLines;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.RecordingError;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;

/** A review as JSON. */
public final class JsonReview {

  private final JsonPage page;
  private final Trip trip;
  private final List<Itinerary.Visit> visits;

  private JsonReview(JsonPage page, Trip trip) {
    this.page = page;
    this.trip = trip;
    this.visits = Itinerary.of(trip).get().visits();
  }

  /**
   * The text.
   *
   * @param trip the trip
   * @param review its review
   * @param measured the air that stations measured at the stops
   * @param units units of the sentences in it
   */
  public static String of(
      Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    JsonPage page = new JsonPage("review", trip, units);
    ReviewLines lines = ReviewLines.of(trip, review, measured, units);
    page.root().put("headline", lines.headline());
    JsonPage.strings(page.root(), "findings", lines.findings());
    JsonPage.strings(page.root(), "toDo", lines.next());
    new JsonReview(page, trip).write(review, measured);
    return page.text();
  }

  private void write(TripReview review, List<MeasuredAir> measured) {
    ObjectNode root = page.root();
    ArrayNode tires = root.putArray("tires");
    for (TireReview tire : review.tires()) {
      ObjectNode node = tires.addObject();
      page.tire(node, tire.position(), tire.tire());
      JsonTireReview.write(node, tire, visits);
    }
    ArrayNode shared = root.putArray("shared");
    review.shared().forEach(each -> shared(shared.addObject(), each));
    root.put("sharedTakenOff", review.sharedTakenOff());
    ArrayNode gauges = root.putArray("gauges");
    review.gauges().forEach(pair -> gauges(gauges.addObject(), pair));
    ArrayNode slips = root.putArray("slips");
    review.slips().forEach(slip -> slip(slips.addObject(), slip));
    ArrayNode air = root.putArray("measured");
    measured.forEach(each -> measured(air.addObject(), each));
  }

  private void shared(ObjectNode node, TripReview.Shared shared) {
    Itinerary.Visit visit = visits.get(shared.visit());
    JsonPage.stop(node, visit.index(), visit.stop());
    node.put("time", Times.of(shared.time(), visit.zone()));
    JsonPage.pressure(node, "readLess", shared.pascals());
    JsonPage.pressure(node, "readLessSigma", shared.sigma());
    JsonPage.put(node, "airColder", shared.kelvins(), TemperatureDifference::new);
    node.put("beyondGauge", shared.isSomething());
  }

  private static void gauges(ObjectNode node, TripReview.GaugePair pair) {
    node.put("first", pair.first());
    node.put("second", pair.second());
    JsonPage.pressure(node, "secondReadsMore", pair.pascals());
    JsonPage.pressure(node, "secondReadsMoreSigma", pair.sigma());
    node.put("pairs", pair.pairs());
    node.put("differ", pair.differ());
  }

  private void slip(ObjectNode node, RecordingError slip) {
    LogEvent.Reading reading = slip.check().reading();
    page.tire(node, slip.position(), reading.tire());
    node.put("kind", JsonPage.word(slip.kind()));
    JsonTireReview.reading(node, reading);
    JsonPage.pressure(node, "expected", slip.expected());
    WheelPosition other = slip.other();
    node.put("otherTire", other == null ? null : trip.rig().shortForm(other));
  }

  private void measured(ObjectNode node, MeasuredAir air) {
    JsonPage.stop(node, air.stop(), trip.route().stops().get(air.stop()));
    node.put("leave", Times.of(air.time(), air.zone()));
    JsonPage.put(node, "airInFile", air.expectedKelvins(), Temperature::new);
    JsonPage.put(node, "airMeasured", air.measuredKelvins(), Temperature::new);
    node.put("source", air.source().isEmpty() ? null : air.source());
    JsonPage.problems(node, air.problems());
  }
}
