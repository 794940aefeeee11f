package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Speed;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The way between two stops.
 *
 * @param distance length of the road
 * @param averageSpeed average while moving; null where a duration is typed or nothing is known
 * @param duration typed driving time, which wins over distance and speed
 * @param topSpeed highest speed driven; null means assumed from the average
 * @param profile points along the way, by distance from its start
 * @param remarks note and extras
 */
public record Leg(
    @Nullable Entered<Distance> distance,
    @Nullable Entered<Speed> averageSpeed,
    @Nullable Duration duration,
    @Nullable Entered<Speed> topSpeed,
    List<ProfilePoint> profile,
    Remarks remarks) {

  /** Copies the list. */
  public Leg {
    profile = List.copyOf(profile);
  }
}
