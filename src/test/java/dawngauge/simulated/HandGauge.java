package dawngauge.simulated;

import java.util.Random;

/**
 * One hand gauge over a trip: a constant error by its grade, one that goes with its own
 * temperature, one that creeps from day to day, and what two readings of the same tire differ by.
 */
final class HandGauge {

  /** Span and grade as the crew notes them: 2 % of 100 psi. */
  private static final double LIMIT = 2 * Units.PSI;

  /** Step that is noted. */
  private static final double STEP = Units.PSI;

  /** The grade's limit is taken as two standard deviations, nothing beyond it; inferred. */
  private static final double IN_LIMIT = 2;

  /** Half of the constant error goes with the pressure; inferred. */
  private static final double PROPORTIONAL = 0.5;

  private static final double MIDDLE = 80 * Units.PSI;

  /**
   * Pascal a kelvin: EN 837-1 allows 0.04 % of the span; one standard deviation a quarter of it, as
   * a gauge comes out of a cab at 20 °C and is halfway to the air outside; inferred.
   */
  private static final double BY_KELVIN = 0.25 * 0.0004 * 100 * Units.PSI;

  private static final double CAB = 293.15;

  /** Creep over a day, one standard deviation; inferred. */
  private static final double CREEP = 0.1 * Units.PSI;

  /** Repeatability before the step, one standard deviation; inferred. */
  private static final double REPEAT = 0.4 * Units.PSI;

  private final Random random;
  private final double constant;
  private final double byKelvin;
  private final double[] creep;

  /** A gauge of its own. */
  HandGauge(Random random, int days) {
    this.random = random;
    double drawn = random.nextGaussian() / IN_LIMIT;
    while (Math.abs(drawn) > 1) {
      drawn = random.nextGaussian() / IN_LIMIT;
    }
    constant = LIMIT * drawn;
    byKelvin = BY_KELVIN * random.nextGaussian();
    creep = new double[days + 2];
    for (int day = 1; day < creep.length; day++) {
      creep[day] = creep[day - 1] + CREEP * random.nextGaussian();
    }
  }

  /** Its error now without the part that differs from reading to reading, in pascal. */
  double error(double pascals, double airKelvins, double seconds) {
    int day = Math.max(0, Math.min(creep.length - 1, (int) Math.floor(seconds / Units.DAY)));
    double part = 1 - PROPORTIONAL + PROPORTIONAL * pascals / MIDDLE;
    return constant * part + byKelvin * (airKelvins - CAB) + creep[day];
  }

  /** What is noted of a tire, gauge pascal in whole steps. */
  double reads(double pascals, double airKelvins, double seconds) {
    double shown = pascals + error(pascals, airKelvins, seconds) + REPEAT * random.nextGaussian();
    return STEP * Math.round(shown / STEP);
  }

  /** What is in a tire that was set until the gauge showed a figure, gauge pascal. */
  double sets(double figure, double airKelvins, double seconds) {
    return figure - error(figure, airKelvins, seconds) + REPEAT * random.nextGaussian();
  }
}
