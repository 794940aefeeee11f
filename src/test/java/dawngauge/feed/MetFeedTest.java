package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.equalTo;
import static com.github.tomakehurst.wiremock.client.WireMock.getRequestedFor;
import static com.github.tomakehurst.wiremock.client.WireMock.urlPathEqualTo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.tomakehurst.wiremock.client.ResponseDefinitionBuilder;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import org.junit.jupiter.api.Test;

/**
 * Locationforecast 2.0 as its documentation has it (docs.api.met.no); the figures are invented. The
 * kept answers go by the computer's own clock, so their headers do too.
 */
class MetFeedTest extends FeedTest {

  private static final String PATH = "/met/compact";

  private static ResponseDefinitionBuilder forecast() {
    return json(
        """
        {"geometry": {"coordinates": [10.2, 60.1, 120]},
         "properties": {"meta": {"updated_at": "2027-04-06T11:40:00Z",
             "units": {"air_temperature": "celsius"}},
           "timeseries": [
             {"time": "2027-04-06T12:00:00Z",
              "data": {"instant": {"details": {"air_temperature": 3.5}}}},
             {"time": "2027-04-06T13:00:00Z",
              "data": {"instant": {"details": {"air_temperature": 4.5}}}},
             {"time": "2027-04-06T19:00:00Z", "data": {"instant": {"details": {}}}}]}}
        """);
  }

  private static String http(ZonedDateTime time) {
    return DateTimeFormatter.RFC_1123_DATE_TIME.format(time.withZoneSameInstant(ZoneOffset.UTC));
  }

  @Test
  void aPlaceElsewhereIsAskedThereWithItsHeight() {
    answers(PATH, forecast());
    Outcome<WeatherAnswer> outcome = chain().forecast(query(NORTH, 1));
    WeatherAnswer answer = outcome.get();
    assertThat(answer.service()).isEqualTo("MET Norway");
    assertThat(answer.issued()).isEqualTo(Instant.parse("2027-04-06T11:40:00Z"));
    // The height that was passed: to correct again would be once too often.
    assertThat(answer.elevationMeters()).isEqualTo(2300);
    assertThat(answer.temperatures().get(0).kelvins() - 273.15).isCloseTo(3.5, within(1e-9));
    server.verify(
        getRequestedFor(urlPathEqualTo(PATH))
            .withQueryParam("lat", equalTo("60.1"))
            .withQueryParam("lon", equalTo("10.2"))
            .withQueryParam("altitude", equalTo("2300"))
            .withHeader("User-Agent", equalTo("Dawngauge/test (crew@example.org)")));
  }

  @Test
  void nothingIsAskedBeforeTheAnswerExpires() {
    ZonedDateTime now = ZonedDateTime.now(ZoneOffset.UTC);
    answers(
        PATH,
        forecast()
            .withHeader("Expires", http(now.plusMinutes(30)))
            .withHeader("Date", http(now))
            .withHeader("Last-Modified", http(now.minusMinutes(5))));
    chain().forecast(query(NORTH, 1)).get();
    reopen(FeedOptions.MET);
    assertThat(chain().forecast(query(NORTH, 1)).hasValue()).isTrue();
    server.verify(1, getRequestedFor(urlPathEqualTo(PATH)));
  }

  @Test
  void anExpiredAnswerIsAskedForOnlyIfItChanged() {
    ZonedDateTime now = ZonedDateTime.now(ZoneOffset.UTC);
    String made = http(now.minusMinutes(90));
    answers(
        PATH,
        forecast()
            .withHeader("Date", http(now.minusMinutes(60)))
            .withHeader("Expires", http(now.minusMinutes(30)))
            .withHeader("Last-Modified", made));
    chain().forecast(query(NORTH, 1)).get();
    server.stubFor(
        path(PATH)
            .withHeader("If-Modified-Since", equalTo(made))
            .willReturn(
                aResponse().withStatus(304).withHeader("Expires", http(now.plusMinutes(30)))));
    reopen(FeedOptions.MET);
    WeatherAnswer again = chain().forecast(query(NORTH, 1)).get();
    assertThat(again.temperatures().get(0).kelvins() - 273.15).isCloseTo(3.5, within(1e-9));
    server.verify(
        1, getRequestedFor(urlPathEqualTo(PATH)).withHeader("If-Modified-Since", equalTo(made)));
  }

  @Test
  void itHasNothingMeasured() {
    assertThat(codes(chain().observed(query(NORTH, 1))))
        .containsExactly(ProblemCode.FEED_NO_OBSERVATIONS);
    assertThat(server.getAllServeEvents()).isEmpty();
  }

  @Test
  void aWarningOfTheServiceIsPassedOn() {
    answers(PATH, forecast().withStatus(203));
    Outcome<WeatherAnswer> outcome = chain().forecast(query(NORTH, 1));
    assertThat(outcome.hasValue()).isTrue();
    assertThat(codes(outcome)).contains(ProblemCode.FEED_DEPRECATED);
  }
}
