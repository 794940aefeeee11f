package dawngauge.tire;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * When a tire was made, by the date code at the end of its identification number (49 CFR 574.5):
 * two digits of week, two of year. Week 01 is the first full week, Sunday to Saturday; the last
 * week may run into the next year.
 *
 * <p>Before 2000 the code had three digits, the last that of the year without its decade: then the
 * dates span all decades that it may mean, and the age counts from the earliest.
 *
 * @param code the three or four digits
 * @param decadeKnown false for a three-digit code
 * @param weekStart first day, a Sunday, on which the tire may have been made
 * @param weekEnd last day, a Saturday, on which it may have been made
 */
public record DateCode(String code, boolean decadeKnown, LocalDate weekStart, LocalDate weekEnd) {

  /** Most age in years at which makers advise to replace a tire (NHTSA). */
  public static final int MOST_YEARS = 10;

  // The run of digits at the end of the text.
  private static final Pattern LAST_DIGITS = Pattern.compile("(?:.*?[^0-9]|)([0-9]+)");

  /** First year of the identification rule, from memory. */
  private static final int FIRST_YEAR = 1971;

  /** Last year in which the decade may be missing; the rule changed in the course of it. */
  private static final int LAST_SHORT_YEAR = 2000;

  private static final double DAYS_PER_YEAR = 365.2425;

  /** Refuses an empty span. */
  public DateCode {
    if (!weekStart.isBefore(weekEnd)) {
      throw new IllegalArgumentException(weekStart + " is not before " + weekEnd);
    }
  }

  /**
   * Reads the code alone or a whole identification number that ends in it. The four-digit code was
   * ruled in July 1999 (64 FR 36807), so "99" is 1999 and all other years are from 2000 on.
   */
  public static Outcome<DateCode> parse(String text) {
    String cleaned = text.strip().toUpperCase(Locale.ROOT);
    Matcher matcher = LAST_DIGITS.matcher(cleaned);
    if (!matcher.matches() || matcher.group(1).length() < 3) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_A_DATE_CODE, "", shortened(text)));
    }
    String digits = matcher.group(1);
    boolean alone = digits.length() == cleaned.length();
    if (alone && digits.length() > 4) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_A_DATE_CODE, "", shortened(text)));
    }
    return digits.length() == 3
        ? shortCode(digits)
        : fullCode(digits.substring(digits.length() - 4));
  }

  private static Outcome<DateCode> fullCode(String code) {
    int week = Integer.parseInt(code.substring(0, 2));
    int shortYear = Integer.parseInt(code.substring(2));
    int year = shortYear == 99 ? 1999 : 2000 + shortYear;
    if (week < 1 || week > weeksIn(year)) {
      return noSuchWeek(code, Integer.toString(year), weeksIn(year));
    }
    return Outcome.of(new DateCode(code, true, sunday(year, week), sunday(year, week).plusDays(6)));
  }

  private static Outcome<DateCode> shortCode(String code) {
    int week = Integer.parseInt(code.substring(0, 2));
    int digit = Integer.parseInt(code.substring(2));
    List<Integer> years =
        IntStream.rangeClosed(FIRST_YEAR, LAST_SHORT_YEAR)
            .filter(year -> year % 10 == digit)
            .boxed()
            .collect(Collectors.toList());
    List<Integer> possible =
        years.stream()
            .filter(year -> week >= 1 && week <= weeksIn(year))
            .collect(Collectors.toList());
    if (possible.isEmpty()) {
      int most = years.stream().mapToInt(DateCode::weeksIn).max().orElseThrow();
      return noSuchWeek(code, "a year that ends in " + digit, most);
    }
    return Outcome.of(
        new DateCode(
            code,
            false,
            sunday(possible.get(0), week),
            sunday(possible.get(possible.size() - 1), week).plusDays(6)));
  }

  private static Outcome<DateCode> noSuchWeek(String code, String year, int most) {
    return Outcome.failed(
        Problem.of(
            ProblemCode.NO_SUCH_WEEK,
            "",
            code,
            code.substring(0, 2),
            year,
            Integer.toString(most)));
  }

  /** Weeks whose Sunday lies in the year, from its first Sunday on: 52 or 53. */
  private static int weeksIn(int year) {
    LocalDate lastSunday =
        LocalDate.of(year, 12, 31).with(TemporalAdjusters.previousOrSame(DayOfWeek.SUNDAY));
    return (int) ChronoUnit.WEEKS.between(sunday(year, 1), lastSunday) + 1;
  }

  private static LocalDate sunday(int year, int week) {
    return LocalDate.of(year, 1, 1)
        .with(TemporalAdjusters.firstInMonth(DayOfWeek.SUNDAY))
        .plusWeeks(week - 1L);
  }

  /**
   * Age in years, counted from the earliest day on which the tire may have been made; negative
   * before it. The age to judge by.
   */
  public double yearsOn(LocalDate date) {
    return years(weekStart, date);
  }

  /**
   * Least possible age in years, counted from the latest day on which the tire may have been made.
   * The age to tell people where the decade is not known: "over 26 years old".
   */
  public double leastYearsOn(LocalDate date) {
    return years(weekEnd, date);
  }

  private static double years(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to) / DAYS_PER_YEAR;
  }

  private static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 37) + "...";
  }
}
