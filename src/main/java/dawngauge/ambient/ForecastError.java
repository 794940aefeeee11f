package dawngauge.ambient;

import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.Unit;

/**
 * How far forecast daily extremes lie from what comes, by lead: root mean square errors computed
 * from an open data set of U.S. National Weather Service forecasts, 111 cities, 2014–2017 (ASA Data
 * Expo 2018).
 */
public final class ForecastError {

  /** °F, daily maximum, leads of 0 to 6 days. */
  private static final double[] MAXIMUM = {3.54, 3.90, 4.34, 4.83, 5.36, 6.03, 6.72};

  /** °F, daily minimum, leads of 0 to 6 days. */
  private static final double[] MINIMUM = {5.14, 5.63, 5.62, 5.61, 5.66, 5.89, 5.96};

  /** The longest lead of the data, in days. */
  static final int LAST = MAXIMUM.length - 1;

  /**
   * Forecast minima of the same data lay 0.6 to 1.4 °F above what came; the cold side of a minimum
   * is widened by 1 °F, in kelvin.
   */
  public static final double MINIMUM_COLD_SIDE =
      TemperatureDifference.of(1, Unit.FAHRENHEIT).kelvins();

  private ForecastError() {}

  /** Standard deviation in kelvin of a daily maximum forecast so many days ahead (0 or more). */
  public static double ofMaximum(long leadDays) {
    return kelvins(MAXIMUM, leadDays);
  }

  /** Standard deviation in kelvin of a daily minimum forecast so many days ahead (0 or more). */
  public static double ofMinimum(long leadDays) {
    return kelvins(MINIMUM, leadDays);
  }

  private static double kelvins(double[] table, long leadDays) {
    int row = (int) Math.max(0, Math.min(table.length - 1, leadDays));
    return TemperatureDifference.of(table[row], Unit.FAHRENHEIT).kelvins();
  }
}
