package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.DoubleSupplier;

/**
 * How far a temperature that was given for a place may lie from what comes, by how long before it
 * was given: the published error of forecasts up to six days, then rising in a straight line, from
 * the tenth day on the spread of single days about what is typical there. It never gets less.
 */
final class LeadError {

  private static final double DAY = 86_400;

  /** From this lead on, in days, a forecast is no better than what is typical; ours, no source. */
  private static final long TYPICAL = 10;

  private final DoubleSupplier spread;
  private double typical = Double.NaN;

  /** With the spread of single days in kelvin, which is asked for where it counts. */
  LeadError(DoubleSupplier spread) {
    this.spread = spread;
  }

  /** At a place and time of the year. */
  static LeadError of(AmbientNeeds.Need need) {
    Coordinate place = need.coordinate();
    LocalDate date = need.from().atZone(need.zone()).toLocalDate();
    double month = TypicalTemperatures.month(date);
    return new LeadError(
        () -> place == null ? DailySpread.rough(month) : DailySpread.at(place, month));
  }

  /**
   * One standard deviation in kelvin.
   *
   * @param days whole days from when it was given, 0 or more
   * @param minimum about the minimum of the day, else about its maximum
   */
  double of(long days, boolean minimum) {
    double known = minimum ? ForecastError.ofMinimum(days) : ForecastError.ofMaximum(days);
    if (days <= ForecastError.LAST) {
      return known;
    }
    if (Double.isNaN(typical)) {
      typical = spread.getAsDouble();
    }
    double part =
        Math.min(1, (days - ForecastError.LAST) / (double) (TYPICAL - ForecastError.LAST));
    return known + part * (Math.max(known, typical) - known);
  }

  /** The same for a moment in epoch seconds; what is past is as sure as what is of today. */
  double at(double epochSeconds, Instant given, boolean minimum) {
    return of((long) Math.max(0, (epochSeconds - given.getEpochSecond()) / DAY), minimum);
  }
}
