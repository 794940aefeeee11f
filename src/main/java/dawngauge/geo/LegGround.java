package dawngauge.geo;

import dawngauge.quantity.Elevation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The ground of a leg: under its track where that is known; else under the straight line between
 * its ends, by estimate. A road goes round what the line goes over, so that is no profile: it tells
 * what to ask for.
 *
 * @param under what was looked under
 * @param estimated whether the heights are estimates; else they are those of the track
 * @param lowest the lowest point
 * @param highest the highest
 * @param passes passes by which it runs, in the order of the way
 */
public record LegGround(
    Under under, boolean estimated, Point lowest, Point highest, List<PassNear> passes) {

  /** Between two looks at the ground, in meter: a fifth of a cell of the coarse land; ours. */
  private static final double STEP_METERS = 2000;

  /** What a leg is held against. */
  public enum Under {
    /** The straight line between its ends. */
    LINE("line"),
    /** The track that it was taken from. */
    TRACK("track");

    private final String word;

    Under(String word) {
      this.word = word;
    }

    /** In a word. */
    String word() {
      return word;
    }
  }

  /**
   * A point of the way.
   *
   * @param part where on the way, 0 at its start, 1 at its end
   * @param elevation of the ground
   */
  public record Point(double part, Elevation elevation) {}

  /** Copies the list. */
  public LegGround {
    passes = List.copyOf(passes);
  }

  /** The ground between two places; empty where nothing is known of an end. */
  public static Optional<LegGround> between(Coordinate from, Coordinate to) {
    LineSearch line = new LineSearch(List.of(from, to));
    return isKnown(from, to)
        ? Optional.of(estimated(Under.LINE, line, Gazetteer.load().passesBy(from, to)))
        : Optional.empty();
  }

  /**
   * The ground along a track of two points or more: by its heights, or by estimates where none of
   * its points has one; empty where nothing is known of an end.
   */
  public static Optional<LegGround> along(List<TrackPoint> track) {
    LineSearch line = new LineSearch(track.stream().map(TrackPoint::at).toList());
    if (!isKnown(track.get(0).at(), track.get(track.size() - 1).at())) {
      return Optional.empty();
    }
    List<PassNear> passes = Gazetteer.load().passesBy(line);
    List<Point> heights = new ArrayList<>();
    double[] meters = LineSearch.meters(track.stream().map(TrackPoint::at).toList());
    for (int i = 0; i < meters.length; i++) {
      Elevation height = track.get(i).elevation();
      if (height != null) {
        heights.add(new Point(meters[i] / Math.max(1, line.length()), height));
      }
    }
    return Optional.of(
        heights.isEmpty()
            ? estimated(Under.TRACK, line, passes)
            : of(Under.TRACK, false, heights, passes));
  }

  private static boolean isKnown(Coordinate from, Coordinate to) {
    Gazetteer gazetteer = Gazetteer.load();
    return gazetteer.nearest(from).isPresent() && gazetteer.nearest(to).isPresent();
  }

  private static LegGround estimated(Under under, LineSearch line, List<PassNear> passes) {
    int steps = (int) Math.ceil(Math.max(1, line.length() / STEP_METERS));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double part = (double) i / steps;
      Coordinate at = line.at(part * line.length());
      points.add(new Point(part, Gazetteer.load().elevationAt(at)));
    }
    return of(under, true, points, passes);
  }

  private static LegGround of(
      Under under, boolean estimated, List<Point> points, List<PassNear> passes) {
    Comparator<Point> byHeight = Comparator.comparing(Point::elevation);
    return new LegGround(
        under,
        estimated,
        Collections.min(points, byHeight),
        Collections.max(points, byHeight),
        passes);
  }
}
