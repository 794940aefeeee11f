package dawngauge.method;

import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.util.Map;
import java.util.TreeMap;

/** Section 3: the trip cut into samples, and the moments between that need a figure. */
final class Samples {
  final double[] seconds;
  final double[] kelvins;
  final double[] sigma;
  final double[] coldSide;
  final double[] pressure;
  final boolean[] bridged;

  /** The leg on which the piece that begins here lies; −1 standing. */
  final int[] leg;

  private final TreeMap<Double, Boolean> moments = new TreeMap<>();

  Samples(Trip trip, Times times) {
    Heights heights = new Heights(trip, times);
    AirOnTheWay air = new AirOnTheWay(trip, times, heights);
    int last = times.way.length - 1;
    double start = times.arrive[0];
    double end = times.leave[last];
    for (double t = Math.ceil(start / 600) * 600; t < end; t += 600) {
      moments.put(t, true);
    }
    air.bends().stream().filter(t -> t > start && t < end).forEach(t -> moments.put(t, true));
    for (int i = 0; i <= last; i++) {
      boolean knot = !times.passes(i) || air.given(i) || heights.bends(times.way[i]);
      moments.merge(times.arrive[i], knot, Boolean::logicalOr);
      moments.merge(times.leave[i], knot, Boolean::logicalOr);
      moments.putIfAbsent(times.check[i], false);
      if (i < last) {
        for (ProfilePoint point : trip.route().legs().get(i).profile()) {
          double away = point.distance().value().meters();
          moments.put(times.leave[i] + away / times.speed[i], true);
        }
      }
    }
    for (LogEvent event : trip.log()) {
      double t = Times.of(event.time());
      if (t >= start && t <= end) {
        moments.putIfAbsent(t, false);
      }
    }
    int count = moments.size();
    seconds = moments.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    kelvins = new double[count];
    sigma = new double[count];
    coldSide = new double[count];
    pressure = new double[count];
    bridged = new boolean[count];
    leg = new int[count];
    for (int node = 0; node < count; node++) {
      double t = seconds[node];
      int stop = 0;
      while (stop < last && times.arrive[stop + 1] <= t) {
        stop++;
      }
      boolean stands = t <= times.leave[stop];
      leg[node] = t < times.leave[stop] || stop == last ? -1 : stop;
      double way = times.way[stop];
      way += stands ? 0 : times.speed[stop] * (t - times.leave[stop]);
      double height = heights.at(way);
      Air here = stands ? air.atStop(stop, way, height, t) : air.at(way, height, t);
      kelvins[node] = here.kelvins();
      sigma[node] = here.sigma();
      coldSide[node] = here.coldSide();
      bridged[node] = here.bridged();
      pressure[node] = Heights.pressure(height);
    }
    straighten(kelvins);
  }

  /** Between samples a figure is a straight line. */
  void straighten(double[] figure) {
    for (Map.Entry<Double, Boolean> moment : moments.entrySet()) {
      if (!moment.getValue()) {
        double t = moment.getKey();
        int before = node(t);
        int after = before;
        while (!isSample(before)) {
          before--;
        }
        while (!isSample(after)) {
          after++;
        }
        double part = (t - seconds[before]) / (seconds[after] - seconds[before]);
        figure[node(t)] = figure[before] + part * (figure[after] - figure[before]);
      }
    }
  }

  private boolean isSample(int node) {
    return Boolean.TRUE.equals(moments.get(seconds[node]));
  }

  int node(double t) {
    return moments.headMap(t).size();
  }
}
