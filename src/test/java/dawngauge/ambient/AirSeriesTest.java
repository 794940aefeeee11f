package dawngauge.ambient;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is made of temperatures typed in their several ways. */
class AirSeriesTest {

  /** At 38.54° N 106.93° W on 9 March 2027 the sun rises at 13:28:13 UTC (NOAA's algorithm). */
  private static final double SUNRISE = seconds("2027-03-09T13:28:13Z");

  private static double seconds(String instant) {
    return Instant.parse(instant).getEpochSecond();
  }

  private static Trip at(StopBuilder first) {
    return Trips.of(RigBuilder.trailer())
        .stop(first.leaves("2027-03-09T12:00-07:00[America/Denver]"))
        .stop(stop("end"))
        .trip();
  }

  private static StopBuilder mountains() {
    return stop("a").at(38.54, -106.93, "America/Denver").elevation("7703 ft");
  }

  private static Outcome<Ambient> ambient(Trip trip) {
    return Ambient.of(
        AmbientNeeds.of(trip, Itinerary.of(trip).get()), List.of(new TypedAmbient(trip)));
  }

  private static AirSeries series(StopBuilder first) {
    return known(ambient(at(first)).get().seriesAt(0));
  }

  private static double fahrenheit(double kelvins) {
    return new Temperature(kelvins).in(Unit.FAHRENHEIT);
  }

  private static List<ProblemCode> codesAt(StopBuilder first) {
    return ambient(at(first)).problems().stream()
        .filter(problem -> problem.where().equals("a"))
        .map(Problem::code)
        .toList();
  }

  private static StopBuilder twoHours() {
    return mountains().hour("2027-03-09T06:00Z", "20 °F").hour("2027-03-09T08:00Z", "30 °F");
  }

  @ParameterizedTest
  @CsvSource({
    "2027-03-09T06:00:00Z, 20, 3.54, 0",
    "2027-03-09T06:30:00Z, 22.5, 3.54, 0",
    "2027-03-09T08:00:00Z, 30, 5.14, 0",
    "2027-03-09T03:00:00Z, 20, 3.54, 1.5",
    "2027-03-09T12:00:00Z, 30, 5.14, 2"
  })
  void byTheHourIsLinearAndSteadyOutside(
      String instant, double expected, double fahrenheitError, double outside) {
    AirSeries series = series(twoHours());

    assertThat(fahrenheit(series.kelvinsAt(seconds(instant)))).isCloseTo(expected, within(1e-9));
    // the published error of the day itself, half a kelvin more for each hour outside: ours
    assertThat(series.sigmaAt(seconds(instant)))
        .isCloseTo(fahrenheitError * 5 / 9 + outside, within(1e-9));
    assertThat(series.breakpoints())
        .containsExactly(seconds("2027-03-09T06:00:00Z"), seconds("2027-03-09T08:00:00Z"));
  }

  @Test
  void steadyIsSteady() {
    AirSeries series = series(mountains().steady("41 °F").measured());

    assertThat(fahrenheit(series.kelvinsAt(0))).isCloseTo(41, within(1e-9));
    assertThat(series.kelvinsAt(0)).isEqualTo(series.kelvinsAt(SUNRISE));
    assertThat(series.sigmaAt(SUNRISE)).isCloseTo(2, within(0.0));
    assertThat(series.coldSideAt(SUNRISE)).isZero();
  }

  @Test
  void aTypedSpreadWins() {
    assertThat(series(mountains().steady("41 °F").give("0.5 °C")).sigmaAt(0))
        .isCloseTo(0.5, within(1e-12));
    assertThat(series(twoHours().give("0.5 °C")).sigmaAt(seconds("2027-03-09T07:00:00Z")))
        .isCloseTo(0.5, within(1e-12));
    assertThat(
            series(mountains().lowHigh("2027-03-09", "10 °F", "50 °F").give("0.5 °C"))
                .sigmaAt(SUNRISE))
        .isCloseTo(0.5, within(1e-12));
  }

  @Test
  void hoursWinOverSteadyAndThatOverLowAndHigh() {
    StopBuilder all = twoHours().steady("41 °F").lowHigh("2027-03-09", "10 °F", "50 °F");
    StopBuilder two = mountains().lowHigh("2027-03-09", "10 °F", "50 °F").steady("41 °F");

    assertThat(fahrenheit(series(all).kelvinsAt(seconds("2027-03-09T07:00:00Z"))))
        .isCloseTo(25, within(1e-9));
    assertThat(fahrenheit(series(two).kelvinsAt(SUNRISE))).isCloseTo(41, within(1e-9));
  }

  /**
   * The low comes 0.17 h before sunrise, the high 1.86 h after the middle of the day (Parton and
   * Logan 1981); midday length 11 h 40 min 44 s that day.
   */
  @Test
  void lowAndHighComeWhenTheyAreExpected() {
    AirSeries series = series(mountains().lowHigh("2027-03-09", "10 °F", "50 °F"));
    double length = seconds("2027-03-10T01:08:57Z") - SUNRISE;

    assertThat(fahrenheit(series.kelvinsAt(SUNRISE - 0.17 * 3600))).isCloseTo(10, within(0.1));
    assertThat(fahrenheit(series.kelvinsAt(SUNRISE - 0.17 * 3600 + length / 2 + 1.86 * 3600)))
        .isCloseTo(50, within(0.05));
  }

  /** A day without figures takes those of the nearest day, the earlier of two as near. */
  @Test
  void theNearestDayStandsIn() {
    AirSeries series =
        series(
            mountains()
                .lowHigh("2027-03-07", "0 °F", "40 °F")
                .lowHigh("2027-03-09", "10 °F", "50 °F"));

    double day = 86_400;
    assertThat(fahrenheit(series.kelvinsAt(SUNRISE - 0.17 * 3600 + day)))
        .isCloseTo(10, within(0.3));
    assertThat(fahrenheit(series.kelvinsAt(SUNRISE - 0.17 * 3600 - day))).isCloseTo(0, within(0.3));
  }

  @Test
  void lowAndHighNeedAPlace() {
    assertThat(codesAt(stop("a").lowHigh("2027-03-09", "10 °F", "50 °F")))
        .containsExactly(ProblemCode.NO_PLACE_FOR_CURVE, ProblemCode.NO_AMBIENT);
  }

  /** Longyearbyen, 78° N: no sun from late October to the middle of February. */
  @Test
  void lowAndHighNeedASunrise() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("a")
                    .at(78.22, 15.65, "Arctic/Longyearbyen")
                    .leaves("2027-01-10T12:00+01:00[Arctic/Longyearbyen]")
                    .lowHigh("2027-01-10", "-10 °F", "0 °F"))
            .stop(stop("end").steady("0 °F"))
            .trip();

    assertThat(ambient(trip).problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.NO_SUNRISE, ProblemCode.NO_AMBIENT);
  }

  /** Far ahead no forecast is better than what is typical: single days spread about that. */
  @Test
  void farAheadWhatWasTypedIsNoSurerThanWhatIsTypical() {
    Provenance early =
        new Provenance(Provenance.Kind.TYPED, "a guess", Instant.parse("2027-02-20T19:00:00Z"));
    StopBuilder days = mountains().lowHigh("2027-03-09", "10 °F", "50 °F");
    StopBuilder hours = twoHours();
    StopBuilder stay = mountains().steady("41 °F");
    double noon = seconds("2027-03-09T20:00:00Z");
    for (StopBuilder stop : List.of(days, hours, stay)) {
      AirSeries series = series(stop.from(early));
      double typical =
          DailySpread.at(
              new Coordinate(38.54, -106.93), TypicalTemperatures.month(LocalDate.of(2027, 3, 9)));
      assertThat(series.sigmaAt(noon)).isGreaterThanOrEqualTo(typical - 1e-9);
      assertThat(series.sigmaAt(noon)).isGreaterThan(6.72 * 5 / 9);
    }
  }

  /**
   * Root mean square errors of U.S. National Weather Service forecasts, °F (ASA Data Expo 2018):
   * the minimum's from midnight to two hours after sunrise, else the maximum's; by days of lead.
   */
  @ParameterizedTest
  @CsvSource({
    "2027-03-09T07:05:00Z, 2027-03-09, 5.14, 1",
    "2027-03-09T13:28:00Z, 2027-03-09, 5.14, 1",
    "2027-03-09T15:25:00Z, 2027-03-09, 5.14, 1",
    "2027-03-09T15:31:00Z, 2027-03-09, 3.54, 0",
    "2027-03-09T22:00:00Z, 2027-03-09, 3.54, 0",
    "2027-03-09T13:28:00Z, 2027-03-08, 5.63, 1",
    "2027-03-09T22:00:00Z, 2027-03-08, 3.90, 0",
    "2027-03-09T22:00:00Z, 2027-03-05, 5.36, 0",
    "2027-03-09T13:28:00Z, 2027-03-03, 5.96, 1",
    "2027-03-09T22:00:00Z, 2027-03-03, 6.72, 0",
    "2027-03-09T22:00:00Z, 2027-03-12, 3.54, 0"
  })
  void lowAndHighHaveThePublishedError(
      String instant, String issuedAtNoon, double fahrenheitError, double coldSide) {
    Provenance issued =
        new Provenance(
            Provenance.Kind.TYPED, "a bulletin", Instant.parse(issuedAtNoon + "T19:00:00Z"));
    AirSeries series = series(mountains().lowHigh("2027-03-09", "10 °F", "50 °F").from(issued));

    double time = seconds(instant);
    assertThat(series.sigmaAt(time) * 9 / 5).isCloseTo(fahrenheitError, within(1e-9));
    // the forecast minimum lay 0.6 to 1.4 °F above what came (same data): 1 °F more below
    assertThat(series.coldSideAt(time) * 9 / 5).isCloseTo(coldSide, within(1e-9));
    assertThat(series.provenance()).isEqualTo(issued);
  }

  /** Without a date of issue the figures are taken as typed when the trip begins. */
  @Test
  void leadCountsFromTheBeginningWhereNothingElseIsKnown() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                mountains()
                    .arrives("2027-03-09T12:00-07:00[America/Denver]")
                    .leaves("2027-03-11T18:00-07:00[America/Denver]")
                    .lowHigh("2027-03-11", "10 °F", "50 °F"))
            .stop(stop("end"))
            .trip();

    AirSeries series = known(ambient(trip).get().seriesAt(0));

    assertThat(series.sigmaAt(seconds("2027-03-11T22:00:00Z")) * 9 / 5)
        .isCloseTo(4.34, within(1e-9));
    assertThat(series.provenance()).isEqualTo(Provenance.TYPED);
  }
}
