package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The hours of a place that the error of a day's minimum rules: from midnight to two hours after
 * sunrise; to eight in the morning where the place or its sun is not known.
 */
final class DawnHours {

  private static final double AFTER_SUNRISE = 2 * 3600.0;
  private static final double WITHOUT_SUN = 8 * 3600.0;
  private static final int DAYS_AROUND = 2;

  private record Span(double from, double to) {}

  private final List<Span> spans;

  private DawnHours(List<Span> spans) {
    this.spans = List.copyOf(spans);
  }

  /** The hours of the days around a need. */
  static DawnHours of(AmbientNeeds.Need need) {
    List<Span> spans = new ArrayList<>();
    Coordinate place = need.coordinate();
    LocalDate last = need.to().atZone(need.zone()).toLocalDate().plusDays(DAYS_AROUND);
    for (LocalDate date = need.from().atZone(need.zone()).toLocalDate().minusDays(DAYS_AROUND);
        !date.isAfter(last);
        date = date.plusDays(1)) {
      double midnight = date.atStartOfDay(need.zone()).toEpochSecond();
      double end =
          place == null
              ? midnight + WITHOUT_SUN
              : Daylight.on(date, need.zone(), place)
                  .map(sun -> sun.sunrise().getEpochSecond() + AFTER_SUNRISE)
                  .orElse(midnight + WITHOUT_SUN);
      spans.add(new Span(midnight, end));
    }
    return new DawnHours(spans);
  }

  boolean contain(double epochSeconds) {
    return spans.stream().anyMatch(span -> epochSeconds >= span.from && epochSeconds <= span.to);
  }
}
