package dawngauge.forecast;

import dawngauge.physics.AirLoss;
import dawngauge.physics.GasLaw;
import dawngauge.physics.WarmUp;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.tire.Capacity;
import dawngauge.trip.LogEvent;
import dawngauge.trip.WheelPosition;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The tire at one position along the timeline: its warmth, its air, what was read of it, and what
 * is taken as set. A further setting gives another track, computed anew only from there.
 */
public final class Track {

  /** What is known of the tire on arriving at a stop, enough to go on from there. */
  private record Status(
      FittedTire tire,
      Heat heat,
      boolean warmthKnown,
      double fill,
      @Nullable FillOrigin origin,
      boolean rolledSinceReading) {}

  private final Scene scene;
  private final Timeline timeline;
  private final FittedTire first;
  private final Map<Integer, Setting> settings;
  private final List<TireAtStop> stops = new ArrayList<>();
  private final List<Status> arrivals = new ArrayList<>();
  private FittedTire tire;
  private @Nullable Decay decay;
  private Heat heat;
  private boolean warmthKnown;
  private double fill = Double.NaN;
  private @Nullable FillOrigin origin;
  private boolean rolledSinceReading;
  private @Nullable List<Moment> recorder;

  private Track(Scene scene, FittedTire tire, Map<Integer, Setting> settings) {
    this.scene = scene;
    this.timeline = scene.timeline;
    this.settings = settings;
    this.first = tire;
    this.tire = tire;
    this.decay = scene.decayOf(tire);
    this.heat =
        new Heat(Double.isNaN(timeline.air[0]) ? GasLaw.REFERENCE_KELVINS : timeline.air[0]);
    this.warmthKnown = !Double.isNaN(timeline.air[0]);
  }

  /** The tire at a position, nothing taken as set. */
  static Optional<Track> of(Scene scene, WheelPosition position) {
    return Optional.ofNullable(scene.fittedAt(position))
        .map(tire -> new Track(scene, tire, Map.of()));
  }

  /** One entry a stop, each computed when it is first asked for. */
  public List<TireAtStop> stops() {
    return new AbstractList<>() {
      @Override
      public TireAtStop get(int visit) {
        goOn(visit);
        return stops.get(visit);
      }

      @Override
      public int size() {
        return timeline.arrive.length;
      }
    };
  }

  /** The same with a setting taken as done at a stop, by its index. */
  public Track with(int visit, Setting setting) {
    goOn(visit);
    Map<Integer, Setting> more = new HashMap<>(settings);
    more.put(visit, setting);
    Status status = arrivals.get(visit);
    Track other = new Track(scene, first, more);
    other.tire = status.tire;
    other.decay = scene.decayOf(status.tire);
    other.stops.addAll(stops.subList(0, visit));
    other.arrivals.addAll(arrivals.subList(0, visit));
    other.heat = status.heat.copy();
    other.warmthKnown = status.warmthKnown;
    other.fill = status.fill;
    other.origin = status.origin;
    other.rolledSinceReading = status.rolledSinceReading;
    return other;
  }

  /**
   * The tire at every node of the timeline where something is known of it, in time order; where air
   * is set, before and after.
   */
  public List<Moment> course() {
    Track replay = new Track(scene, first, settings);
    List<Moment> moments = new ArrayList<>();
    replay.recorder = moments;
    replay.goOn(timeline.arrive.length - 1);
    return List.copyOf(moments);
  }

  private void record(int node) {
    List<Moment> moments = recorder;
    Moment moment = moments == null ? null : momentAt(node);
    if (moments != null && moment != null) {
      moments.add(moment);
    }
  }

  /** Goes on up to a stop and over the leg that leaves it. */
  private void goOn(int last) {
    for (int visit = stops.size(); visit <= last; visit++) {
      arrivals.add(new Status(tire, heat.copy(), warmthKnown, fill, origin, rolledSinceReading));
      visit(visit);
    }
  }

  private void visit(int visit) {
    int arrive = timeline.arrive[visit];
    int leave = timeline.leave[visit];
    List<ReadingCheck> readings = new ArrayList<>();
    Moment arrival = momentAt(arrive);
    PublishedBuildUp published = scene.publishedAt(visit, tire);
    Moment check = null;
    Setting setting = settings.get(visit);
    for (int node = arrive; node <= leave; node++) {
      if (timeline.seconds[node] - timeline.seconds[arrive] >= Timeline.COLD_SECONDS) {
        regainWarmth(node);
      }
      events(node, readings);
      if (node == arrive && arrival == null) {
        arrival = momentAt(node);
      }
      if (node == timeline.check[visit]) {
        if (scene.coldWhenLeaving(visit)) {
          regainWarmth(node);
        }
        check = momentAt(node);
        if (setting != null && check != null) {
          record(node);
          assume(setting, check, node);
        }
      }
      record(node);
      if (node < leave) {
        piece(node, 0);
      }
    }
    Moment leaving = momentAt(leave);
    Limits limits = scene.limits(visit, tire);
    LegLow low = visit + 1 < timeline.arrive.length ? leg(visit, limits) : null;
    stops.add(
        new TireAtStop(
            visit,
            tire,
            limits,
            arrival,
            check,
            leaving,
            setting,
            low,
            leaving == null ? Double.NaN : deviations(limits, leaving),
            scene.coldWhenLeaving(visit),
            readings,
            published));
  }

  /** Drives the leg that leaves a stop and finds the lowest judged pressure on it. */
  private @Nullable LegLow leg(int visit, Limits limits) {
    int from = timeline.leave[visit];
    int to = timeline.arrive[visit + 1];
    double rise = rise(limits, timeline.speed[from]);
    int lowestNode = from;
    Moment lowest = knownOnLeg(from) ? moment(from) : null;
    for (int node = from; node < to; node++) {
      piece(node, rise);
      if (node + 1 < to) {
        events(node + 1, new ArrayList<>());
        record(node + 1);
      }
      if (knownOnLeg(node + 1) && (lowest == null || judgedAt(node + 1) < lowest.judged())) {
        Moment next = moment(node + 1);
        lowestNode = next == null ? lowestNode : node + 1;
        lowest = next == null ? lowest : next;
      }
    }
    rolledSinceReading = true;
    return lowest == null
        ? null
        : new LegLow(
            timeline.meters[lowestNode] - timeline.meters[from],
            lowest,
            deviations(limits, lowest));
  }

  /** Judged pressure at a node, in pascal; NaN where unknown. */
  private double judgedAt(int node) {
    double air = timeline.air[node];
    double kelvins = warmthKnown ? Math.min(heat.kelvins(), air) : air;
    return fill * kelvins - timeline.pressure[node];
  }

  /** Air taken across an unknown stop is good enough for warmth, not to judge a limit by. */
  private boolean knownOnLeg(int node) {
    return !timeline.bridged[node];
  }

  private double rise(Limits limits, double speed) {
    Capacity capacity = tire.capacity();
    FillOrigin known = origin;
    double rated = tire.ratedSingleKilograms();
    if (capacity == null || known == null || Double.isNaN(rated) || Double.isNaN(speed)) {
      return Double.NaN;
    }
    double load = limits.load().kilograms();
    double part = Double.isNaN(load) ? 1 : load / capacity.ratedKilograms();
    double pressure = GasLaw.atReference(known.fill()) / capacity.ratedPascals();
    return pressure <= 0
        ? Double.NaN
        : WarmUp.rise(
            WarmUp.riseAtSixtyMph(rated), part, pressure, speed, tire.tire().heatFactor());
  }

  private void piece(int node, double rise) {
    double air = timeline.air[node];
    double next = timeline.air[node + 1];
    double seconds = timeline.seconds[node + 1] - timeline.seconds[node];
    Decay known = decay;
    if (known == null || Double.isNaN(air) || Double.isNaN(next) || Double.isNaN(rise)) {
      warmthKnown = false;
    }
    double before = heat.kelvins();
    if (warmthKnown && known != null) {
      heat.step(timeline, node, rise, known);
    }
    if (!Double.isNaN(fill) && seconds > 0) {
      double around = (timeline.pressure[node] + timeline.pressure[node + 1]) / 2;
      double mean = warmthKnown ? (before + heat.kelvins()) / 2 : (air + next) / 2;
      if (!Double.isNaN(around) && !Double.isNaN(mean)) {
        fill = AirLoss.fillAfter(fill, mean, around, lossRate(mean), seconds);
      }
    }
  }

  private double lossRate(double kelvins) {
    Entered<GaugePressure> leak = tire.tire().lossPerDay();
    FillOrigin known = origin;
    if (leak == null || known == null) {
      return AirLoss.permeationRate(kelvins);
    }
    double present = GasLaw.atReference(known.fill());
    return present <= 0 ? 0 : AirLoss.rateFor(leak.value().pascals(), present);
  }

  /** After three hours in known air the tire is as cool as it, whatever came before. */
  private void regainWarmth(int node) {
    if (!warmthKnown && !Double.isNaN(timeline.air[node])) {
      heat.reset(timeline.air[node]);
      warmthKnown = true;
    }
  }

  private void events(int node, List<ReadingCheck> readings) {
    for (LogEvent event : scene.eventsAt(node)) {
      if (event instanceof LogEvent.Reading reading && isMine(reading.tire())) {
        read(reading, node, readings);
      } else if (event instanceof LogEvent.Adjustment adjustment && isMine(adjustment.tire())) {
        adjust(adjustment, node);
      } else if (event instanceof LogEvent.TireChange change
          && change.position().equals(tire.position())) {
        change(change, node);
      }
    }
  }

  private boolean isMine(String id) {
    return tire.tire().id().equals(id);
  }

  private void read(LogEvent.Reading reading, int node, List<ReadingCheck> readings) {
    Readings taken = new Readings(scene, timeline, node, heat, warmthKnown);
    FillOrigin found = taken.read(reading);
    FillOrigin before = origin;
    Moment expected = before == null || Double.isNaN(timeline.air[node]) ? null : moment(node);
    if (found == null) {
      return;
    }
    double settled = found.fill() * timeline.air[node] - timeline.pressure[node];
    readings.add(
        new ReadingCheck(
            reading,
            expected == null ? Double.NaN : expected.reading() - taken.readsLow(reading.gauge()),
            expected == null ? Double.NaN : expected.readingSigma(),
            settled,
            Readings.settledSigma(found, timeline.air[node]),
            rolledSinceReading || before == null));
    known(expected == null ? found : Readings.joined(found, expected, reading));
    Entered<Temperature> own = reading.tireTemperature();
    if (own != null) {
      heat.reset(own.value().kelvins());
      warmthKnown = true;
    }
    rolledSinceReading = false;
  }

  private void known(FillOrigin found) {
    origin = found;
    fill = found.fill();
  }

  private void unknown() {
    origin = null;
    fill = Double.NaN;
  }

  /** Air added to a tire of unknown warmth: what was known of it no longer holds either. */
  private void adjust(LogEvent.Adjustment adjustment, int node) {
    FillOrigin found = new Readings(scene, timeline, node, heat, warmthKnown).adjusted(adjustment);
    if (found == null) {
      unknown();
    } else {
      known(found);
    }
  }

  /** The tire that goes on has not run: it is as cool as the air. */
  private void change(LogEvent.TireChange change, int node) {
    scene
        .trip
        .rig()
        .tire(change.on())
        .ifPresent(
            on -> {
              tire = scene.refit(tire.position(), on);
              decay = scene.decayOf(tire);
              unknown();
              warmthKnown = !Double.isNaN(timeline.air[node]);
              if (warmthKnown) {
                heat.reset(timeline.air[node]);
              }
            });
  }

  private void assume(Setting setting, Moment before, int node) {
    double kelvins = warmthKnown ? heat.kelvins() : before.airKelvins();
    double set = GasLaw.fill(setting.gaugePascals(), before.airPressure(), kelvins);
    fill = set;
    origin =
        new FillOrigin(
            FillOrigin.Kind.ASSUMED,
            before.origin().gauge(),
            before.seconds(),
            setting.gaugePascals(),
            kelvins,
            before.airKelvins(),
            before.airPressure(),
            before.elevation(),
            set,
            before.origin().repeatSigma(),
            before.origin().offsetSigma(),
            timeline.sigma[node],
            true,
            warmthKnown ? heat.warmSigma() : 0);
  }

  private @Nullable Moment momentAt(int node) {
    return timeline.bridged[node] ? null : moment(node);
  }

  private @Nullable Moment moment(int node) {
    FillOrigin known = origin;
    if (known == null
        || Double.isNaN(timeline.air[node])
        || Double.isNaN(timeline.pressure[node])) {
      return null;
    }
    Moment moment =
        Uncertainty.moment(
            known,
            fill,
            timeline,
            node,
            warmthKnown ? heat.kelvins() : timeline.air[node],
            warmthKnown ? heat.warmSigma() : 0);
    return warmthKnown ? moment : moment.withoutReading();
  }

  /** How far the floor lies above the cautious pressure, in deviations; NaN without a floor. */
  private static double deviations(Limits limits, Moment moment) {
    double floor = limits.floor();
    if (Double.isNaN(floor)) {
      return Double.NaN;
    }
    double load = limits.load().kilograms();
    double loadPart = load > 0 ? limits.load().sigma() / load * floor : 0;
    double sigma = Math.hypot(moment.limitSigma(), loadPart);
    return (floor - (moment.judged() - moment.coldSide())) / sigma;
  }
}
