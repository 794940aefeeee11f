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
 * @param track points of the track that it was taken from, from its start to its end; none where it
 *     was not
 * @param remarks note and extras
 */
public record Leg(
    @Nullable Entered<Distance> distance,
    @Nullable Entered<Speed> averageSpeed,
    @Nullable Duration duration,
    @Nullable Entered<Speed> topSpeed,
    List<ProfilePoint> profile,
    List<TrackMark> track,
    Remarks remarks) {

  /** Copies the lists. */
  public Leg {
    profile = List.copyOf(profile);
    track = List.copyOf(track);
  }

  /** A leg that was not taken from a track. */
  public Leg(
      @Nullable Entered<Distance> distance,
      @Nullable Entered<Speed> averageSpeed,
      @Nullable Duration duration,
      @Nullable Entered<Speed> topSpeed,
      List<ProfilePoint> profile,
      Remarks remarks) {
    this(distance, averageSpeed, duration, topSpeed, profile, List.of(), remarks);
  }

  /** Whether its track tells how high it runs: half of the track's points or more have a height. */
  public boolean isHeightOfTrackKnown() {
    long known = track.stream().filter(mark -> mark.elevation() != null).count();
    return known > 0 && 2 * known >= track.size();
  }

  /** The same with another length. */
  public Leg withDistance(@Nullable Entered<Distance> other) {
    return new Leg(other, averageSpeed, duration, topSpeed, profile, track, remarks);
  }

  /** The same with another average speed. */
  public Leg withAverageSpeed(@Nullable Entered<Speed> other) {
    return new Leg(distance, other, duration, topSpeed, profile, track, remarks);
  }

  /** The same with another top speed. */
  public Leg withTopSpeed(@Nullable Entered<Speed> other) {
    return new Leg(distance, averageSpeed, duration, other, profile, track, remarks);
  }

  /** The same with another driving time. */
  public Leg withDuration(@Nullable Duration other) {
    return new Leg(distance, averageSpeed, other, topSpeed, profile, track, remarks);
  }

  /** The same with other points along the way. */
  public Leg withProfile(List<ProfilePoint> other) {
    return new Leg(distance, averageSpeed, duration, topSpeed, other, track, remarks);
  }

  /** The same with other remarks. */
  public Leg withRemarks(Remarks other) {
    return new Leg(distance, averageSpeed, duration, topSpeed, profile, track, other);
  }

  /** The same along another track. */
  public Leg withTrack(List<TrackMark> other) {
    return new Leg(distance, averageSpeed, duration, topSpeed, profile, other, remarks);
  }
}
