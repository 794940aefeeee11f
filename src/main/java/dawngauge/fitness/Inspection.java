package dawngauge.fitness;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Speed;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Limits;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What all checks look at: the trip, its wheels, loads, speeds and dates. */
final class Inspection {

  /**
   * The top speed of a leg.
   *
   * @param leg the leg in words
   * @param top the speed
   * @param assumed whether it was assumed
   */
  record LegSpeed(String leg, Speed top, boolean assumed) {}

  private final Trip trip;
  private final FitnessCheck.Options options;
  private final PeakLoads burdens;
  private final List<FittedTire> wheels;
  private final List<LegSpeed> speeds = new ArrayList<>();
  private final List<String> legsWithoutSpeed = new ArrayList<>();

  Inspection(Trip given, FitnessCheck.Options options) {
    trip = given.route().stops().isEmpty() ? given.withRoute(Route.standing()) : given;
    this.options = options;
    burdens = new PeakLoads(trip);
    Rig rig = trip.rig();
    wheels =
        rig.positions().stream()
            .flatMap(
                position ->
                    rig
                        .fittedAt(position)
                        .map(tire -> new FittedTire(rig, position, tire))
                        .stream())
            .toList();
    findSpeeds();
  }

  private void findSpeeds() {
    List<Itinerary.Drive> drives =
        Itinerary.of(trip).value().map(Itinerary::drives).orElse(List.of());
    List<Stop> stops = trip.route().stops();
    for (int i = 0; i < trip.route().legs().size(); i++) {
      Leg leg = trip.route().legs().get(i);
      Entered<Speed> typed = leg.topSpeed();
      String words = stops.get(i).place() + " to " + stops.get(i + 1).place();
      if (i < drives.size()) {
        Itinerary.Drive drive = drives.get(i);
        speeds.add(new LegSpeed(words, new Speed(drive.topMetersPerSecond()), drive.topAssumed()));
      } else if (typed != null) {
        speeds.add(new LegSpeed(words, typed.value(), false));
      } else {
        legsWithoutSpeed.add(words);
      }
    }
  }

  Rig rig() {
    return trip.rig();
  }

  /** Part by which a tire is to carry more than its load. */
  double reserve() {
    return options.reserve();
  }

  /** The limits of a tire as most loaded, at no more than 65 mph. */
  Limits limits(FittedTire tire) {
    return new LimitFinder(options.reserve()).find(tire, burdens.heaviest(tire.position()), 0);
  }

  /** Why a chosen target does not count; null where it does or there is none. */
  LimitFinder.@Nullable TargetFault targetFault(FittedTire tire) {
    return new LimitFinder(options.reserve()).targetFault(tire, burdens.heaviest(tire.position()));
  }

  /** Limits at a top speed in m/s. */
  Limits limits(FittedTire tire, double topSpeed) {
    return new LimitFinder(options.reserve())
        .find(tire, burdens.heaviest(tire.position()), topSpeed);
  }

  /** Dual mates further apart than this are set alike. */
  GaugePressure dualsApart() {
    return options.dualsApart();
  }

  /** Chance of too little pressure for the load that is still allowed. */
  double allowed() {
    return 1 - options.confidence();
  }

  PeakLoads burdens() {
    return burdens;
  }

  /** All fitted tires in walking order. */
  List<FittedTire> wheels() {
    return wheels;
  }

  /** The fitted tires of an axle. */
  List<FittedTire> wheels(AxleRef axle) {
    return wheels.stream().filter(wheel -> wheel.position().axle().equals(axle)).toList();
  }

  /** All axles in walking order. */
  List<AxleRef> axles() {
    return rig().vehicles().stream()
        .flatMap((Vehicle vehicle) -> PeakLoads.axles(vehicle).stream())
        .toList();
  }

  /** The leg driven fastest; empty where no speed is known. */
  Optional<LegSpeed> fastest() {
    return speeds.stream().max(Comparator.comparing(LegSpeed::top));
  }

  /** Legs of which neither a driving time nor a top speed is known. */
  List<String> legsWithoutSpeed() {
    return legsWithoutSpeed;
  }

  /** The last date typed for a stop, on which tires are oldest; empty where there is none. */
  Optional<LocalDate> lastDate() {
    return trip.route().lastDate();
  }

  /** The other tire of a dual pair; empty for a single wheel or where none is named. */
  Optional<FittedTire> mate(FittedTire wheel) {
    WheelSlot slot = wheel.position().slot();
    return wheels(wheel.position().axle()).stream()
        .filter(other -> slot.mate() != slot && other.position().slot() == slot.mate())
        .findFirst();
  }

  /** A tire's last cold reading, unless air was added or let out since. */
  Optional<LogEvent.Reading> latestCold(Tire tire) {
    LogEvent.Reading latest = null;
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Reading reading
          && reading.tire().equals(tire.id())
          && reading.state() == ReadingState.COLD) {
        latest = reading;
      } else if (event instanceof LogEvent.Adjustment adjustment
          && adjustment.tire().equals(tire.id())) {
        latest = null;
      }
    }
    return Optional.ofNullable(latest);
  }
}
