package dawngauge.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Spans of time as ISO 8601-1 (2019), 5.5 allows them; the examples are worked by hand. */
class IsoIntervalTest {

  @ParameterizedTest
  @CsvSource({
    "2027-04-06T18:00:00+00:00/PT3H, 2027-04-06T18:00:00Z, 2027-04-06T21:00:00Z",
    "2027-04-06T18:00:00Z/P1DT2H, 2027-04-06T18:00:00Z, 2027-04-07T20:00:00Z",
    "2027-04-06T18:00:00-06:00/PT30M, 2027-04-07T00:00:00Z, 2027-04-07T00:30:00Z",
    "2027-04-06T18:00Z/2027-04-06T20:00Z, 2027-04-06T18:00:00Z, 2027-04-06T20:00:00Z",
    "2027-04-06T18:00Z/20:30, 2027-04-06T18:00:00Z, 2027-04-06T20:30:00Z",
    "P1W/2027-04-13T00:00:00Z, 2027-04-06T00:00:00Z, 2027-04-13T00:00:00Z",
    "20270406T180000Z/PT1H, 2027-04-06T18:00:00Z, 2027-04-06T19:00:00Z",
    "2027-096T18Z/PT0.5H, 2027-04-06T18:00:00Z, 2027-04-06T18:30:00Z",
    "2027-04-06T18:00:00+00:00/PT72H, 2027-04-06T18:00:00Z, 2027-04-09T18:00:00Z",
    // The hour that the clocks of Chicago show twice, and the one that they skip.
    "2027-11-07T01:00:00-05:00/2027-11-07T01:00:00-06:00, 2027-11-07T06:00:00Z, 2027-11-07T07:00:00Z",
    "2027-03-14T01:00:00-06:00/2027-03-14T03:00:00-05:00, 2027-03-14T07:00:00Z, 2027-03-14T08:00:00Z",
    "2027-W14-2T18:00Z/PT1H, 2027-04-06T18:00:00Z, 2027-04-06T19:00:00Z",
  })
  void spansAreRead(String text, Instant start, Instant end) {
    assertThat(IsoInterval.parse(text)).contains(new IsoInterval(start, end));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/",
        "2027-04-06T18:00:00Z",
        "2027-04-06T18:00:00Z/",
        "2027-04-06T18:00:00/PT1H",
        "2027-04-06T18:00:00Z/P",
        "2027-04-06T18:00:00Z/PT",
        "2027-04-06T18:00:00Z/PT0H",
        "2027-04-06T18:00:00Z/-PT1H",
        "2027-04-06T18:00:00Z/2027-04-06T17:00:00Z",
        "2027-04-06T18:00:00Z/P17D",
        "2027-13-06T18:00:00Z/PT1H",
        "2027-04-06T25:00:00Z/PT1H",
        "P1D/P1D",
        "2027-04-06T18:00:00Z/PT1H/PT1H",
      })
  void whatIsNoneIsNotRead(String text) {
    assertThat(IsoInterval.parse(text)).isEmpty();
  }

  @Test
  void aTextOfAnyLengthIsRefusedAtOnce() {
    assertThat(IsoInterval.parse("2027-04-06T18:00:00Z/PT" + "1".repeat(100_000) + "H")).isEmpty();
  }
}
