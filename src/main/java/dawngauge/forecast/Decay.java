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

  /**
   * Of tires by their rated load.
   *
   * @param rated as a single tire, in kilogram
   */
  Decay(Timeline timeline, double rated) {
    double rolling = WarmUp.rollingTimeConstant(rated);
    double parked = WarmUp.parkedTimeConstant(rated);
    double[] rise = new double[timeline.count()];
    for (int node = 0; node < rise.length; node++) {
      rise[node] = WarmUp.riseByAir(timeline.air[node], rated);
    }
    timeline.straighten(rise);
    plain = new Pieces(timeline, rise, rolling, parked);
    slow = new Pieces(timeline, rise, rolling * SLOW_ROLLING, parked * SLOW_PARKED);
  }

  /** Every piece with one pair of time constants. */
  static final class Pieces {

    /** Which part of a temperature is left after each piece. */
    final double[] left;

    /** What the air alone brings over each piece, in kelvin; NaN where it is not known. */
    final double[] byAir;

    /** What a rise of one kelvin in air of 20 °C brings over each piece, as cold as it is here. */
    final double[] byRise;

    private Pieces(Timeline timeline, double[] rise, double rollingSeconds, double parkedSeconds) {
      int pieces = timeline.count() - 1;
      left = new double[pieces];
      byAir = new double[pieces];
      byRise = new double[pieces];
      for (int node = 0; node < pieces; node++) {
        double seconds = timeline.seconds[node + 1] - timeline.seconds[node];
        double tau = timeline.drive[node] >= 0 ? rollingSeconds : parkedSeconds;
        left[node] = Math.exp(-seconds / tau);
        byAir[node] = brought(timeline.air, node, tau, seconds);
        byRise[node] = brought(rise, node, tau, seconds);
      }
    }

    /** What a figure that is straight between the nodes brings from nothing. */
    private double brought(double[] figure, int node, double tau, double seconds) {
      double slope = (figure[node + 1] - figure[node]) / seconds;
      return WarmUp.temperatureAfterWithDecay(0, figure[node], slope, 0, tau, seconds, left[node]);
    }
  }
}
