package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Unit;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;

/**
 * Long steep descents, on which brakes heat hubs, wheels and tires more than any forecast knows.
 * From two miles on that fall by over 5 % between the heights that are given; common practice, no
 * source.
 */
public final class Descents {

  private static final double STEEP = 0.05;

  /** From this length on. */
  public static final Distance LONG = Distance.of(2, Unit.MILE);

  /** What to do after one. */
  public static final String HEED = "let hubs and brakes cool before you gauge";

  private Descents() {}

  /**
   * Whether there is one between a stop and the one before it at which the rig stood.
   *
   * @param passes whether the rig passes a stop without standing
   */
  public static boolean before(Route route, IntPredicate passes, int visit) {
    for (int leg = visit - 1; leg >= 0; leg--) {
      if (onLeg(route, leg)) {
        return true;
      } else if (!passes.test(leg)) {
        return false;
      }
    }
    return false;
  }

  /** Whether the leg that leaves a stop has one. */
  public static boolean onLeg(Route route, int leg) {
    NavigableMap<Double, Double> heights = heights(route, leg);
    for (double way : heights.keySet()) {
      if (falls(heights, way, way + LONG.meters()) || falls(heights, way - LONG.meters(), way)) {
        return true;
      }
    }
    return false;
  }

  private static boolean falls(NavigableMap<Double, Double> heights, double from, double to) {
    return from >= heights.firstKey()
        && to <= heights.lastKey()
        && at(heights, from) - at(heights, to) > STEEP * LONG.meters();
  }

  /** Straight between the heights that are given. */
  private static double at(NavigableMap<Double, Double> heights, double way) {
    var before = heights.floorEntry(way);
    var after = heights.ceilingEntry(way);
    double span = after.getKey() - before.getKey();
    double part = span > 0 ? (way - before.getKey()) / span : 0;
    return before.getValue() + part * (after.getValue() - before.getValue());
  }

  /** Heights by the way along a leg, in meter. */
  private static NavigableMap<Double, Double> heights(Route route, int number) {
    NavigableMap<Double, Double> heights = new TreeMap<>();
    Leg leg = route.legs().get(number);
    put(heights, 0, route.stops().get(number));
    for (ProfilePoint point : leg.profile()) {
      heights.put(point.distance().value().meters(), point.elevation().value().meters());
    }
    Entered<Distance> length = leg.distance();
    if (length != null) {
      put(heights, length.value().meters(), route.stops().get(number + 1));
    }
    return heights;
  }

  private static void put(NavigableMap<Double, Double> heights, double way, Stop stop) {
    var elevation = stop.elevation();
    if (elevation != null) {
      heights.put(way, elevation.value().meters());
    }
  }
}
