package dawngauge.ambient;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air by the hour from a feed, typical days, and the seam between them. */
class FeedAirTest {

  private static final Provenance ISSUED =
      new Provenance(Provenance.Kind.FEED, "a service", Instant.parse("2027-03-08T12:00:00Z"));

  private static StopBuilder mountains() {
    return stop("a")
        .at(38.54, -106.93, "America/Denver")
        .elevation("7703 ft")
        .arrives("2027-03-09T00:00-07:00[America/Denver]")
        .leaves("2027-03-12T12:00-07:00[America/Denver]");
  }

  private static double seconds(String instant) {
    return Instant.parse(instant).getEpochSecond();
  }

  private static Trip trip(StopBuilder first) {
    return Trips.of(RigBuilder.trailer()).stop(first).stop(stop("end").steady("0 °C")).trip();
  }

  private static AmbientNeeds.Need need(Trip trip) {
    return AmbientNeeds.of(trip, Itinerary.of(trip).get()).needs().get(0);
  }

  private static AirSeries series(Trip trip) {
    AmbientNeeds needs = AmbientNeeds.of(trip, Itinerary.of(trip).get());
    return known(Ambient.of(needs, List.of(new TypedAmbient(trip))).get().seriesAt(0));
  }

  /**
   * Root mean square errors of U.S. National Weather Service forecasts, °F (ASA Data Expo 2018): of
   * the minimum from midnight to two hours after sunrise (13:28 UTC on that day), else of the
   * maximum, by whole days since the forecast was issued.
   */
  @ParameterizedTest
  @CsvSource({
    "2027-03-09T08:00:00Z, 5.14, 1",
    "2027-03-09T15:00:00Z, 5.63, 1",
    "2027-03-09T20:00:00Z, 3.90, 0",
    "2027-03-08T20:00:00Z, 3.54, 0",
  })
  void aForecastHasThePublishedErrorOfItsLead(String at, double fahrenheit, double coldSide) {
    AirSeries series =
        series(
            trip(
                mountains()
                    .hour("2027-03-08T18:00Z", "1 °C")
                    .hour("2027-03-12T18:00Z", "5 °C")
                    .from(ISSUED)));
    assertThat(series.sigmaAt(seconds(at)) * 9 / 5).isCloseTo(fahrenheit, within(1e-9));
    assertThat(series.coldSideAt(seconds(at)) * 9 / 5).isCloseTo(coldSide, within(1e-9));
    assertThat(series.given().in(UnitSystem.US))
        .isEqualTo("feed a service, issued 2027-03-08T12:00:00Z: by the hour, 2 times");
  }

  @Test
  void typicalDaysCoverTheStayAndSaySo() {
    Trip trip = trip(mountains());
    List<AmbientEntry> days = TypicalTemperatures.of(need(trip)).get();
    assertThat(days)
        .hasSize(6) // 8 to 13 March: the stay and a day around it
        .allSatisfy(day -> assertThat(day.provenance().kind()).isEqualTo(Provenance.Kind.TYPICAL));
    AirSeries series = series(trip.withAmbient(days));
    assertThat(series.given().in(UnitSystem.SI))
        .startsWith("typical for the date, not a forecast: low ");
    // 10 March is day 69, month 12 · 68.5 / 365 + 0.5 = 2.752: by the tables read outside of this
    // program a single day lies 4.654 K about the normal, and that 1.704 about the true one:
    // 4.956 together, written to the tenth
    assertThat(series.sigmaAt(seconds("2027-03-10T20:00:00Z"))).isCloseTo(5.0, within(1e-9));
    assertThat(days.get(2).figure()).isEqualTo(lowHigh("2027-03-10", "-11.1 °C", "5.0 °C"));
  }

  private static AmbientEntry.LowHigh lowHigh(String date, String low, String high) {
    return new AmbientEntry.LowHigh(
        LocalDate.parse(date),
        Entered.of(QuantityKind.TEMPERATURE, low),
        Entered.of(QuantityKind.TEMPERATURE, high));
  }

  /**
   * Beyond the table, here in the north of Ontario, the formula stands in and says how rough it is.
   */
  @Test
  void beyondTheTableTheFormulaSaysHowRoughItIs() {
    Trip timmins = trip(mountains().at(48.47, -81.33, "America/Toronto").elevation("300 m"));
    List<AmbientEntry> days = TypicalTemperatures.of(need(timmins)).get();
    assertThat(days.get(0).provenance().source()).contains("rough", "11 K");
    assertThat(TypicalTemperatures.isRough(days.get(0).provenance())).isTrue();
    assertThat(TypicalTemperatures.isRough(ClimateNormals.PROVENANCE)).isFalse();
    AirSeries series = series(timmins.withAmbient(days));
    // 6 + 2 cos(2π · 1.752 / 12) = 7.21 for single days, 3 for the formula: 7.81
    assertThat(series.sigmaAt(seconds("2027-03-10T20:00:00Z"))).isCloseTo(7.8, within(1e-9));
    assertThat(series.given().in(UnitSystem.SI)).contains("rough here");
  }

  @Test
  void beyondBothTheUserIsAsked() {
    Trip far = trip(mountains().at(48.86, 2.35, "Europe/Paris"));
    assertThat(TypicalTemperatures.of(need(far)).problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.NO_TYPICAL_HERE);
    Trip nowhere = trip(stop("a").leaves("2027-03-12T12:00-07:00[America/Denver]"));
    assertThat(TypicalTemperatures.of(need(nowhere)).problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.NO_PLACE_FOR_WEATHER);
  }

  @Test
  void theSeamHasNoStepAndFadesIntoTheTypicalDays() {
    Trip hours =
        trip(
            mountains()
                .hour("2027-03-09T06:00Z", "12 °C")
                .hour("2027-03-10T06:00Z", "14 °C")
                .from(ISSUED));
    List<AmbientEntry> both = new ArrayList<>(hours.ambient());
    List<AmbientEntry> days = TypicalTemperatures.of(need(hours)).get();
    both.addAll(days);
    AirSeries joined = series(hours.withAmbient(both));
    AirSeries typical = series(hours.withAmbient(days));
    double seam = seconds("2027-03-10T06:00:00Z");
    assertThat(joined.kelvinsAt(seam)).isCloseTo(273.15 + 14, within(1e-9));
    double before = joined.kelvinsAt(seam);
    double sigma = joined.sigmaAt(seam);
    for (double time = seam + 60; time < seam + 2 * 86_400; time += 60) {
      double now = joined.kelvinsAt(time);
      assertThat(Math.abs(now - before)).as("a step").isLessThan(0.3);
      assertThat(joined.sigmaAt(time)).isBetween(sigma - 1e-9, typical.sigmaAt(time) + 1e-9);
      before = now;
    }
    // a day later 1/e of the difference is left, e.g. 14 °C against what is typical at the seam
    double difference = 273.15 + 14 - typical.kelvinsAt(seam);
    assertThat(joined.kelvinsAt(seam + 86_400) - typical.kelvinsAt(seam + 86_400))
        .isCloseTo(difference / Math.E, within(1e-9));
    assertThat(joined.given().in(UnitSystem.SI)).contains("feed a service", "; then typical");
  }
}
