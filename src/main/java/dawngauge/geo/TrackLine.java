package dawngauge.geo;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A line on the earth from somebody else's file.
 *
 * @param kind what sort of line it was
 * @param name what it is called; empty where it has no name
 * @param points in order
 * @param halts indexes of points at which a piece of it ends before the last one, rising
 * @param told what is to be known of this line and not of the others of its file
 */
public record TrackLine(
    Kind kind, String name, List<TrackPoint> points, List<Integer> halts, List<Problem> told) {

  /** Pieces that begin this near to the end of the one before go on from there, in meter; ours. */
  static final double GOES_ON_METERS = 5000;

  /** Distance between offered points without a name on a track; about two hours' drive. */
  private static final double OFFERED_METERS = 160_000;

  /** What sort of line. */
  public enum Kind {
    /** The way itself, point by point. */
    TRACK("track"),
    /** Several tracks, each going on where the one before ended. */
    ALL_TRACKS("all tracks one after another"),
    /** Turning points and stops only. */
    ROUTE("route"),
    /** A route that tells the way between its points too. */
    ROUTE_WAY("route with its way"),
    /** Single points. */
    WAYPOINTS("waypoints");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** In words. */
    public String word() {
      return word;
    }
  }

  /**
   * A point that could become a stop.
   *
   * @param index of the point
   * @param meters way from the start of the line
   * @param usual whether it is likely wanted: start, end, halt, or a point with a name
   */
  public record Offer(int index, double meters, boolean usual) {}

  /** Copies the lists. */
  public TrackLine {
    points = List.copyOf(points);
    halts = List.copyOf(halts);
    told = List.copyOf(told);
  }

  /** A line in one piece. */
  public TrackLine(Kind kind, String name, List<TrackPoint> points) {
    this(kind, name, points, List.of(), List.of());
  }

  /** The same through other points, as many as before. */
  public TrackLine withPoints(List<TrackPoint> other) {
    return new TrackLine(kind, name, other, halts, told);
  }

  /** Whether its points are the way itself. */
  public boolean isWay() {
    return kind == Kind.TRACK || kind == Kind.ALL_TRACKS || kind == Kind.ROUTE_WAY;
  }

  /** In words: "track “Monday”". */
  public String words() {
    return kind.word() + (name.isEmpty() ? "" : " “" + name + "”");
  }

  /**
   * The same, telling what of the way is missing between its segments.
   *
   * @param begins indexes of points at which a segment begins
   */
  public TrackLine withGapsTold(List<Integer> begins) {
    double missing = 0;
    for (int begin : begins) {
      if (begin > 0 && begin < points.size()) {
        double gap =
            GreatCircle.between(points.get(begin - 1).at(), points.get(begin).at()).meters();
        missing += gap > GOES_ON_METERS ? gap : 0;
      }
    }
    List<Problem> more = new ArrayList<>(told);
    if (missing > 0) {
      more.add(Problem.of(ProblemCode.GPX_GAP, "", words(), inBoth(missing)));
    }
    return new TrackLine(kind, name, points, halts, more);
  }

  /** In both units, as the reader may use either: "4 mi (6 km)". */
  static String inBoth(double meters) {
    Distance distance = new Distance(meters);
    return UnitSystem.US.format(distance) + " (" + UnitSystem.SI.format(distance) + ")";
  }

  /** Way along the points from the start to each of them, in meter, by great circles. */
  public double[] meters() {
    return LineSearch.meters(points.stream().map(TrackPoint::at).toList());
  }

  /**
   * Points that could become stops: those of a route all, of a track ends, halts, names and some
   * more.
   */
  public List<Offer> offers() {
    double[] meters = meters();
    List<Offer> offers = new ArrayList<>();
    Set<Integer> ends = Set.copyOf(halts);
    double last = 0;
    for (int i = 0; i < points.size(); i++) {
      boolean end = i == 0 || i == points.size() - 1 || ends.contains(i);
      boolean named = !points.get(i).name().isEmpty();
      boolean far =
          meters[i] - last >= OFFERED_METERS
              && meters[meters.length - 1] - meters[i] >= OFFERED_METERS / 2;
      if (end || named || !isWay() || far) {
        offers.add(new Offer(i, meters[i], end || named || !isWay()));
        last = meters[i];
      }
    }
    return offers;
  }
}
