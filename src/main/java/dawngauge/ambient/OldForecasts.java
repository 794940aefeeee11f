package dawngauge.ambient;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Forecasts in a trip that were made so long before the hours they tell that no service can have
 * looked so far: mostly those of a trip of another year, taken up again.
 */
public final class OldForecasts {

  /** Farther ahead no open service looks by the hour; ours. */
  private static final Duration FARTHEST = Duration.ofDays(16);

  private OldForecasts() {}

  /** A note for each stop and day of issue. */
  public static List<Problem> told(Trip trip) {
    Set<Problem> notes = new LinkedHashSet<>();
    for (AmbientEntry entry : trip.ambient()) {
      Instant issued = entry.provenance().issued();
      Instant first = first(entry);
      if (issued == null || first == null || entry.provenance().kind() != Provenance.Kind.FEED) {
        continue;
      }
      Duration ahead = Duration.between(issued, first);
      if (ahead.compareTo(FARTHEST) > 0) {
        notes.add(
            Problem.of(
                ProblemCode.OLD_FORECAST,
                place(trip, entry.stop()),
                issued.atOffset(ZoneOffset.UTC).toLocalDate().toString(),
                String.valueOf(ahead.toDays())));
      }
    }
    return List.copyOf(notes);
  }

  private static @Nullable Instant first(AmbientEntry entry) {
    if (entry.figure() instanceof AmbientEntry.Hourly hourly) {
      return hourly.hours().get(0).time().instant();
    }
    return entry.figure() instanceof AmbientEntry.LowHigh day
        ? day.date().atStartOfDay(ZoneOffset.UTC).toInstant()
        : null;
  }

  private static String place(Trip trip, String id) {
    return trip.route().stops().stream()
        .filter(stop -> stop.id().equals(id))
        .map(Stop::place)
        .findFirst()
        .orElse(id);
  }
}
