package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.geo.LineSearch;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.quantity.Elevation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The shape of a leg: as few points of its track as keep near to it, its lowest and its highest.
 */
final class TrackMarks {

  /** The track runs this near to the line through the points kept, in meter; ours. */
  private static final double NEAR = 500;

  /** Points nearer to the last one than this are passed over first, in meter; ours. */
  private static final double STEP = 200;

  /** Most points kept for the shape of one leg; ours. */
  private static final int MOST_POINTS = 100;

  /** Of a degree: about a meter. */
  private static final double DECIMALS = 1e5;

  private TrackMarks() {}

  /**
   * The points between two of a line, both included.
   *
   * @param meters way along the line to each of its points
   */
  static List<TrackMark> of(TrackLine line, double[] meters, int from, int to) {
    List<Integer> looked = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      boolean on = looked.isEmpty() || meters[i] - meters[looked.get(looked.size() - 1)] >= STEP;
      if (on || i == to) {
        looked.add(i);
      }
    }
    SortedSet<Integer> kept = new TreeSet<>(List.of(from, to));
    Thinning.kept(
            looked.size(),
            (first, last) -> offStraight(line, looked, first, last),
            NEAR,
            MOST_POINTS)
        .forEach(place -> kept.add(looked.get(place)));
    addLowestAndHighest(line, from, to, kept);
    return kept.stream().map(i -> mark(line.points().get(i))).toList();
  }

  private static IntToDoubleFunction offStraight(
      TrackLine line, List<Integer> looked, int first, int last) {
    LineSearch straight = new LineSearch(List.of(at(line, looked, first), at(line, looked, last)));
    return i -> straight.nearest(at(line, looked, i)).off();
  }

  private static Coordinate at(TrackLine line, List<Integer> looked, int place) {
    return line.points().get(looked.get(place)).at();
  }

  private static void addLowestAndHighest(TrackLine line, int from, int to, Set<Integer> kept) {
    int lowest = -1;
    int highest = -1;
    for (int i = from; i <= to; i++) {
      Elevation height = line.points().get(i).elevation();
      if (height != null) {
        lowest = lowest < 0 || height.compareTo(height(line, lowest)) < 0 ? i : lowest;
        highest = highest < 0 || height.compareTo(height(line, highest)) > 0 ? i : highest;
      }
    }
    if (lowest >= 0) {
      kept.add(lowest);
      kept.add(highest);
    }
  }

  private static Elevation height(TrackLine line, int index) {
    return Objects.requireNonNull(line.points().get(index).elevation());
  }

  private static TrackMark mark(TrackPoint point) {
    @Nullable Elevation height = point.elevation();
    return new TrackMark(
        new Coordinate(rounded(point.at().latitude()), rounded(point.at().longitude())),
        height == null ? null : RouteOfTrack.typed(height));
  }

  private static double rounded(double degrees) {
    return Math.round(degrees * DECIMALS) / DECIMALS;
  }
}
