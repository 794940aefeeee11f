package dawngauge.simulated;

/**
 * Air temperature over a day from its low, its high and the next low, by the TM model: sine to the
 * high four hours before sunset, a quarter sine to sunset, then falling with the root of time
 * (Cesaraccio, Spano, Duce and Snyder, International Journal of Biometeorology 45, 2001). Sunrise
 * and sunset by Cooper's declination (Solar Energy 12, 1969), solar time taken for the clock's.
 */
final class DayCurve {

  /** Part of the fall from the high to the next low that is done by sunset; Cesaraccio 2001. */
  private static final double BY_SUNSET = 0.39;

  /** Hours from the high to sunset; Cesaraccio 2001. */
  private static final double HIGH_BEFORE_SUNSET = 4;

  private final double rise;
  private final double set;

  /** At a latitude in degrees on a day of the year. */
  DayCurve(double latitude, int dayOfYear) {
    double declination = Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + dayOfYear) / 365);
    double angle = Math.acos(-Math.tan(Math.toRadians(latitude)) * Math.tan(declination));
    double half = Math.toDegrees(angle) / 15;
    rise = 12 - half;
    set = 12 + half;
  }

  /** Hour of sunrise, when the low is. */
  double rise() {
    return rise;
  }

  /** Hour of sunset. */
  double set() {
    return set;
  }

  /**
   * Temperature.
   *
   * @param hour hours from the midnight of the day with the low, from sunrise to 24 h after it
   */
  double at(double hour, double low, double high, double nextLow) {
    double top = set - HIGH_BEFORE_SUNSET;
    double sunset = high - BY_SUNSET * (high - nextLow);
    if (hour <= top) {
      return low + (high - low) * Math.sin(Math.PI / 2 * (hour - rise) / (top - rise));
    } else if (hour < set) {
      return sunset + (high - sunset) * Math.cos(Math.PI / 2 * (hour - top) / HIGH_BEFORE_SUNSET);
    }
    return sunset + (nextLow - sunset) * Math.sqrt((hour - set) / (rise + 24 - set));
  }
}
