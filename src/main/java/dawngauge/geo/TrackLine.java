package dawngauge.geo;

import java.util.ArrayList;
import java.util.List;

/**
 * A line on the earth from somebody else's file.
 *
 * @param kind what sort of line it was
 * @param name what it is called; empty where it has no name
 * @param points in order
 */
public record TrackLine(Kind kind, String name, List<TrackPoint> points) {

  /** Distance between offered points without a name on a track; about two hours' drive. */
  private static final double OFFERED_METERS = 160_000;

  /** What sort of line. */
  public enum Kind {
    /** The way itself, point by point. */
    TRACK("track"),
    /** Turning points and stops only. */
    ROUTE("route"),
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
   * @param usual whether it is likely wanted: start, end, or a point with a name
   */
  public record Offer(int index, double meters, boolean usual) {}

  /** Copies the list. */
  public TrackLine {
    points = List.copyOf(points);
  }

  /** Way along the points from the start to each of them, in meter, by great circles. */
  public double[] meters() {
    double[] meters = new double[points.size()];
    for (int i = 1; i < meters.length; i++) {
      meters[i] =
          meters[i - 1] + GreatCircle.between(points.get(i - 1).at(), points.get(i).at()).meters();
    }
    return meters;
  }

  /** Points that could become stops: those of a route all, of a track ends, names and some more. */
  public List<Offer> offers() {
    double[] meters = meters();
    List<Offer> offers = new ArrayList<>();
    double last = 0;
    for (int i = 0; i < points.size(); i++) {
      boolean end = i == 0 || i == points.size() - 1;
      boolean named = !points.get(i).name().isEmpty();
      boolean far =
          meters[i] - last >= OFFERED_METERS
              && meters[meters.length - 1] - meters[i] >= OFFERED_METERS / 2;
      if (end || named || kind != Kind.TRACK || far) {
        offers.add(new Offer(i, meters[i], end || named || kind != Kind.TRACK));
        last = meters[i];
      }
    }
    return offers;
  }
}
