package dawngauge.advice;

import dawngauge.forecast.Moment;
import dawngauge.quantity.GaugePressure;

/**
 * The figure to set a tire to at a stop, in whole steps of the gauge. Gauge pressures.
 *
 * @param figure what the gauge is to show
 * @param adds whether air is added; else let out
 * @param warm whether the tire is warm, so that the figure holds its build-up and only adding is
 *     allowed
 * @param settled what the tire then has once as cool as the air here
 * @param wanted the settled pressure that would be wanted if nothing stood in the way
 * @param cutByCeiling whether the ceiling kept it below what is wanted
 * @param spread one standard deviation of the figure for a warm tire, from the build-up; zero cold
 */
public record SetFigure(
    GaugePressure figure,
    boolean adds,
    boolean warm,
    GaugePressure settled,
    GaugePressure wanted,
    boolean cutByCeiling,
    GaugePressure spread) {

  /**
   * The whole step nearest a wanted settled pressure; ties go upward; never more than half a step
   * above the ceiling at the settled pressure of this stop.
   *
   * @param leaving the tire when leaving
   * @param wantedSettled wanted settled pressure in pascal
   * @param ceiling in pascal; NaN where none is known
   * @param warm whether the tire is warm
   * @param step of the gauge, in pascal
   */
  static SetFigure of(
      Moment leaving, double wantedSettled, double ceiling, boolean warm, double step) {
    boolean cut = !Double.isNaN(ceiling) && wantedSettled > ceiling + step / 2;
    double settled = cut ? ceiling : wantedSettled;
    double exact = shown(leaving, settled);
    double figure = Math.floor(exact / step + 0.5 + 1e-9) * step;
    while (!Double.isNaN(ceiling) && settledBy(leaving, figure) > ceiling + step / 2 + 1e-6) {
      figure -= step;
    }
    return new SetFigure(
        new GaugePressure(figure),
        figure > now(leaving),
        warm,
        new GaugePressure(settledBy(leaving, figure)),
        new GaugePressure(wantedSettled),
        cut,
        new GaugePressure(warm && leaving.warmSigma() > 0 ? leaving.warmSigma() : 0));
  }

  /** What the gauge shows now, or the settled pressure where the tire's warmth is not known. */
  static double now(Moment leaving) {
    return Double.isNaN(leaving.reading()) ? leaving.settled() : leaving.reading();
  }

  private static double kelvins(Moment leaving) {
    return Double.isNaN(leaving.reading()) ? leaving.airKelvins() : leaving.tireKelvins();
  }

  private static double shown(Moment leaving, double settled) {
    return (settled + leaving.airPressure()) / leaving.airKelvins() * kelvins(leaving)
        - leaving.airPressure();
  }

  private static double settledBy(Moment leaving, double figure) {
    return (figure + leaving.airPressure()) / kelvins(leaving) * leaving.airKelvins()
        - leaving.airPressure();
  }
}
