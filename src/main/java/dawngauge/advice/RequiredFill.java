package dawngauge.advice;

import java.util.Arrays;

/**
 * What a tire must hold at the least just after each stop, as fills in pascal per kelvin by origin
 * and stop; see {@link TireConstraints}. Negative infinity where nothing is asked.
 */
final class RequiredFill {

  /** For the floor, with the chosen confidence. */
  private final double[][] floor;

  /** For the aim at a day's start. */
  private final double[] aim;

  /** The most that can be had where the floor cannot be kept; infinite elsewhere. */
  private final double[] attainable;

  private RequiredFill(double[][] floor, double[] aim, double[] attainable) {
    this.floor = floor;
    this.aim = aim;
    this.attainable = attainable;
  }

  /** Nothing asked yet, for a number of stops. */
  RequiredFill(int stops) {
    this(new double[stops + 1][stops], new double[stops], new double[stops]);
    for (double[] origin : floor) {
      Arrays.fill(origin, Double.NEGATIVE_INFINITY);
    }
    Arrays.fill(aim, Double.NEGATIVE_INFINITY);
    Arrays.fill(attainable, Double.POSITIVE_INFINITY);
  }

  /** Asks for no less than this at a stop to keep the floor. */
  void floor(int origin, int stop, double fill) {
    floor[origin][stop] = Math.max(floor[origin][stop], fill);
  }

  /** Asks for no less than this at a stop to start the day near the aim. */
  void aim(int stop, double fill) {
    aim[stop] = fill;
  }

  /** The least fill. */
  double least(int origin, int stop) {
    return Math.max(aim[stop], leastForFloor(origin, stop));
  }

  /** The least fill that keeps the floor. */
  double leastForFloor(int origin, int stop) {
    return Math.min(attainable[stop], floor[origin][stop]);
  }

  /** Whether the aim is asked for at a stop. */
  boolean asksAim(int stop) {
    return aim[stop] > Double.NEGATIVE_INFINITY;
  }

  /** The same without the aim at a stop. */
  RequiredFill withoutAim(int stop) {
    double[] less = aim.clone();
    less[stop] = Double.NEGATIVE_INFINITY;
    return new RequiredFill(floor, less, attainable);
  }

  /** The same, with no more asked for the floor at a stop than can be had. */
  RequiredFill atMost(int stop, double fill) {
    double[] less = attainable.clone();
    less[stop] = fill;
    return new RequiredFill(floor, aim, less);
  }
}
