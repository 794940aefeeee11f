package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place where the rig stands, or one that it passes.
 *
 * @param id how other parts of the trip refer to it
 * @param place its name, such as "Walsenburg CO"
 * @param kind what the stop is for
 * @param coordinate where it is
 * @param elevation height of the ground
 * @param zone its time zone; the one of the stop before where null
 * @param stay how long the rig stands; null where a typed leaving time or nothing says so
 * @param arrive typed arrival, which wins over the computed one
 * @param leave typed leaving time, which wins over stay
 * @param air whether air is to be had
 * @param loadChanges what is taken on or set down
 * @param elevationEstimated whether the elevation is an estimate of the places near it, typed or
 *     measured by nobody; no where there is none
 * @param zoneEstimated whether the zone is that of the nearest place; no where there is none
 * @param remarks note and extras
 */
@RecordBuilder
public record Stop(
    String id,
    String place,
    Kind kind,
    @Nullable Coordinate coordinate,
    @Nullable Entered<Elevation> elevation,
    @Nullable ZoneId zone,
    @Nullable Duration stay,
    @Nullable TypedTime arrive,
    @Nullable TypedTime leave,
    Air air,
    List<LoadChange> loadChanges,
    boolean elevationEstimated,
    boolean zoneEstimated,
    Remarks remarks)
    implements StopBuilder.With {

  /** What a stop is for. */
  public enum Kind {
    /** Where the trip starts. */
    START("start"),
    /** A place that is passed. */
    WAYPOINT("waypoint"),
    /** Fuel. */
    FUEL("fuel"),
    /** Rest, water, feed. */
    REST("rest"),
    /** A night. */
    OVERNIGHT("overnight"),
    /** Show ground. */
    SHOW_GROUND("show ground"),
    /** Where the trip ends. */
    END("end");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name in files and tables. */
    public String word() {
      return word;
    }
  }

  /** Copies the list. */
  public Stop {
    loadChanges = List.copyOf(loadChanges);
    elevationEstimated &= elevation != null;
    zoneEstimated &= zone != null;
  }

  /** A stop of which nothing else is known: no place on the map, no times, no air. */
  public static Stop named(String id, String place, Kind kind) {
    return new Stop(
        id, place, kind, null, null, null, null, null, null, Air.NONE, List.of(), Remarks.NONE);
  }

  /** A stop without estimates. */
  public Stop(
      String id,
      String place,
      Kind kind,
      @Nullable Coordinate coordinate,
      @Nullable Entered<Elevation> elevation,
      @Nullable ZoneId zone,
      @Nullable Duration stay,
      @Nullable TypedTime arrive,
      @Nullable TypedTime leave,
      Air air,
      List<LoadChange> loadChanges,
      Remarks remarks) {
    this(
        id,
        place,
        kind,
        coordinate,
        elevation,
        zone,
        stay,
        arrive,
        leave,
        air,
        loadChanges,
        false,
        false,
        remarks);
  }

  /** The same with another elevation, which is no estimate. */
  @Override
  public Stop withElevation(@Nullable Entered<Elevation> known) {
    return StopBuilder.With.super.withElevation(known).withElevationEstimated(false);
  }

  /** The same with another zone, which is no estimate. */
  @Override
  public Stop withZone(@Nullable ZoneId known) {
    return StopBuilder.With.super.withZone(known).withZoneEstimated(false);
  }

  /** The same with other typed times; null for none. */
  public Stop withTimes(@Nullable TypedTime arrival, @Nullable TypedTime departure) {
    return withArrive(arrival).withLeave(departure);
  }
}
