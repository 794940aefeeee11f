package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Itinerary;

/** Whether a way out leads over a spare. */
final class Spares {

  private Spares() {}

  /** Whether a spare that can serve there is aboard, as far as is known. */
  static boolean fit(Forecaster forecaster, TireAtStop at) {
    Itinerary.Visit start = forecaster.itinerary().visits().get(0);
    return SpareFit.fitFor(
            forecaster.trip().rig(),
            at.fitted().position(),
            at.limits().load().heaviest(),
            at.limits().reference(),
            start.leave().atZone(start.zone()).toLocalDate())
        .isPresent();
  }
}
