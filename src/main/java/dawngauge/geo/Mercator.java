package dawngauge.geo;

/**
 * The map of the whole earth as one square, by the spherical Mercator projection as web maps use it
 * (EPSG:3857, "WGS 84 / Pseudo-Mercator"): 0, 0 is the corner at 180° W and 85.05° N, 1, 1 the one
 * at 180° E and 85.05° S.
 *
 * @param x part of the width, eastward; beyond 0 to 1 once around the earth
 * @param y part of the height, southward
 */
public record Mercator(double x, double y) {

  /** Latitude at which the map is as high as wide: arctan(sinh π), in degrees. */
  public static final double EDGE = Math.toDegrees(Math.atan(Math.sinh(Math.PI)));

  /** Where a place lies; one beyond the edge lies on it. */
  public static Mercator of(Coordinate at) {
    return new Mercator(x(at.longitude()), y(at.latitude()));
  }

  /** Part of the width at a longitude in degrees. */
  static double x(double longitude) {
    return (longitude + 180) / 360;
  }

  /** Part of the height at a latitude in degrees. */
  static double y(double latitude) {
    double phi = Math.toRadians(Math.max(-EDGE, Math.min(EDGE, latitude)));
    double north = Math.log(Math.tan(phi) + 1 / Math.cos(phi));
    return Math.max(0, Math.min(1, (1 - north / Math.PI) / 2));
  }

  /** The place at a point of the map; above and below the map that at its edge. */
  public Coordinate coordinate() {
    double around = x - Math.floor(x);
    double north = Math.PI * (1 - 2 * Math.max(0, Math.min(1, y)));
    return new Coordinate(Math.toDegrees(Math.atan(Math.sinh(north))), around * 360 - 180);
  }
}
