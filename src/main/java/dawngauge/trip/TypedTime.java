package dawngauge.trip;

import java.time.Instant;
import java.time.ZonedDateTime;

/**
 * A point in time as typed, with offset and zone (RFC 9557).
 *
 * @param time the time in its zone
 * @param text as typed, such as "2027-03-09T05:45-07:00[America/Denver]"
 */
public record TypedTime(ZonedDateTime time, String text) {

  /** The instant. */
  public Instant instant() {
    return time.toInstant();
  }
}
