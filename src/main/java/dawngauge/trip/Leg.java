package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Speed;
import io.soabase.recordbuilder.core.RecordBuilder;
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
 * @param track points of the track that it was taken from, from its start to its end; none where it
 *     was not
 * @param distanceEstimated whether the distance is an estimate, as from the straight line; no where
 *     there is none
 * @param remarks note and extras
 */
@RecordBuilder
public record Leg(
    @Nullable Entered<Distance> distance,
    @Nullable Entered<Speed> averageSpeed,
    @Nullable Duration duration,
    @Nullable Entered<Speed> topSpeed,
    List<ProfilePoint> profile,
    List<TrackMark> track,
    boolean distanceEstimated,
    Remarks remarks)
    implements LegBuilder.With {

  /** Copies the lists. */
  public Leg {
    profile = List.copyOf(profile);
    track = List.copyOf(track);
    distanceEstimated &= distance != null;
  }

  /** A leg without estimates that was not taken from a track. */
  public Leg(
      @Nullable Entered<Distance> distance,
      @Nullable Entered<Speed> averageSpeed,
      @Nullable Duration duration,
      @Nullable Entered<Speed> topSpeed,
      List<ProfilePoint> profile,
      Remarks remarks) {
    this(distance, averageSpeed, duration, topSpeed, profile, List.of(), false, remarks);
  }

  /** The same with another distance, which is no estimate. */
  @Override
  public Leg withDistance(@Nullable Entered<Distance> known) {
    return LegBuilder.With.super.withDistance(known).withDistanceEstimated(false);
  }

  /** Whether its track tells how high it runs: half of the track's points or more have a height. */
  public boolean isHeightOfTrackKnown() {
    long known = track.stream().filter(mark -> mark.elevation() != null).count();
    return known > 0 && 2 * known >= track.size();
  }
}
