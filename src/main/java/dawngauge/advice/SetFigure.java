package dawngauge.advice;

import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.Quantile;

/**
 * The figure to set a tire to at a stop, in whole steps of the gauge. Gauge pressures, as a gauge
 * open to the air shows them.
 *
 * @param figure what the gauge is to show
 * @param adds whether air is added, by more than half a step; else let out, or nothing to be done
 * @param warm whether the tire is warm, so that the figure holds its build-up and only adding is
 *     allowed
 * @param settled what the tire then has once as cool as the air here
 * @param wanted the settled pressure that would be wanted if nothing stood in the way
 * @param cutByCeiling whether the ceiling kept it below what is wanted
 * @param cutByHose whether the hose reaches no further than this
 * @param spread one standard deviation of the figure for a warm tire, from the build-up; zero cold
 */
public record SetFigure(
    GaugePressure figure,
    boolean adds,
    boolean warm,
    GaugePressure settled,
    GaugePressure wanted,
    boolean cutByCeiling,
    boolean cutByHose,
    GaugePressure spread) {

  /** Forgives rounding, in pascal. */
  private static final double ROUNDING = 1;

  /**
   * What bounds a figure, in pascal.
   *
   * @param needed settled pressure that lets the tire roll until the next air; negative infinity
   *     where nothing is needed
   * @param ceiling highest settled pressure; NaN where none is known
   * @param hose highest figure that the hose reaches; infinite where that is not known
   * @param step of the gauge
   */
  record Bounds(double needed, double ceiling, double hose, double step) {

    /** Half a step of grace. */
    double grace() {
      return step / 2;
    }
  }

  /**
   * The whole step nearest a wanted settled pressure, ties upward; the next one up where that would
   * be less than is needed. On a cold tire never above the ceiling; a warm one is to settle no
   * higher than the ceiling and what the gauge cannot tell, in nine of ten cases of its warmth.
   *
   * @param check the tire when it is set
   * @param wanted wanted settled pressure in pascal
   * @param warm whether the tire is warm
   * @param bounds what stands in the way
   */
  static SetFigure of(TireSnapshot check, double wanted, boolean warm, Bounds bounds) {
    double step = bounds.step();
    double highest = Double.isNaN(bounds.ceiling()) ? Double.MAX_VALUE : bounds.ceiling();
    boolean cut = wanted > highest + bounds.grace();
    double exact = shown(check, cut ? highest : wanted);
    double figure = Math.floor(exact / step + 0.5 + 1e-9) * step;
    if (settledBy(check, figure) < bounds.needed() - ROUNDING) {
      figure += step;
    }
    double settled = highestSettled(check, warm, bounds);
    while (settledBy(check, figure) > settled + ROUNDING
        || (!warm && figure > highest + ROUNDING)) {
      figure -= step;
    }
    boolean beyondHose = figure > bounds.hose() + ROUNDING && figure > now(check);
    if (beyondHose) {
      figure = Math.floor(bounds.hose() / step + 1e-9) * step;
    }
    return new SetFigure(
        new GaugePressure(figure),
        figure > now(check) + bounds.grace(),
        warm,
        new GaugePressure(settledBy(check, figure)),
        new GaugePressure(wanted),
        cut,
        beyondHose,
        new GaugePressure(warm && check.warmSigma() > 0 ? check.warmSigma() : 0));
  }

  /**
   * Highest pressure that a tire may settle at where it is set, in pascal: cold, half a step over
   * the ceiling, since the gauge's own figure is held against it; warm, so far over it as the gauge
   * cannot tell, less what its warmth may be short of.
   */
  static double highestSettled(TireSnapshot check, boolean warm, Bounds bounds) {
    double ceiling = Double.isNaN(bounds.ceiling()) ? Double.MAX_VALUE : bounds.ceiling();
    if (!warm) {
      return ceiling + bounds.grace();
    }
    double unsure = check.warmSigma() > 0 ? Quantile.NINETY_UNDER * check.warmSigma() : 0;
    double band = check.origin().errors().deadBand(ceiling);
    return ceiling + Math.max(0, band - unsure);
  }

  /**
   * A figure that was chosen already.
   *
   * @param figure what the gauge is to show, in pascal
   */
  static SetFigure chosen(
      TireSnapshot check, double figure, double wanted, boolean warm, Bounds bounds) {
    double highest = Double.isNaN(bounds.ceiling()) ? Double.MAX_VALUE : bounds.ceiling();
    double settled = settledBy(check, figure);
    return new SetFigure(
        new GaugePressure(figure),
        figure > now(check) + bounds.grace(),
        warm,
        new GaugePressure(settled),
        new GaugePressure(wanted),
        settled < wanted - bounds.step() && settled > highest - bounds.step(),
        settled < wanted - bounds.step() && figure > bounds.hose() - bounds.step(),
        new GaugePressure(warm && check.warmSigma() > 0 ? check.warmSigma() : 0));
  }

  /** What the gauge shows now, or the settled pressure where the tire's warmth is not known. */
  static double now(TireSnapshot check) {
    return Double.isNaN(check.reading()) ? check.settled() : check.reading();
  }

  /** What the gauge shows where the settled pressure is the given one. */
  static double shown(TireSnapshot check, double settled) {
    return (settled + check.airPressure()) / check.airKelvins() * kelvins(check)
        - check.airPressure();
  }

  /** Temperature of the air in the tire; that of the air around where it is not known. */
  static double kelvins(TireSnapshot check) {
    return Double.isNaN(check.reading()) ? check.airKelvins() : check.tireKelvins();
  }

  private static double settledBy(TireSnapshot check, double figure) {
    return (figure + check.airPressure()) / kelvins(check) * check.airKelvins()
        - check.airPressure();
  }
}
