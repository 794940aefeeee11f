package dawngauge.tire;

import dawngauge.explain.Authority;

/**
 * The exponent n of the form load ∝ pressure^n for a class of tires.
 *
 * @param value 1 is the straight line
 * @param authority on whose word
 */
record LoadExponent(double value, Authority authority) {

  static final Authority STRAIGHT_LINE =
      new Authority(
          Authority.Kind.PUBLISHED,
          "straight line, the most cautious published form (Tire Society paper, 2009)");

  private static final Authority PRINTED_ROWS =
      Authority.inferred("exponent that reproduces printed load/inflation rows");

  /** By the class of a tire; the straight line for bias, commercial and unknown tires. */
  static LoadExponent of(TireSpec spec) {
    TireClass tireClass = spec.classOrFromSize();
    if (tireClass == null || spec.constructionOrFromSize() == Construction.BIAS) {
      return new LoadExponent(1, STRAIGHT_LINE);
    }
    return switch (tireClass) {
      case PASSENGER ->
          new LoadExponent(
              0.5,
              new Authority(Authority.Kind.PUBLISHED, "Tire and Rim Association formula, n = 0.5"));
      case LIGHT_TRUCK -> new LoadExponent(0.70, PRINTED_ROWS);
      case SPECIAL_TRAILER -> new LoadExponent(0.585, PRINTED_ROWS);
      case COMMERCIAL -> new LoadExponent(1, STRAIGHT_LINE);
    };
  }
}
