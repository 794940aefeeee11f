package dawngauge.field;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.SpanText;
import dawngauge.trip.TypedTime;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How times, dates, zones and durations stand in the file. */
public final class TimeCodecs {
  private static final String TIME_EXAMPLE = "\"2027-03-09T05:45-07:00[America/Denver]\"";
  private static final String DURATION_EXAMPLE = "\"2 h 30 min\"";
  private static final Duration LONGEST = Duration.ofDays(366);

  /** Local time, offset or Z, and zone in brackets; the last two may be missing. */
  private static final Pattern TIME_TEXT =
      Pattern.compile(
          "(\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(?::\\d\\d)?)(Z|[+-]\\d\\d:\\d\\d)?(?:\\[([^\\[\\]]+)])?");

  private static final Pattern DURATION_TEXT =
      Pattern.compile("(?:(\\d{1,5}) h)?(?: ?(\\d{1,6}) min)?(?: ?(\\d{1,8}) s)?");

  /** A point in time with offset and zone (RFC 9557, 2024). */
  public static final Codec<TypedTime> TIME =
      new Codec<>(
          "a time with offset and zone",
          TIME_EXAMPLE,
          new TypedTime(Instant.EPOCH.atZone(ZoneOffset.UTC), ""),
          TimeCodecs::parseTime,
          TypedTime::text);

  /** A point in time in UTC. */
  public static final Codec<Instant> INSTANT =
      new Codec<>(
          "a time in UTC",
          "\"2027-03-08T12:00:00Z\"",
          Instant.EPOCH,
          TimeCodecs::parseInstant,
          Instant::toString);

  /** A time zone. */
  public static final Codec<ZoneId> ZONE =
      new Codec<>(
          "a time zone",
          "\"America/Denver\"",
          ZoneOffset.UTC,
          TimeCodecs::parseZone,
          ZoneId::getId);

  /** A length of time in hours, minutes and seconds; in a form to the minute. */
  public static final Codec<Duration> DURATION =
      new Codec<>(
          "a duration",
          DURATION_EXAMPLE,
          Duration.ZERO,
          TimeCodecs::parseDuration,
          TimeCodecs::textOf,
          (units, typed) -> SpanText.parse(typed),
          (units, duration) -> textOf(duration),
          Codec.Json.TEXT,
          List.of());

  private TimeCodecs() {}

  private static Outcome<TypedTime> parseTime(String text) {
    Matcher matcher = TIME_TEXT.matcher(text);
    if (!matcher.matches()) {
      return Codec.failed(ProblemCode.NOT_A_TIME, Codec.shortened(text), TIME_EXAMPLE);
    }
    String zoneText = matcher.group(3);
    if (matcher.group(2) == null || zoneText == null) {
      return Codec.failed(ProblemCode.TIME_WITHOUT_ZONE, text, TIME_EXAMPLE);
    }
    try {
      LocalDateTime local = LocalDateTime.parse(matcher.group(1));
      ZoneOffset offset = ZoneOffset.of(matcher.group(2));
      Outcome<ZoneId> zone = parseZone(zoneText);
      return zone.hasValue()
          ? resolved(text, local, offset, zone.get())
          : Outcome.failed(zone.problems());
    } catch (DateTimeException notOnTheClock) {
      return Codec.failed(ProblemCode.NOT_A_TIME, Codec.shortened(text), TIME_EXAMPLE);
    }
  }

  /**
   * In the spring gap the time is moved forward by the length of the gap; in the autumn overlap the
   * offset decides.
   */
  private static Outcome<TypedTime> resolved(
      String text, LocalDateTime local, ZoneOffset offset, ZoneId zone) {
    List<ZoneOffset> valid = zone.getRules().getValidOffsets(local);
    boolean gap = valid.isEmpty();
    ZonedDateTime time = ZonedDateTime.ofLocal(local, zone, offset);
    List<ZoneOffset> accepted = valid;
    if (gap) {
      var transition = zone.getRules().getTransition(local);
      accepted = List.of(transition.getOffsetBefore(), transition.getOffsetAfter());
    }
    if (!accepted.contains(offset)) {
      return Codec.failed(
          ProblemCode.OFFSET_AGAINST_ZONE,
          text,
          offset.getId(),
          zone.getId(),
          time.getOffset().getId());
    }
    TypedTime typed = new TypedTime(time, text);
    return gap
        ? Outcome.of(
            typed,
            List.of(Problem.of(ProblemCode.TIME_IN_GAP, "", text, zone.getId(), time.toString())))
        : Outcome.of(typed);
  }

  private static Outcome<ZoneId> parseZone(String text) {
    try {
      return Outcome.of(ZoneId.of(text));
    } catch (DateTimeException unknown) {
      return Codec.failed(ProblemCode.UNKNOWN_ZONE, Codec.shortened(text));
    }
  }

  private static Outcome<Instant> parseInstant(String text) {
    try {
      return Outcome.of(Instant.parse(text));
    } catch (DateTimeException notATime) {
      return Codec.failed(
          ProblemCode.NOT_A_TIME, Codec.shortened(text), "\"2027-03-08T12:00:00Z\"");
    }
  }

  private static Outcome<Duration> parseDuration(String text) {
    Matcher matcher = DURATION_TEXT.matcher(text);
    if (!text.isEmpty() && !text.startsWith(" ") && matcher.matches()) {
      Duration duration =
          Duration.ofHours(number(matcher, 1))
              .plusMinutes(number(matcher, 2))
              .plusSeconds(number(matcher, 3));
      if (duration.compareTo(LONGEST) <= 0) {
        return Outcome.of(duration);
      }
    }
    return Codec.failed(
        ProblemCode.NOT_A_DURATION,
        Codec.shortened(text),
        LONGEST.toHours() + " h",
        DURATION_EXAMPLE);
  }

  private static long number(Matcher matcher, int group) {
    String digits = matcher.group(group);
    return digits == null ? 0 : Long.parseLong(digits);
  }

  private static String textOf(Duration duration) {
    StringBuilder text = new StringBuilder();
    part(text, duration.toHours(), " h");
    part(text, duration.toMinutesPart(), " min");
    part(text, duration.toSecondsPart(), " s");
    return text.isEmpty() ? "0 min" : text.toString();
  }

  private static void part(StringBuilder text, long number, String unit) {
    if (number != 0) {
      text.append(text.isEmpty() ? "" : " ").append(number).append(unit);
    }
  }
}
