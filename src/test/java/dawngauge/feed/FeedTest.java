package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.get;
import static com.github.tomakehurst.wiremock.client.WireMock.urlPathEqualTo;

import com.github.tomakehurst.wiremock.WireMockServer;
import com.github.tomakehurst.wiremock.client.MappingBuilder;
import com.github.tomakehurst.wiremock.client.ResponseDefinitionBuilder;
import com.github.tomakehurst.wiremock.core.WireMockConfiguration;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Two services on this computer, asked as the real ones are; no test leaves it, none waits. */
abstract class FeedTest {

  static final Instant NOW = Instant.parse("2027-04-06T12:00:00Z");
  static final Coordinate PLAINS = new Coordinate(37.469123, -105.870456);
  static final Coordinate NORTH = new Coordinate(60.1, 10.2);

  final WireMockServer server =
      new WireMockServer(WireMockConfiguration.options().dynamicPort().bindAddress("127.0.0.1"));

  /** How long the feeds would have waited. */
  final List<Duration> waits = new CopyOnWriteArrayList<>();

  Path cache = Path.of("");
  private FeedChain chain = new FeedChain(List.of(new Nowhere()));

  @BeforeEach
  void start(@TempDir Path folder) {
    cache = folder;
    server.start();
    chain = open(List.of(FeedOptions.NWS, FeedOptions.MET));
  }

  @AfterEach
  void stop() {
    chain.close();
    server.stop();
  }

  FeedChain chain() {
    return chain;
  }

  /** Opens the services anew, as the program does when it starts. */
  void reopen(String... order) {
    chain.close();
    chain = open(List.of(order));
  }

  /** The same with less patience than a busy machine may need. */
  void reopenInAHurry(String... order) {
    chain.close();
    chain = open(List.of(order), limits(Duration.ofSeconds(2)));
  }

  private FeedChain open(List<String> order) {
    return open(order, limits());
  }

  private FeedChain open(List<String> order, HttpLimits limits) {
    ServiceAddress nws = new ServiceAddress("http://127.0.0.1:" + server.port() + "/nws");
    ServiceAddress met = new ServiceAddress("http://127.0.0.1:" + server.port() + "/met");
    return FeedChain.open(
        new FeedOptions(order, Map.of(FeedOptions.NWS, nws, FeedOptions.MET, met), limits),
        new Consent("crew@example.org"),
        "Dawngauge/test",
        cache,
        Clock.fixed(NOW, ZoneOffset.UTC),
        waits::add);
  }

  /** Patient: machines are shared. */
  static HttpLimits limits() {
    return limits(Duration.ofSeconds(30));
  }

  private static HttpLimits limits(Duration patience) {
    return new HttpLimits(
        patience,
        patience,
        patience.multipliedBy(2),
        Duration.ofSeconds(60),
        Duration.ofSeconds(20),
        Duration.ofMillis(250),
        2,
        3,
        Duration.ofSeconds(1),
        Duration.ofSeconds(30),
        Duration.ofMinutes(5),
        Duration.ofMinutes(10),
        200_000,
        5_000_000);
  }

  /** Asks for some hours from now on. */
  static WeatherQuery query(Coordinate place, int hours) {
    return new WeatherQuery(place, 2300, NOW, NOW.plus(Duration.ofHours(hours)));
  }

  static ResponseDefinitionBuilder json(String body) {
    return aResponse().withHeader("Content-Type", "application/geo+json").withBody(body);
  }

  void answers(String path, ResponseDefinitionBuilder answer) {
    server.stubFor(path(path).willReturn(answer));
  }

  static MappingBuilder path(String path) {
    return get(urlPathEqualTo(path));
  }

  /** The cell of the plains, on the service's own host as the real answers name it. */
  void cell() {
    answers(
        "/nws/points/37.4691,-105.8705",
        json(
            """
            {"properties": {
              "forecastGridData": "https://weather.invalid/gridpoints/XYZ/1,2",
              "forecastHourly": "https://weather.invalid/gridpoints/XYZ/1,2/forecast/hourly",
              "observationStations": "https://weather.invalid/gridpoints/XYZ/1,2/stations"}}
            """));
  }

  static List<ProblemCode> codes(Outcome<?> outcome) {
    return outcome.problems().stream().map(Problem::code).toList();
  }
}
