package dawngauge.geo;

import java.util.List;

/**
 * Finds where a line of points on the earth runs nearest to a place. Between two points it is
 * straight through the ball, drawn up to the ground: of neighbours 500 km apart the place found is
 * off by less than 200 m.
 */
public final class LineSearch {

  /** So many segments are looked at together first. */
  private static final int GROUP = 64;

  private final List<Coordinate> points;
  private final double[] meters;

  /** How far the points of a group lie from its middle point at most, through the ball. */
  private final double[] reach;

  private final double[] x;
  private final double[] y;
  private final double[] z;

  /** Of two points or more. */
  public LineSearch(List<Coordinate> points) {
    if (points.size() < 2) {
      throw new IllegalArgumentException("a line has two points or more, not " + points.size());
    }
    this.points = List.copyOf(points);
    meters = meters(points);
    x = new double[points.size()];
    y = new double[points.size()];
    z = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      double[] at = onBall(points.get(i));
      x[i] = at[0];
      y[i] = at[1];
      z[i] = at[2];
    }
    reach = new double[(x.length - 2) / GROUP + 1];
    for (int group = 0; group < reach.length; group++) {
      double[] middle = point(middle(group));
      for (int i = group * GROUP; i <= last(group); i++) {
        reach[group] = Math.max(reach[group], Math.sqrt(square(middle, x[i], y[i], z[i])));
      }
    }
  }

  private int middle(int group) {
    return (group * GROUP + last(group)) / 2;
  }

  /** The last point of a group's last segment. */
  private int last(int group) {
    return Math.min((group + 1) * GROUP, x.length - 1);
  }

  private double[] point(int i) {
    return new double[] {x[i], y[i], z[i]};
  }

  /**
   * Where the line is nearest.
   *
   * @param segment index of the point before
   * @param part of the way to the next point, 0 to 1
   * @param at the place on the line
   * @param along way from the start of the line, in meter
   * @param off how far it is from the place asked for, in meter
   */
  public record Near(int segment, double part, Coordinate at, double along, double off) {}

  /** Way along points from the first to each of them, in meter, by great circles. */
  static double[] meters(List<Coordinate> points) {
    double[] meters = new double[points.size()];
    for (int i = 1; i < meters.length; i++) {
      meters[i] = meters[i - 1] + GreatCircle.between(points.get(i - 1), points.get(i)).meters();
    }
    return meters;
  }

  /** Length of the line in meter. */
  public double length() {
    return meters[meters.length - 1];
  }

  /** The nearest place of the line; of several the first. */
  public Near nearest(Coordinate place) {
    double[] here = onBall(place);
    double[] least = new double[reach.length];
    int nearest = 0;
    for (int group = 0; group < reach.length; group++) {
      // The points between two points of a cap of the ball are of that cap.
      int middle = middle(group);
      double away = Math.sqrt(square(here, x[middle], y[middle], z[middle]));
      least[group] = reach[group] < 1 ? Math.max(0, away - reach[group]) : 0;
      nearest = least[group] < least[nearest] ? group : nearest;
    }
    int best = nearest(here, nearest);
    double bestSquare = squareTo(here, best, part(here, best));
    for (int group = 0; group < reach.length; group++) {
      if (least[group] * least[group] <= bestSquare) {
        int found = nearest(here, group);
        double square = squareTo(here, found, part(here, found));
        if (square < bestSquare || (square == bestSquare && found < best)) {
          bestSquare = square;
          best = found;
        }
      }
    }
    double part = part(here, best);
    Coordinate at =
        part == 0
            ? points.get(best)
            : part == 1
                ? points.get(best + 1)
                : GreatCircle.along(points.get(best), points.get(best + 1), part);
    return new Near(
        best,
        part,
        at,
        meters[best] + part * (meters[best + 1] - meters[best]),
        GreatCircle.between(place, at).meters());
  }

  /** The first nearest segment of a group. */
  private int nearest(double[] here, int group) {
    int best = group * GROUP;
    double bestSquare = Double.POSITIVE_INFINITY;
    for (int i = best; i < last(group); i++) {
      double square = squareTo(here, i, part(here, i));
      if (square < bestSquare) {
        bestSquare = square;
        best = i;
      }
    }
    return best;
  }

  /** A place of the line. */
  public Coordinate at(double along) {
    int segment = 0;
    while (segment + 2 < meters.length && meters[segment + 1] < along) {
      segment++;
    }
    double length = meters[segment + 1] - meters[segment];
    double part = length > 0 ? (along - meters[segment]) / length : 0;
    return GreatCircle.along(
        points.get(segment), points.get(segment + 1), Math.max(0, Math.min(1, part)));
  }

  private double part(double[] here, int i) {
    double dx = x[i + 1] - x[i];
    double dy = y[i + 1] - y[i];
    double dz = z[i + 1] - z[i];
    double length = dx * dx + dy * dy + dz * dz;
    if (length == 0) {
      return 0;
    }
    double dot = (here[0] - x[i]) * dx + (here[1] - y[i]) * dy + (here[2] - z[i]) * dz;
    return Math.max(0, Math.min(1, dot / length));
  }

  /** Square of the distance through the ball of radius 1 to a place of a segment. */
  private double squareTo(double[] here, int i, double part) {
    double px = x[i] + part * (x[i + 1] - x[i]);
    double py = y[i] + part * (y[i + 1] - y[i]);
    double pz = z[i] + part * (z[i + 1] - z[i]);
    double up = 1 / Math.sqrt(px * px + py * py + pz * pz);
    return square(here, px * up, py * up, pz * up);
  }

  private static double square(double[] here, double px, double py, double pz) {
    double ax = here[0] - px;
    double ay = here[1] - py;
    double az = here[2] - pz;
    return ax * ax + ay * ay + az * az;
  }

  private static double[] onBall(Coordinate at) {
    double latitude = Math.toRadians(at.latitude());
    double longitude = Math.toRadians(at.longitude());
    return new double[] {
      Math.cos(latitude) * Math.cos(longitude),
      Math.cos(latitude) * Math.sin(longitude),
      Math.sin(latitude)
    };
  }
}
