package dawngauge.ledger;

import dawngauge.ambient.MeasuredAir;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.review.TripReview;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What all tires shared at a round: the air was another, or the gauge. */
final class SharedFindings {

  /** A station some way off may differ from the air at the stop by so many kelvins; ours. */
  private static final double STATION = 3;

  private SharedFindings() {}

  /**
   * All of them, where they change.
   *
   * @param measured the air that stations measured at the stops
   */
  static List<ReviewFinding> of(TripReview review, List<MeasuredAir> measured, ReviewWords words) {
    Map<Integer, TripReview.Shared> told = new LinkedHashMap<>();
    TripReview.Shared before = null;
    for (TripReview.Shared shared : review.shared()) {
      double was = before == null ? 0 : before.pascals();
      if (shared.isSomething() && Math.abs(shared.pascals() - was) > 3 * shared.sigma()) {
        told.put(shared.visit(), shared);
      }
      before = shared;
    }
    List<ReviewFinding> found = new ArrayList<>();
    for (TripReview.Shared shared : told.values()) {
      String place = words.trip().route().stops().get(shared.visit()).place();
      boolean less = shared.pascals() > 0;
      found.add(
          new ReviewFinding(
              "all tires read " + (less ? "less" : "more") + " than expected at " + place,
              "All tires read about "
                  + words.shown(Math.abs(shared.pascals()))
                  + (less ? " less" : " more")
                  + " than expected at "
                  + place
                  + ": air about "
                  + difference(shared.kelvins(), words)
                  + (less ? " colder" : " warmer")
                  + " than in the file, or the gauge.",
              airOrGauge(shared, measured, words)
                  + (review.sharedTakenOff()
                      ? " No tire leaks by it."
                      : " So many tires lost air that it is still in what each of them lost."),
              ""));
    }
    return found;
  }

  private static String difference(double kelvins, ReviewWords words) {
    return words.units().format(new TemperatureDifference(Math.abs(kelvins)));
  }

  /** Which of both it was, by a station near the stop. */
  private static String airOrGauge(
      TripReview.Shared shared, List<MeasuredAir> measured, ReviewWords words) {
    for (MeasuredAir air : measured) {
      double colder = air.expectedKelvins() - air.measuredKelvins();
      if (air.stop() != shared.visit() || Double.isNaN(colder)) {
        continue;
      }
      String station =
          air.source()
              + " measured "
              + difference(colder, words)
              + (colder > 0 ? " colder" : " warmer")
              + " than in the file near there: ";
      if (Math.abs(colder - shared.kelvins()) < STATION) {
        return station + "it was the air.";
      }
      boolean little = Math.abs(colder) < Math.min(STATION, Math.abs(shared.kelvins()) / 2);
      return station + (little ? "rather the gauge." : "it is not the air alone.");
    }
    return "Air and gauge cannot be told apart.";
  }
}
