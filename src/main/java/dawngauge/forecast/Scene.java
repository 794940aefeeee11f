package dawngauge.forecast;

import dawngauge.ambient.Ambient;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Loads;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Everything that the tracks of all tires share: times, air, loads, limits, events. */
final class Scene {

  /** A move under a mile leaves a tire cold (NHTSA consumer text). */
  private static final double SHORT_MOVE_METERS = 1609.344;

  final Trip trip;
  final Itinerary itinerary;
  final Timeline timeline;
  final ForecastOptions options;
  final Loads loads;
  private final LimitFinder finder;
  private final Map<WheelPosition, FittedTire> fitted = new HashMap<>();
  private final Map<String, Decay> decays = new HashMap<>();
  private final Map<FittedTire, List<Limits>> limits = new HashMap<>();
  private final Map<FittedTire, List<Limits>> own = new HashMap<>();
  private final List<List<LogEvent>> eventsAtNode = new ArrayList<>();
  private final boolean[] cold;
  private final double[] speedOfHourBefore;

  Scene(Trip trip, Itinerary itinerary, Ambient ambient, ForecastOptions options, Loads loads) {
    this.trip = trip;
    this.itinerary = itinerary;
    this.options = options;
    this.loads = loads;
    this.finder = new LimitFinder(options);
    this.timeline = new Timeline(trip, itinerary, ambient);
    for (int node = 0; node < timeline.count(); node++) {
      eventsAtNode.add(new ArrayList<>());
    }
    for (LogEvent event : trip.log()) {
      double t = Timeline.time(event.time().instant());
      if (t >= timeline.seconds[0] && t <= timeline.seconds[timeline.count() - 1]) {
        eventsAtNode.get(timeline.nodeAt(t)).add(event);
      }
    }
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig()
          .fittedAt(position)
          .ifPresent(tire -> fitted.put(position, new FittedTire(trip.rig(), position, tire)));
    }
    this.cold = coldAtLeaving();
    this.speedOfHourBefore = new double[timeline.arrive.length];
    Arrays.setAll(speedOfHourBefore, this::speedOfHourBefore);
  }

  /**
   * Which stops are left with cold tires: three hours parked, less than a mile driven in them or
   * since. Places passed do not cut a drive into short moves.
   */
  private boolean[] coldAtLeaving() {
    boolean[] result = new boolean[itinerary.visits().size()];
    double parked = Timeline.COLD_SECONDS;
    double moved = 0;
    double moving = 0;
    for (Itinerary.Visit visit : itinerary.visits()) {
      if (visit.index() > 0) {
        Itinerary.Drive before = itinerary.drives().get(visit.index() - 1);
        moved += before.meters() > 0 ? before.meters() : SHORT_MOVE_METERS;
        moving += before.seconds();
      }
      if (moved >= SHORT_MOVE_METERS) {
        parked = 0;
      }
      if (!visit.passes()) {
        double stay = visit.stay().toMillis() / 1000.0;
        parked = moved >= SHORT_MOVE_METERS ? stay : parked + moving + stay;
        moved = moved >= SHORT_MOVE_METERS || stay >= Timeline.COLD_SECONDS ? 0 : moved;
        moving = 0;
      }
      result[visit.index()] = parked >= Timeline.COLD_SECONDS;
    }
    return result;
  }

  boolean coldWhenLeaving(int visit) {
    return cold[visit];
  }

  @Nullable FittedTire fittedAt(WheelPosition position) {
    return fitted.get(position);
  }

  /** The same position with another tire. */
  FittedTire refit(WheelPosition position, Tire tire) {
    return new FittedTire(trip.rig(), position, tire);
  }

  /** Whether a reading of a tire lies within the trip. */
  boolean isRead(String tire) {
    return eventsAtNode.stream()
        .flatMap(List::stream)
        .anyMatch(event -> event instanceof LogEvent.Reading read && read.tire().equals(tire));
  }

  List<LogEvent> eventsAt(int node) {
    return eventsAtNode.get(node);
  }

  /** Decays for a kind of tire, or null where its time constants are not known. */
  @Nullable Decay decayOf(FittedTire tire) {
    double rolling = tire.rollingSeconds();
    if (Double.isNaN(rolling)) {
      return null;
    }
    double parked = tire.parkedSeconds();
    return decays.computeIfAbsent(
        rolling + "/" + parked, key -> new Decay(timeline, rolling, parked));
  }

  /** Limits of a tire on the leg that leaves a stop; at the last stop as on the leg before. */
  Limits limits(int visit, FittedTire tire) {
    List<Limits> known = limits.computeIfAbsent(tire, this::limitsOnAllLegs);
    return known.get(visit);
  }

  private List<Limits> limitsOnAllLegs(FittedTire tire) {
    List<Limits> all = new ArrayList<>();
    for (int visit = 0; visit < itinerary.visits().size(); visit++) {
      all.add(commonLimits(visit, tire));
    }
    return all;
  }

  private Limits commonLimits(int visit, FittedTire tire) {
    Limits own = ownLimits(visit, tire);
    double aim = own.aim();
    Limits.AimFrom from = own.aimFrom();
    for (WheelSlot slot : WheelSlot.of(tire.axle().dual())) {
      FittedTire other = fitted.get(new WheelPosition(tire.position().axle(), slot));
      if (other != null && slot != tire.position().slot()) {
        Limits theirs = ownLimits(visit, other);
        // All tires of an axle get one aim, that of the most loaded.
        if (theirs.aim() > aim && theirs.aim() <= own.ceiling()) {
          aim = theirs.aim();
          from = theirs.aimFrom();
        }
      }
    }
    return aim == own.aim()
        ? own
        : new Limits(
            own.load(),
            own.floor(),
            aim,
            own.ceiling(),
            from,
            own.estimated(),
            own.overloaded(),
            own.speed());
  }

  private Limits ownLimits(int visit, FittedTire tire) {
    return own.computeIfAbsent(tire, this::ownLimitsOnAllLegs).get(visit);
  }

  private List<Limits> ownLimitsOnAllLegs(FittedTire tire) {
    List<Itinerary.Drive> drives = itinerary.drives();
    List<Limits> all = new ArrayList<>();
    for (int visit = 0; visit < itinerary.visits().size(); visit++) {
      double top =
          drives.isEmpty()
              ? 0
              : drives.get(Math.min(visit, drives.size() - 1)).topMetersPerSecond();
      all.add(finder.find(tire, loads.tire(visit, tire.position()), top));
    }
    return all;
  }

  /** The published build-up for a tire on arrival at a stop. */
  @Nullable PublishedBuildUp publishedAt(int visit, FittedTire tire) {
    double rated = tire.ratedSingleKilograms();
    if (visit == 0 || Double.isNaN(rated)) {
      return null;
    }
    double speed = speedOfHourBefore[visit];
    return Double.isNaN(speed)
        ? null
        : PublishedBuildUp.of(new Mass(rated), new Speed(speed)).orElse(null);
  }

  /** Average speed over the hour before arriving at a stop; NaN where it is not known. */
  private double speedOfHourBefore(int visit) {
    double arrival = timeline.seconds[timeline.arrive[visit]];
    double hourBefore = arrival - 3600;
    if (hourBefore < timeline.seconds[0] || timeline.speedUnknown(hourBefore, arrival)) {
      return Double.NaN;
    }
    double meters = timeline.metersAt(arrival) - timeline.metersAt(hourBefore);
    return Math.max(0, meters) / 3600;
  }
}
