package dawngauge.ui.common;

import dawngauge.field.Codec;
import dawngauge.field.TimeCodecs;
import dawngauge.field.TripCodecs;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.TypedTime;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what is typed into fields; an empty field means nothing is given. */
public final class Forms {

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("H:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

  /** A time, and behind it the offset that tells apart two that the clock shows alike. */
  private static final Pattern WITH_OFFSET = Pattern.compile("(.*\\d) ?([+\\-−]\\d\\d:\\d\\d|Z)");

  private static final String TIME_EXAMPLE = "\"2027-04-06 05:45\"";

  /** A time without its day is no longer than this. */
  private static final int CLOCK_LENGTH = 5;

  private static final int LONGEST_SHOWN = 60;

  /** Clocks have whole minutes of offset since 1972, and a file holds years of four digits. */
  private static final int FIRST_YEAR = 1973;

  private static final int LAST_YEAR = 9998;

  private Forms() {}

  /** A name: anything but nothing. */
  public static Outcome<String> name(String text) {
    return text.isBlank()
        ? Outcome.failed(Problem.of(ProblemCode.NOT_A_NAME, "", text))
        : Outcome.of(text);
  }

  /** A figure with its unit; a bare number gets the unit in which the kind is shown. */
  public static <Q extends Quantity> Function<String, Outcome<Optional<Entered<Q>>>> figure(
      QuantityKind<Q> kind, UnitSystem units) {
    return given(Codec.figure(kind), units);
  }

  /** The same, above zero. */
  public static <Q extends Quantity> Function<String, Outcome<Optional<Entered<Q>>>> positive(
      QuantityKind<Q> kind, UnitSystem units) {
    return given(Codec.positive(kind), units);
  }

  private static <T> Function<String, Outcome<Optional<T>>> given(
      Codec<T> codec, UnitSystem units) {
    return text ->
        text.isEmpty()
            ? Outcome.of(Optional.empty())
            : codec.typed().apply(units, text).map(Optional::of);
  }

  /** A span such as "45 min" or "2 h 30 min". */
  public static Outcome<Optional<Duration>> span(String text) {
    return given(TimeCodecs.DURATION, UnitSystem.SI).apply(text);
  }

  /** A span as it is typed. */
  public static String text(Duration span) {
    return TimeCodecs.DURATION.text().apply(span);
  }

  /** A clock time in a zone, such as "2027-04-06 05:45". */
  public static Function<String, Outcome<Optional<TypedTime>>> time(ZoneId zone) {
    return time(zone, null);
  }

  /**
   * The same; a clock time alone, such as "05:45", is of a day. Of a time that the clocks show
   * twice the earlier is taken, unless its offset stands behind it.
   */
  public static Function<String, Outcome<Optional<TypedTime>>> time(
      ZoneId zone, @Nullable LocalDate day) {
    return text -> {
      if (text.isEmpty()) {
        return Outcome.of(Optional.empty());
      }
      Matcher offset = WITH_OFFSET.matcher(text);
      boolean with = offset.matches() && text.length() > CLOCK_LENGTH;
      LocalDateTime clock = clock(with ? offset.group(1) : text, day);
      if (clock == null || clock.getYear() < FIRST_YEAR || clock.getYear() > LAST_YEAR) {
        return Outcome.failed(
            Problem.of(ProblemCode.NOT_A_TIME, "", shortened(text), TIME_EXAMPLE));
      }
      return with
          ? withOffset(text, clock, zone, offset.group(2).replace('−', '-'))
          : Outcome.of(Optional.of(TypedTime.of(clock, zone)));
    };
  }

  private static @Nullable LocalDateTime clock(String text, @Nullable LocalDate day) {
    try {
      return day != null && text.length() <= CLOCK_LENGTH
          ? LocalTime.parse(text, CLOCK).atDate(day)
          : LocalDateTime.parse(text, LOCAL);
    } catch (DateTimeException notOnTheClock) {
      return null;
    }
  }

  private static Outcome<Optional<TypedTime>> withOffset(
      String text, LocalDateTime clock, ZoneId zone, String wanted) {
    List<ZoneOffset> valid = zone.getRules().getValidOffsets(clock);
    for (ZoneOffset offset : valid) {
      if (offset.getId().equals(wanted)) {
        return Outcome.of(Optional.of(TypedTime.of(clock, zone, offset)));
      }
    }
    return Outcome.failed(
        Problem.of(
            ProblemCode.OFFSET_AGAINST_ZONE,
            "",
            shortened(text),
            wanted,
            zone.getId(),
            TypedTime.of(clock, zone).time().getOffset().getId()));
  }

  /** A time as it is typed: with its offset where that tells it from an earlier one. */
  public static String text(TypedTime time) {
    boolean later = time.twin().filter(twin -> twin.isBefore(time.time())).isPresent();
    return LOCAL.format(time.time()) + (later ? " " + time.time().getOffset().getId() : "");
  }

  /** Latitude and longitude in degrees, north and east positive. */
  public static Outcome<Optional<Coordinate>> coordinate(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    return TripCodecs.COORDINATE.typed().apply(UnitSystem.SI, text).map(Optional::of);
  }

  /** A coordinate as it is typed. */
  public static String text(Coordinate coordinate) {
    return TripCodecs.COORDINATE.text().apply(coordinate);
  }

  /** A time zone by its region. */
  public static Outcome<Optional<ZoneId>> zone(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    try {
      return Outcome.of(Optional.of(ZoneId.of(text)));
    } catch (DateTimeException e) {
      return Outcome.failed(Problem.of(ProblemCode.UNKNOWN_ZONE, "", shortened(text)));
    }
  }

  /** A text as it is quoted in a problem: its beginning, where it is long. */
  static String shortened(String text) {
    return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...";
  }
}
