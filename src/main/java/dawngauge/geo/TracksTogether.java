package dawngauge.geo;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the lines of one file are together: tracks that go on from each other are one way, and
 * waypoints that stand beside a track are named points of it.
 */
public final class TracksTogether {

  /** A waypoint not farther off than this belongs to the track, in meter; ours. */
  private static final double BESIDE_METERS = 1000;

  /** One this near to an end of a track is that end, in meter; ours. */
  private static final double AT_END_METERS = 200;

  /** Two waypoints nearer than this along the track are one stop, in meter; ours. */
  private static final double SAME_STOP_METERS = 100;

  /** Waypoints left out that are told one by one; ours. */
  private static final int MOST_TOLD = 20;

  private TracksTogether() {}

  /**
   * The lines to choose from: where each track begins near to the end of the one before all tracks
   * as one come first; then the given ones, without a single waypoint.
   */
  public static List<TrackLine> of(List<TrackLine> lines) {
    List<TrackLine> tracks =
        lines.stream().filter(line -> line.kind() == TrackLine.Kind.TRACK).toList();
    List<TrackLine> all = new ArrayList<>();
    if (tracks.size() > 1 && goOn(tracks)) {
      all.add(joined(tracks));
    }
    all.addAll(lines.stream().filter(line -> line.points().size() > 1).toList());
    List<TrackPoint> waypoints =
        lines.stream()
            .filter(line -> line.kind() == TrackLine.Kind.WAYPOINTS)
            .flatMap(line -> line.points().stream())
            .toList();
    return waypoints.isEmpty()
        ? all
        : all.stream().map(line -> line.isWay() ? with(line, waypoints) : line).toList();
  }

  private static boolean goOn(List<TrackLine> tracks) {
    for (int i = 1; i < tracks.size(); i++) {
      List<TrackPoint> before = tracks.get(i - 1).points();
      Coordinate end = before.get(before.size() - 1).at();
      Coordinate begin = tracks.get(i).points().get(0).at();
      if (GreatCircle.between(end, begin).meters() > TrackLine.GOES_ON_METERS) {
        return false;
      }
    }
    return true;
  }

  private static TrackLine joined(List<TrackLine> tracks) {
    List<TrackPoint> points = new ArrayList<>();
    List<Integer> halts = new ArrayList<>();
    List<Problem> told = new ArrayList<>();
    for (TrackLine track : tracks) {
      if (!points.isEmpty()) {
        halts.add(points.size() - 1);
      }
      points.addAll(track.points());
      told.addAll(track.told());
    }
    return new TrackLine(TrackLine.Kind.ALL_TRACKS, "", points, halts, told);
  }

  /** A waypoint where the track is nearest to it. */
  private record Foot(LineSearch.Near near, String name) {}

  private static TrackLine with(TrackLine track, List<TrackPoint> waypoints) {
    List<TrackPoint> points = new ArrayList<>(track.points());
    LineSearch search = new LineSearch(points.stream().map(TrackPoint::at).toList());
    double[] meters = track.meters();
    NavigableMap<Double, String> stops = named(track, meters);
    List<Foot> feet = new ArrayList<>();
    List<Problem> told = new ArrayList<>(track.told());
    List<Problem> left = new ArrayList<>();
    for (int i = 0; i < waypoints.size(); i++) {
      TrackPoint waypoint = waypoints.get(i);
      String name = waypoint.name().isEmpty() ? "waypoint " + (i + 1) : waypoint.name();
      LineSearch.Near near = search.nearest(waypoint.at());
      if (near.off() > BESIDE_METERS) {
        left.add(Problem.of(ProblemCode.GPX_WAYPOINT_OFF, "", name, TrackLine.inBoth(near.off())));
      } else {
        List<Integer> ends = nameEnds(track, points, waypoint.at(), name);
        ends.forEach(end -> stops.put(meters[end], name));
        String taken = ends.isEmpty() ? taken(stops, near.along()) : name;
        if (taken.isEmpty()) {
          feet.add(new Foot(near, name));
          stops.put(near.along(), name);
        } else if (!taken.equals(name)) {
          left.add(Problem.of(ProblemCode.GPX_WAYPOINT_TWICE, "", name, taken));
        }
      }
    }
    told.addAll(left.subList(0, Math.min(MOST_TOLD, left.size())));
    if (left.size() > MOST_TOLD) {
      String more = String.valueOf(left.size() - MOST_TOLD);
      told.add(Problem.of(ProblemCode.GPX_MORE_LEFT_OUT, "", more));
    }
    return inserted(new TrackLine(track.kind(), track.name(), points, track.halts(), told), feet);
  }

  /** Names on a track by the way to them in meter. */
  private static NavigableMap<Double, String> named(TrackLine track, double[] meters) {
    NavigableMap<Double, String> names = new TreeMap<>();
    for (int i = 0; i < meters.length; i++) {
      if (!track.points().get(i).name().isEmpty()) {
        names.put(meters[i], track.points().get(i).name());
      }
    }
    return names;
  }

  /** What stands at a place of the track already; empty where nothing does. */
  private static String taken(NavigableMap<Double, String> stops, double along) {
    Map.Entry<Double, String> before = stops.floorEntry(along);
    Map.Entry<Double, String> after = stops.ceilingEntry(along);
    if (before != null && along - before.getKey() < SAME_STOP_METERS) {
      return before.getValue();
    }
    return after != null && after.getKey() - along < SAME_STOP_METERS ? after.getValue() : "";
  }

  /** Gives its name to start, end and halts where it stands; which of them that are. */
  private static List<Integer> nameEnds(
      TrackLine track, List<TrackPoint> points, Coordinate at, String name) {
    List<Integer> ends = new ArrayList<>(track.halts());
    ends.add(0);
    ends.add(points.size() - 1);
    List<Integer> named = new ArrayList<>();
    for (int end : ends) {
      TrackPoint point = points.get(end);
      if (GreatCircle.between(point.at(), at).meters() <= AT_END_METERS
          && (point.name().isEmpty() || point.name().equals(name))) {
        points.set(end, new TrackPoint(point.at(), point.elevation(), name));
        named.add(end);
      }
    }
    return named;
  }

  private static TrackLine inserted(TrackLine track, List<Foot> feet) {
    List<Foot> ordered = new ArrayList<>(feet);
    ordered.sort(Comparator.comparingDouble(foot -> foot.near().along()));
    List<TrackPoint> points = new ArrayList<>();
    List<Integer> halts = new ArrayList<>();
    Set<Integer> old = Set.copyOf(track.halts());
    int next = 0;
    for (int i = 0; i < track.points().size(); i++) {
      points.add(track.points().get(i));
      if (old.contains(i)) {
        halts.add(points.size() - 1);
      }
      while (next < ordered.size() && ordered.get(next).near().segment() == i) {
        Foot foot = ordered.get(next++);
        points.add(
            new TrackPoint(foot.near().at(), height(track, i, foot.near().part()), foot.name()));
      }
    }
    return new TrackLine(track.kind(), track.name(), points, halts, track.told());
  }

  /** Straight between the heights beside it; null where one is not known. */
  private static @Nullable Elevation height(TrackLine track, int before, double part) {
    Elevation a = track.points().get(before).elevation();
    Elevation b = track.points().get(before + 1).elevation();
    return a == null || b == null
        ? null
        : new Elevation(a.meters() + part * (b.meters() - a.meters()));
  }
}
