package dawngauge.feed;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoField;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A point in time as ISO 8601-1 (2019) writes it: basic or extended, calendar, week or ordinal
 * date, a decimal fraction of the last part given, midnight as 24:00, a leap second. Without an
 * offset a time is of no use here, so it is not read.
 */
final class IsoTime {
  static final int LONGEST = 64;

  private static final Pattern FORM =
      Pattern.compile(
          "(?<year>\\d{4})(?:-?(?<month>\\d\\d)-?(?<day>\\d\\d)|-?(?<ordinal>\\d{3})"
              + "|-?W(?<week>\\d\\d)-?(?<weekday>[1-7]))"
              + "T(?<hour>\\d\\d)(?::?(?<minute>\\d\\d)(?::?(?<second>\\d\\d))?)?"
              + "(?:[.,](?<fraction>\\d{1,9}))?"
              + "(?<offset>Z|[+-]\\d\\d(?::?\\d\\d)?)");

  private IsoTime() {}

  /** The moment, or nothing if the text is none. */
  static Optional<Instant> instant(String text) {
    return parse(text).map(OffsetDateTime::toInstant);
  }

  /** The moment with its offset, or nothing if the text is none. */
  static Optional<OffsetDateTime> parse(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Matcher form = FORM.matcher(text.toUpperCase(Locale.ROOT));
    try {
      return form.matches()
          ? Optional.of(time(form).atOffset(ZoneOffset.of(form.group("offset"))))
          : Optional.empty();
    } catch (DateTimeException noSuchTime) {
      return Optional.empty();
    }
  }

  private static LocalDateTime time(Matcher form) {
    int hour = number(form.group("hour"));
    int minute = number(form.group("minute"));
    int second = number(form.group("second"));
    long unitNanos =
        (form.group("minute") == null
                ? ChronoUnit.HOURS
                : form.group("second") == null ? ChronoUnit.MINUTES : ChronoUnit.SECONDS)
            .getDuration()
            .toNanos();
    String fraction = form.group("fraction");
    long nanos = fraction == null ? 0 : Math.round(Double.parseDouble("0." + fraction) * unitNanos);
    boolean midnight = hour == 24 && minute == 0 && second == 0 && nanos == 0;
    if ((hour > 23 && !midnight) || minute > 59 || second > 60) {
      throw new DateTimeException("no such time of day");
    }
    return date(form)
        .atStartOfDay()
        .plusHours(hour)
        .plusMinutes(minute)
        .plusSeconds(second)
        .plusNanos(nanos);
  }

  private static LocalDate date(Matcher form) {
    int year = number(form.group("year"));
    if (form.group("ordinal") != null) {
      return LocalDate.ofYearDay(year, number(form.group("ordinal")));
    } else if (form.group("week") == null) {
      return LocalDate.of(year, number(form.group("month")), number(form.group("day")));
    }
    LocalDate date =
        LocalDate.of(year, 1, 4) // always in the first week
            .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, number(form.group("week")))
            .with(ChronoField.DAY_OF_WEEK, number(form.group("weekday")));
    if (date.get(IsoFields.WEEK_BASED_YEAR) != year) {
      throw new DateTimeException("no such week");
    }
    return date;
  }

  private static int number(@Nullable String digits) {
    return digits == null ? 0 : Integer.parseInt(digits);
  }
}
