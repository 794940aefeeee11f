package dawngauge.geo;

import dawngauge.quantity.Elevation;
import java.util.List;
import java.util.Optional;

/**
 * The ground under the straight line between two places, by estimate. A road goes round what the
 * line goes over, so this is no profile: it tells what to ask for.
 *
 * @param lowest the lowest point
 * @param highest the highest
 * @param passes passes by which the line runs, in the order of the way
 */
public record LegGround(Point lowest, Point highest, List<PassNear> passes) {

  /** Between two looks at the ground, in meter: a fifth of a cell of the coarse land; ours. */
  private static final double STEP_METERS = 2000;

  /**
   * A point of the line.
   *
   * @param part where on the line, 0 at its start, 1 at its end
   * @param elevation of the ground, an estimate
   */
  public record Point(double part, Elevation elevation) {}

  /** Copies the list. */
  public LegGround {
    passes = List.copyOf(passes);
  }

  /** The ground between two places; empty where nothing is known of an end. */
  public static Optional<LegGround> between(Coordinate from, Coordinate to) {
    Gazetteer gazetteer = Gazetteer.load();
    if (gazetteer.nearest(from).isEmpty() || gazetteer.nearest(to).isEmpty()) {
      return Optional.empty();
    }
    double meters = GreatCircle.between(from, to).meters();
    int steps = (int) Math.ceil(Math.max(1, meters / STEP_METERS));
    Point lowest = new Point(0, gazetteer.elevationAt(from));
    Point highest = lowest;
    for (int i = 1; i <= steps; i++) {
      double part = (double) i / steps;
      Point point = new Point(part, gazetteer.elevationAt(GreatCircle.along(from, to, part)));
      lowest = point.elevation.compareTo(lowest.elevation) < 0 ? point : lowest;
      highest = point.elevation.compareTo(highest.elevation) > 0 ? point : highest;
    }
    return Optional.of(new LegGround(lowest, highest, gazetteer.passesBy(from, to)));
  }
}
