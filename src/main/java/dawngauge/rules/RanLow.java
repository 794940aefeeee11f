package dawngauge.rules;

import dawngauge.trip.ReadingState;

/**
 * Whether a tire ran at 80 % or less of its recommended pressure: 29 CFR 1910.177(f)(2), a rule for
 * large vehicles' wheels, here a caution for all. Such a tire may be damaged inside. Gauge
 * pressures in pascal, as cool as the air around.
 */
public enum RanLow {
  /** Nothing speaks for it. */
  NO,
  /** It cannot be excluded: gauge again, with another gauge, before it rolls. */
  MAYBE,
  /** It is likelier than not: do not just add air. */
  LIKELY;

  /** 29 CFR 1910.177(f)(2): 80 percent or less of the recommended pressure. */
  public static final double PART = 0.8;

  /** From this chance on it is to be excluded by a second reading; ours. */
  private static final double TO_EXCLUDE = 0.1;

  /** Forgives rounding where a reading lies just on the line. */
  private static final double ROUNDING = 1e-3;

  /** The pressure at or under which a tire ran low. */
  public static double line(double reference) {
    return PART * reference;
  }

  /**
   * Chance that a pressure is at or under the line; NaN where one is not known.
   *
   * @param pascals the pressure as cool as the air
   * @param sigma one standard deviation of it
   * @param reference recommended pressure
   */
  public static double chance(double pascals, double sigma, double reference) {
    double over = line(reference) - pascals;
    if (Double.isNaN(over) || sigma > 0) {
      return Quantile.under(over / sigma);
    }
    return over >= 0 ? 1 : 0;
  }

  /**
   * What is to be said of a tire that rolled at a pressure. On the line itself it is likely: the
   * rule says 80 percent or less.
   */
  public static RanLow of(double pascals, double sigma, double reference) {
    double chance = chance(pascals, sigma, reference);
    if (chance >= 0.5 - ROUNDING) { // NaN, where nothing is known, says nothing
      return LIKELY;
    }
    return chance > TO_EXCLUDE ? MAYBE : NO;
  }

  /**
   * What is to be said of a tire that rolled and was read. A cold reading is its own settled
   * pressure; of a warm or just filled tire what is behind the reading counts, and the reading is a
   * bound from above.
   *
   * @param state how the tire was
   * @param shown what an open gauge shows
   * @param settled what is behind it as cool as the air, where the tire was not cold
   * @param sigma one standard deviation of that, the gauge's constant error left out
   * @param errors of the gauge
   * @param reference recommended pressure
   */
  public static RanLow ofReading(
      ReadingState state,
      double shown,
      double settled,
      double sigma,
      GaugeErrors errors,
      double reference) {
    RanLow byShown = of(shown, errors.sigma(), reference);
    if (state == ReadingState.COLD || byShown == LIKELY) {
      return byShown;
    }
    RanLow behind = of(settled, Math.hypot(sigma, errors.offset()), reference);
    return behind.compareTo(byShown) > 0 ? behind : byShown;
  }
}
