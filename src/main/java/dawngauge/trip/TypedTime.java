package dawngauge.trip;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A point in time as typed, with offset and zone (RFC 9557).
 *
 * @param time the time in its zone
 * @param text as typed, such as "2027-03-09T05:45-07:00[America/Denver]"
 */
public record TypedTime(ZonedDateTime time, String text) {

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

  private static final Pattern LOCAL =
      Pattern.compile("(\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(?::\\d\\d)?).*");

  /**
   * What a clock shows in a zone. A time that the clocks skip counts as one later by what they
   * skip, and keeps the text as typed; of one that comes twice the earlier is taken.
   */
  public static TypedTime of(LocalDateTime clock, ZoneId zone) {
    ZonedDateTime time = clock.atZone(zone);
    ZoneOffsetTransition change = zone.getRules().getTransition(clock);
    boolean skipped = change != null && change.isGap();
    ZoneOffset written = skipped ? change.getOffsetBefore() : time.getOffset();
    return written(time, clock, written);
  }

  /** The same with one of two offsets, where the clock shows the time twice. */
  public static TypedTime of(LocalDateTime clock, ZoneId zone, ZoneOffset offset) {
    return written(ZonedDateTime.ofLocal(clock, zone, offset), clock, offset);
  }

  private static TypedTime written(ZonedDateTime time, LocalDateTime clock, ZoneOffset offset) {
    String sign = offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    return new TypedTime(time, CLOCK.format(clock) + sign + "[" + time.getZone().getId() + "]");
  }

  /** The instant. */
  public Instant instant() {
    return time.toInstant();
  }

  /** What the clock was said to show; another than that of the time where that is skipped. */
  public LocalDateTime clock() {
    Matcher matcher = LOCAL.matcher(text);
    try {
      return matcher.matches() ? LocalDateTime.parse(matcher.group(1)) : time.toLocalDateTime();
    } catch (DateTimeException notOnTheClock) {
      return time.toLocalDateTime();
    }
  }

  /** Whether the clocks of the zone skip it. */
  public boolean isSkipped() {
    return !clock().equals(time.toLocalDateTime());
  }

  /** The other time at which the clocks of the zone show the same, if there is one. */
  public Optional<ZonedDateTime> twin() {
    LocalDateTime clock = time.toLocalDateTime();
    List<ZoneOffset> offsets = time.getZone().getRules().getValidOffsets(clock);
    return offsets.stream()
        .filter(offset -> !offset.equals(time.getOffset()))
        .findFirst()
        .map(offset -> ZonedDateTime.ofLocal(clock, time.getZone(), offset));
  }

  /** The same time by the clocks of another zone: what was typed is what the clock shows. */
  public TypedTime in(ZoneId zone) {
    return zone.equals(time.getZone()) ? this : of(clock(), zone);
  }
}
