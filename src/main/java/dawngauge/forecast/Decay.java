package dawngauge.forecast;

import dawngauge.physics.WarmUp;

/**
 * What is left of a temperature difference after each piece of the timeline, for one kind of tire.
 */
final class Decay {

  /** Factor of a rolling time constant one standard deviation longer. */
  static final double SLOW_ROLLING = Math.exp(WarmUp.ROLLING_SPREAD);

  /** Factor of a parked time constant one standard deviation longer. */
  static final double SLOW_PARKED = Math.exp(WarmUp.PARKED_SPREAD);

  /** Time constant while rolling, in seconds. */
  final double rolling;

  /** Time constant while parked, in seconds. */
  final double parked;

  /** For each piece, with the time constant itself. */
  final double[] plain;

  /** For each piece, with the longer time constant. */
  final double[] slow;

  Decay(Timeline timeline, double rollingSeconds, double parkedSeconds) {
    rolling = rollingSeconds;
    parked = parkedSeconds;
    int pieces = timeline.count() - 1;
    plain = new double[pieces];
    slow = new double[pieces];
    for (int node = 0; node < pieces; node++) {
      double seconds = timeline.seconds[node + 1] - timeline.seconds[node];
      boolean moving = timeline.drive[node] >= 0;
      double tau = moving ? rolling : parked;
      plain[node] = Math.exp(-seconds / tau);
      slow[node] = Math.exp(-seconds / (tau * (moving ? SLOW_ROLLING : SLOW_PARKED)));
    }
  }
}
