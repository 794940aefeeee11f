package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.any;
import static com.github.tomakehurst.wiremock.client.WireMock.anyUrl;
import static com.github.tomakehurst.wiremock.client.WireMock.get;
import static com.github.tomakehurst.wiremock.client.WireMock.getRequestedFor;
import static com.github.tomakehurst.wiremock.client.WireMock.urlPathMatching;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.tomakehurst.wiremock.client.ResponseDefinitionBuilder;
import dawngauge.ambient.WeatherFill;
import dawngauge.planner.Planner;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The demo haul filled by a service on this computer, with a network and without. */
class FeedHaulTest extends FeedTest {

  private static final String POINTS = "/nws/points/.*";
  private static final String GRID = "/nws/gridpoints/.*";

  private final Planner planner = new Planner(SettingsFile.defaults(), List.of());
  private final Trip demo = planner.store().open(Path.of("demo-data", "gap-haul.dawngauge")).get();

  @BeforeEach
  void service() {
    ZonedDateTime now = ZonedDateTime.now(ZoneOffset.UTC);
    String until = http(now.plusHours(1));
    String made = http(now.minusMinutes(10));
    server.stubFor(
        get(urlPathMatching(POINTS))
            .willReturn(
                fresh(
                    """
                    {"properties": {"forecastGridData": "https://x.invalid/gridpoints/G/1,1",
                      "forecastHourly": "https://x.invalid/gridpoints/G/1,1/forecast/hourly",
                      "observationStations": "https://x.invalid/gridpoints/G/1,1/stations"}}
                    """,
                    until,
                    made)));
    server.stubFor(
        get(urlPathMatching(GRID))
            .willReturn(
                fresh(
                    """
                    {"properties": {"updateTime": "2027-04-06T10:30:00+00:00",
                      "elevation": {"unitCode": "wmoUnit:m", "value": 1500},
                      "temperature": {"uom": "wmoUnit:degC", "values": [
                        {"validTime": "2027-04-06T06:00:00+00:00/PT9H", "value": 2},
                        {"validTime": "2027-04-06T15:00:00+00:00/PT3H", "value": 10},
                        {"validTime": "2027-04-06T18:00:00+00:00/P3D", "value": 16}]}}}
                    """,
                    until,
                    made)));
  }

  private static ResponseDefinitionBuilder fresh(String body, String until, String made) {
    return json(body).withHeader("Expires", until).withHeader("Last-Modified", made);
  }

  private static String http(ZonedDateTime time) {
    return DateTimeFormatter.RFC_1123_DATE_TIME.format(time);
  }

  private WeatherFill.Result fill(Trip trip) {
    return planner.temperatures().ask(trip, chain(), (done, all, place) -> true);
  }

  @Test
  void oneQuestionFillsTheRouteAndWhatIsTypedStays() {
    WeatherFill.Result result = fill(demo);
    assertThat(result.places())
        .isNotEmpty()
        .allSatisfy(
            place ->
                assertThat(place.from())
                    .isNotNull()
                    .extracting(Provenance::source)
                    .isEqualTo("U.S. National Weather Service"));
    List<AmbientEntry> typed =
        demo.ambient().stream()
            .filter(entry -> entry.provenance().kind() == Provenance.Kind.TYPED)
            .toList();
    assertThat(result.trip().ambient()).containsAll(typed);
    assertThat(planner.plan(demo).advice()).isNotNull();
    assertThat(planner.plan(result.trip()).problems().size())
        .isLessThan(planner.plan(demo).problems().size());
    // Each place once, the shared cell once.
    TreeSet<String> asked = new TreeSet<>();
    server.getAllServeEvents().forEach(event -> asked.add(event.getRequest().getUrl()));
    assertThat(server.getAllServeEvents()).hasSameSizeAs(asked);
    server.verify(1, getRequestedFor(urlPathMatching(GRID)));
  }

  /**
   * Worked by hand: Raton NM stands at 6680 ft = 2036.064 m, the cell at 1500 m; 6.5 K/km (U.S.
   * Standard Atmosphere, 1976) over 536.064 m are 3.484 K. 2 °C at 14:00 UTC become −1.484 °C, and
   * 10 °C at 15:00 UTC 6.516 °C; on the clock there (MDT) that is 08:00 and 09:00.
   */
  @Test
  void theCellsTemperatureIsCorrectedToTheStopOnce() {
    AmbientEntry raton =
        fill(demo).trip().ambient().stream()
            .filter(entry -> entry.isAtStop() && entry.stop().equals("raton"))
            .filter(entry -> entry.provenance().kind() == Provenance.Kind.FEED)
            .findFirst()
            .orElseThrow();
    AmbientEntry.Hourly hours = (AmbientEntry.Hourly) raton.figure();
    assertThat(celsius(hours, "2027-04-06T14:00:00Z")).isCloseTo(-1.484, within(0.051));
    assertThat(celsius(hours, "2027-04-06T15:00:00Z")).isCloseTo(6.516, within(0.051));
    assertThat(hours.hours().get(0).time().text()).contains("America/Denver");
    assertThat(raton.provenance().issued()).isEqualTo(Instant.parse("2027-04-06T10:30:00Z"));
  }

  private static double celsius(AmbientEntry.Hourly hours, String time) {
    return hours.hours().stream()
            .filter(at -> at.time().instant().equals(Instant.parse(time)))
            .findFirst()
            .orElseThrow()
            .temperature()
            .value()
            .kelvins()
        - 273.15;
  }

  @Test
  void aSecondRefreshWhileAnswersHoldAsksNothingAndChangesNothing() {
    Trip filled = fill(demo).trip();
    server.resetRequests();
    reopen(FeedOptions.NWS, FeedOptions.MET);
    WeatherFill.Result again = fill(filled);
    assertThat(server.getAllServeEvents()).isEmpty();
    assertThat(planner.temperatures().changes(again.trip())).isEmpty();
  }

  @Test
  void withThePlugPulledWhatIsKnownStaysAndOnlyANoteComes() {
    Trip filled = fill(demo).trip();
    server.resetAll();
    server.stubFor(any(anyUrl()).willReturn(aResponse().withStatus(503)));
    cache = cache.resolve("another computer");
    reopen(FeedOptions.NWS, FeedOptions.MET);
    WeatherFill.Result again = fill(filled);
    assertThat(again.trip().ambient()).isEqualTo(filled.ambient());
    assertThat(again.problems())
        .hasSizeLessThanOrEqualTo(2)
        .isNotEmpty()
        .allMatch(problem -> problem.code() == ProblemCode.FEED_FAILED)
        .allSatisfy(problem -> assertThat(problem.where()).contains("Raton NM").contains("more"));
    assertThat(again.isOutage()).isTrue();
    assertThat(planner.plan(again.trip()).problems()).isEqualTo(planner.plan(filled).problems());
  }

  /** 2 °C is 35.6 °F, 10 °C is 50 °F, 16 °C is 60.8 °F: labelled °C, not one of them gets in. */
  @Test
  void figuresInAnotherUnitThanSaidAreRefusedWithAWord() {
    server.stubFor(
        get(urlPathMatching(GRID))
            .willReturn(
                json(
                    """
                    {"properties": {"updateTime": "2027-04-06T10:30:00+00:00",
                      "elevation": {"unitCode": "wmoUnit:m", "value": 1500},
                      "temperature": {"uom": "wmoUnit:degC", "values": [
                        {"validTime": "2027-04-06T06:00:00+00:00/PT9H", "value": 35.6},
                        {"validTime": "2027-04-06T15:00:00+00:00/PT3H", "value": 50},
                        {"validTime": "2027-04-06T18:00:00+00:00/P3D", "value": 60}]}}}
                    """)));
    WeatherFill.Result result = fill(demo);
    assertThat(result.trip().ambient())
        .noneMatch(entry -> entry.provenance().kind() == Provenance.Kind.FEED);
    assertThat(result.problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.FEED_IMPLAUSIBLE);
              assertThat(problem.where()).contains("Raton NM");
            });
  }

  @Test
  void itCanBeStoppedBetweenTwoQuestions() {
    WeatherFill.Result result =
        planner.temperatures().ask(demo, chain(), (done, all, place) -> done < 2);
    assertThat(result.problems())
        .anyMatch(problem -> problem.code() == ProblemCode.WEATHER_STOPPED);
    server.verify(2, getRequestedFor(urlPathMatching(POINTS)));
  }
}
