package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.rules.SpareFit;

/** Whether a way out leads over a spare. */
final class Spares {

  private Spares() {}

  /** Whether a spare that can serve there is aboard, as far as is known. */
  static boolean fit(Forecaster forecaster, TireAtStop at) {
    return SpareFit.fitFor(
            forecaster.trip().rig(),
            at.fitted().position(),
            at.limits().load().heaviest(),
            at.limits().reference(),
            forecaster.trip().route().lastDate().orElse(null))
        .isPresent();
  }
}
