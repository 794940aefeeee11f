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

  private static double square(double x) {
    return x * x;
  }
}
