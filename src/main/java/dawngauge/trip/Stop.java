package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
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
 * @param remarks note and extras
 */
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
    Remarks remarks) {

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
  }

  /** The same under another id. */
  public Stop withId(String other) {
    return new Stop(
        other,
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
        remarks);
  }

  /** The same with another name. */
  public Stop withPlace(String other) {
    return new Stop(
        id,
        other,
        kind,
        coordinate,
        elevation,
        zone,
        stay,
        arrive,
        leave,
        air,
        loadChanges,
        remarks);
  }

  /** The same for another purpose. */
  public Stop withKind(Kind other) {
    return new Stop(
        id,
        place,
        other,
        coordinate,
        elevation,
        zone,
        stay,
        arrive,
        leave,
        air,
        loadChanges,
        remarks);
  }

  /** The same elsewhere. */
  public Stop withCoordinate(@Nullable Coordinate other) {
    return new Stop(
        id, place, kind, other, elevation, zone, stay, arrive, leave, air, loadChanges, remarks);
  }

  /** The same at another height. */
  public Stop withElevation(@Nullable Entered<Elevation> other) {
    return new Stop(
        id, place, kind, coordinate, other, zone, stay, arrive, leave, air, loadChanges, remarks);
  }

  /** The same in another time zone. */
  public Stop withZone(@Nullable ZoneId other) {
    return new Stop(
        id,
        place,
        kind,
        coordinate,
        elevation,
        other,
        stay,
        arrive,
        leave,
        air,
        loadChanges,
        remarks);
  }

  /** The same with another stay. */
  public Stop withStay(@Nullable Duration other) {
    return new Stop(
        id,
        place,
        kind,
        coordinate,
        elevation,
        zone,
        other,
        arrive,
        leave,
        air,
        loadChanges,
        remarks);
  }

  /** The same with other air to be had. */
  public Stop withAir(Air other) {
    return new Stop(
        id,
        place,
        kind,
        coordinate,
        elevation,
        zone,
        stay,
        arrive,
        leave,
        other,
        loadChanges,
        remarks);
  }

  /** The same with other loads taken on or set down. */
  public Stop withLoadChanges(List<LoadChange> other) {
    return new Stop(
        id, place, kind, coordinate, elevation, zone, stay, arrive, leave, air, other, remarks);
  }

  /** The same with other remarks. */
  public Stop withRemarks(Remarks other) {
    return new Stop(
        id, place, kind, coordinate, elevation, zone, stay, arrive, leave, air, loadChanges, other);
  }

  /** The same with other typed times; null for none. */
  public Stop withTimes(@Nullable TypedTime arrival, @Nullable TypedTime departure) {
    return new Stop(
        id,
        place,
        kind,
        coordinate,
        elevation,
        zone,
        stay,
        arrival,
        departure,
        air,
        loadChanges,
        remarks);
  }
}
