package dawngauge.testdata;

import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A haul in a few words, so that a test states only what matters to it:
 *
 * <pre>
 * Trips.of(RigBuilder.trailer())
 *     .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
 *     .leg("100 mi", "50 mph")
 *     .stop(stop("b").stays(Duration.ofHours(4)).steady("100 °F"))
 *     .readAll("2027-06-01T05:50Z", "65 psi")
 *     .trip();
 * </pre>
 */
public final class Trips {

  private final Rig rig;
  private final List<Stop> stops = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final List<AmbientEntry> ambient = new ArrayList<>();
  private final List<LogEvent> log = new ArrayList<>();

  private Trips(Rig rig) {
    this.rig = rig;
  }

  /** A haul of a rig. */
  public static Trips of(RigBuilder rig) {
    return new Trips(rig.rig());
  }

  /** The rig that hauls. */
  public Rig rig() {
    return rig;
  }

  /** The next stop. Two stops in a row have a leg of 100 mi at 50 mph between them. */
  public Trips stop(StopBuilder stop) {
    if (stops.size() > legs.size()) {
      leg("100 mi", "50 mph");
    }
    stops.add(stop.built());
    ambient.addAll(stop.ambient());
    return this;
  }

  /** The leg to the next stop, its top speed assumed. */
  public Trips leg(String distance, String averageSpeed, ProfilePoint... profile) {
    return leg(distance, averageSpeed, null, profile);
  }

  /** The leg to the next stop with its top speed. */
  public Trips leg(
      String distance, String averageSpeed, @Nullable String topSpeed, ProfilePoint... profile) {
    legs.add(
        new Leg(
            Entered.of(QuantityKind.DISTANCE, distance),
            Entered.of(QuantityKind.SPEED, averageSpeed),
            null,
            topSpeed == null ? null : Entered.of(QuantityKind.SPEED, topSpeed),
            List.of(profile),
            Remarks.NONE));
    return this;
  }

  /** A point of a leg, by its distance from the leg's start. */
  public static ProfilePoint point(String name, String distance, String elevation) {
    return new ProfilePoint(
        name,
        Entered.of(QuantityKind.DISTANCE, distance),
        Entered.of(QuantityKind.ELEVATION, elevation),
        null,
        Remarks.NONE);
  }

  /** The same with the air expected there. */
  public static ProfilePoint point(
      String name, String distance, String elevation, String temperature) {
    return new ProfilePoint(
        name,
        Entered.of(QuantityKind.DISTANCE, distance),
        Entered.of(QuantityKind.ELEVATION, elevation),
        Entered.of(QuantityKind.TEMPERATURE, temperature),
        Remarks.NONE);
  }

  /** A cold reading with the gauge "hand". */
  public Trips read(String time, String tire, String pressure) {
    return read(time, tire, pressure, "hand", ReadingState.COLD);
  }

  /** A reading. */
  public Trips read(String time, String tire, String pressure, String gauge, ReadingState state) {
    return read(time, tire, pressure, gauge, state, null);
  }

  /** A cold reading with the gauge "hand" and the air measured beside the tire. */
  public Trips readIn(String measuredAir, String time, String tire, String pressure) {
    return read(time, tire, pressure, "hand", ReadingState.COLD, measuredAir);
  }

  private Trips read(
      String time,
      String tire,
      String pressure,
      String gauge,
      ReadingState state,
      @Nullable String measuredAir) {
    log.add(
        new LogEvent.Reading(
            StopBuilder.time(time),
            tire,
            Entered.of(QuantityKind.GAUGE_PRESSURE, pressure),
            gauge,
            state,
            measuredAir == null ? null : Entered.of(QuantityKind.TEMPERATURE, measuredAir),
            null,
            Remarks.NONE));
    return this;
  }

  /** The same cold reading of every tire of the rig. */
  public Trips readAll(String time, String pressure) {
    rig.tires().forEach(tire -> read(time, tire.id(), pressure));
    return this;
  }

  /** Another tire put on at a position, by its index. */
  public Trips change(String time, int position, String off, String on) {
    log.add(
        new LogEvent.TireChange(
            StopBuilder.time(time), rig.positions().get(position), off, on, Remarks.NONE));
    return this;
  }

  /** The rig came to a stop. */
  public Trips arrived(String time, String stop) {
    log.add(new LogEvent.Arrived(StopBuilder.time(time), stop, Remarks.NONE));
    return this;
  }

  /** The rig left a stop. */
  public Trips left(String time, String stop) {
    log.add(new LogEvent.Left(StopBuilder.time(time), stop, Remarks.NONE));
    return this;
  }

  /** Air added or let out, with the gauge "hand". */
  public Trips adjust(String time, String tire, String to) {
    log.add(
        new LogEvent.Adjustment(
            StopBuilder.time(time),
            tire,
            null,
            Entered.of(QuantityKind.GAUGE_PRESSURE, to),
            "hand",
            Remarks.NONE));
    return this;
  }

  /** The trip. */
  public Trip trip() {
    return new Trip("test haul", rig, new Route(stops, legs), ambient, log, Remarks.NONE);
  }
}
