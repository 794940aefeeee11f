package dawngauge.ledger;

import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/** How times, spans and lists are written. */
public final class Wording {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter ZONE = DateTimeFormatter.ofPattern("zzz", Locale.ENGLISH);

  private static final double WHOLE = 1e-6;

  static final String ALL = "all tires";

  static final String ALL_BUT = "all but ";

  private Wording() {}

  /** The clock at a place, to the nearest minute. */
  public static String clock(Instant instant, ZoneId zone) {
    return CLOCK.format(toTheMinute(instant, zone));
  }

  /** A day with its date. */
  public static String day(Instant instant, ZoneId zone) {
    return DAY.format(toTheMinute(instant, zone));
  }

  /** A day in short. */
  public static String shortDay(Instant instant, ZoneId zone) {
    return SHORT_DAY.format(toTheMinute(instant, zone));
  }

  /** The zone's letters at an instant, such as "MDT". */
  public static String zone(Instant instant, ZoneId zone) {
    return ZONE.format(toTheMinute(instant, zone));
  }

  /** How many days later, by the date of the place, the second instant is. */
  public static long daysBetween(Instant first, Instant second, ZoneId zone) {
    return ChronoUnit.DAYS.between(
        toTheMinute(first, zone).toLocalDate(), toTheMinute(second, zone).toLocalDate());
  }

  /** Clock and day go by the same rounded time, so that 23:59:40 is 00:00 of the next day. */
  public static ZonedDateTime toTheMinute(Instant instant, ZoneId zone) {
    return instant.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).atZone(zone);
  }

  /** A span: "1 h 05", "45 min". */
  public static String span(Duration duration) {
    long minutes = Math.round(duration.toMillis() / 60000.0);
    return minutes < 60
        ? minutes + " min"
        : String.format(Locale.ROOT, "%d h %02d", minutes / 60, minutes % 60);
  }

  /** A pressure without unit as the ledger shows it: whole psi, hundredths of a bar. */
  public static String pressure(double pascals, UnitSystem units) {
    return units.number(new GaugePressure(pascals), units == UnitSystem.US ? 0 : 2);
  }

  /** The same for a floor, rounded up: a figure shown as enough must be enough. */
  public static String floor(double pascals, UnitSystem units) {
    double step =
        GaugePressure.of(
                units == UnitSystem.US ? 1 : 0.01, units == UnitSystem.US ? Unit.PSI : Unit.BAR)
            .pascals();
    return pressure(Math.ceil(pascals / step - 1e-6) * step, units);
  }

  /** The same for what is to spare, rounded down: so much there is at the least. */
  static String spare(double pascals, UnitSystem units) {
    String below = floor(-pascals, units);
    return below.startsWith("-")
        ? below.substring(1)
        : below.matches("[0.]+") ? below : "-" + below;
  }

  /** A pressure as the ledger shows it, with its unit. */
  static Phrase.Stated shown(double pascals) {
    return new Phrase.Stated(new GaugePressure(pascals), 0, 2);
  }

  /** A figure to set, whole psi and tenths of a bar where it is that. */
  static Phrase.Stated figure(GaugePressure figure) {
    return new Phrase.Stated(
        figure, whole(figure.in(Unit.PSI)) ? 0 : 1, whole(figure.in(Unit.BAR) * 10) ? 1 : 2);
  }

  /** The same without its unit. */
  static String figureNumber(double pascals, UnitSystem units) {
    GaugePressure figure = new GaugePressure(pascals);
    int decimals =
        units == UnitSystem.US
            ? whole(figure.in(Unit.PSI)) ? 0 : 1
            : whole(figure.in(Unit.BAR) * 10) ? 1 : 2;
    return units.number(figure, decimals);
  }

  private static boolean whole(double number) {
    return Math.abs(number - Math.rint(number)) < WHOLE;
  }

  /** A margin or chance with its sign: "+13 %", "-4 %"; rounded down. */
  public static String signedPercent(double ratio) {
    if (Double.isNaN(ratio)) {
      return "–";
    }
    long percent = (long) Math.floor(ratio * 100 + 1e-9);
    return (percent < 0 ? "-" : "+") + Math.abs(percent) + " %";
  }

  /** "all tires", "all but t2r", or the tires themselves. */
  static String who(List<String> names, List<String> all) {
    if (names.size() == all.size() && all.size() > 1) {
      return ALL;
    } else if (names.size() > 3 && names.size() * 2 > all.size()) {
      return ALL_BUT
          + String.join(" ", all.stream().filter(name -> !names.contains(name)).toList());
    }
    return String.join(" ", names);
  }

  /** A text that begins with a capital letter; short forms such as "t2r" stay as they are. */
  static String begun(String text) {
    boolean word = text.length() > 1 && Character.isLetter(text.charAt(1));
    return word ? Character.toUpperCase(text.charAt(0)) + text.substring(1) : text;
  }

  /** "a, b and c". */
  public static String list(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " and "
        + words.get(words.size() - 1);
  }
}
