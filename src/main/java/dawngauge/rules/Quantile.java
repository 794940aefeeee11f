package dawngauge.rules;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** Chances of the standard normal distribution. */
public final class Quantile {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** So many deviations away a chance is under 1e-9, which is called none. */
  private static final double CERTAIN = 6;

  private Quantile() {}

  /**
   * Chance of lying under a figure that is so many standard deviations above the middle; NaN gives
   * NaN.
   */
  public static double under(double deviations) {
    if (Double.isNaN(deviations)) {
      return Double.NaN;
    } else if (deviations < -CERTAIN) {
      return 0;
    }
    return deviations > CERTAIN ? 1 : NORMAL.cumulativeProbability(deviations);
  }

  /** So many standard deviations above the middle a figure lies that is kept with a chance. */
  public static double deviations(double chance) {
    return NORMAL.inverseCumulativeProbability(chance);
  }
}
