package dawngauge.method;

/** The standard normal distribution. */
final class Bell {
  private static final double FAR = 7;

  private Bell() {}

  static double density(double z) {
    return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }

  /**
   * By the series of G. Marsaglia, "Evaluating the normal distribution", J. Stat. Software 2004.
   */
  static double under(double z) {
    if (Math.abs(z) > FAR) {
      return z > 0 ? 1 : 0;
    }
    double sum = z;
    double term = z;
    for (int i = 3; Math.abs(term) > 1e-17; i += 2) {
      term *= z * z / i;
      sum += term;
    }
    return 0.5 + sum * density(z);
  }

  /** By halving. */
  static double quantile(double chance) {
    double low = -FAR;
    double high = FAR;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (under(middle) < chance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
