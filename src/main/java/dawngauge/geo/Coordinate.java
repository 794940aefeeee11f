package dawngauge.geo;

/**
 * A place on the earth, WGS 84.
 *
 * @param latitude degrees north of the equator, −90 to 90
 * @param longitude degrees east of Greenwich, −180 to 180
 */
public record Coordinate(double latitude, double longitude) {

  /** Refuses what is not on the earth. */
  public Coordinate {
    if (!(latitude >= -90 && latitude <= 90)) {
      throw new IllegalArgumentException("latitude " + latitude + " is outside -90 to 90");
    }
    if (!(longitude >= -180 && longitude <= 180)) {
      throw new IllegalArgumentException("longitude " + longitude + " is outside -180 to 180");
    }
  }
}
