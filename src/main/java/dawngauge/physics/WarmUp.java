package dawngauge.physics;

/**
 * How warm the air in a tire is: a lumped heat balance τ·dT/dt = θ(t) + R − T. θ is the air around,
 * linear in time within a piece; R is how far above it the tire ends up (zero when parked); τ is
 * the time constant. Each piece has a closed form.
 *
 * <p>What is published: that rolling resistance, so heat, goes with about p^−0.4 and about linearly
 * with load (Transportation Research Board Special Report 286, 2006). What is <em>inferred</em>: R
 * at 60 mph, all time constants, the power 0.5 of speed, and all spreads. The anchors behind them:
 * 10 to 15 psi at equilibrium for a 100 psi truck tire from 68 °F (trade article); warm-up before a
 * steady rolling-resistance reading of 30 min for passenger tires, 50 min up to load index 121 and
 * 150 min above (ISO 28580 and UN Regulation 117, from memory), read as three time constants;
 * "cold" after three hours parked (NHTSA), so a parked time constant of at most 60 min. How rolling
 * resistance falls with the temperature around is published, see {@link #riseByAir}. Not modelled,
 * all in the spread: rain, sun, braking, duals.
 *
 * <p>The build-up of 49 CFR 393.75 (5 psi, and 15 psi above a rated load of 4,000 lb) is a fixed
 * figure of enforcement; the model is not bent to it. At full load the smaller is met from about 30
 * psi up, the larger only by the largest tires after more than an hour.
 */
public final class WarmUp {

  /** Spread of the rise: 1 σ of its natural logarithm. Inferred. */
  public static final double RISE_SPREAD = 0.25;

  /** What is left of it from trip to trip where a tire's own factor is known. Inferred. */
  public static final double RISE_SPREAD_KNOWN = 0.1;

  /** Spread of the rolling time constant: 1 σ of its natural logarithm. Inferred. */
  public static final double ROLLING_SPREAD = 0.35;

  /** Spread of the parked time constant: 1 σ of its natural logarithm. Inferred. */
  public static final double PARKED_SPREAD = 0.2;

  private static final double KILOGRAMS_PER_POUND = 0.45359237; // NIST SP 811, 2008, exact
  private static final double SIXTY_MPH = 60 * 0.44704; // m/s; NIST SP 811, 2008, exact

  /** Rated load up to which a tire counts as small: 3,200 lb, load index 121. Inferred. */
  private static final double SMALL_TIRE = 3200 * KILOGRAMS_PER_POUND;

  /** Rated load from which a tire counts as large. Inferred. */
  private static final double LARGE_TIRE = 6000 * KILOGRAMS_PER_POUND;

  private static final double MINUTE = 60;

  /**
   * R60, kelvin above air of 20 °C at equilibrium at 60 mph, rated load and rated pressure, for
   * tires of all sizes. Inferred: 10 to 15 psi on 100 psi from 68 °F (trade article) are 12.5 psi
   * in the middle, 12.5/114.7·293.15 K = 32 K, and crews run at about 85 % of the rated load
   * (ours). That is +9.8 of 80 psi (12 %) at 80 % of the load and +4.2 of 35 psi (12 %) at 65 %; a
   * UN working group on pressure monitoring reckons with +10 % for cars.
   */
  private static final double RISE_AT_SIXTY_MPH = 38;

  /** At which R60 holds: 20 °C, 68 °F. Inferred, as R60 is. */
  private static final double RISE_KELVINS = 293.15;

  /** Part by which rolling resistance falls a kelvin: UN R117 Annex 6, load index to 121. */
  private static final double FALL_SMALL = 0.010;

  /** The same above load index 121. */
  private static final double FALL_LARGE = 0.006;

  /** Kelvin to either side of 20 °C over which it is followed. Inferred. */
  private static final double FOLLOWED = 20;

  private WarmUp() {}

  /**
   * Temperature in the tire at the end of a piece: T = θ(t) + R − sτ + (T0 − θ0 − R + sτ)·e^(−t/τ).
   *
   * @param tireKelvins T0, in the tire at the start of the piece
   * @param airStartKelvins θ0, of the air around at the start of the piece
   * @param airSlopeKelvinsPerSecond s, positive while the air warms
   * @param rise R, kelvin above the air at equilibrium; 0 when parked
   * @param tauSeconds τ, above zero
   * @param seconds t, length of the piece, zero or more
   * @return kelvin
   * @throws IllegalArgumentException if τ is not above zero or the piece has a negative length
   */
  public static double temperatureAfter(
      double tireKelvins,
      double airStartKelvins,
      double airSlopeKelvinsPerSecond,
      double rise,
      double tauSeconds,
      double seconds) {
    return temperatureAfterWithDecay(
        tireKelvins,
        airStartKelvins,
        airSlopeKelvinsPerSecond,
        rise,
        tauSeconds,
        seconds,
        decay(tauSeconds, seconds));
  }

  /**
   * The same with e^(−t/τ) at hand, for many tires that share a piece and a time constant.
   *
   * @param decay the result of {@link #decay} for the same τ and t
   * @return kelvin
   */
  public static double temperatureAfterWithDecay(
      double tireKelvins,
      double airStartKelvins,
      double airSlopeKelvinsPerSecond,
      double rise,
      double tauSeconds,
      double seconds,
      double decay) {
    double lead = rise - airSlopeKelvinsPerSecond * tauSeconds;
    return airStartKelvins
        + airSlopeKelvinsPerSecond * seconds
        + lead
        + (tireKelvins - airStartKelvins - lead) * decay;
  }

  /**
   * e^(−t/τ): which part of a difference is left after a piece.
   *
   * @param tauSeconds τ, above zero
   * @param seconds t, zero or more
   * @return above 0 (or 0 after very long) up to 1
   * @throws IllegalArgumentException if τ is not above zero or t is negative
   */
  public static double decay(double tauSeconds, double seconds) {
    return Math.exp(
        -Require.notNegative(seconds, "seconds") / Require.positive(tauSeconds, "tauSeconds"));
  }

  /**
   * Exact mean over the piece of the temperature in the tire; arguments as {@link
   * #temperatureAfter}.
   *
   * @return kelvin; the starting temperature for a piece of no length
   */
  public static double meanTemperature(
      double tireKelvins,
      double airStartKelvins,
      double airSlopeKelvinsPerSecond,
      double rise,
      double tauSeconds,
      double seconds) {
    double times =
        Require.notNegative(seconds, "seconds") / Require.positive(tauSeconds, "tauSeconds");
    if (times == 0) {
      return tireKelvins;
    }
    double lead = rise - airSlopeKelvinsPerSecond * tauSeconds;
    double meanDecay = -Math.expm1(-times) / times;
    return airStartKelvins
        + airSlopeKelvinsPerSecond * seconds / 2
        + lead
        + (tireKelvins - airStartKelvins - lead) * meanDecay;
  }

  /**
   * Time constant of a rolling tire: 17 min for small tires to 30 min for large ones. Inferred.
   *
   * @param ratedLoadKg the tire's maximum load, single, kilogram
   * @return seconds
   * @throws IllegalArgumentException if the load is not above zero
   */
  public static double rollingTimeConstant(double ratedLoadKg) {
    return between(17 * MINUTE, 30 * MINUTE, ratedLoadKg);
  }

  /**
   * Time constant of a parked tire: 45 min for small tires to 55 min for large ones. Inferred.
   *
   * @param ratedLoadKg the tire's maximum load, single, kilogram
   * @return seconds
   * @throws IllegalArgumentException if the load is not above zero
   */
  public static double parkedTimeConstant(double ratedLoadKg) {
    return between(45 * MINUTE, 55 * MINUTE, ratedLoadKg);
  }

  /**
   * How much more a tire warms in colder air: e^(−K·(θ − 20 °C)). UN Regulation 117, Annex 6,
   * brings rolling resistance to 25 °C by 1 + K·(θ − 25 °C) with K 0.010 up to load index 121 and
   * 0.006 above (and 0.008 for passenger tires, which are not told apart here); the rise goes with
   * it. Between the small and the large tires K is straight. The regulation speaks for 20 to 30 °C;
   * that it goes on alike down to 0 and up to 40 °C, and no further, is inferred.
   *
   * @param airKelvins the air around; where it is NaN the answer is too
   * @param ratedLoadKg the tire's maximum load, single, kilogram
   * @return part of the rise at 20 °C, 0.8 to 1.25
   * @throws IllegalArgumentException if the load is not above zero
   */
  public static double riseByAir(double airKelvins, double ratedLoadKg) {
    double fall = between(FALL_SMALL, FALL_LARGE, ratedLoadKg);
    double over = Math.max(-FOLLOWED, Math.min(FOLLOWED, airKelvins - RISE_KELVINS));
    return Math.exp(-fall * over);
  }

  /**
   * Rise at equilibrium in air of 20 °C, R = R60 · (L/Lr) · (p68/pr)^−0.4 · (v/60 mph)^0.5 · heat
   * factor. The powers of load and pressure are published, that of speed is inferred (it is 0 if
   * all resistance to the heat lies outside the tire, 1 if all inside).
   *
   * @param loadOverRated load on the tire over its rated load, zero or more
   * @param pressureAt68OverRated fill shown as gauge pressure at 68 °F, sea level, over the rated
   *     pressure; above zero (a flat tire has no figure)
   * @param speedMetersPerSecond average speed, zero or more
   * @param heatFactor what scales this tire's rise; 1 if nothing is known of it
   * @return kelvin above the air; zero at speed zero
   * @throws IllegalArgumentException if an argument is outside the range given
   */
  public static double rise(
      double loadOverRated,
      double pressureAt68OverRated,
      double speedMetersPerSecond,
      double heatFactor) {
    return RISE_AT_SIXTY_MPH
        * Require.notNegative(loadOverRated, "loadOverRated")
        * Math.pow(Require.positive(pressureAt68OverRated, "pressureAt68OverRated"), -0.4)
        * Math.sqrt(Require.notNegative(speedMetersPerSecond, "speedMetersPerSecond") / SIXTY_MPH)
        * Require.notNegative(heatFactor, "heatFactor");
  }

  private static double between(double small, double large, double ratedLoadKg) {
    double part =
        (Require.positive(ratedLoadKg, "ratedLoadKg") - SMALL_TIRE) / (LARGE_TIRE - SMALL_TIRE);
    return small + (large - small) * Math.min(1, Math.max(0, part));
  }
}
