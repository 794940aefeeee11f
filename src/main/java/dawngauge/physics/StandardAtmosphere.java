package dawngauge.physics;

/**
 * Air pressure and temperature by height in the lowest layer of the standard atmosphere, from 500 m
 * below sea level to 11 km geopotential. Weather moves the real pressure by about ±2 kPa around it.
 *
 * <p>Source: U.S. Standard Atmosphere, 1976 (NOAA, NASA, U.S. Air Force), NOAA-S/T 76-1562; all
 * constants and equations are from there.
 */
public final class StandardAtmosphere {

  /** Air pressure at sea level P0 in pascal. */
  public static final double SEA_LEVEL_PRESSURE = 101_325;

  /** Air temperature at sea level T0 in kelvin. */
  public static final double SEA_LEVEL_TEMPERATURE = 288.15;

  /** How much colder the air is per geopotential meter of height, in kelvin per meter. */
  public static final double LAPSE_RATE = 0.0065;

  /** Acceleration of gravity at sea level g0 in m/s². */
  public static final double GRAVITY = 9.80665;

  /** Mean molar mass of air M in kilogram per kilomole. */
  public static final double MOLAR_MASS = 28.9644;

  /** Gas constant R* in J/(kmol K); the value of 1976, not that of today's SI. */
  public static final double GAS_CONSTANT = 8314.32;

  /** Effective radius of the earth r0 in meter, by which height becomes geopotential height. */
  public static final double EARTH_RADIUS = 6_356_766;

  /** Lowest geometric height above mean sea level that is answered, in meter. */
  public static final double LOWEST_ELEVATION = -500;

  /** Upper end of the lowest layer, in geopotential meter. */
  public static final double TOP_OF_LAYER = 11_000;

  private static final double EXPONENT = GRAVITY * MOLAR_MASS / (GAS_CONSTANT * LAPSE_RATE);

  private StandardAtmosphere() {}

  /**
   * Absolute air pressure (equation 33a).
   *
   * @param elevationMeters geometric height above mean sea level, meter
   * @return pascal above vacuum
   * @throws IllegalArgumentException below {@link #LOWEST_ELEVATION} or above {@link #TOP_OF_LAYER}
   */
  public static double pressureAt(double elevationMeters) {
    return SEA_LEVEL_PRESSURE
        * Math.pow(temperatureAt(elevationMeters) / SEA_LEVEL_TEMPERATURE, EXPONENT);
  }

  /**
   * Air temperature (equation 23).
   *
   * @param elevationMeters geometric height above mean sea level, meter
   * @return kelvin
   * @throws IllegalArgumentException below {@link #LOWEST_ELEVATION} or above {@link #TOP_OF_LAYER}
   */
  public static double temperatureAt(double elevationMeters) {
    // Equation 18: H = r0 z / (r0 + z).
    double geopotential = EARTH_RADIUS * elevationMeters / (EARTH_RADIUS + elevationMeters);
    if (!(elevationMeters >= LOWEST_ELEVATION && geopotential <= TOP_OF_LAYER)) {
      throw new IllegalArgumentException(
          "elevation " + elevationMeters + " m is outside the layer from -500 m to 11 km");
    }
    return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotential;
  }
}
