package dawngauge.ambient;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.testdata.FakeWeather;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A trip filled by a weather service that is a function in this test. */
class WeatherFillTest {

  private static final Coordinate DENVER = new Coordinate(39.74, -104.99);
  private static final Coordinate PUEBLO = new Coordinate(38.25, -104.61);
  private static final Coordinate AMARILLO = new Coordinate(35.19, -101.85);
  private static final WeatherFill.Progress ON = (done, all, place) -> true;

  private static StopBuilder at(String id, Coordinate place, String elevation) {
    return stop(id).at(place.latitude(), place.longitude(), "America/Denver").elevation(elevation);
  }

  private static Trip haul() {
    return Trips.of(RigBuilder.trailer())
        .stop(at("denver", DENVER, "5280 ft").leaves("2027-06-01T06:00-06:00[America/Denver]"))
        .stop(at("pueblo", PUEBLO, "4692 ft").stays(Duration.ofMinutes(30)))
        .stop(at("amarillo", AMARILLO, "3605 ft"))
        .trip();
  }

  private static WeatherFill.Result fill(Trip trip, FakeWeather service) {
    return WeatherFill.fill(trip, Itinerary.of(trip).get(), service, ON);
  }

  private static FakeWeather steady(double celsius) {
    return new FakeWeather("2027-05-31T18:00:00Z", time -> celsius);
  }

  private static Ambient ambient(Trip trip) {
    return Ambient.of(
            AmbientNeeds.of(trip, Itinerary.of(trip).get()), List.of(new TypedAmbient(trip)))
        .get();
  }

  private static double celsius(Trip trip, int stop, String at) {
    AirSeries series = known(ambient(trip).seriesAt(stop));
    return series.kelvinsAt((double) Instant.parse(at).getEpochSecond()) - 273.15;
  }

  @Test
  void everyStopAndEveryFiftyMilesIsAskedOnceAndAtMostOnce() {
    FakeWeather service = steady(20);
    WeatherFill.Result result = fill(haul(), service);
    double legs =
        Itinerary.of(haul()).get().drives().stream()
            .mapToDouble(drive -> Math.ceil(drive.meters() / (50 * 1609.344)) - 1)
            .sum();
    assertThat(service.asked()).hasSize(3 + (int) legs);
    assertThat(result.asked()).isEqualTo(service.asked().size());
    assertThat(result.problems()).isEmpty();
    assertThat(result.places()).filteredOn(WeatherFill.Filled::atStop).hasSize(3);
    assertThat(service.asked())
        .extracting(WeatherQuery::place)
        .contains(DENVER, PUEBLO, AMARILLO)
        .doesNotHaveDuplicates();
  }

  /** 5,280 ft is 1,609.3 m; a cell at 2,000 m is 390.7 m higher: 6.5 K/km · 0.3907 km = 2.54 K. */
  @Test
  void aCellsHeightIsCorrectedToTheGroundOnce() {
    Trip filled = fill(haul(), steady(20).atElevation(2000)).trip();
    assertThat(celsius(filled, 0, "2027-06-01T12:00:00Z")).isCloseTo(22.5, within(0.051));
    Trip passed = fill(haul(), steady(20)).trip(); // no height: as the service took it
    assertThat(celsius(passed, 0, "2027-06-01T12:00:00Z")).isCloseTo(20, within(1e-9));
    AmbientEntry entry = filled.ambient().get(0);
    assertThat(known(entry.provenance().elevation()).text()).isEqualTo("2000 m");
    assertThat(entry.provenance().source()).isEqualTo("fake service");
  }

  @Test
  void typedAirStaysAndIsNotAskedFor() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                at("denver", DENVER, "5280 ft")
                    .leaves("2027-06-01T06:00-06:00[America/Denver]")
                    .steady("41 °F"))
            .stop(at("pueblo", PUEBLO, "4692 ft"))
            .trip();
    FakeWeather service = steady(20);
    WeatherFill.Result result = fill(trip, service);
    assertThat(service.asked()).extracting(WeatherQuery::place).doesNotContain(DENVER);
    assertThat(celsius(result.trip(), 0, "2027-06-01T12:00:00Z")).isCloseTo(5, within(1e-9));
    assertThat(celsius(result.trip(), 1, "2027-06-01T14:00:00Z")).isCloseTo(20, within(1e-9));
  }

  @Test
  void beyondItsHorizonTypicalDaysGoOnAndSaySo() {
    FakeWeather service = steady(20).lookingAhead(Duration.ofHours(10)); // to 04:00 UTC
    WeatherFill.Result result = fill(haul(), service);
    assertThat(result.places().get(0).typicalToo()).isTrue();
    assertThat(known(result.places().get(result.places().size() - 1).from()).kind())
        .isEqualTo(Provenance.Kind.TYPICAL);
    assertThat(result.trip().ambient())
        .extracting(entry -> entry.provenance().kind())
        .contains(Provenance.Kind.FEED, Provenance.Kind.TYPICAL);
  }

  @Test
  void whereTheServiceFailsTheLastAnswerStaysAndTheRestIsRenewed() {
    Trip first = fill(haul(), steady(20)).trip();
    FakeWeather later = new FakeWeather("2027-05-31T23:00:00Z", time -> 14).brokenAt(PUEBLO);
    WeatherFill.Result result = fill(first, later);
    assertThat(celsius(result.trip(), 0, "2027-06-01T12:00:00Z")).isCloseTo(14, within(1e-9));
    assertThat(celsius(result.trip(), 1, "2027-06-01T14:00:00Z")).isCloseTo(20, within(1e-9));
    assertThat(result.problems()).extracting(Problem::where).contains("pueblo");
    assertThat(result.trip().earlierAmbient())
        .filteredOn(AmbientEntry::isAtStop)
        .extracting(AmbientEntry::stop)
        .containsExactly("denver", "amarillo");
    assertThat(
            celsius(first.withAmbient(result.trip().earlierAmbient()), 0, "2027-06-01T12:00:00Z"))
        .isCloseTo(20, within(1e-9));
  }

  @Test
  void withoutAnyAnswerTypicalDaysAreThere() {
    WeatherFill.Result result =
        WeatherFill.fill(
            haul(),
            Itinerary.of(haul()).get(),
            query -> dawngauge.problem.Outcome.failed(Problem.of(ProblemCode.NO_AMBIENT, "x")),
            ON);
    assertThat(result.trip().ambient())
        .isNotEmpty()
        .allSatisfy(
            entry -> assertThat(entry.provenance().kind()).isEqualTo(Provenance.Kind.TYPICAL));
  }

  @Test
  void stoppedItKeepsWhatItHas() {
    FakeWeather service = steady(20);
    WeatherFill.Result result =
        WeatherFill.fill(
            haul(), Itinerary.of(haul()).get(), service, (done, all, place) -> done < 1);
    assertThat(service.asked()).hasSize(1);
    assertThat(celsius(result.trip(), 0, "2027-06-01T12:00:00Z")).isCloseTo(20, within(1e-9));
    assertThat(result.problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.WEATHER_STOPPED);
  }

  @Test
  void placesInOneCellShareOneQuestion() {
    Coordinate beside = new Coordinate(39.745, -104.985); // 700 m off
    assertThat(GreatCircle.between(DENVER, beside).meters()).isBetween(600.0, 800.0);
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(at("yard", DENVER, "5280 ft").leaves("2027-06-01T06:00-06:00[America/Denver]"))
            .stop(at("fuel", beside, "5300 ft").stays(Duration.ofMinutes(20)))
            .trip();
    FakeWeather service = steady(20);
    WeatherFill.Result result = fill(trip, service);
    assertThat(service.asked()).hasSize(1);
    assertThat(celsius(result.trip(), 1, "2027-06-01T13:00:00Z")).isCloseTo(20, within(1e-9));
  }

  /** What a plan was made with online opens the same offline. */
  @Test
  void theFilledTripIsSavedAndReadAgainTheSame() {
    Trip filled =
        fill(
                fill(haul(), steady(20).atElevation(1700)).trip(),
                new FakeWeather(
                    "2027-05-31T23:00:00Z", time -> time.getEpochSecond() % 86_400 / 7000.0))
            .trip();
    Trip again = TripFile.parse(TripFile.text(filled)).get();
    assertThat(again).isEqualTo(filled);
    assertThat(again.earlierAmbient()).isNotEmpty();
    assertThat(again.ambient()).anyMatch(entry -> !entry.isAtStop());
  }

  /** On the leg the air is the service's, not a straight line between the stops. */
  @Test
  void airOnTheLegCountsThere() {
    Trip filled =
        fill(
                haul(),
                new FakeWeather(
                        "2027-05-31T18:00:00Z",
                        time -> time.isBefore(Instant.parse("2027-06-01T13:00:00Z")) ? 10 : 30)
                    .atElevation(1500))
            .trip();
    AmbientEntry onLeg =
        filled.ambient().stream().filter(e -> !e.isAtStop()).findFirst().orElseThrow();
    double along = known(onLeg.along()).value().meters();
    double elevation = 1500;
    double at = (double) Instant.parse("2027-06-01T12:00:00Z").getEpochSecond();
    double kelvins = ambient(filled).onTheWay(along, elevation, at).kelvins();
    assertThat(kelvins - 273.15).isCloseTo(10, within(1.0));
  }

  /** Issued on 31 May 2025 for 1 June 2027: 730 days ahead, while services look 16 at most. */
  @Test
  void aForecastYearsOldInATripIsTold() {
    assertThat(OldForecasts.told(fill(haul(), steady(20)).trip())).isEmpty();
    FakeWeather old =
        new FakeWeather("2025-05-31T18:00:00Z", time -> 20).lookingAhead(Duration.ofDays(735));
    assertThat(OldForecasts.told(fill(haul(), old).trip()))
        .extracting(Problem::message)
        .anyMatch(text -> text.startsWith("denver: ") && text.contains("2025-05-31, 730 days"));
  }
}
