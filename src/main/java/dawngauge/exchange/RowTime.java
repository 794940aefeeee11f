package dawngauge.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;

/**
 * Times as tables write them: ISO 8601 with or without an offset, "2027-04-06 05:45:10", or seconds
 * or milliseconds since 1970. A million of them are read in one table, so they are read digit by
 * digit, and the zone's offset is looked up once an hour.
 */
final class RowTime {

  /** Not a time. */
  static final long NONE = Long.MIN_VALUE;

  /** A time that the clocks of the zone skip. */
  static final long SKIPPED = Long.MIN_VALUE + 1;

  private static final int DATE = 10;
  private static final int TO_MINUTES = 16;
  private static final int EPOCH_SECONDS = 10;
  private static final int EPOCH_MILLIS = 13;

  private final ZoneId zone;
  private long hour = NONE;
  private int offset;
  private boolean skipped;
  private long day = NONE;
  private long epochDay;

  RowTime(ZoneId zone) {
    this.zone = zone;
  }

  /** Seconds since 1970; {@link #NONE} or {@link #SKIPPED} where it is no time. */
  long seconds(String given) {
    String text = given.strip();
    int length = text.length();
    if ((length == EPOCH_SECONDS || length == EPOCH_MILLIS) && digits(text, 0, length) >= 0) {
      long number = digits(text, 0, length);
      return length == EPOCH_MILLIS ? number / 1000 : number;
    }
    if (length < TO_MINUTES
        || text.charAt(4) != '-'
        || text.charAt(7) != '-'
        || (text.charAt(DATE) != 'T' && text.charAt(DATE) != ' ')
        || text.charAt(13) != ':') {
      return NONE;
    }
    long year = digits(text, 0, 4);
    long month = digits(text, 5, 7);
    long dayOfMonth = digits(text, 8, DATE);
    long hours = digits(text, 11, 13);
    long minutes = digits(text, 14, TO_MINUTES);
    if (year < 0
        || month < 0
        || dayOfMonth < 0
        || hours < 0
        || hours > 23
        || minutes < 0
        || minutes > 59) {
      return NONE;
    }
    int at = TO_MINUTES;
    long seconds = 0;
    if (at < length && text.charAt(at) == ':') {
      seconds = at + 3 <= length ? digits(text, at + 1, at + 3) : -1;
      at += 3;
      if (at < length && text.charAt(at) == '.') {
        at++;
        while (at < length && Character.isDigit(text.charAt(at))) {
          at++;
        }
      }
    }
    if (seconds < 0 || seconds > 59 || !date((int) year, (int) month, (int) dayOfMonth)) {
      return NONE;
    }
    long local = ((epochDay * 24 + hours) * 60 + minutes) * 60 + seconds;
    return at < length ? withOffset(text, at, local) : inZone(local);
  }

  private boolean date(int year, int month, int dayOfMonth) {
    long key = (year * 100L + month) * 100 + dayOfMonth;
    if (key != day) {
      try {
        epochDay = LocalDate.of(year, month, dayOfMonth).toEpochDay();
        day = key;
      } catch (DateTimeException none) {
        return false;
      }
    }
    return true;
  }

  private static long withOffset(String text, int at, long local) {
    if (text.charAt(at) == 'Z' && at + 1 == text.length()) {
      return local;
    }
    int bracket = text.indexOf('[', at);
    String written = (bracket < 0 ? text.substring(at) : text.substring(at, bracket)).strip();
    try {
      return local - ZoneOffset.of(written).getTotalSeconds();
    } catch (DateTimeException none) {
      return NONE;
    }
  }

  private long inZone(long local) {
    long of = Math.floorDiv(local, 3600L);
    if (of != hour) {
      hour = of;
      LocalDateTime clock =
          LocalDateTime.of(
              LocalDate.ofEpochDay(Math.floorDiv(local, 86400L)),
              LocalTime.ofSecondOfDay(Math.floorMod(local, 86400L)));
      ZoneOffsetTransition change = zone.getRules().getTransition(clock);
      skipped = change != null && change.isGap();
      offset = clock.atZone(zone).getOffset().getTotalSeconds();
    }
    return skipped ? SKIPPED : local - offset;
  }

  /** A number of digits only; −1 where it is none. */
  static long digits(String text, int from, int to) {
    long number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
