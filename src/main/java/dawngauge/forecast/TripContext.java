package dawngauge.forecast;

import dawngauge.ambient.Ambient;
import dawngauge.physics.WarmUp;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.rules.ColdRule;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LegLimits;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.trip.Descents;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Everything that the tracks of all tires share: times, air, loads, limits, events. */
final class TripContext {

  final Trip trip;
  final Itinerary itinerary;
  final Timeline timeline;
  final ForecastOptions options;
  final Loads loads;
  private final Map<WheelPosition, FittedTire> fitted = new HashMap<>();
  private final Map<Double, Decay> decays = new HashMap<>();
  private final LegLimits limits;
  private final List<List<LogEvent>> eventsAtNode;
  private final Set<String> read = new HashSet<>();
  private final ColdRule coldRule;
  private final int[] nextEvent;
  private final boolean[] cold;
  private final double[] speedOfHourBefore;

  TripContext(
      Trip trip, Itinerary itinerary, Ambient ambient, ForecastOptions options, Loads loads) {
    this.trip = trip;
    this.itinerary = itinerary;
    this.options = options;
    this.loads = loads;
    this.timeline = new Timeline(trip, itinerary, ambient);
    this.eventsAtNode = new ArrayList<>(Collections.nCopies(timeline.count(), List.of()));
    this.coldRule = new ColdRule(trip, itinerary);
    for (LogEvent event : trip.log()) {
      double t = Timeline.time(event.time().instant());
      if (t >= timeline.seconds[0] && t <= timeline.seconds[timeline.count() - 1]) {
        boolean cold =
            !(event instanceof LogEvent.Reading reading && coldRule.wronglyCold(reading));
        note(cold ? event : ((LogEvent.Reading) event).in(ReadingState.WARM), timeline.nodeAt(t));
      }
    }
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig()
          .fittedAt(position)
          .ifPresent(tire -> fitted.put(position, new FittedTire(trip.rig(), position, tire)));
    }
    this.limits = new LegLimits(itinerary, loads, fitted, new LimitFinder(options.reserve()));
    this.nextEvent = nextEvents();
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
        moved += before.lengthKnown() ? before.meters() : ColdRule.SHORT_MOVE_METERS;
        moving += before.seconds();
      }
      if (moved >= ColdRule.SHORT_MOVE_METERS) {
        parked = 0;
      }
      if (!visit.passes()) {
        double stay = visit.stay().toMillis() / 1000.0;
        parked = moved >= ColdRule.SHORT_MOVE_METERS ? stay : parked + moving + stay;
        moved = moved >= ColdRule.SHORT_MOVE_METERS || stay >= Timeline.COLD_SECONDS ? 0 : moved;
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
    return read.contains(tire);
  }

  /** Which readings are cold ones. */
  ColdRule coldRule() {
    return coldRule;
  }

  List<LogEvent> eventsAt(int node) {
    return eventsAtNode.get(node);
  }

  /** The next node after one at which something was noted; the node count where there is none. */
  int nextEventAfter(int node) {
    return nextEvent[node];
  }

  private void note(LogEvent event, int node) {
    if (eventsAtNode.get(node).isEmpty()) {
      eventsAtNode.set(node, new ArrayList<>());
    }
    eventsAtNode.get(node).add(event);
    if (event instanceof LogEvent.Reading reading) {
      read.add(reading.tire());
    }
  }

  /** Whether a reading that is not cold was taken at the first stand after a long descent. */
  boolean braked(LogEvent.Reading reading) {
    List<Itinerary.Visit> visits = itinerary.visits();
    int at = visits.size() - 1;
    while (at > 0 && visits.get(at).arrive().isAfter(reading.time().instant())) {
      at--;
    }
    return reading.state() != ReadingState.COLD
        && Descents.before(trip.route(), stop -> visits.get(stop).passes(), at);
  }

  private int[] nextEvents() {
    int[] next = new int[timeline.count()];
    int later = next.length;
    for (int node = next.length - 1; node >= 0; node--) {
      next[node] = later;
      later = eventsAtNode.get(node).isEmpty() ? later : node;
    }
    return next;
  }

  /** Decays for a kind of tire, or null where its time constants are not known. */
  @Nullable Decay decayOf(FittedTire tire) {
    double rated = tire.ratedSingleKilograms();
    if (Double.isNaN(rated)) {
      return null;
    }
    // What a tire warms and cools by goes with this figure alone.
    double kind = WarmUp.rollingTimeConstant(rated);
    return decays.computeIfAbsent(kind, key -> new Decay(timeline, rated));
  }

  /** Limits of a tire on the leg that leaves a stop; at the last stop as on the leg before. */
  Limits limits(int visit, FittedTire tire) {
    return limits.of(tire).get(visit);
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
    if (hourBefore < timeline.seconds[0]) {
      return Double.NaN;
    }
    for (int leg = visit - 1;
        leg >= 0 && timeline.seconds[timeline.arrive[leg + 1]] > hourBefore;
        leg--) {
      if (!timeline.lengthKnown(leg)) {
        return Double.NaN;
      }
    }
    double meters = timeline.metersAt(arrival) - timeline.metersAt(hourBefore);
    return Math.max(0, meters) / 3600;
  }
}
