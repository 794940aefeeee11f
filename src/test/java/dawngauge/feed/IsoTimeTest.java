package dawngauge.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Points in time as ISO 8601-1 (2019), 4.3 and 5.4, writes them; instants worked by hand. */
class IsoTimeTest {

  @ParameterizedTest
  @CsvSource({
    "2026-04-12T06:00:00+00:00, 2026-04-12T06:00:00Z",
    "2026-04-12T06:00:00Z, 2026-04-12T06:00:00Z",
    "2026-04-12t06:00:00z, 2026-04-12T06:00:00Z",
    "2026-04-12T06:00-06:00, 2026-04-12T12:00:00Z",
    "2026-04-12T06:00+0530, 2026-04-12T00:30:00Z",
    "2026-04-12T06+09, 2026-04-11T21:00:00Z",
    "20260412T060000Z, 2026-04-12T06:00:00Z",
    "2026-102T06:00Z, 2026-04-12T06:00:00Z",
    "2026-W15-7T06:00Z, 2026-04-12T06:00:00Z",
    "2026-W53-5T00:00Z, 2027-01-01T00:00:00Z",
    "2028-02-29T00:00Z, 2028-02-29T00:00:00Z",
    "2026-04-12T24:00Z, 2026-04-13T00:00:00Z",
    "2026-12-31T23:59:60Z, 2027-01-01T00:00:00Z",
    "2026-04-12T06:00:00.250Z, 2026-04-12T06:00:00.250Z",
    "2026-04-12T06:30.5Z, 2026-04-12T06:30:30Z",
    "2026-04-12T06.5Z, 2026-04-12T06:30:00Z",
  })
  void aLegalFormIsRead(String text, Instant moment) {
    assertThat(IsoTime.instant(text)).contains(moment);
  }

  @Test
  void aDecimalCommaIsReadToo() {
    assertThat(IsoTime.instant("2026-04-12T06,25Z"))
        .contains(Instant.parse("2026-04-12T06:15:00Z"));
  }

  @Test
  void theOffsetIsKept() {
    assertThat(IsoTime.parse("2026-04-12T06:00-06:00"))
        .contains(OffsetDateTime.parse("2026-04-12T06:00-06:00"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "now",
        "2026-04-12",
        "2026-04-12T06:00:00",
        "2026-04-12 06:00:00Z",
        "2026-13-01T00:00Z",
        "2026-02-29T00:00Z",
        "2026-366T00:00Z",
        "2026-000T00:00Z",
        "2027-W53-1T00:00Z",
        "2026-W00-1T00:00Z",
        "2026-W15-8T00:00Z",
        "2026-04-12T24:01Z",
        "2026-04-12T25:00Z",
        "2026-04-12T06:60Z",
        "2026-04-12T06:00:61Z",
        "2026-04-12T06:00+19:00",
        "2026-04-12T06:00+05:61",
        "2026-04-12T06:00Z trailing",
        "2026-04-12T06:00:00.000000000000000000000000000000000000000000000Z",
        "1775973600",
        "Sun, 12 Apr 2026 06:00:00 GMT",
      })
  void whatIsNoMomentIsNotRead(String text) {
    assertThat(IsoTime.instant(text)).isEmpty();
  }
}
