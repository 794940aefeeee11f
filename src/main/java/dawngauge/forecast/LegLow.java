package dawngauge.forecast;

import dawngauge.rules.Quantile;

/**
 * The lowest judged pressure of a tire on a leg.
 *
 * @param meters way from the start of the leg
 * @param moment the tire there
 * @param deviations how far its floor lies above its expected pressure there, in standard
 *     deviations; NaN without a floor
 */
public record LegLow(double meters, Moment moment, double deviations) {

  /** Chance that its true pressure is under the floor there; NaN without a floor. */
  public double chance() {
    return Quantile.under(deviations);
  }
}
