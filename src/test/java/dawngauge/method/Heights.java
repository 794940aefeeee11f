package dawngauge.method;

import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.Map;
import java.util.TreeMap;

/** Section 2: height along the way, and the air's pressure. */
final class Heights {
  private final TreeMap<Double, Double> given = new TreeMap<>();

  Heights(Trip trip, Times times) {
    for (int i = 0; i < times.way.length; i++) {
      Stop stop = trip.route().stops().get(i);
      if (stop.elevation() != null) {
        given.put(times.way[i], stop.elevation().value().meters());
      }
      if (i < times.way.length - 1) {
        for (ProfilePoint point : trip.route().legs().get(i).profile()) {
          given.put(
              times.way[i] + point.distance().value().meters(), point.elevation().value().meters());
        }
      }
    }
  }

  double at(double way) {
    Double here = given.get(way);
    return here == null ? between(way) : here;
  }

  private double between(double way) {
    Map.Entry<Double, Double> before = given.lowerEntry(way);
    Map.Entry<Double, Double> after = given.higherEntry(way);
    double part = (way - before.getKey()) / (after.getKey() - before.getKey());
    return before.getValue() + part * (after.getValue() - before.getValue());
  }

  /** Whether a place lies off the line of its neighbours' heights. */
  boolean bends(double way) {
    return Math.abs(at(way) - between(way)) > 0.5;
  }

  static double pressure(double height) {
    double geopotential = 6_356_766 * height / (6_356_766 + height);
    return 101_325 * Math.pow(1 - 0.0065 * geopotential / 288.15, 5.255877);
  }
}
