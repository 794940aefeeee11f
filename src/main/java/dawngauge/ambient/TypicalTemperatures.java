package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Typical lows and highs of a date, for days beyond any forecast: typical, not a forecast, with the
 * wide spread of real days around them.
 */
public final class TypicalTemperatures {

  /** How they are named wherever they are shown. */
  public static final Provenance PROVENANCE =
      new Provenance(Provenance.Kind.TYPICAL, "for the date, not a forecast", null);

  /**
   * Real days lie about 4 K (summer) to 8 K (winter) around the normal; from our comparison with
   * daily records, taken here as one standard deviation, which is the wide reading of it.
   */
  private static final double SPREAD_MEAN = 6;

  private static final double SPREAD_SWING = 2;

  /** Mean error of the fitted lows against stations, in kelvin; the larger of low and high. */
  private static final double FIT_ERROR = 1.57;

  private TypicalTemperatures() {}

  /**
   * Typical days of a stop, one entry a day from the day before its stay to the day after.
   *
   * @return nothing with a problem where place or height are not known or the fit does not hold
   */
  public static Outcome<List<AmbientEntry>> of(AmbientNeeds.Need need) {
    Coordinate place = need.coordinate();
    if (place == null || Double.isNaN(need.elevationMeters())) {
      return Outcome.failed(Problem.of(ProblemCode.NO_PLACE_FOR_WEATHER, need.place()));
    }
    if (!ClimateFit.covers(place)) {
      return Outcome.failed(Problem.of(ProblemCode.NO_TYPICAL_HERE, need.place()));
    }
    List<AmbientEntry> days = new ArrayList<>();
    LocalDate last = need.to().atZone(need.zone()).toLocalDate().plusDays(1);
    for (LocalDate date = need.from().atZone(need.zone()).toLocalDate().minusDays(1);
        !date.isAfter(last);
        date = date.plusDays(1)) {
      double month = month(date);
      ClimateFit.LowHigh day = ClimateFit.at(place, need.elevationMeters(), month);
      days.add(
          new AmbientEntry(
              need.stopId(),
              new AmbientEntry.LowHigh(
                  date,
                  Figures.of(new Temperature(day.low())),
                  Figures.of(new Temperature(day.high()))),
              PROVENANCE,
              spread(month),
              Remarks.NONE));
    }
    return Outcome.of(days);
  }

  /** The month of a date as the fit counts it: 1 in the middle of January. */
  private static double month(LocalDate date) {
    return 12 * (date.getDayOfYear() - 0.5) / date.lengthOfYear() + 0.5;
  }

  private static Entered<TemperatureDifference> spread(double month) {
    double days = SPREAD_MEAN + SPREAD_SWING * Math.cos(2 * Math.PI * (month - 1) / 12);
    return Figures.of(new TemperatureDifference(Math.hypot(days, FIT_ERROR)));
  }
}
