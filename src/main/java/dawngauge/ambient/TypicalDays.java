package dawngauge.ambient;

import dawngauge.trip.Provenance;

/** The typical days of one place. Months count as in {@link YearCurve}. */
interface TypicalDays {

  /**
   * Typical temperatures, in kelvin.
   *
   * @param low about sunrise
   * @param high in the afternoon
   */
  record LowHigh(double low, double high) {}

  /** The typical day of a date. */
  LowHigh at(double month);

  /** How far such a day may be from the true normal, one standard deviation in kelvin. */
  double error(double month);

  /** What they are, wherever they are shown. */
  Provenance provenance();
}
