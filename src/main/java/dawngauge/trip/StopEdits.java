package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Estimate;
import dawngauge.geo.Spot;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Unit;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Changes to one stop in which one figure speaks for another; what is estimated is marked. */
public final class StopEdits {

  private StopEdits() {}

  /** Whether a stop's height is an estimate of the places near it. */
  public static boolean isEstimated(Stop stop) {
    return stop.elevationEstimated();
  }

  /** Whether a stop's zone is that of the nearest place. */
  public static boolean isZoneEstimated(Stop stop) {
    return stop.zoneEstimated();
  }

  /** A stop with a typed height, no longer an estimate. */
  public static Stop withElevation(Stop stop, @Nullable Entered<Elevation> elevation) {
    return stop.withElevation(elevation);
  }

  /** A stop with a typed zone, no longer an estimate; its typed times are of that zone's clocks. */
  public static Stop withZone(Stop stop, @Nullable ZoneId zone) {
    return zone == null ? stop.withZone(null) : inZone(stop, zone);
  }

  /** A stop at a known place: its name, and height and zone as estimates. */
  public static Stop at(Stop stop, Spot spot) {
    return estimated(
        stop.withPlace(spot.name()).withCoordinate(spot.at()), spot.elevation(), spot.zone());
  }

  /** A stop at typed coordinates: height and zone are estimated unless they were typed. */
  public static Stop at(Stop stop, @Nullable Coordinate typed, Optional<Estimate> estimate) {
    Stop moved = stop.withCoordinate(typed);
    if (typed == null) {
      return moved;
    }
    if (stop.elevation() == null || isEstimated(stop)) {
      moved = elevation(moved, estimate.map(Estimate::elevation).orElse(null));
    }
    if (stop.zone() == null || isZoneEstimated(stop)) {
      moved = zone(moved, estimate.map(Estimate::zone).orElse(null));
    }
    return moved;
  }

  private static Stop estimated(Stop stop, @Nullable Elevation elevation, @Nullable ZoneId zone) {
    return zone(elevation(stop, elevation), zone);
  }

  private static Stop elevation(Stop stop, @Nullable Elevation estimate) {
    Entered<Elevation> shown = estimate == null ? null : LegGuess.guessed(estimate, Unit.FOOT, 10);
    return stop.withElevation(shown).withElevationEstimated(estimate != null);
  }

  private static Stop zone(Stop stop, @Nullable ZoneId estimate) {
    return estimate == null ? stop.withZone(null) : inZone(stop, estimate).withZoneEstimated(true);
  }

  /** Typed times are what the clock at the stop shows, also once its zone is known better. */
  private static Stop inZone(Stop stop, ZoneId zone) {
    TypedTime arrive = stop.arrive();
    TypedTime leave = stop.leave();
    return stop.withZone(zone)
        .withTimes(arrive == null ? null : arrive.in(zone), leave == null ? null : leave.in(zone));
  }
}
