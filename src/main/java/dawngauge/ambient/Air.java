package dawngauge.ambient;

/**
 * Expected air at a place and time.
 *
 * @param kelvins expected temperature; NaN where it is not known
 * @param sigma one standard deviation in kelvin
 * @param coldSide how much further the cold side reaches, in kelvin
 * @param bridged whether a stop without a temperature lies between the places it was taken from
 */
public record Air(double kelvins, double sigma, double coldSide, boolean bridged) {

  /** Not known. */
  public static final Air UNKNOWN = new Air(Double.NaN, Double.NaN, 0, true);

  /**
   * On the straight line to another expectation of the same moment.
   *
   * @param part 0 here, 1 at the other
   */
  public Air towards(Air other, double part) {
    return new Air(
        kelvins + part * (other.kelvins - kelvins),
        sigma + part * (other.sigma - sigma),
        Math.max(coldSide, other.coldSide),
        bridged || other.bridged);
  }

  /** Whether a temperature is known. */
  public boolean known() {
    return !Double.isNaN(kelvins);
  }
}
