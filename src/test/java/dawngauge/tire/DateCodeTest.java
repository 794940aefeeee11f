package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Date codes by the federal week rule, 49 CFR 574.5. */
class DateCodeTest {

  @ParameterizedTest
  @CsvSource({
    // The regulation's own example.
    "0109, 2009-01-04, 2009-01-10",
    // By the rule: the last week may run into the next year; a year may begin on its first Sunday.
    "5208, 2008-12-28, 2009-01-03",
    "0110, 2010-01-03, 2010-01-09",
    "0112, 2012-01-01, 2012-01-07",
    // By the calendar: a year has 53 weeks if it begins on a Sunday, or is a leap year that begins
    // on a Saturday.
    "5312, 2012-12-30, 2013-01-05",
    "5317, 2017-12-31, 2018-01-06",
    "5323, 2023-12-31, 2024-01-06",
    "5328, 2028-12-31, 2029-01-06",
    "5300, 2000-12-31, 2001-01-06",
    // The four-digit code was ruled in July 1999 (64 FR 36807).
    "4099, 1999-10-03, 1999-10-09",
  })
  void fourDigitsNameAWeek(String code, LocalDate first, LocalDate last) {
    DateCode read = DateCode.parse(code).get();
    assertThat(read).isEqualTo(new DateCode(code, true, first, last));
  }

  @ParameterizedTest
  @CsvSource({
    "5301, 53, 2001, 52",
    "0010, 00, 2010, 52",
    "5324, 53, 2024, 52",
    "9912, 99, 2012, 53"
  })
  void weekThatTheYearLacksIsRefused(String code, String week, String year, String most) {
    assertThat(DateCode.parse(code).problems())
        .containsExactly(Problem.of(ProblemCode.NO_SUCH_WEEK, "", code, week, year, most));
  }

  @Test
  void weeksOfAllYearsFollowOneAnotherWithoutGap() {
    LocalDate expected = DateCode.parse("0100").get().weekStart();
    assertThat(expected).isEqualTo(LocalDate.of(2000, 1, 2));
    int longYears = 0;
    for (int year = 2000; year <= 2098; year++) {
      for (int week = 1; week <= 53; week++) {
        Outcome<DateCode> outcome = DateCode.parse(String.format("%02d%02d", week, year % 100));
        if (week < 53 || outcome.hasValue()) {
          assertThat(outcome.get().weekStart()).isEqualTo(expected);
          assertThat(outcome.get().weekEnd()).isEqualTo(expected.plusDays(6));
          assertThat(expected.getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
          assertThat(expected.getYear()).isEqualTo(year);
          expected = expected.plusWeeks(1);
          longYears += week == 53 ? 1 : 0;
        }
      }
    }
    // Sundays of 2000 to 2098: 5166, less 52 for each of 99 years.
    assertThat(longYears).isEqualTo(18);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0109",
        " 0109 ",
        "DOT ABCD EFG 0109",
        "dot xxxxyyy0109",
        "1AB CD12EF 0109",
        "1ABCD12EF-0109",
        "9X81234560109"
      })
  void identificationNumberEndsInTheCode(String text) {
    assertThat(DateCode.parse(text).get().code()).isEqualTo("0109");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "12", "DOT ABCD EFG", "01090", "0109A", "week 1", "٠١٠٩"})
  void textWithoutCodeIsRefusedWithAWayOut(String text) {
    Problem problem = DateCode.parse(text).problems().get(0);
    assertThat(problem.code()).isEqualTo(ProblemCode.NOT_A_DATE_CODE);
    assertThat(problem.text()).contains("four digits").contains("other sidewall");
  }

  @Test
  void threeDigitsLeaveTheDecadeOpen() {
    DateCode code = DateCode.parse("DOT ABCD EFG 128").get();
    assertThat(code.decadeKnown()).isFalse();
    assertThat(code.weekStart()).isEqualTo(LocalDate.of(1978, 3, 19));
    assertThat(code.weekEnd()).isEqualTo(LocalDate.of(1998, 3, 28));
    // Such a tire is over 25 years old, whatever the decade.
    assertThat(code.leastYearsOn(LocalDate.of(2027, 3, 9))).isBetween(28.9, 29.0);
    assertThat(code.yearsOn(LocalDate.of(2027, 3, 9))).isBetween(48.9, 49.0);
  }

  @Test
  void threeDigitsThatEndInZeroMayStillBeOfTheYear2000() {
    assertThat(DateCode.parse("100").get().weekEnd().getYear()).isEqualTo(2000);
  }

  @Test
  void threeDigitsWithAWeekOfNoDecadeAreRefused() {
    // 1973, 1983 and 1993 begin on Monday, Saturday and Friday: 52 weeks each.
    assertThat(DateCode.parse("533").problems().get(0).code()).isEqualTo(ProblemCode.NO_SUCH_WEEK);
    assertThat(DateCode.parse("003").problems().get(0).code()).isEqualTo(ProblemCode.NO_SUCH_WEEK);
    // 1978 and 1989 begin on a Sunday.
    assertThat(DateCode.parse("538").get().weekEnd()).isEqualTo(LocalDate.of(1979, 1, 6));
    assertThat(DateCode.parse("539").get().weekEnd()).isEqualTo(LocalDate.of(1990, 1, 6));
  }

  @Test
  void ageCountsFromTheFirstDayOfTheWeek() {
    DateCode code = DateCode.parse("0109").get();
    assertThat(code.yearsOn(LocalDate.of(2009, 1, 4))).isZero();
    assertThat(code.yearsOn(LocalDate.of(2027, 1, 4))).isEqualTo(18, within(0.003));
    assertThat(code.leastYearsOn(LocalDate.of(2027, 1, 10))).isEqualTo(18, within(0.003));
    assertThat(code.yearsOn(LocalDate.of(2008, 1, 4))).isEqualTo(-1, within(0.003));
  }

  /** By the rule the first week of a year is 01, in three digits too; no year has a week 00. */
  @Test
  void theFirstWeekIsTheLeast() {
    assertThat(DateCode.parse("018").hasValue()).isTrue();
    assertThat(DateCode.parse("008").hasValue()).isFalse();
  }

  @Test
  void aLongTextIsShortenedWhereItIsTold() {
    String forty = "x".repeat(40);
    assertThat(DateCode.parse(forty).problems().get(0).text()).contains(forty);
    assertThat(DateCode.parse(forty + "y").problems().get(0).text())
        .contains("x".repeat(37) + "...")
        .doesNotContain("x".repeat(38));
  }
}
