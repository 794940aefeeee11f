package dawngauge.quantity;

import java.util.Arrays;

/** The middle of some numbers. */
public final class Median {

  private Median() {}

  /**
   * The middle one, or the mean of the middle two.
   *
   * @param numbers at least one, in any order
   */
  public static double of(double[] numbers) {
    double[] sorted = numbers.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length == 2 * middle ? (sorted[middle - 1] + sorted[middle]) / 2 : sorted[middle];
  }
}
