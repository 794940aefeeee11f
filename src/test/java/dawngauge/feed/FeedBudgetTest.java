package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.any;
import static com.github.tomakehurst.wiremock.client.WireMock.anyUrl;
import static org.assertj.core.api.Assertions.assertThat;

import com.github.tomakehurst.wiremock.WireMockServer;
import com.github.tomakehurst.wiremock.client.ResponseDefinitionBuilder;
import com.github.tomakehurst.wiremock.core.WireMockConfiguration;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two hosts on this computer: how long a refresh may take, and how much of it one may cost. */
class FeedBudgetTest {

  private static final Instant NOW = FeedTest.NOW;

  private final WireMockServer first = server();
  private final WireMockServer second = server();

  /** Moved by pauses; a test of real waiting takes the real one. */
  private final Moment time = new Moment(NOW);

  private Path cache = Path.of("");

  private static WireMockServer server() {
    return new WireMockServer(
        WireMockConfiguration.options().dynamicPort().dynamicHttpsPort().bindAddress("127.0.0.1"));
  }

  @BeforeEach
  void start(@TempDir Path folder) {
    cache = folder;
    first.start();
    second.start();
  }

  @AfterEach
  void stop() {
    first.stop();
    second.stop();
  }

  private FeedChain open(Duration refresh, Duration host, boolean realTime) {
    HttpLimits limits =
        new HttpLimits(
            Duration.ofSeconds(2),
            Duration.ofSeconds(30),
            Duration.ofSeconds(30),
            refresh,
            host,
            Duration.ZERO,
            2,
            3,
            Duration.ofSeconds(1),
            Duration.ofSeconds(30),
            Duration.ofMinutes(2),
            Duration.ofMinutes(10),
            200_000,
            5_000_000);
    return FeedChain.open(
        new FeedOptions(
            List.of(FeedOptions.NWS, FeedOptions.MET),
            Map.of(
                FeedOptions.NWS, new ServiceAddress("http://127.0.0.1:" + first.port()),
                FeedOptions.MET, new ServiceAddress("http://127.0.0.1:" + second.port())),
            limits),
        new Consent("crew@example.org"),
        "Dawngauge/test",
        cache,
        realTime ? Clock.systemUTC() : new Moved(time),
        realTime ? Pause.WAITING : time::pass);
  }

  /** The time of a test. */
  private static final class Moment {
    private volatile Instant now;

    Moment(Instant now) {
      this.now = now;
    }

    Instant get() {
      return now;
    }

    void set(Instant later) {
      now = later;
    }

    synchronized void pass(Duration length) {
      now = now.plus(length);
    }
  }

  private static final class Moved extends Clock {
    private final Moment time;

    Moved(Moment time) {
      this.time = time;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return Clock.fixed(instant(), zone);
    }

    @Override
    public Instant instant() {
      return time.get();
    }
  }

  /** The second service's answer for any place from now on. */
  private static ResponseDefinitionBuilder sound(Instant from) {
    return FeedTest.json(
        """
        {"properties": {"meta": {"updated_at": "%s", "units": {"air_temperature": "celsius"}},
           "timeseries": [
             {"time": "%s", "data": {"instant": {"details": {"air_temperature": 3.5}}}},
             {"time": "%s", "data": {"instant": {"details": {"air_temperature": 4.5}}}}]}}
        """
            .formatted(from, from, from.plusSeconds(3600)));
  }

  private static WeatherQuery place(int number, Instant from) {
    return new WeatherQuery(
        new Coordinate(36 + 0.01 * number, -104), 1500, from, from.plusSeconds(3600));
  }

  private static void answers(WireMockServer server, ResponseDefinitionBuilder answer) {
    server.stubFor(any(anyUrl()).willReturn(answer));
  }

  /** The first says nothing for ten seconds each time; the second has the whole trip. */
  @Test
  void aSlowFirstServiceHandsOverToASoundSecondWithinTheBudget() {
    Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
    answers(first, aResponse().withFixedDelay(10_000));
    answers(second, sound(now));
    List<Outcome<WeatherAnswer>> all = new ArrayList<>();
    try (FeedChain chain = open(Duration.ofSeconds(8), Duration.ofSeconds(1), true)) {
      chain.begin();
      for (int i = 0; i < 6; i++) {
        all.add(chain.forecast(place(i, now)));
      }
    }
    assertThat(all)
        .allSatisfy(outcome -> assertThat(outcome.get().service()).isEqualTo("MET Norway"));
    assertThat(all.get(5).problems())
        .extracting(Problem::text)
        .singleElement()
        .asString()
        .contains("U.S. National Weather Service");
    assertThat(Duration.between(now, Instant.now())).isLessThan(Duration.ofSeconds(8));
    assertThat(first.getAllServeEvents().size()).isLessThanOrEqualTo(2);
  }

  /** Each answer of the first is right but late: what is over two seconds counts as waiting. */
  @Test
  void aServiceThatAnswersAlwaysLateIsLeftAlone() {
    HostThrottle late = new HostThrottle(Clock.fixed(NOW, ZoneOffset.UTC), Duration.ZERO);
    for (int i = 0; i < 3; i++) {
      late.took(Duration.ofSeconds(8), true);
    }
    assertThat(late.waited()).isEqualTo(Duration.ofSeconds(18));
    late.took(Duration.ofSeconds(1), true);
    assertThat(late.waited()).isEqualTo(Duration.ofSeconds(18));
    late.begin();
    assertThat(late.waited()).isZero();
  }

  /** An outage of 500s: a few questions, then none; not three for each of 200 places. */
  @Test
  void anOutageOfFaultsCostsAFewQuestionsNotOneAPlace() {
    answers(first, aResponse().withStatus(500));
    answers(second, aResponse().withStatus(500));
    try (FeedChain chain = open(Duration.ofSeconds(60), Duration.ofSeconds(20), false)) {
      chain.begin();
      for (int i = 0; i < 200; i++) {
        Outcome<WeatherAnswer> outcome = chain.forecast(place(i, NOW));
        assertThat(FeedTest.codes(outcome))
            .containsExactly(ProblemCode.FEED_FAILED, ProblemCode.FEED_FAILED);
      }
    }
    assertThat(first.getAllServeEvents()).hasSize(6); // two questions, each three times
    assertThat(second.getAllServeEvents()).hasSize(6);
    assertThat(Duration.between(NOW, time.get())).isLessThan(Duration.ofSeconds(60));
  }

  @ParameterizedTest
  @CsvSource({"500, application/json", "400, application/json", "200, text/html"})
  void whoGivesNothingOfUseTwiceIsLeftAloneWhateverTheReason(int status, String type) {
    answers(
        second,
        aResponse().withStatus(status).withHeader("Content-Type", type).withBody("<html></html>"));
    answers(first, aResponse().withStatus(404));
    try (FeedChain chain = open(Duration.ofSeconds(60), Duration.ofSeconds(20), false)) {
      chain.begin();
      chain.forecast(place(0, NOW));
      chain.forecast(place(1, NOW));
      int asked = second.getAllServeEvents().size();
      Outcome<WeatherAnswer> third = chain.forecast(place(2, NOW));
      assertThat(third.hasValue()).isFalse();
      assertThat(second.getAllServeEvents()).hasSize(asked);
    }
  }

  /** 25 s would be waited for as such, but not three times, nor beyond what a host may cost. */
  @Test
  void aRetryAfterBeyondTheBudgetIsToldAndNotWaitedFor() {
    answers(first, aResponse().withStatus(404));
    answers(second, aResponse().withStatus(503).withHeader("Retry-After", "25"));
    try (FeedChain chain = open(Duration.ofSeconds(60), Duration.ofSeconds(20), false)) {
      chain.begin();
      Outcome<WeatherAnswer> outcome = chain.forecast(place(0, NOW));
      assertThat(FeedTest.codes(outcome)).contains(ProblemCode.FEED_BUSY);
      assertThat(outcome.problems().get(1).text()).contains("MET Norway").contains("12:00 UTC");
      chain.forecast(place(1, NOW));
    }
    assertThat(second.getAllServeEvents()).hasSize(1);
    assertThat(time.get()).isEqualTo(NOW);
  }

  @Test
  void whatTheBudgetDoesNotReachIsToldAndTheNextRefreshGoesOn() {
    answers(first, aResponse().withStatus(404));
    answers(second, sound(NOW));
    try (FeedChain chain = open(Duration.ofSeconds(60), Duration.ofSeconds(20), false)) {
      chain.begin();
      assertThat(chain.forecast(place(0, NOW)).hasValue()).isTrue();
      time.set(NOW.plusSeconds(61));
      Outcome<WeatherAnswer> over = chain.forecast(place(1, NOW));
      assertThat(FeedTest.codes(over)).containsExactly(ProblemCode.FEED_TIME_OVER);
      assertThat(over.problems().get(0).text()).contains("60 s").contains("refresh again");
      chain.begin();
      assertThat(chain.forecast(place(1, NOW)).hasValue()).isTrue();
    }
  }

  @Test
  void aWrongCertificateHasAClearWord() {
    answers(second, sound(NOW));
    HttpLimits limits = FeedTest.limits();
    try (FeedChain chain =
        FeedChain.open(
            new FeedOptions(
                List.of(FeedOptions.MET),
                Map.of(
                    FeedOptions.MET, new ServiceAddress("https://127.0.0.1:" + second.httpsPort())),
                limits),
            new Consent("crew@example.org"),
            "Dawngauge/test",
            cache,
            Clock.fixed(NOW, ZoneOffset.UTC),
            length -> {})) {
      Outcome<WeatherAnswer> outcome = chain.forecast(place(0, NOW));
      assertThat(FeedTest.codes(outcome)).containsExactly(ProblemCode.FEED_UNREACHABLE);
      assertThat(outcome.problems().get(0).text())
          .contains("certificate is not to be trusted")
          .contains("clock");
    }
    assertThat(second.getAllServeEvents()).isEmpty();
  }
}
