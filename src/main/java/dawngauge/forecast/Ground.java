package dawngauge.forecast;

import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ProfilePoint;
import java.util.Arrays;
import java.util.TreeMap;

/** Height of the ground along the way, straight between the heights that are given. Meters all. */
final class Ground {

  /** A place passed is no node of its own if it lies so close to the line of its neighbours. */
  private static final double ON_THE_LINE_METERS = 0.5;

  private final double[] ways;
  private final double[] heights;

  Ground(Itinerary itinerary) {
    TreeMap<Double, Double> given = new TreeMap<>();
    for (Itinerary.Visit visit : itinerary.visits()) {
      Entered<Elevation> typed = visit.stop().elevation();
      if (typed != null) {
        given.put(visit.meters(), typed.value().meters());
      }
      if (visit.index() < itinerary.drives().size()) {
        for (ProfilePoint point : itinerary.drives().get(visit.index()).leg().profile()) {
          given.put(
              visit.meters() + point.distance().value().meters(),
              point.elevation().value().meters());
        }
      }
    }
    ways = given.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    heights = given.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Height at a way from the start of the route; NaN where none is given at all. */
  double at(double meters) {
    int found = Arrays.binarySearch(ways, meters);
    if (found >= 0) {
      return heights[found];
    }
    int after = -found - 1;
    int before = after - 1;
    if (before < 0 || after >= ways.length) {
      return before >= 0 ? heights[before] : after < ways.length ? heights[after] : Double.NaN;
    }
    double part = (meters - ways[before]) / (ways[after] - ways[before]);
    return heights[before] + part * (heights[after] - heights[before]);
  }

  /** Height of a stop: its own, else between its neighbours. */
  double of(Itinerary.Visit visit) {
    Entered<Elevation> typed = visit.stop().elevation();
    return typed == null ? at(visit.meters()) : typed.value().meters();
  }

  /** Whether the ground bends at a place passed. */
  boolean bendsAt(Itinerary.Visit visit) {
    Entered<Elevation> typed = visit.stop().elevation();
    int found = Arrays.binarySearch(ways, visit.meters());
    int before = found >= 0 ? found - 1 : -found - 2;
    int after = found >= 0 ? found + 1 : -found - 1;
    if (typed == null || before < 0 || after >= ways.length) {
      return false;
    }
    double part = (visit.meters() - ways[before]) / (ways[after] - ways[before]);
    double line = heights[before] + part * (heights[after] - heights[before]);
    return Math.abs(typed.value().meters() - line) > ON_THE_LINE_METERS;
  }
}
