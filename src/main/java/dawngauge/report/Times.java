package dawngauge.report;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Times for other programs. */
final class Times {

  private static final DateTimeFormatter FORM =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx'['VV']'", Locale.ROOT);

  private Times() {}

  /** RFC 9557, to the second: "2027-04-06T05:45:00-06:00[America/Denver]". */
  static String of(Instant instant, ZoneId zone) {
    return FORM.format(instant.plusMillis(500).truncatedTo(ChronoUnit.SECONDS).atZone(zone));
  }
}
