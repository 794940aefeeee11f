package dawngauge.ui.common;

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
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what is typed into fields; an empty field means nothing is given. */
public final class Forms {

  private static final Pattern NUMBER = Pattern.compile("[+\\-−]?[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern SPAN =
      Pattern.compile("(?:(\\d{1,3})\\s*h)?\\s*(?:(\\d{1,4})\\s*min)?");
  private static final Pattern PAIR =
      Pattern.compile("([+\\-−]?[0-9]+(?:\\.[0-9]+)?)\\s*[,; ]\\s*([+\\-−]?[0-9]+(?:\\.[0-9]+)?)");
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  /** Clocks have whole minutes of offset since 1972, and a file holds years of four digits. */
  private static final int FIRST_YEAR = 1973;

  private static final int LAST_YEAR = 9998;

  private Forms() {}

  /** A figure with its unit; a bare number gets the unit in which the kind is shown. */
  public static <Q extends Quantity> Function<String, Outcome<Optional<Entered<Q>>>> figure(
      QuantityKind<Q> kind, UnitSystem units) {
    return text -> {
      if (text.isEmpty()) {
        return Outcome.of(Optional.empty());
      }
      boolean bare = NUMBER.matcher(text).matches();
      String full = bare ? text + " " + units.unitOf(kind).symbol().strip() : text;
      return kind.parse(full).map(Optional::of);
    };
  }

  /** The same, above zero. */
  public static <Q extends Quantity> Function<String, Outcome<Optional<Entered<Q>>>> positive(
      QuantityKind<Q> kind, UnitSystem units) {
    Function<String, Outcome<Optional<Entered<Q>>>> figure = figure(kind, units);
    return text -> {
      Outcome<Optional<Entered<Q>>> outcome = figure.apply(text);
      Entered<Q> entered = outcome.value().flatMap(value -> value).orElse(null);
      return entered == null || entered.value().si() > 0
          ? outcome
          : Outcome.failed(Problem.of(ProblemCode.NOT_ABOVE_ZERO, "", entered.text()));
    };
  }

  /** A span such as "45 min" or "2 h 30 min". */
  public static Outcome<Optional<Duration>> span(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    Matcher matcher = SPAN.matcher(text);
    if (!matcher.matches()) {
      return Outcome.failed(
          Problem.of(ProblemCode.NOT_A_DURATION, "", text, "999 h", "\"2 h 30 min\""));
    }
    long hours = matcher.group(1) == null ? 0 : Long.parseLong(matcher.group(1));
    long minutes = matcher.group(2) == null ? 0 : Long.parseLong(matcher.group(2));
    return Outcome.of(Optional.of(Duration.ofMinutes(60 * hours + minutes)));
  }

  /** A span as it is typed. */
  public static String text(Duration span) {
    long minutes = span.toMinutes();
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
  }

  /** A clock time in a zone, such as "2027-04-06 05:45". */
  public static Function<String, Outcome<Optional<TypedTime>>> time(ZoneId zone) {
    return text -> {
      if (text.isEmpty()) {
        return Outcome.of(Optional.empty());
      }
      try {
        ZonedDateTime time = LocalDateTime.parse(text, LOCAL).atZone(zone);
        if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
          return Outcome.of(Optional.of(new TypedTime(time, FULL.format(time))));
        }
      } catch (DateTimeException e) {
        // told below, as a year that nobody hauls in
      }
      return Outcome.failed(Problem.of(ProblemCode.NOT_A_TIME, "", text, "\"2027-04-06 05:45\""));
    };
  }

  /** A time as it is typed. */
  public static String text(TypedTime time) {
    return LOCAL.format(time.time());
  }

  /** Latitude and longitude in degrees, north and east positive. */
  public static Outcome<Optional<Coordinate>> coordinate(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    Matcher matcher = PAIR.matcher(text);
    if (matcher.matches()) {
      double latitude = Double.parseDouble(matcher.group(1).replace('−', '-'));
      double longitude = Double.parseDouble(matcher.group(2).replace('−', '-'));
      if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
        return Outcome.of(Optional.of(new Coordinate(latitude, longitude)));
      }
    }
    return Outcome.failed(Problem.of(ProblemCode.NOT_A_COORDINATE, "", text));
  }

  /** A coordinate as it is typed. */
  public static String text(Coordinate coordinate) {
    return coordinate.latitude() + ", " + coordinate.longitude();
  }

  /** A time zone by its region. */
  public static Outcome<Optional<ZoneId>> zone(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    try {
      return Outcome.of(Optional.of(ZoneId.of(text)));
    } catch (DateTimeException e) {
      return Outcome.failed(Problem.of(ProblemCode.UNKNOWN_ZONE, "", text));
    }
  }
}
