package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Typical lows and highs of a date, for days beyond any forecast: typical, not a forecast, with the
 * wide spread of real days around them.
 */
public final class TypicalTemperatures {

  private TypicalTemperatures() {}

  /**
   * Typical days of a stop, one entry a day from the day before its stay to the day after.
   *
   * @return nothing with a problem where place or height are not known, or beyond what is known
   */
  public static Outcome<List<AmbientEntry>> of(AmbientNeeds.Need need) {
    Coordinate place = need.coordinate();
    if (place == null || Double.isNaN(need.elevationMeters())) {
      return Outcome.failed(Problem.of(ProblemCode.NO_PLACE_FOR_WEATHER, need.place()));
    }
    TypicalDays typical = at(place, need.elevationMeters()).orElse(null);
    if (typical == null) {
      return Outcome.failed(Problem.of(ProblemCode.NO_TYPICAL_HERE, need.place()));
    }
    List<AmbientEntry> days = new ArrayList<>();
    LocalDate last = need.to().atZone(need.zone()).toLocalDate().plusDays(1);
    for (LocalDate date = need.from().atZone(need.zone()).toLocalDate().minusDays(1);
        !date.isAfter(last);
        date = date.plusDays(1)) {
      double month = month(date);
      TypicalDays.LowHigh day = typical.at(month);
      days.add(
          new AmbientEntry(
              need.stopId(),
              new AmbientEntry.LowHigh(
                  date,
                  WrittenFigures.of(new Temperature(day.low())),
                  WrittenFigures.of(new Temperature(day.high()))),
              typical.provenance(),
              WrittenFigures.of(
                  new TemperatureDifference(
                      Math.hypot(DailySpread.at(place, month), typical.error(month)))),
              Remarks.NONE));
    }
    return Outcome.of(days);
  }

  /** Whether typical days are those of the formula, which is rough. */
  public static boolean isRough(Provenance provenance) {
    return provenance.kind() == Provenance.Kind.TYPICAL
        && ClimateFit.SOURCE.equals(provenance.source());
  }

  /** The table of normals, and the formula beyond it. */
  static Optional<TypicalDays> at(Coordinate place, double elevationMeters) {
    return ClimateNormals.of(place, elevationMeters)
        .or(() -> ClimateFit.of(place, elevationMeters));
  }

  /** The month of a date: 1 in the middle of January. */
  static double month(LocalDate date) {
    return 12 * (date.getDayOfYear() - 0.5) / date.lengthOfYear() + 0.5;
  }
}
