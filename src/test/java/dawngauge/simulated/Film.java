package dawngauge.simulated;

/** How well a tire gives off heat to the air around it and to the air inside. */
final class Film {

  /** Air at 300 K: conductivity W/mK, viscosity m²/s, Prandtl number; textbook table. */
  private static final double CONDUCTIVITY = 0.0263;

  private static final double VISCOSITY = 15.89e-6;
  private static final double PRANDTL = 0.707;

  /** Radiation at 290 K, 4 · 0.95 · 5.67e-8 · 290³ = 5.3 W/m²K; computed. */
  private static final double RADIATION = 5.3;

  /** Still air on a wall of 0.8 m, 10 K warmer: 1.42 · (10 / 0.8)^¼ = 2.7 W/m²K; computed. */
  private static final double STILL = 2.7;

  /** Part of the wind that reaches a parked tire behind skirts and beside others; inferred. */
  private static final double WIND_PART = 0.5;

  /**
   * From the middle of the rubber to its surface, m²K/W: 0.009 m / (3 · 0.25 W/mK), heat made
   * evenly in a slab whose inner side is shut. The thickness is inferred: with it a truck tire at
   * 85 % of its load gets a build-up in the middle of the 10 to 15 psi of 100 psi that the trade
   * tells.
   */
  private static final double RUBBER = 0.012;

  /** Between tire and air inside, W/m²K, rolling and standing; inferred. */
  private static final double INNER_ROLLING = 25;

  private static final double INNER_STANDING = 4;

  /** Part of the film outside that a wheel between hub and brakes has; inferred. */
  private static final double WHEEL_PART = 0.5;

  private Film() {}

  /**
   * Forced flow along a plate as long as the tire is high, turbulent: Nu = 0.037 Re^0.8 Pr^⅓
   * (textbook). 87 W/m²K at 60 mph on 0.785 m.
   */
  static double forced(double speed, double length) {
    double reynolds = speed * length / VISCOSITY;
    return 0.037 * Math.pow(reynolds, 0.8) * Math.cbrt(PRANDTL) * CONDUCTIVITY / length;
  }

  /**
   * Rolling.
   *
   * @param factor on the film outside: rain, a mate beside it, what this tire is unlike others
   */
  static TwoNodes.Ways rolling(TireKind kind, double speed, double factor) {
    double film = RADIATION + factor * forced(speed, kind.diameter());
    return ways(kind, film, INNER_ROLLING);
  }

  /**
   * Standing.
   *
   * @param wind m/s
   * @param factor as above
   */
  static TwoNodes.Ways standing(TireKind kind, double wind, double factor) {
    double film = RADIATION + STILL + WIND_PART * factor * forced(wind, kind.diameter());
    return ways(kind, film, INNER_STANDING);
  }

  private static TwoNodes.Ways ways(TireKind kind, double film, double inner) {
    double outer = kind.surface() / (1 / film + RUBBER);
    double wheel = kind.wheelSurface() / (1 / inner + 1 / (WHEEL_PART * film));
    return new TwoNodes.Ways(outer, kind.surface() * inner, wheel);
  }
}
