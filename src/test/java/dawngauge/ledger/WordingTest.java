package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times, spans, margins and lists as a person reads them. */
class WordingTest {
  private static final ZoneId DENVER = ZoneId.of("America/Denver");

  @Test
  void clockAndDayGoByTheSameRoundedTime() {
    Instant late = Instant.parse("2027-04-07T05:59:40Z");
    assertThat(Wording.clock(late, DENVER)).isEqualTo("00:00");
    assertThat(Wording.day(late, DENVER)).isEqualTo("Wednesday 7 April 2027");
    assertThat(Wording.shortDay(late.minusSeconds(20), DENVER)).isEqualTo("Tue 6 Apr");
    assertThat(Wording.clock(late.minusSeconds(20), DENVER)).isEqualTo("23:59");
    assertThat(Wording.daysBetween(late.minusSeconds(20), late, DENVER)).isEqualTo(1);
  }

  @Test
  void zoneLettersFollowTheClockChange() {
    // U.S. clocks went forward on the second Sunday of March (15 U.S.C. 260a): 14 March 2027.
    assertThat(Wording.zone(Instant.parse("2027-03-14T08:59:00Z"), DENVER)).isEqualTo("MST");
    assertThat(Wording.zone(Instant.parse("2027-03-14T09:00:00Z"), DENVER)).isEqualTo("MDT");
  }

  @Test
  void marginsAreRoundedDown() {
    assertThat(Wording.signedPercent(0.1399)).isEqualTo("+13 %");
    assertThat(Wording.signedPercent(0.07)).isEqualTo("+7 %");
    assertThat(Wording.signedPercent(-0.031)).isEqualTo("-4 %");
    assertThat(Wording.signedPercent(-0.0001)).isEqualTo("-1 %");
    assertThat(Wording.signedPercent(Double.NaN)).isEqualTo("–");
  }

  @Test
  void spansAndLists() {
    assertThat(Wording.span(Duration.ofSeconds(59 * 60 + 29))).isEqualTo("59 min");
    assertThat(Wording.span(Duration.ofSeconds(59 * 60 + 30))).isEqualTo("1 h 00");
    assertThat(Wording.span(Duration.ofMinutes(605))).isEqualTo("10 h 05");
    assertThat(Wording.list(List.of())).isEmpty();
    assertThat(Wording.list(List.of("a"))).isEqualTo("a");
    assertThat(Wording.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
  }
}
