package dawngauge.feed;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments as they stand in problems: "2027-03-09 14:00 UTC". */
final class UtcText {
  private static final DateTimeFormatter FORM =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT);

  private UtcText() {}

  static String of(Instant moment) {
    return FORM.format(moment.atOffset(ZoneOffset.UTC));
  }
}
