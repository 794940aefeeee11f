package dawngauge.fitness;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** The heaviest that tires, axles and vehicles are along the trip, and where that is. */
final class PeakLoads {

  /**
   * A load at the stop after which it is heaviest.
   *
   * @param likely the likely load
   * @param heaviest the heaviest that the weighing leaves open
   * @param when in words
   */
  record Burden(Mass likely, Mass heaviest, String when) {}

  private final Rig rig;
  private final List<Stop> stops;
  private final Loads loads;

  /** Burdens of a trip with at least one stop. */
  PeakLoads(Trip trip) {
    rig = trip.rig();
    stops = trip.route().stops();
    loads = new Loads(trip, null, 0);
  }

  /** How an axle's load is known. */
  Loads.Basis basis(AxleRef axle) {
    return loads.axle(0, axle).basis();
  }

  /** Whether an axle was weighed. */
  boolean weighed(AxleRef axle) {
    return basis(axle).weighed();
  }

  /** The part of the axle's load on one side; empty where sides were not weighed or typed. */
  Optional<Double> sideShare(WheelPosition position) {
    Loads.TireLoad load = loads.tire(0, position);
    return load.sideKnown() ? Optional.of(load.side()) : Optional.empty();
  }

  /** An axle's heaviest load; empty where nothing is known. */
  Optional<Burden> axle(AxleRef axle) {
    return heaviest(
        stop -> {
          Loads.AxleLoad load = loads.axle(stop, axle);
          return burden(load.kilograms(), load.heaviest(), stop);
        });
  }

  /** A tire's load where it is heaviest; empty where nothing is known. */
  Optional<Burden> tire(WheelPosition position) {
    return heaviest(
        stop -> {
          Loads.TireLoad load = loads.tire(stop, position);
          return burden(load.kilograms(), load.heaviest(), stop);
        });
  }

  /** The load of a tire at the stop after which it is heaviest. */
  Loads.TireLoad heaviest(WheelPosition position) {
    Loads.TireLoad most = loads.tire(0, position);
    for (int stop = 1; stop < stops.size() - 1; stop++) {
      Loads.TireLoad load = loads.tire(stop, position);
      most = load.kilograms() > most.kilograms() ? load : most;
    }
    return most;
  }

  /**
   * A vehicle's heaviest weight, a trailer's with its hitch load as far as that is known; empty
   * unless all its axles were weighed.
   */
  Optional<Burden> vehicle(Vehicle vehicle) {
    List<AxleRef> axles = axles(vehicle);
    if (axles.isEmpty() || !axles.stream().allMatch(this::weighed)) {
      return Optional.empty();
    }
    return heaviest(
        stop -> {
          double kilograms = hitchLoad(vehicle, stop);
          for (AxleRef axle : axles) {
            kilograms += loads.axle(stop, axle).kilograms();
          }
          return burden(kilograms, kilograms, stop);
        });
  }

  /** Whether the whole weight of a vehicle lies on its axles, or the rest is known. */
  boolean wholeWeightKnown(Vehicle vehicle) {
    if (vehicle.kind() != Vehicle.Kind.TRAILER || !weighedHitched(vehicle)) {
      return true;
    }
    Hitch hitch = rig.hitch();
    return carriedByHitch(vehicle) && hitch != null && hitch.load() != null;
  }

  /** Axles of a vehicle, front to rear. */
  static List<AxleRef> axles(Vehicle vehicle) {
    List<AxleRef> axles = new ArrayList<>();
    for (int number = 1; number <= vehicle.axles().size(); number++) {
      axles.add(new AxleRef(vehicle.name(), number));
    }
    return axles;
  }

  /** What a trailer weighs beside its axles, on leaving a stop, in kilogram. */
  private double hitchLoad(Vehicle vehicle, int stop) {
    Hitch hitch = rig.hitch();
    if (hitch == null || !carriedByHitch(vehicle)) {
      return 0;
    }
    Entered<Mass> typed = hitch.load();
    double kilograms = typed == null || !weighedHitched(vehicle) ? 0 : typed.value().kilograms();
    for (Stop passed : stops.subList(0, stop + 1)) {
      for (LoadChange change : passed.loadChanges()) {
        Entered<Ratio> part = change.hitch();
        if (!change.offered() && part != null) {
          kilograms += change.weight().value().kilograms() * part.value().value();
        }
      }
    }
    return kilograms;
  }

  /** The hitch of the file is that of the first trailer. */
  private boolean carriedByHitch(Vehicle vehicle) {
    return rig.vehicles().stream()
        .filter(each -> each.kind() == Vehicle.Kind.TRAILER)
        .findFirst()
        .filter(vehicle::equals)
        .isPresent();
  }

  /** Whether any axle of a trailer was weighed hitched: then its axles lack the hitch load. */
  private boolean weighedHitched(Vehicle vehicle) {
    return axles(vehicle).stream().anyMatch(this::weighedHitched);
  }

  private boolean weighedHitched(AxleRef axle) {
    List<ScaleTicket> latestFirst = new ArrayList<>(rig.tickets());
    Collections.reverse(latestFirst);
    return latestFirst.stream()
        .filter(
            ticket ->
                ticket.platforms().stream().anyMatch(weight -> weight.axles().contains(axle))
                    || ticket.wheels().stream().anyMatch(weight -> weight.axle().equals(axle)))
        .findFirst()
        .map(ScaleTicket::hitched)
        .orElse(false);
  }

  private Optional<Burden> burden(double likely, double heaviest, int stop) {
    if (Double.isNaN(likely)) {
      return Optional.empty();
    }
    String when = stop == 0 ? "as loaded at the start" : "on leaving " + stops.get(stop).place();
    return Optional.of(new Burden(new Mass(likely), new Mass(heaviest), when));
  }

  /** The heaviest over all stops from which the rig rolls on, the earliest of equals. */
  private Optional<Burden> heaviest(IntFunction<Optional<Burden>> at) {
    List<Burden> all = new ArrayList<>();
    for (int stop = 0; stop < Math.max(1, stops.size() - 1); stop++) {
      at.apply(stop).ifPresent(all::add);
    }
    return all.stream().max(Comparator.comparing(Burden::likely));
  }
}
