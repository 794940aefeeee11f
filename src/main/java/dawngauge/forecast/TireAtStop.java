package dawngauge.forecast;

import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.trip.Tire;
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
 * @param leavingChance that it does not carry its load when leaving
 * @param cold whether the tire counts as cold when leaving: parked three hours, less than a mile
 *     driven
 * @param readings what was read here
 * @param bare what was read here and only bounds the air in the tire
 * @param published build-up by 49 CFR 393.75 Table 1 on arrival, or null where its speeds do not
 *     apply
 */
public record TireAtStop(
    int visit,
    FittedTire fitted,
    Limits limits,
    @Nullable TireSnapshot arrival,
    @Nullable TireSnapshot check,
    @Nullable TireSnapshot leaving,
    @Nullable Setting setting,
    @Nullable LegLow low,
    LoadChance leavingChance,
    boolean cold,
    List<ReadingCheck> readings,
    List<BareReading> bare,
    @Nullable PublishedBuildUp published) {

  /** Copies the lists. */
  public TireAtStop {
    readings = List.copyOf(readings);
    bare = List.copyOf(bare);
  }

  /**
   * The same where a dual mate takes another part of the load: the pair shares it in the ratio of
   * the settled pressures, each at least zero; evenly where one is not known or is flat, since the
   * load counts that in already.
   */
  public TireAtStop beside(TireAtStop mate) {
    double own = settled(this);
    double other = settled(mate);
    boolean flat = mate.fitted.tire().damage().contains(Tire.Damage.FLAT);
    double both = Math.max(0, own) + Math.max(0, other);
    return flat || !(both > 0) ? this : sharing(2 * Math.max(0, own) / both);
  }

  private static double settled(TireAtStop at) {
    TireSnapshot moment = at.leaving == null ? at.check : at.leaving;
    return moment == null ? Double.NaN : moment.settled();
  }

  private TireAtStop sharing(double part) {
    if (part == 1) {
      return this;
    }
    Limits shared = limits.sharing(part);
    LegLow ahead = low;
    return new TireAtStop(
        visit,
        fitted,
        shared,
        arrival,
        check,
        leaving,
        setting,
        ahead == null
            ? null
            : new LegLow(ahead.meters(), ahead.moment(), LoadChance.of(shared, ahead.moment())),
        LoadChance.of(shared, leaving),
        cold,
        readings,
        bare,
        published);
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
    return limits.marginAt(gaugePascals);
  }
}
