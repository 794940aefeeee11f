package dawngauge.ui.common;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed into fields. */
class FormsTest {

  private static final ZoneId DENVER = ZoneId.of("America/Denver");

  @Test
  void aBareNumberGetsTheUnitThatIsShown() {
    var us = Forms.figure(QuantityKind.GAUGE_PRESSURE, UnitSystem.US).apply("80").get();
    var si = Forms.figure(QuantityKind.GAUGE_PRESSURE, UnitSystem.SI).apply("5.5").get();
    assertThat(us.orElseThrow().text()).isEqualTo("80 psi");
    assertThat(si.orElseThrow().text()).isEqualTo("5.5 bar");
    assertThat(si.orElseThrow().value().in(Unit.BAR)).isEqualTo(5.5, within(1e-12));
  }

  @Test
  void aUnitThatIsTypedCountsWhateverIsShown() {
    var typed = Forms.figure(QuantityKind.TEMPERATURE, UnitSystem.SI).apply("14 °F").get();
    assertThat(typed.orElseThrow().text()).isEqualTo("14 °F");
    assertThat(typed.orElseThrow().value().in(Unit.CELSIUS)).isEqualTo(-10, within(1e-9));
  }

  @Test
  void nothingTypedIsNothingGiven() {
    assertThat(Forms.figure(QuantityKind.SPEED, UnitSystem.US).apply("").get()).isEmpty();
    assertThat(Forms.positive(QuantityKind.SPEED, UnitSystem.US).apply("").get()).isEmpty();
    assertThat(Forms.span("").get()).isEmpty();
    assertThat(Forms.time(DENVER).apply("").get()).isEmpty();
    assertThat(Forms.coordinate("").get()).isEmpty();
    assertThat(Forms.zone("").get()).isEmpty();
  }

  @Test
  void aSpeedIsAboveZero() {
    var speed = Forms.positive(QuantityKind.SPEED, UnitSystem.US);
    assertThat(code(speed.apply("0"))).isEqualTo(ProblemCode.NOT_ABOVE_ZERO);
    assertThat(code(speed.apply("-5 mph"))).isEqualTo(ProblemCode.OUT_OF_RANGE);
    assertThat(speed.apply("0.1 mph").get()).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "45 min, 45",
    "2 h, 120",
    "2 h 30 min, 150",
    "2h30min, 150",
    "90 min, 90",
    "0 min, 0"
  })
  void spans(String text, long minutes) {
    Optional<Duration> span = Forms.span(text).get();
    assertThat(span).contains(Duration.ofMinutes(minutes));
    assertThat(Forms.span(Forms.text(span.orElseThrow())).get()).isEqualTo(span);
  }

  @ParameterizedTest
  @ValueSource(strings = {"45", "h", "-2 h", "1.5 h", "2 h 30", "abc", "1000 h"})
  void noSpans(String text) {
    assertThat(code(Forms.span(text))).isEqualTo(ProblemCode.NOT_A_DURATION);
  }

  @Test
  void aTimeIsThatOfTheZone() {
    var time = Forms.time(DENVER).apply("2027-04-06 05:45").get().orElseThrow();
    assertThat(time.instant()).isEqualTo(Instant.parse("2027-04-06T11:45:00Z")); // MDT, UTC-6
    assertThat(time.text()).isEqualTo("2027-04-06T05:45-06:00[America/Denver]");
    assertThat(Forms.text(time)).isEqualTo("2027-04-06 05:45");
  }

  @Test
  void aTimeThatTheClocksSkipIsShownAsTheOneItCountsAs() {
    // 15 U.S.C. 260a: clocks go forward at 2:00 on the second Sunday of March.
    var time = Forms.time(DENVER).apply("2027-03-14 02:30").get().orElseThrow();
    assertThat(Forms.text(time)).isEqualTo("2027-03-14 03:30");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-02-30 05:00",
        "2027-04-31 05:00",
        "2027-04-06 24:00",
        "2027-04-06",
        "05:45",
        "2027-4-6 5:45",
        "+12027-04-06 05:45",
        "1883-04-06 05:45",
        "abc"
      })
  void noTimes(String text) {
    assertThat(code(Forms.time(DENVER).apply(text))).isEqualTo(ProblemCode.NOT_A_TIME);
  }

  @Test
  void coordinatesInDegrees() {
    for (String text : new String[] {"37.469, -105.87", "37.469 -105.87", "37.469;-105.87"}) {
      var place = Forms.coordinate(text).get().orElseThrow();
      assertThat(place.latitude()).isEqualTo(37.469);
      assertThat(place.longitude()).isEqualTo(-105.87);
      assertThat(Forms.coordinate(Forms.text(place)).get()).contains(place);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"91, 0", "0, 181", "37.469", "a, b", "1,2,3", "37.469° N, 105.87"})
  void noCoordinates(String text) {
    assertThat(code(Forms.coordinate(text))).isEqualTo(ProblemCode.NOT_A_COORDINATE);
  }

  @Test
  void zonesByTheirRegion() {
    assertThat(Forms.zone("America/Denver").get()).contains(DENVER);
    assertThat(code(Forms.zone("Mountain time"))).isEqualTo(ProblemCode.UNKNOWN_ZONE);
  }

  private static ProblemCode code(Outcome<?> outcome) {
    assertThat(outcome.hasValue()).isFalse();
    return outcome.problems().get(0).code();
  }
}
