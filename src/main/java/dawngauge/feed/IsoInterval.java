package dawngauge.feed;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.Period;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A span of time as ISO 8601-1 (2019) writes it: start and duration, start and end, or duration and
 * end, with a slash between; an end may leave out what it has in common with the start.
 *
 * @param start first moment
 * @param end first moment after it
 */
record IsoInterval(Instant start, Instant end) {

  /** Nothing that a forecast says holds longer; more is a mistake. */
  private static final Duration LONGEST = Duration.ofDays(16);

  private static final String COUNT = "(\\d{1,6})";
  private static final String DECIMAL = "(\\d{1,6}(?:[.,]\\d{1,9})?)";

  private static final Pattern DURATION =
      Pattern.compile(
          "P(?=.)(?:%1$sY)?(?:%1$sM)?(?:%1$sW)?(?:%2$sD)?(?:T(?=.)(?:%2$sH)?(?:%2$sM)?(?:%2$sS)?)?"
              .formatted(COUNT, DECIMAL));

  private static final Pattern OFFSET = Pattern.compile("(?:Z|[+-]\\d\\d(?::?\\d\\d)?)\\z");

  /** The span, or nothing if the text is none, runs backwards, or is longer than 16 days. */
  static Optional<IsoInterval> parse(String text) {
    String[] parts = text.toUpperCase(Locale.ROOT).split("/", -1);
    if (parts.length != 2 || text.length() > 2 * IsoTime.LONGEST) {
      return Optional.empty();
    }
    Optional<OffsetDateTime> start;
    Optional<OffsetDateTime> end;
    if (parts[0].startsWith("P")) {
      end = IsoTime.parse(parts[1]);
      start = end.flatMap(moment -> moved(moment, parts[0], -1));
    } else {
      start = IsoTime.parse(parts[0]);
      end =
          parts[1].startsWith("P")
              ? start.flatMap(moment -> moved(moment, parts[1], 1))
              : IsoTime.parse(completed(parts[0], parts[1]));
    }
    return start.flatMap(
        first -> end.flatMap(last -> checked(first.toInstant(), last.toInstant())));
  }

  private static Optional<IsoInterval> checked(Instant start, Instant end) {
    Duration length = Duration.between(start, end);
    return length.isNegative() || length.isZero() || length.compareTo(LONGEST) > 0
        ? Optional.empty()
        : Optional.of(new IsoInterval(start, end));
  }

  private static Optional<OffsetDateTime> moved(OffsetDateTime from, String text, int sign) {
    Matcher parts = DURATION.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    Period calendar =
        Period.of((int) number(parts.group(1)), (int) number(parts.group(2)), 0)
            .plusDays(7 * (long) number(parts.group(3)));
    double seconds =
        number(parts.group(4)) * 86_400
            + number(parts.group(5)) * 3600
            + number(parts.group(6)) * 60
            + number(parts.group(7));
    Duration exact = Duration.ofNanos(Math.round(seconds * 1e6) * 1000);
    boolean absurd = calendar.toTotalMonths() > 12 || seconds > LONGEST.toSeconds();
    return absurd
        ? Optional.empty()
        : Optional.of(from.plus(calendar.multipliedBy(sign)).plus(exact.multipliedBy(sign)));
  }

  private static double number(@Nullable String digits) {
    return digits == null ? 0 : Double.parseDouble(digits.replace(',', '.'));
  }

  /** The end with what it left out: the beginning of its date, and the start's offset. */
  private static String completed(String start, String end) {
    int startTime = start.indexOf('T');
    int endTime = end.indexOf('T');
    if (startTime < 0 || (endTime < 0 && start.contains(":") != end.contains(":"))) {
      return end;
    }
    String date = endTime < 0 ? "" : end.substring(0, endTime);
    String time = end.substring(endTime + 1);
    if (date.length() < startTime) {
      date = start.substring(0, startTime - date.length()) + date;
    }
    Matcher offset = OFFSET.matcher(start.substring(startTime));
    boolean complete = OFFSET.matcher(time).find() || !offset.find();
    return date + "T" + time + (complete ? "" : offset.group());
  }
}
