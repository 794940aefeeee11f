package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.tire.TireSpec;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Changes to a rig, each giving a new trip. Where a name changes, everything that refers to it
 * follows.
 */
public final class RigEdits {

  private RigEdits() {}

  /** Puts another vehicle in the place of one; its axles are followed under a new name. */
  public static Trip withVehicle(Trip trip, int index, Vehicle vehicle) {
    Rig rig = trip.rig();
    String old = rig.vehicles().get(index).name();
    Trip changed = trip.withRig(rig.withVehicles(replaced(rig.vehicles(), index, vehicle)));
    return RigNames.vehicle(changed, old, vehicle.name());
  }

  /**
   * Puts another axle in the place of one.
   *
   * @throws IllegalArgumentException if the rig has no such axle
   */
  public static Trip withAxle(Trip trip, AxleRef ref, Axle axle) {
    Rig rig = trip.rig();
    List<Vehicle> vehicles = new ArrayList<>();
    boolean found = false;
    for (Vehicle vehicle : rig.vehicles()) {
      boolean here =
          vehicle.name().equals(ref.vehicle())
              && ref.number() >= 1
              && ref.number() <= vehicle.axles().size();
      vehicles.add(
          here ? vehicle.withAxles(replaced(vehicle.axles(), ref.number() - 1, axle)) : vehicle);
      found |= here;
    }
    if (!found) {
      throw new IllegalArgumentException("no " + ref.words());
    }
    return trip.withRig(rig.withVehicles(vehicles));
  }

  /** Puts another kind of tire in the place of one; its tires follow under a new name. */
  public static Trip withTireType(Trip trip, int index, TireSpec spec) {
    Rig rig = trip.rig();
    String old = rig.tireTypes().get(index).name();
    List<Tire> tires = new ArrayList<>();
    for (Tire tire : rig.tires()) {
      tires.add(tire.type().equals(old) ? tire.withType(spec.name()) : tire);
    }
    return trip.withRig(rig.withTireTypes(replaced(rig.tireTypes(), index, spec)).withTires(tires));
  }

  /** Puts another tire in the place of the one with its id. */
  public static Trip withTire(Trip trip, Tire tire) {
    return withTires(trip, old -> old.id().equals(tire.id()) ? tire : old);
  }

  /** Drops what is kept of earlier trips of how warm tires ran, and their factors with it. */
  public static Trip withoutHeatRecords(Trip trip) {
    return withTires(
        trip, old -> old.heatRecord() == null ? old : old.withHeatRecord(null).withHeatFactor(1));
  }

  /** Changes all tires fitted on some axles. */
  public static Trip withTiresOf(Trip trip, Predicate<AxleRef> wanted, UnaryOperator<Tire> change) {
    Set<String> fitted = new HashSet<>();
    for (Vehicle vehicle : trip.rig().vehicles()) {
      for (int i = 0; i < vehicle.axles().size(); i++) {
        if (wanted.test(new AxleRef(vehicle.name(), i + 1))) {
          fitted.addAll(vehicle.axles().get(i).fitted().values());
        }
      }
    }
    return withTires(trip, old -> fitted.contains(old.id()) ? change.apply(old) : old);
  }

  /** Puts another gauge in the place of one; readings follow under a new name. */
  public static Trip withGauge(Trip trip, int index, Gauge gauge) {
    Rig rig = trip.rig();
    String old = rig.gauges().get(index).name();
    Trip changed = trip.withRig(rig.withGauges(replaced(rig.gauges(), index, gauge)));
    return RigNames.gauge(changed, old, gauge.name());
  }

  /**
   * The weight of an axle that stood alone on the scale: on the last ticket where that has no date,
   * else on a new one without date, weighed hitched.
   */
  public static Trip withAxleWeight(Trip trip, AxleRef axle, Entered<Mass> weight) {
    List<ScaleTicket> tickets = new ArrayList<>(trip.rig().tickets());
    int last = tickets.size() - 1;
    var platform = new ScaleTicket.Platform(List.of(axle), weight);
    if (last >= 0 && tickets.get(last).date() == null) {
      List<ScaleTicket.Platform> platforms = new ArrayList<>(tickets.get(last).platforms());
      platforms.add(platform);
      tickets.set(last, tickets.get(last).withPlatforms(platforms));
    } else {
      tickets.add(new ScaleTicket(null, true, null, List.of(platform), List.of(), Remarks.NONE));
    }
    return trip.withRig(trip.rig().withTickets(tickets));
  }

  /** Adds a ticket without date, weighed hitched, on which nothing is noted yet. */
  public static Trip withNewTicket(Trip trip) {
    List<ScaleTicket> tickets = new ArrayList<>(trip.rig().tickets());
    tickets.add(new ScaleTicket(null, true, null, List.of(), List.of(), Remarks.NONE));
    return trip.withRig(trip.rig().withTickets(tickets));
  }

  /** Takes a ticket out with all its weights. */
  public static RigParts.Changed withoutTicket(Trip trip, int index) {
    List<ScaleTicket> tickets = new ArrayList<>(trip.rig().tickets());
    ScaleTicket gone = tickets.remove(index);
    int weights = gone.platforms().size() + gone.wheels().size();
    return new RigParts.Changed(
        trip.withRig(trip.rig().withTickets(tickets)),
        weights == 0 ? List.of() : List.of(weights + (weights == 1 ? " weight" : " weights")));
  }

  /** Place of the ticket that speaks for an axle, the last one that weighed it; empty if none. */
  public static OptionalInt ticketOf(Rig rig, AxleRef axle) {
    for (int i = rig.tickets().size() - 1; i >= 0; i--) {
      ScaleTicket ticket = rig.tickets().get(i);
      boolean onPlatform =
          ticket.platforms().stream().anyMatch(platform -> platform.axles().contains(axle));
      if (onPlatform || bothSides(ticket, axle)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether wheel scales stood under both sides of an axle: then no platform speaks for it. */
  public static boolean bothSides(ScaleTicket ticket, AxleRef axle) {
    return ticket.wheels().stream()
            .filter(wheel -> wheel.axle().equals(axle))
            .map(ScaleTicket.WheelWeight::left)
            .distinct()
            .count()
        == 2;
  }

  static boolean isBlank(ScaleTicket ticket) {
    return ticket.date() == null
        && ticket.aboard() == null
        && ticket.platforms().isEmpty()
        && ticket.wheels().isEmpty()
        && ticket.remarks().equals(Remarks.NONE);
  }

  private static Trip withTires(Trip trip, UnaryOperator<Tire> change) {
    Rig rig = trip.rig();
    return trip.withRig(rig.withTires(rig.tires().stream().map(change).toList()));
  }

  private static <T> List<T> replaced(List<T> list, int index, T element) {
    List<T> changed = new ArrayList<>(list);
    changed.set(index, element);
    return changed;
  }
}
