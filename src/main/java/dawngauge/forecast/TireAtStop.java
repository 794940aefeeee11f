package dawngauge.forecast;

import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.rules.Quantile;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One tire at one stop, and on the leg that leaves it.
 *
 * @param visit index of the stop
 * @param fitted the tire and its place
 * @param limits floor, aim and ceiling for the leg ahead; at the last stop as if it went on
 * @param arrival on arrival, or null where nothing is known
 * @param check when it is to be gauged and set here, before any assumed setting: when leaving, or
 *     before the first start of a day not later than half an hour after sunrise, but after the last
 *     reading in the log; null where nothing is known
 * @param leaving when leaving, after it, or null where nothing is known
 * @param setting what the forecast takes as done here, or null
 * @param low lowest on the leg ahead, or null at the last stop and where nothing is known
 * @param leavingDeviations how far the floor lies above the expected pressure when leaving, in
 *     standard deviations; NaN if not known
 * @param cold whether the tire counts as cold when leaving: parked three hours, less than a mile
 *     driven
 * @param readings what was read here
 * @param published build-up by 49 CFR 393.75 Table 1 on arrival, or null where its speeds do not
 *     apply
 */
public record TireAtStop(
    int visit,
    FittedTire fitted,
    Limits limits,
    @Nullable Moment arrival,
    @Nullable Moment check,
    @Nullable Moment leaving,
    @Nullable Setting setting,
    @Nullable LegLow low,
    double leavingDeviations,
    boolean cold,
    List<ReadingCheck> readings,
    @Nullable PublishedBuildUp published) {

  /** Copies the list. */
  public TireAtStop {
    readings = List.copyOf(readings);
  }

  /** Chance that the true pressure is under the floor when leaving; NaN if not known. */
  public double leavingChance() {
    return Quantile.under(leavingDeviations);
  }

  /** Load margin when leaving: capacity over load less one; NaN if not known. */
  public double margin() {
    return leaving == null ? Double.NaN : marginAt(leaving.judged());
  }

  /** Load margin at the lowest point of the leg ahead; NaN if not known. */
  public double lowMargin() {
    return low == null ? Double.NaN : marginAt(low.moment().judged());
  }

  /** The lower of both margins; NaN if neither is known. */
  public double worstMargin() {
    double here = margin();
    double ahead = lowMargin();
    return Double.isNaN(ahead) ? here : Double.isNaN(here) ? ahead : Math.min(here, ahead);
  }

  /** Load margin at a gauge pressure in pascal; NaN if not known or nothing is carried. */
  public double marginAt(double gaugePascals) {
    double load = limits.load().kilograms();
    return fitted.capacity() == null || !(load > 0)
        ? Double.NaN
        : fitted.capacity().kilogramsAt(gaugePascals) / load - 1;
  }
}
