package dawngauge.physics;

/**
 * The gas law for the air in a tire, its volume taken as constant: absolute pressure over absolute
 * temperature, the <em>fill</em> F = (p + a)/T in Pa/K, is the same as long as no air comes or
 * goes.
 *
 * <p>Source: law of Gay-Lussac; OpenStax University Physics volume 2, "Molecular model of an ideal
 * gas".
 */
public final class GasLaw {

  /** Temperature at which a fill is shown to people: 68 °F = 20 °C, in kelvin. */
  public static final double REFERENCE_KELVINS = 293.15;

  private GasLaw() {}

  /**
   * The fill of a tire that was read.
   *
   * @param gaugePascals pressure above the air around, pascal; not below vacuum
   * @param airPascals pressure of the air around, pascal above vacuum
   * @param kelvins temperature of the air in the tire
   * @return F in pascal per kelvin
   * @throws IllegalArgumentException if a temperature or an absolute pressure is not above zero
   */
  public static double fill(double gaugePascals, double airPascals, double kelvins) {
    Require.positive(airPascals, "airPascals");
    double absolute = Require.positive(gaugePascals + airPascals, "absolute pressure");
    return absolute / Require.positive(kelvins, "kelvins");
  }

  /**
   * What a gauge open to the air shows.
   *
   * @param fill F in pascal per kelvin
   * @param kelvins temperature of the air in the tire
   * @param airPascals pressure of the air around, pascal above vacuum
   * @return pascal above the air around; negative if the tire holds less than that
   * @throws IllegalArgumentException if an argument is not above zero
   */
  public static double gauge(double fill, double kelvins, double airPascals) {
    return Require.positive(fill, "fill") * Require.positive(kelvins, "kelvins")
        - Require.positive(airPascals, "airPascals");
  }

  /**
   * The fill as people are shown it: the gauge pressure it has at 68 °F at sea level.
   *
   * @param fill F in pascal per kelvin
   * @return pascal above the standard air at sea level
   */
  public static double atReference(double fill) {
    return gauge(fill, REFERENCE_KELVINS, StandardAtmosphere.SEA_LEVEL_PRESSURE);
  }
}
