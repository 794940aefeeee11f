package dawngauge.physics;

/**
 * Air that leaves a tire: dF/dt = −k·(F·T − a)/T68, in proportion to the gauge pressure, so that it
 * ends when the tire is as empty as the air around. At 68 °F k is the part of the gauge pressure
 * lost per second.
 *
 * <p>Published: 0.5 to 1.0 psi a month at 70 °F, about 1.5 at 90 °F (Tire Science and Technology
 * 13(1), 1985). Inferred: that it scales with gauge pressure over 35 psi. The factor 1.9 per 10 K
 * is computed from the two published rates.
 */
public final class AirLoss {

  private static final double DAY = 86_400;
  private static final double MONTH = 30.4375 * DAY; // mean month of the Julian year, 365.25 d / 12
  private static final double SEVENTY_FAHRENHEIT = (70 + 459.67) * 5 / 9;

  /** Permeation at 70 °F as part of the gauge pressure: middle of the published range. */
  private static final double PERMEATION_PER_MONTH = 0.75 / 35;

  private static final double LN_PER_KELVIN = Math.log(1.9) / 10;

  /** Permeation at 70 °F in 1/s. */
  private static final double AT_SEVENTY =
      PERMEATION_PER_MONTH / MONTH * (GasLaw.REFERENCE_KELVINS / SEVENTY_FAHRENHEIT);

  private static final double PER_REFERENCE_KELVIN = 1 / GasLaw.REFERENCE_KELVINS;
  private static final double SIXTH = 1.0 / 6;

  /** The first term of e^x left out of its series is x⁴/24: below 1e-13 up to here. */
  private static final double SERIES_REACH = 1e-3;

  private AirLoss() {}

  /**
   * Fill at the end of a piece of constant temperature: F = a/T + (F0 − a/T)·e^(−k·t·T/T68).
   *
   * @param fill F0 in pascal per kelvin, at the start
   * @param kelvins T, temperature of the air in the tire; its mean over the piece
   * @param airPascals a, pressure of the air around, pascal above vacuum
   * @param kPerSecond k, zero or more
   * @param seconds t, length of the piece, zero or more
   * @return F in pascal per kelvin
   * @throws IllegalArgumentException if an argument is outside the range given
   */
  public static double fillAfter(
      double fill, double kelvins, double airPascals, double kPerSecond, double seconds) {
    Require.positive(fill, "fill");
    Require.positive(airPascals, "airPascals");
    Require.positive(kelvins, "kelvins");
    double part =
        Require.notNegative(kPerSecond, "kPerSecond")
            * Require.notNegative(seconds, "seconds")
            * PER_REFERENCE_KELVIN;
    double x = -part * kelvins;
    if (x > -SERIES_REACH) {
      // By the series of (e^x − 1)/x, which leaves nothing to divide by.
      double series = 1 + x * (0.5 + x * SIXTH);
      return fill * (1 + x * series) + airPascals * part * series;
    }
    double empty = airPascals / kelvins;
    return empty + (fill - empty) * Math.exp(x);
  }

  /**
   * k of a sound tire, by permeation through the rubber: a tire at 35 psi and 70 °F loses 0.75 psi
   * a month; 1.9 times as much for each 10 K.
   *
   * @param kelvins temperature of the tire
   * @return k in 1/s
   * @throws IllegalArgumentException if the temperature is not above zero
   */
  public static double permeationRate(double kelvins) {
    double over = Require.positive(kelvins, "kelvins") - SEVENTY_FAHRENHEIT;
    return AT_SEVENTY * Math.exp(LN_PER_KELVIN * over);
  }

  /**
   * k of a leak given as people say it: "2 psi a day". The rate is that at this moment: after a
   * whole day slightly less has been lost, because the pressure that drives it falls.
   *
   * @param lossPascalsPerDayAt68 gauge pressure lost per day at 68 °F, pascal, zero or more
   * @param gaugePascalsAt68 gauge pressure at which it is lost so fast, at 68 °F, pascal, above
   *     zero
   * @return k in 1/s
   * @throws IllegalArgumentException if an argument is outside the range given
   */
  public static double rateFor(double lossPascalsPerDayAt68, double gaugePascalsAt68) {
    return Require.notNegative(lossPascalsPerDayAt68, "lossPascalsPerDayAt68")
        / Require.positive(gaugePascalsAt68, "gaugePascalsAt68")
        / DAY;
  }
}
