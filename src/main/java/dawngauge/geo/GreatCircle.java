package dawngauge.geo;

import dawngauge.quantity.Distance;

/**
 * Shortest way over a spherical earth, by the haversine formula (Sinnott 1984, "Virtues of the
 * haversine", Sky and Telescope 68: 159). Off the ellipsoid by at most about 0.6 %.
 */
public final class GreatCircle {

  /** Mean radius of the earth R1 in meter (Moritz 1980, Geodetic Reference System 1980). */
  private static final double MEAN_EARTH_RADIUS = 6_371_008.8;

  private GreatCircle() {}

  /** Distance along the ground at sea level; zero if the places are the same. */
  public static Distance between(Coordinate a, Coordinate b) {
    double phiA = Math.toRadians(a.latitude());
    double phiB = Math.toRadians(b.latitude());
    double haversine =
        square(Math.sin((phiB - phiA) / 2))
            + Math.cos(phiA)
                * Math.cos(phiB)
                * square(Math.sin(Math.toRadians(b.longitude() - a.longitude()) / 2));
    return new Distance(2 * MEAN_EARTH_RADIUS * Math.asin(Math.min(1, Math.sqrt(haversine))));
  }

  /**
   * A point on the shortest way.
   *
   * @param part 0 at the first place, 1 at the other
   */
  public static Coordinate along(Coordinate a, Coordinate b, double part) {
    double angle = between(a, b).meters() / MEAN_EARTH_RADIUS;
    if (angle < 1e-9) {
      return a;
    }
    double first = Math.sin((1 - part) * angle) / Math.sin(angle);
    double second = Math.sin(part * angle) / Math.sin(angle);
    double phiA = Math.toRadians(a.latitude());
    double phiB = Math.toRadians(b.latitude());
    double lambdaA = Math.toRadians(a.longitude());
    double lambdaB = Math.toRadians(b.longitude());
    double x =
        first * Math.cos(phiA) * Math.cos(lambdaA) + second * Math.cos(phiB) * Math.cos(lambdaB);
    double y =
        first * Math.cos(phiA) * Math.sin(lambdaA) + second * Math.cos(phiB) * Math.sin(lambdaB);
    double z = first * Math.sin(phiA) + second * Math.sin(phiB);
    return new Coordinate(
        Math.toDegrees(Math.atan2(z, Math.hypot(x, y))), Math.toDegrees(Math.atan2(y, x)));
  }

  private static double square(double x) {
    return x * x;
  }
}
