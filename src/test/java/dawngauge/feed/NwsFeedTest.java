package dawngauge.feed;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.equalTo;
import static com.github.tomakehurst.wiremock.client.WireMock.getRequestedFor;
import static com.github.tomakehurst.wiremock.client.WireMock.urlPathEqualTo;
import static com.github.tomakehurst.wiremock.client.WireMock.urlPathMatching;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/**
 * The service's answers as its public description has them (weather-gov.github.io/api, 2025); the
 * figures are invented.
 */
class NwsFeedTest extends FeedTest {

  private static final String GRID = "/nws/gridpoints/XYZ/1,2";
  private static final String HOURLY = GRID + "/forecast/hourly";

  private void grid(String values) {
    cell();
    answers(
        GRID,
        json(
            """
            {"properties": {
              "updateTime": "2027-04-06T10:30:00+00:00",
              "elevation": {"unitCode": "wmoUnit:m", "value": 2290.5},
              "temperature": {"uom": "wmoUnit:degC", "values": [%s]}}}
            """
                .formatted(values)));
  }

  private static String value(String time, String value) {
    return "{\"validTime\": \"" + time + "\", \"value\": " + value + "}";
  }

  private static double celsius(WeatherAnswer answer, String time) {
    return answer.temperatures().stream()
            .filter(at -> at.time().equals(Instant.parse(time)))
            .findFirst()
            .orElseThrow()
            .kelvins()
        - 273.15;
  }

  @Test
  void mergedIntervalsHoldUntilTheNextAndNullsLeaveAGap() {
    grid(
        value("2027-04-06T12:00:00+00:00/PT3H", "-2.5")
            + ","
            + value("2027-04-06T15:00:00+00:00/PT1H", "null")
            + ","
            + value("2027-04-06T16:00:00+00:00/PT2H", "6"));
    WeatherAnswer answer = chain().forecast(query(PLAINS, 5)).get();
    assertThat(answer.service()).isEqualTo("U.S. National Weather Service");
    assertThat(answer.issued()).isEqualTo(Instant.parse("2027-04-06T10:30:00Z"));
    assertThat(answer.elevationMeters()).isEqualTo(2290.5);
    assertThat(celsius(answer, "2027-04-06T12:00:00Z")).isCloseTo(-2.5, within(1e-9));
    assertThat(celsius(answer, "2027-04-06T14:00:00Z")).isCloseTo(-2.5, within(1e-9));
    assertThat(celsius(answer, "2027-04-06T16:00:00Z")).isCloseTo(6, within(1e-9));
  }

  @Test
  void whoAsksIsNamedAndThePlaceHasFourDecimals() {
    grid(value("2027-04-06T12:00:00+00:00/PT6H", "1"));
    chain().forecast(query(PLAINS, 2)).get();
    server.verify(
        getRequestedFor(urlPathEqualTo("/nws/points/37.4691,-105.8705"))
            .withHeader("User-Agent", equalTo("Dawngauge/test (crew@example.org)")));
  }

  @Test
  void absurdTemperaturesAreSetAsideAndNamed() {
    grid(
        value("2027-04-06T12:00:00+00:00/PT1H", "5")
            + ","
            + value("2027-04-06T13:00:00+00:00/PT1H", "41")
            + ","
            + value("2027-04-06T14:00:00+00:00/PT1H", "6")
            + ","
            + value("2027-04-06T15:00:00+00:00/PT1H", "-99"));
    Outcome<WeatherAnswer> outcome = chain().forecast(query(PLAINS, 3));
    assertThat(outcome.get().temperatures())
        .allSatisfy(at -> assertThat(at.kelvins() - 273.15).isBetween(4.9, 6.1));
    assertThat(outcome.problems())
        .filteredOn(problem -> problem.code() == ProblemCode.FEED_ABSURD)
        .singleElement()
        .satisfies(p -> assertThat(p.text()).contains("41.0 °C").contains("-99.0 °C"));
  }

  @Test
  void anUnknownUnitIsNotGuessed() {
    cell();
    answers(
        GRID,
        json(
            """
            {"properties": {"temperature": {"uom": "wmoUnit:furlong", "values": [
              {"validTime": "2027-04-06T12:00:00+00:00/PT6H", "value": 7}]}}}
            """));
    answers(HOURLY, json("{\"properties\": {\"periods\": []}}"));
    assertThat(chain().forecast(query(PLAINS, 2)).hasValue()).isFalse();
  }

  @Test
  void theHourlyForecastStandsInAndIsSaidToBeCoarser() {
    cell();
    answers(GRID, aResponse().withStatus(500));
    answers(
        HOURLY,
        json(
            """
            {"properties": {"updateTime": "2027-04-06T11:00:00+00:00",
              "elevation": {"unitCode": "wmoUnit:m", "value": 2290},
              "periods": [
              {"startTime": "2027-04-06T06:00:00-06:00", "endTime": "2027-04-06T07:00:00-06:00",
               "temperature": 23, "temperatureUnit": "F"},
              {"startTime": "2027-04-06T07:00:00-06:00", "endTime": "2027-04-06T08:00:00-06:00",
               "temperature": {"unitCode": "wmoUnit:degC", "value": -1}, "temperatureUnit": "F"}]}}
            """));
    Outcome<WeatherAnswer> outcome = chain().forecast(query(PLAINS, 1));
    assertThat(celsius(outcome.get(), "2027-04-06T12:00:00Z")).isCloseTo(-5, within(1e-9));
    assertThat(celsius(outcome.get(), "2027-04-06T13:00:00Z")).isCloseTo(-1, within(1e-9));
    assertThat(codes(outcome)).contains(ProblemCode.FEED_COARSER);
    assertThat(waits).isNotEmpty(); // it was asked again before
  }

  @Test
  void aCellOfImpossibleHeightIsNotUsedAndTheNextServiceIsAsked() {
    cell();
    answers(
        GRID,
        json(
            """
            {"properties": {"updateTime": "2027-04-06T10:30:00+00:00",
              "elevation": {"unitCode": "wmoUnit:m", "value": 99999},
              "temperature": {"uom": "wmoUnit:degC", "values": [
                {"validTime": "2027-04-06T12:00:00+00:00/PT12H", "value": 5}]}}}
            """));
    answers(
        "/met/compact",
        json(
            """
            {"properties": {"meta": {"updated_at": "2027-04-06T11:40:00Z",
                "units": {"air_temperature": "celsius"}},
              "timeseries": [{"time": "2027-04-06T12:00:00Z",
                "data": {"instant": {"details": {"air_temperature": 3}}}}]}}
            """));
    Outcome<WeatherAnswer> outcome = chain().forecast(query(PLAINS, 1));
    assertThat(outcome.get().service()).isEqualTo("MET Norway");
    assertThat(codes(outcome)).containsExactly(ProblemCode.FEED_WRONG_HEIGHT);
  }

  @Test
  void anOldForecastIsUsedWithAWord() {
    cell();
    answers(
        GRID,
        json(
            """
            {"properties": {"updateTime": "2024-04-06T10:30:00+00:00",
              "temperature": {"uom": "wmoUnit:degC", "values": [
                {"validTime": "2027-04-06T12:00:00+00:00/PT12H", "value": 5}]}}}
            """));
    Outcome<WeatherAnswer> outcome = chain().forecast(query(PLAINS, 2));
    assertThat(outcome.hasValue()).isTrue();
    assertThat(outcome.problems())
        .singleElement()
        .satisfies(
            problem -> assertThat(problem.text()).contains("2024-04-06 10:30 UTC, 1095 days ago"));
  }

  @Test
  void twoAnswersWithoutATemperatureAreNotCalledUsed() {
    reopen(FeedOptions.NWS);
    grid("");
    answers(HOURLY, json("{\"properties\": {\"periods\": []}}"));
    assertThat(codes(chain().forecast(query(PLAINS, 2))))
        .containsExactly(ProblemCode.FEED_NOT_UNDERSTOOD);
  }

  @Test
  void oneRefreshAsksEachPageOnce() {
    grid(value("2027-04-06T12:00:00+00:00/PT12H", "1"));
    chain().forecast(query(PLAINS, 2)).get();
    chain().forecast(query(PLAINS, 8)).get();
    server.verify(1, getRequestedFor(urlPathMatching("/nws/points/.*")));
    server.verify(1, getRequestedFor(urlPathEqualTo(GRID)));
  }

  @Test
  void whatLiesBeyondTheForecastIsNotEvenAsked() {
    reopen(FeedOptions.NWS);
    Instant later = NOW.plus(Duration.ofDays(20));
    Outcome<WeatherAnswer> outcome =
        chain().forecast(new WeatherQuery(PLAINS, 2300, later, later.plusSeconds(3600)));
    assertThat(codes(outcome)).containsExactly(ProblemCode.FEED_NO_TEMPERATURE);
    assertThat(server.getAllServeEvents()).isEmpty();
  }

  @Test
  void measuredTemperaturesComeFromTheNearestStation() {
    cell();
    answers(
        GRID + "/stations",
        json(
            """
            {"features": [
              {"geometry": {"coordinates": [-105.5, 37.3]},
               "properties": {"stationIdentifier": "FARO",
                 "elevation": {"unitCode": "wmoUnit:m", "value": 2400}}},
              {"geometry": {"coordinates": [-105.86, 37.44]},
               "properties": {"stationIdentifier": "NEAR",
                 "elevation": {"unitCode": "wmoUnit:m", "value": 2297}}}]}
            """));
    answers(
        "/nws/stations/NEAR/observations",
        json(
            """
            {"features": [
              {"properties": {"timestamp": "2027-04-05T13:00:00+00:00",
                "temperature": {"unitCode": "wmoUnit:degC", "value": -3.2, "qualityControl": "V"}}},
              {"properties": {"timestamp": "2027-04-05T12:30:00+00:00",
                "temperature": {"unitCode": "wmoUnit:degC", "value": 20, "qualityControl": "X"}}},
              {"properties": {"timestamp": "2027-04-05T12:00:00+00:00",
                "temperature": {"unitCode": "unit:degC", "value": -4, "qualityControl": "V"}}}]}
            """));
    Instant from = Instant.parse("2027-04-05T12:00:00Z");
    WeatherAnswer answer =
        chain().observed(new WeatherQuery(PLAINS, 2300, from, from.plusSeconds(3600))).get();
    assertThat(answer.service()).contains("station NEAR");
    assertThat(answer.elevationMeters()).isEqualTo(2297);
    assertThat(celsius(answer, "2027-04-05T12:00:00Z")).isCloseTo(-4, within(1e-9));
    assertThat(celsius(answer, "2027-04-05T13:00:00Z")).isCloseTo(-3.2, within(1e-9));
    assertThat(answer.temperatures()).hasSize(2);
  }
}
