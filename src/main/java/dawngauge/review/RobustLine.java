package dawngauge.review;

import dawngauge.quantity.Median;
import dawngauge.rules.Quantile;
import java.util.Arrays;

/**
 * A straight line through readings over time, some of which may be wrong. With fewer than five by
 * least squares, as no reading can be told to be the wrong one; with five to seven by Huber's
 * weights (Huber, 1964) under the known spread of a reading; from eight on by Theil and Sen with
 * Kendall's interval (Sen, 1968), which knows nothing of the spread.
 *
 * @param start value at time zero
 * @param slope value a day
 * @param sigma one standard deviation of the slope
 */
record RobustLine(double start, double slope, double sigma) {

  /** Huber's constant: 95 % as good as least squares where every error is normal. */
  static final double HUBER = 1.345;

  private static final double HUBER_EFFICIENCY = 0.95;
  private static final int HUBER_FROM = 5;
  private static final int RANKS_FROM = 8;
  private static final int MOST_ROUNDS = 500;
  private static final double CLOSE = 1e-13;

  /**
   * The line.
   *
   * @param days when each was read, no two the same
   * @param each one standard deviation of a reading
   */
  static RobustLine of(double[] days, double[] values, double each) {
    int count = days.length;
    if (count < HUBER_FROM) {
      return squares(days, values, each);
    }
    return count < RANKS_FROM ? huber(days, values, each) : theilSen(days, values, each);
  }

  /** By least squares. */
  static RobustLine squares(double[] days, double[] values, double each) {
    return weighted(days, values, ones(days.length), each, 1);
  }

  /** Weights go down where a value lies further off than Huber's constant. */
  static RobustLine huber(double[] days, double[] values, double each) {
    double[] weights = ones(days.length);
    RobustLine line = weighted(days, values, weights, each, 1);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      for (int i = 0; i < days.length; i++) {
        double off = Math.abs(line.off(days[i], values[i])) / each;
        weights[i] = off <= HUBER ? 1 : HUBER / off;
      }
      RobustLine next = weighted(days, values, weights, each, HUBER_EFFICIENCY);
      boolean done =
          Math.abs(next.slope - line.slope) < CLOSE && Math.abs(next.start - line.start) < CLOSE;
      line = next;
      if (done) {
        break;
      }
    }
    return line;
  }

  /**
   * The middle of all slopes between two values. The spread is that of Kendall's interval, or that
   * of least squares where the known spread of a reading makes it wider.
   */
  static RobustLine theilSen(double[] days, double[] values, double each) {
    double[] slopes = slopes(days, values);
    double slope = Median.of(slopes);
    double[] rests = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      rests[i] = values[i] - slope * days[i];
    }
    int rank = rank(days.length);
    double wide = (slopes[slopes.length - rank] - slopes[rank - 1]) / 2 / Quantile.NINETY_WITHIN;
    double known = weighted(days, values, ones(days.length), each, 1).sigma;
    return new RobustLine(Median.of(rests), slope, Math.max(wide, known));
  }

  /** All slopes between two values, the lowest first. */
  static double[] slopes(double[] days, double[] values) {
    int count = days.length;
    double[] slopes = new double[count * (count - 1) / 2];
    int at = 0;
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        slopes[at++] = (values[j] - values[i]) / (days[j] - days[i]);
      }
    }
    Arrays.sort(slopes);
    return slopes;
  }

  /**
   * Which of the slopes, counted from either end, bound 90 % at least: by the exact distribution of
   * the number of pairs out of order (Kendall).
   */
  static int rank(int count) {
    double[] parts = {1};
    for (int n = 2; n <= count; n++) {
      double[] next = new double[parts.length + n - 1];
      for (int i = 0; i < parts.length; i++) {
        for (int j = 0; j < n; j++) {
          next[i + j] += parts[i] / n;
        }
      }
      parts = next;
    }
    double tail = 0;
    int rank = 0;
    while (rank < parts.length / 2 && 2 * (tail + parts[rank]) <= 0.1) {
      tail += parts[rank++];
    }
    return Math.max(1, rank);
  }

  /** How far a value lies above the line. */
  double off(double day, double value) {
    return value - start - slope * day;
  }

  private static double[] ones(int count) {
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static RobustLine weighted(
      double[] days, double[] values, double[] weights, double each, double efficiency) {
    double all = 0;
    double day = 0;
    double value = 0;
    for (int i = 0; i < days.length; i++) {
      all += weights[i];
      day += weights[i] * days[i];
      value += weights[i] * values[i];
    }
    day /= all;
    value /= all;
    double squares = 0;
    double products = 0;
    for (int i = 0; i < days.length; i++) {
      squares += weights[i] * (days[i] - day) * (days[i] - day);
      products += weights[i] * (days[i] - day) * (values[i] - value);
    }
    double slope = squares > 0 ? products / squares : 0;
    double sigma = squares > 0 ? each / Math.sqrt(efficiency * squares) : Double.POSITIVE_INFINITY;
    return new RobustLine(value - slope * day, slope, sigma);
  }
}
