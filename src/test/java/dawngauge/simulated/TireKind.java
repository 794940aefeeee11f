package dawngauge.simulated;

/**
 * A kind of tire as its heat sees it, and what it may carry. Dimensions and masses are of common
 * sizes, rounded; inferred where not said otherwise.
 *
 * @param ratedLoad on the sidewall as a single tire, in newton
 * @param ratedPressure for it, gauge pascal
 * @param dualLoad as one of a pair, in newton; as single where it is never fitted so
 * @param exponent n of load = rated · (p / rated pressure)ⁿ: 0.585 reproduces printed rows of
 *     special trailer tires, 0.7 of light truck tires, 1 is taken for truck tires; inferred
 * @param resistance rolling resistance over load on a test drum at 25 °C: the limits of UN
 *     Regulation 117, stage 2: 9.0 N/kN to load index 121, 6.5 N/kN above
 * @param fall part by which it falls a kelvin of air about 25 °C: UN R117 Annex 6, 0.010 to load
 *     index 121, 0.006 above
 * @param diameter in meter
 * @param tread width of the tread in meter
 * @param rim diameter of the rim in meter
 * @param rubber kilogram of rubber and cord
 * @param steel kilogram of steel in it
 * @param wheel kilogram of the steel wheel
 * @param volume of the air in it, in cubic meter
 */
record TireKind(
    double ratedLoad,
    double ratedPressure,
    double dualLoad,
    double exponent,
    double resistance,
    double fall,
    double diameter,
    double tread,
    double rim,
    double rubber,
    double steel,
    double wheel,
    double volume) {

  /** Special trailer tire of 3,500 lb at 80 psi, 16 in rim. */
  static final TireKind TRAILER =
      new TireKind(
          3500 * Units.POUND,
          80 * Units.PSI,
          3500 * Units.POUND,
          0.585,
          0.0090,
          0.010,
          0.785,
          0.185,
          0.406,
          16.5,
          3.5,
          14,
          0.060);

  /** Light truck tire of 3,195 lb, 2,910 lb as one of a pair, at 80 psi, 17 in rim. */
  static final TireKind LIGHT_TRUCK =
      new TireKind(
          3195 * Units.POUND,
          80 * Units.PSI,
          2910 * Units.POUND,
          0.7,
          0.0090,
          0.010,
          0.80,
          0.190,
          0.432,
          16.5,
          3.5,
          14,
          0.060);

  /** Truck tire of 6,175 lb, 5,675 lb as one of a pair, at 110 psi, 22.5 in rim. */
  static final TireKind TRUCK =
      new TireKind(
          6175 * Units.POUND,
          110 * Units.PSI,
          5675 * Units.POUND,
          1,
          0.0065,
          0.006,
          1.01,
          0.22,
          0.572,
          40,
          15,
          34,
          0.130);

  /** J/kgK: rubber about 1,900, steel 460; textbook values. */
  private static final double RUBBER_HEAT = 1900;

  private static final double STEEL_HEAT = 460;

  /** J/K of air a pascal and cubic meter: cv / (R T), 718 / (287 · 293); textbook values. */
  private static final double AIR_HEAT = 718 / (287.0 * 293);

  /** Part of the wheel that goes with the air inside; the rest with the hub; inferred. */
  private static final double WHEEL_PART = 0.5;

  /** By how much a bulging sidewall is more than its ring seen from the side; inferred. */
  private static final double BULGE = 1.15;

  /** Radius of the drum of the regulation's figures in meter; ISO 28580, UN R117. */
  private static final double DRUM = 1;

  /**
   * Part of the rolling resistance that heats the tire; 90 to 95 % is published (Schuring 1980).
   */
  private static final double INTO_TIRE = 0.93;

  /** Load and speed of the regulation's test: 85 % of the rated load, 80 km/h; UN R117 Annex 6. */
  private static final double TEST_PART = 0.85;

  private static final double TEST_SPEED = 80 / 3.6;
  private static final double TEST_AIR = 298.15;

  /**
   * Powers of load and pressure: 0.9 inferred (near 1), −0.4 from TRB Special Report 286 (2006).
   */
  private static final double BY_LOAD = 0.9;

  private static final double BY_PRESSURE = -0.4;

  /** Part of the resistance at 80 km/h that goes with the square of speed; inferred. */
  private static final double BY_SPEED = 0.1;

  /** A cold tire's resistance is never taken over so many times that of the test; inferred. */
  private static final double MOST_COLD = 2;

  /** Outer surface, tread and both sidewalls, in m². */
  double surface() {
    double ring = Math.PI / 4 * (diameter * diameter - rim * rim);
    return Math.PI * diameter * tread + 2 * BULGE * ring;
  }

  /** Heat capacity of tread and carcass, J/K. */
  double bodyCapacity() {
    return rubber * RUBBER_HEAT + steel * STEEL_HEAT;
  }

  /** Heat capacity of the air and its part of the wheel, J/K. */
  double insideCapacity() {
    return AIR_HEAT * (ratedPressure + 101_325) * volume + WHEEL_PART * wheel * STEEL_HEAT;
  }

  /** Area of the wheel that the air inside touches, in m²: a drum as wide as the tread. */
  double wheelSurface() {
    return Math.PI * rim * tread;
  }

  /** Rise of the body over the air in the regulation's test. */
  double testRise() {
    return Film.rolling(this, TEST_SPEED, 1)
        .rise(heat(TEST_PART * ratedLoad, ratedPressure, TEST_SPEED));
  }

  /** Watt at the temperature of the regulation's test. */
  private double heat(double load, double pressure, double speed) {
    double flat = Math.sqrt(DRUM / (DRUM + diameter / 2)); // Clark's formula, as in ISO 28580
    double test = resistance * flat * TEST_PART * ratedLoad;
    double faster = speed / TEST_SPEED;
    return INTO_TIRE
        * speed
        * test
        * Math.pow(load / (TEST_PART * ratedLoad), BY_LOAD)
        * Math.pow(pressure / ratedPressure, BY_PRESSURE)
        * (1 - BY_SPEED + BY_SPEED * faster * faster);
  }

  /**
   * Heat made in the tire as a function of its body's temperature. The published fall k is by the
   * air's temperature once all is steady; with a rise r in that state the fall by the tire's own
   * temperature is k / (1 − k·r), since a warmer tire makes less heat and so warms up less.
   *
   * @param load in newton
   * @param pressure gauge pascal of the same air at 20 °C at sea level, above zero
   * @param speed m/s
   */
  Heat heatAt(double load, double pressure, double speed) {
    double rise = testRise();
    return new Heat(heat(load, pressure, speed), fall / (1 - fall * rise), TEST_AIR + rise);
  }

  /**
   * Heat by temperature.
   *
   * @param watt at the temperature of the test
   * @param fall part a kelvin
   * @param test temperature of the body in the test
   */
  record Heat(double watt, double fall, double test) {
    double at(double body) {
      return watt * Math.min(MOST_COLD, Math.exp(-fall * (body - test)));
    }
  }

  /** What a load needs, gauge pascal; infinite where the tire does not carry it at all. */
  double need(double load, boolean dual) {
    double rated = dual ? dualLoad : ratedLoad;
    return load > rated
        ? Double.POSITIVE_INFINITY
        : ratedPressure * Math.pow(load / rated, 1 / exponent);
  }
}
