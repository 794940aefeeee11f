package dawngauge.forecast;

import dawngauge.physics.WarmUp;

/**
 * How one kind of tire cools and warms on each piece of the timeline: after a piece its temperature
 * is what is left of that before, plus what the air alone brings, plus the rise for what is not
 * left.
 */
final class Decay {

  /** Factor of a rolling time constant one standard deviation longer. */
  private static final double SLOW_ROLLING = Math.exp(WarmUp.ROLLING_SPREAD);

  /** Factor of a parked time constant one standard deviation longer. */
  private static final double SLOW_PARKED = Math.exp(WarmUp.PARKED_SPREAD);

  /** The pieces with the time constant itself. */
  final Pieces plain;

  /** The pieces with the longer time constant. */
  final Pieces slow;

  Decay(Timeline timeline, double rollingSeconds, double parkedSeconds) {
    plain = new Pieces(timeline, rollingSeconds, parkedSeconds);
    slow = new Pieces(timeline, rollingSeconds * SLOW_ROLLING, parkedSeconds * SLOW_PARKED);
  }

  /** Every piece with one pair of time constants. */
  static final class Pieces {

    /** Which part of a temperature is left after each piece. */
    final double[] left;

    /** What the air alone brings over each piece, in kelvin; NaN where it is not known. */
    final double[] byAir;

    private Pieces(Timeline timeline, double rollingSeconds, double parkedSeconds) {
      int pieces = timeline.count() - 1;
      left = new double[pieces];
      byAir = new double[pieces];
      for (int node = 0; node < pieces; node++) {
        double seconds = timeline.seconds[node + 1] - timeline.seconds[node];
        double tau = timeline.drive[node] >= 0 ? rollingSeconds : parkedSeconds;
        double slope = (timeline.air[node + 1] - timeline.air[node]) / seconds;
        left[node] = Math.exp(-seconds / tau);
        byAir[node] =
            WarmUp.temperatureAfterWithDecay(
                0, timeline.air[node], slope, 0, tau, seconds, left[node]);
      }
    }
  }
}
