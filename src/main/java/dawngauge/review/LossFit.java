package dawngauge.review;

/**
 * What a row of cold readings of one tire tells of the air it lost: nothing beyond chance, a loss
 * of which more readings must tell the kind, a steady leak or one loss. Parts of the air in the
 * tire; permeation, what all tires share and what was set are taken off before.
 *
 * @param kind what it is
 * @param part part of the air lost between the first and the last reading
 * @param sigma one standard deviation of that
 * @param perDay part lost a day, by the line through all readings
 * @param perDaySigma one standard deviation of that
 * @param from index of the reading before the loss; for a steady leak the first
 * @param to index of the reading after it; for a steady leak the last
 */
public record LossFit(
    Kind kind, double part, double sigma, double perDay, double perDaySigma, int from, int to) {

  /** What a row of readings tells. */
  public enum Kind {
    /** Fewer than two cold readings: nothing. */
    TOO_FEW,
    /** No loss beyond chance. */
    SOUND,
    /** A loss; whether steady or at once, the readings cannot say. */
    LOST,
    /** A steady leak. */
    STEADY,
    /** One loss between two readings. */
    ONCE
  }

  /** Fewest readings for which the kind of loss is named. */
  private static final int LEAST_READINGS = 4;

  /** Fewest readings among which one may be found wrong. */
  private static final int ROBUST_FROM = 5;

  /** The kind is named where the loss is at least so many deviations of one reading. */
  private static final double LEAST_LOSS = 8;

  /** It is named where one kind fits the readings better by this, in squared deviations. */
  private static final double BETTER = 5;

  /**
   * Fits a {@link RobustLine} and a step, and holds them against each other.
   *
   * @param days when each reading was taken
   * @param lost part of the air lost up to each, the first taken as the start
   * @param each one standard deviation of a reading
   * @param beyond so many deviations are beyond chance
   */
  static LossFit of(double[] days, double[] lost, double each, double beyond) {
    int count = days.length;
    if (count < 2) {
      return new LossFit(Kind.TOO_FEW, 0, Double.NaN, 0, Double.NaN, 0, 0);
    }
    RobustLine line = RobustLine.of(days, lost, each);
    double slope = line.slope();
    double slopeSigma = line.sigma();
    double steadyRest = 0;
    for (int i = 0; i < count; i++) {
      steadyRest += cost(line.off(days[i], lost[i]) / each, count);
    }
    int at = 0;
    double step = 0;
    double stepSigma = each * Math.sqrt(2);
    double stepRest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count - 1; i++) {
      double before = mean(lost, 0, i + 1);
      double after = mean(lost, i + 1, count);
      double rest = 0;
      for (int j = 0; j < count; j++) {
        rest += cost((lost[j] - (j <= i ? before : after)) / each, count);
      }
      if (rest < stepRest) {
        stepRest = rest;
        step = after - before;
        stepSigma = each * Math.sqrt(1.0 / (i + 1) + 1.0 / (count - i - 1));
        at = i;
      }
    }
    boolean steady = slope > beyond * slopeSigma;
    boolean once = step > beyond * stepSigma;
    double span = days[count - 1] - days[0];
    if (!steady && !once) {
      return new LossFit(
          Kind.SOUND, slope * span, slopeSigma * span, slope, slopeSigma, 0, count - 1);
    }
    boolean kindKnown =
        count >= LEAST_READINGS
            && Math.max(step, slope * span) >= LEAST_LOSS * each
            && Math.abs(steadyRest - stepRest) > BETTER;
    if (kindKnown && stepRest < steadyRest) {
      return new LossFit(Kind.ONCE, step, stepSigma, slope, slopeSigma, at, at + 1);
    }
    return new LossFit(
        kindKnown ? Kind.STEADY : Kind.LOST,
        slope * span,
        slopeSigma * span,
        slope,
        slopeSigma,
        0,
        count - 1);
  }

  /** Squares left over by the straight line or the one step that fits best, in deviations. */
  static double rest(double[] days, double[] lost, double each) {
    int count = days.length;
    RobustLine line = RobustLine.squares(days, lost, each);
    double least = 0;
    for (int i = 0; i < count; i++) {
      double off = line.off(days[i], lost[i]);
      least += off * off;
    }
    for (int i = 0; i < count - 1; i++) {
      double before = mean(lost, 0, i + 1);
      double after = mean(lost, i + 1, count);
      double rest = 0;
      for (int j = 0; j < count; j++) {
        double off = lost[j] - (j <= i ? before : after);
        rest += off * off;
      }
      least = Math.min(least, rest);
    }
    return least / (each * each);
  }

  /** What a deviation costs: its square; as Huber has it where one reading may be wrong. */
  private static double cost(double deviations, int count) {
    double off = Math.abs(deviations);
    return count < ROBUST_FROM || off <= RobustLine.HUBER
        ? off * off
        : RobustLine.HUBER * (2 * off - RobustLine.HUBER);
  }

  private static double mean(double[] numbers, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += numbers[i];
    }
    return sum / (to - from);
  }
}
