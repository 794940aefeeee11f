package dawngauge.rules;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Chances and quantiles of the normal distribution, and of squares of it. */
public final class Quantile {

  /** Nine of ten lie within so many standard deviations on both sides. */
  public static final double NINETY_WITHIN = 1.6449;

  /** Nine of ten lie under so many standard deviations above the middle. */
  public static final double NINETY_UNDER = 1.2816;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** So many deviations away a chance is under 1e-9, which is called none. */
  private static final double CERTAIN = 6;

  /** Pieces a deviation of the table; straight between, the error is under 1e-6. */
  private static final int FINENESS = 256;

  private static final double[] TABLE = table();

  private Quantile() {}

  private static double[] table() {
    double[] chances = new double[(int) (2 * CERTAIN * FINENESS) + 2];
    for (int i = 0; i < chances.length; i++) {
      chances[i] = NORMAL.cumulativeProbability((double) i / FINENESS - CERTAIN);
    }
    return chances;
  }

  /**
   * Chance of lying under a figure that is so many standard deviations above the middle, within
   * 1e-6; NaN gives NaN.
   */
  public static double under(double deviations) {
    if (Double.isNaN(deviations)) {
      return Double.NaN;
    } else if (deviations < -CERTAIN) {
      return 0;
    } else if (deviations > CERTAIN) {
      return 1;
    }
    double place = (deviations + CERTAIN) * FINENESS;
    int i = (int) place;
    return TABLE[i] + (place - i) * (TABLE[i + 1] - TABLE[i]);
  }

  /** So many standard deviations above the middle a figure lies that is kept with a chance. */
  public static double deviations(double chance) {
    return NORMAL.inverseCumulativeProbability(chance);
  }

  /**
   * Chance that so many squared normal deviations come to a sum or more (χ²).
   *
   * @param sum of the squares, zero or more
   * @param count how many, above zero
   */
  public static double squaresBeyond(double sum, int count) {
    return 1 - new ChiSquaredDistribution(count).cumulativeProbability(sum);
  }
}
