package dawngauge.forecast;

import dawngauge.physics.AirLoss;

/** The last pieces that one tire went over, node by node. */
final class SegmentBuffer {

  private final Timeline timeline;

  /** Temperature in the tire at each node, the first one at 0; only as far as it is known. */
  final double[] kelvins;

  private final double[] fill;
  private int from;
  private int warmTo;

  /** Room for the longest stay or leg. */
  SegmentBuffer(Timeline timeline) {
    this.timeline = timeline;
    kelvins = new double[timeline.longest() + 1];
    fill = new double[kelvins.length];
  }

  /**
   * A stretch begins.
   *
   * @param node where
   * @param lastWarm node up to which the tire's temperature is known
   * @param present fill in pascal per kelvin
   */
  void begin(int node, int lastWarm, double present) {
    from = node;
    warmTo = lastWarm;
    fill[0] = present;
  }

  /**
   * Loses air on the way.
   *
   * @param to where the stretch ends
   * @param leak part of the gauge pressure lost a second; NaN for permeation alone
   * @return fill there; where neither tire nor air are known none is lost
   */
  double lose(int to, double leak) {
    double[] air = timeline.air;
    double[] pressure = timeline.pressure;
    double[] seconds = timeline.seconds;
    double now = fill[0];
    for (int node = from; node < to; node++) {
      int i = node - from;
      double mean =
          node < warmTo ? (kelvins[i] + kelvins[i + 1]) / 2 : (air[node] + air[node + 1]) / 2;
      double around = (pressure[node] + pressure[node + 1]) / 2;
      if (!Double.isNaN(mean) && !Double.isNaN(around)) {
        double rate = Double.isNaN(leak) ? AirLoss.permeationRate(mean) : leak;
        now = AirLoss.fillAfter(now, mean, around, rate, seconds[node + 1] - seconds[node]);
      }
      fill[i + 1] = now;
    }
    return now;
  }

  /**
   * The node at which the judged pressure is lowest, air bridged left out.
   *
   * @param last where to look at the latest
   * @param below only pressures below this count, in pascal
   * @return −1 where there is none
   */
  int lowest(int last, double below) {
    int found = -1;
    double least = Double.isNaN(fill[0]) ? Double.NEGATIVE_INFINITY : below;
    for (int node = from + 1; node <= last; node++) {
      double air = timeline.air[node];
      double tire = node <= warmTo ? Math.min(kelvins[node - from], air) : air;
      double judged = fill[node - from] * tire - timeline.pressure[node];
      if (judged < least && !timeline.bridged[node]) {
        found = node;
        least = judged;
      }
    }
    return found;
  }
}
