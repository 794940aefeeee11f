package dawngauge.rules;

import dawngauge.tire.Capacity;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Whether a tire carries what it may have to carry: the pressures that its loads need by the likely
 * and by the cautious curve, and the chance that a pressure is under them. Gauge pressures in
 * pascal.
 *
 * <p>The load is taken at 32 quantiles of equal weight. Of each the chance is told that the
 * pressure, normally spread, is under what it needs; a load that no pressure carries counts as one.
 */
public final class Carrying {

  private static final int QUANTILES = 32;

  /** How near a pressure that is sought is found, in pascal. */
  private static final double NEAR = 1e-3;

  private static final int MOST_TRIES = 200;

  /** Points of the curve that the search goes by. */
  private static final int POINTS = 4;

  /** So many standard deviations away a chance is under 1e-6, which is called none. */
  private static final double FAR = 5;

  /** Forgives rounding where a pressure is known for sure, in pascal. */
  private static final double ROUNDING = 1;

  private final Capacity capacity;
  private final LoadSpread load;
  private final double part;
  private final double loadFactor;
  private final double extraPascals;
  private final double floor;
  private final Needs likely;
  private final Needs cautious;

  /**
   * What a load asks of a tire.
   *
   * @param loadFactor part of its rating that it may carry at the speed ahead
   * @param extraPascals pressure that the speed ahead asks for on top
   */
  Carrying(Capacity capacity, LoadSpread load, double loadFactor, double extraPascals) {
    this(capacity, load, quantiles(load), 1, loadFactor, extraPascals);
  }

  private Carrying(
      Capacity capacity,
      LoadSpread load,
      double[] loads,
      double part,
      double loadFactor,
      double extraPascals) {
    this.capacity = capacity;
    this.load = load;
    this.part = part;
    this.loadFactor = loadFactor;
    this.extraPascals = extraPascals;
    this.floor = capacity.pascalsFor(load.mean() * part / loadFactor) + extraPascals;
    this.likely = new Needs(loads, true);
    this.cautious = new Needs(loads, false);
  }

  private static double[] quantiles(LoadSpread load) {
    double[] loads = new double[QUANTILES];
    for (int i = 0; i < QUANTILES; i++) {
      loads[i] = load.quantile((i + 0.5) / QUANTILES);
    }
    return loads;
  }

  /** The same for a tire that carries a part of it, or more. */
  Carrying times(double more) {
    return new Carrying(capacity, load, likely.loads, part * more, loadFactor, extraPascals);
  }

  /** Lowest pressure at which the tire may carry the likely load; NaN where it may at none. */
  double floor() {
    return floor;
  }

  /** Load margin at a pressure by the cautious curve; NaN where nothing is carried. */
  double marginAt(double pascals) {
    double kilograms = load.mean() * part;
    return kilograms > 0
        ? capacity.kilogramsAt(pascals - extraPascals) * loadFactor / kilograms - 1
        : Double.NaN;
  }

  /** What the curves rest on. */
  Capacity.Basis basis() {
    return capacity.basis();
  }

  /**
   * Chance that the load is over the likely curve: what is told as the chance of being under the
   * pressure that the load needs.
   *
   * @param pascals expected pressure
   * @param sigma one standard deviation of it
   */
  public double underFloor(double pascals, double sigma) {
    return likely.chanceOver(pascals, sigma);
  }

  /** Chance that the load is over the cautious curve: that it cannot be shown to be carried. */
  public double notShown(double pascals, double sigma) {
    return cautious.chanceOver(pascals, sigma);
  }

  /**
   * The lowest expected pressure whose chance of {@link #underFloor} is no more than given; NaN
   * where no pressure helps.
   */
  public double needed(double chance, double sigma) {
    return needed(likely, chance, sigma);
  }

  private double needed(Needs curve, double chance, double sigma) {
    double low = -FAR * sigma;
    double high =
        capacity.pascalsFor(capacity.mostKilograms()) + extraPascals + ROUNDING + FAR * sigma;
    if (!(curve.chanceOver(high, sigma) <= chance)) {
      return Double.NaN;
    } else if (curve.chanceOver(low, sigma) <= chance) {
      return low;
    }
    return new BracketingNthOrderBrentSolver(0, NEAR, 0, POINTS)
        .solve(
            MOST_TRIES,
            pascals -> curve.chanceOver(pascals, sigma) - chance,
            low,
            high,
            AllowedSolution.BELOW_SIDE);
  }

  /**
   * The larger of what two spreads need.
   *
   * @see #needed(double, double)
   */
  public double needed(double chance, double sigma, double other) {
    return needed(likely, chance, sigma, other);
  }

  /** The same for {@link #notShown}: from there on it can be shown that the load is carried. */
  public double neededToShow(double chance, double sigma, double other) {
    return needed(cautious, chance, sigma, other);
  }

  private double needed(Needs curve, double chance, double sigma, double other) {
    double needed = needed(curve, chance, sigma);
    // The chance falls as the pressure rises: where it is small enough there, less is needed.
    return Double.isNaN(needed) || curve.chanceOver(needed, other) <= chance
        ? needed
        : needed(curve, chance, other);
  }

  /** One standard deviation of the pressure that the load likely needs, where some carries it. */
  public double needSigma() {
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (double need : likely.all()) {
      if (!Double.isNaN(need)) {
        sum += need;
        squares += need * need;
        count++;
      }
    }
    return count == 0 ? 0 : Math.sqrt(Math.max(0, squares / count - sum * sum / count / count));
  }

  /** The pressures that the loads need by one curve, found when they are first asked for. */
  private final class Needs {
    private final double[] loads;
    private final boolean byLikely;
    private final double most;
    private double @Nullable [] all;

    Needs(double[] loads, boolean byLikely) {
      this.loads = loads;
      this.byLikely = byLikely;
      this.most = need(loads[QUANTILES - 1]);
    }

    private double need(double kilograms) {
      double carried = kilograms * part / loadFactor;
      return extraPascals
          + (byLikely ? capacity.likelyPascalsFor(carried) : capacity.pascalsFor(carried));
    }

    private double[] all() {
      double[] known = all;
      if (known == null) {
        known = new double[QUANTILES];
        for (int i = 0; i < QUANTILES; i++) {
          known[i] = need(loads[i]);
        }
        all = known;
      }
      return known;
    }

    double chanceOver(double pascals, double sigma) {
      if (Double.isNaN(pascals) || Double.isNaN(sigma)) {
        return Double.NaN;
      } else if (most + FAR * sigma < pascals) {
        return 0; // the needs rise with the load
      }
      double sum = 0;
      for (double need : all()) {
        sum += over(need, pascals, sigma);
      }
      return sum / QUANTILES;
    }

    private static double over(double need, double pascals, double sigma) {
      if (Double.isNaN(need)) {
        return 1;
      } else if (sigma > 0) {
        return Quantile.under((need - pascals) / sigma);
      }
      return need > pascals + ROUNDING ? 1 : 0;
    }
  }
}
