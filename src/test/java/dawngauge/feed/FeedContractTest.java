package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.any;
import static com.github.tomakehurst.wiremock.client.WireMock.anyUrl;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@link dawngauge.ambient.WeatherService} promises, of every service. */
class FeedContractTest extends FeedTest {

  private void service(String name) {
    reopen(name);
    cell();
    answers(
        "/nws/gridpoints/XYZ/1,2",
        json(
            """
            {"properties": {"updateTime": "2027-04-06T10:30:00+00:00",
              "elevation": {"unitCode": "wmoUnit:m", "value": 2290},
              "temperature": {"uom": "wmoUnit:degC", "values": [
                {"validTime": "2027-04-06T10:00:00+00:00/PT4H", "value": 3},
                {"validTime": "2027-04-06T14:00:00+00:00/PT4H", "value": 5}]}}}
            """));
    answers(
        "/met/compact",
        json(
            """
            {"properties": {"meta": {"updated_at": "2027-04-06T11:40:00Z",
                "units": {"air_temperature": "celsius"}},
              "timeseries": [
                {"time": "2027-04-06T12:00:00Z",
                 "data": {"instant": {"details": {"air_temperature": 3}}}},
                {"time": "2027-04-06T13:00:00Z",
                 "data": {"instant": {"details": {"air_temperature": 4}}}},
                {"time": "2027-04-06T19:00:00Z",
                 "data": {"instant": {"details": {"air_temperature": 5}}}}]}}
            """));
  }

  @ParameterizedTest
  @ValueSource(strings = {FeedOptions.NWS, FeedOptions.MET})
  void anAnswerIsInOrderNamedDatedAndCoversWhatWasAsked(String name) {
    service(name);
    assertThat(chain().covers(PLAINS)).isTrue();
    WeatherAnswer answer = chain().forecast(query(PLAINS, 4)).get();
    assertThat(answer.service()).isEqualTo(chain().name());
    assertThat(answer.issued()).isBefore(NOW);
    assertThat(answer.elevationMeters()).isBetween(2000.0, 2500.0);
    Instant first = answer.temperatures().get(0).time();
    Instant last = answer.temperatures().get(answer.temperatures().size() - 1).time();
    assertThat(first).isBeforeOrEqualTo(NOW);
    assertThat(last).isAfterOrEqualTo(NOW.plus(Duration.ofHours(4)));
    assertThat(answer.temperatures())
        .allSatisfy(at -> assertThat(at.kelvins()).isBetween(276.0, 278.2))
        .isSortedAccordingTo((a, b) -> a.time().compareTo(b.time()));
  }

  @ParameterizedTest
  @ValueSource(strings = {FeedOptions.NWS, FeedOptions.MET})
  void beyondItsHorizonNothingIsAskedAndItIsSaid(String name) {
    service(name);
    Instant later = NOW.plus(Duration.ofDays(30));
    Outcome<WeatherAnswer> outcome =
        chain().forecast(new WeatherQuery(PLAINS, 2300, later, later.plusSeconds(60)));
    assertThat(codes(outcome)).containsExactly(ProblemCode.FEED_NO_TEMPERATURE);
    assertThat(server.getAllServeEvents()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {FeedOptions.NWS, FeedOptions.MET})
  void itCanBeInterruptedAndLeavesTheThreadSo(String name) {
    service(name);
    Thread.currentThread().interrupt();
    assertThat(codes(chain().forecast(query(PLAINS, 1))))
        .containsExactly(ProblemCode.FEED_CANCELLED);
    assertThat(Thread.interrupted()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {FeedOptions.NWS, FeedOptions.MET})
  void whateverComesItThrowsNothingAndNamesItself(String name) {
    service(name);
    String[] bodies = {
      "",
      "0",
      "\"x\"",
      "[[[[",
      "{\"properties\": null}",
      "{\"properties\": {\"meta\": []}}",
      "{\"properties\": {\"temperature\": {\"values\": [1, null, {}, {\"validTime\": 5}]}}}",
      "{\"properties\": {\"timeseries\": [1, null, {}, {\"time\": {}}]}}",
      "{\"a\":".repeat(5000),
      "\u0000\u0001\uFFFD"
    };
    for (int status : new int[] {200, 204, 299, 302, 304, 400, 418, 500, 599}) {
      for (String body : bodies) {
        server.resetAll();
        server.stubFor(
            any(anyUrl())
                .willReturn(
                    aResponse()
                        .withStatus(status)
                        .withHeader("Content-Type", "application/json")
                        .withBody(body)));
        reopen(name);
        Outcome<WeatherAnswer> outcome = chain().forecast(query(PLAINS, 1));
        assertThat(outcome.hasValue()).as("%s %s", status, body).isFalse();
        assertThat(outcome.problems())
            .isNotEmpty()
            .allSatisfy(problem -> assertThat(problem.text()).contains(chain().name()));
      }
    }
  }
}
