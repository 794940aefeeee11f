package dawngauge.field;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Times by RFC 9557 (2024). U.S. clocks change at 2 a.m. on the second Sunday of March and the
 * first of November (15 U.S.C. 260a): in 2027 on 14 March and 7 November.
 */
class TimeCodecsTest {
  @Test
  void aPlainTimeIsItsInstant() {
    assertThat(time("2027-03-09T05:45-07:00[America/Denver]").get().instant())
        .isEqualTo(Instant.parse("2027-03-09T12:45:00Z"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-07:00", "-06:00"})
  void inTheSpringGapTheClockIsMovedForwardWithANote(String offset) {
    Outcome<TypedTime> outcome = time("2027-03-14T02:30" + offset + "[America/Denver]");
    assertThat(outcome.problems().stream().map(Problem::code))
        .containsExactly(ProblemCode.TIME_IN_GAP);
    assertThat(outcome.get().time()).hasToString("2027-03-14T03:30-06:00[America/Denver]");
  }

  @ParameterizedTest
  @CsvSource({"-06:00, 2027-11-07T07:30:00Z", "-07:00, 2027-11-07T08:30:00Z"})
  void inTheAutumnOverlapTheOffsetDecides(String offset, Instant instant) {
    Outcome<TypedTime> outcome = time("2027-11-07T01:30" + offset + "[America/Denver]");
    assertThat(outcome.problems()).isEmpty();
    assertThat(outcome.get().instant()).isEqualTo(instant);
  }

  @Test
  void offsetAndZoneThatDisagreeAreBothNamed() {
    Problem problem = time("2027-07-09T05:45-07:00[America/Denver]").problems().get(0);
    assertThat(problem.code()).isEqualTo(ProblemCode.OFFSET_AGAINST_ZONE);
    assertThat(problem.text()).contains("-07:00", "America/Denver", "-06:00");
  }

  @Test
  void zuluIsTheOffsetZero() {
    assertThat(time("2027-01-09T05:45Z[Europe/London]").hasValue()).isTrue();
    assertThat(time("2027-07-09T05:45Z[Europe/London]").problems().get(0).code())
        .isEqualTo(ProblemCode.OFFSET_AGAINST_ZONE);
  }

  @ParameterizedTest
  @CsvSource({
    "45 min, 2700, 45 min",
    "3 h, 10800, 3 h",
    "2 h 30 min, 9000, 2 h 30 min",
    "90 s, 90, 1 min 30 s",
    "90 min, 5400, 1 h 30 min",
    "1 h 1 s, 3601, 1 h 1 s",
    "0 min, 0, 0 min"
  })
  void durationsAreReadAndWrittenInTheLargestUnits(String text, long seconds, String written) {
    Duration duration = TimeCodecs.DURATION.parse().apply(text).get();
    assertThat(duration).hasSeconds(seconds);
    assertThat(TimeCodecs.DURATION.text().apply(duration)).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "2", "h", "2 h 30", "-5 min", "30 min 2 h", "2h", " 2 h", "2 h "})
  void whatIsNoDurationIsRefused(String text) {
    assertThat(TimeCodecs.DURATION.parse().apply(text).hasValue()).isFalse();
  }

  private static Outcome<TypedTime> time(String text) {
    return TimeCodecs.TIME.parse().apply(text);
  }
}
