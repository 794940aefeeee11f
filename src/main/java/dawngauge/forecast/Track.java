package dawngauge.forecast;

import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.trip.WheelPosition;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The tire at one position along the timeline: its warmth, its air, what was read of it, and what
 * is taken as set. A further setting gives another track, computed anew only from there.
 */
public final class Track {

  private final TripContext context;
  private final Timeline timeline;
  private final FittedTire first;

  /** What is taken as set at each stop. */
  private final @Nullable Setting[] settings;

  private final List<TireAtStop> stops = new ArrayList<>();
  private final List<TireAtStop> lazily = lazily();

  /** The tire on arriving at each stop, enough to go on from there. */
  private final List<TireState> arrivals = new ArrayList<>();

  private final TireState tire;
  private final TireLog log;
  private final SegmentBuffer stretch;
  private @Nullable List<TireSnapshot> recorder;

  private Track(
      TripContext context, FittedTire first, TireState tire, @Nullable Setting[] settings) {
    this.context = context;
    this.timeline = context.timeline;
    this.settings = settings;
    this.first = first;
    this.tire = tire;
    this.log = new TireLog(context, tire);
    this.stretch = new SegmentBuffer(timeline);
  }

  /** The tire at a position, nothing taken as set. */
  static Optional<Track> of(TripContext context, WheelPosition position) {
    @Nullable Setting[] none = new Setting[context.timeline.arrive.length];
    return Optional.ofNullable(context.fittedAt(position)).map(tire -> begin(context, tire, none));
  }

  private static Track begin(TripContext context, FittedTire tire, @Nullable Setting[] settings) {
    TireState state = new TireState(context.timeline, tire, context.decayOf(tire));
    return new Track(context, tire, state, settings);
  }

  /** One entry a stop, each computed when it is first asked for. */
  public List<TireAtStop> stops() {
    return lazily;
  }

  private List<TireAtStop> lazily() {
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

  /** Every reading of the tires at this position, on the legs too, in time order. */
  public List<ReadingCheck> readings() {
    Track whole = begin(context, first, settings);
    whole.goOn(timeline.arrive.length - 1);
    return List.copyOf(whole.log.all());
  }

  /** Every setting in the log whose warmth is known, in time order. */
  public List<TireSetting> made() {
    Track whole = begin(context, first, settings);
    whole.goOn(timeline.arrive.length - 1);
    return List.copyOf(whole.log.made());
  }

  /** The same with a setting taken as done at a stop, by its index. */
  public Track with(int visit, Setting setting) {
    goOn(visit);
    @Nullable Setting[] more = settings.clone();
    more[visit] = setting;
    return from(visit, more);
  }

  /** The same without what is taken as set at a stop and after it. */
  public Track before(int visit) {
    goOn(visit);
    @Nullable Setting[] fewer = settings.clone();
    Arrays.fill(fewer, visit, fewer.length, null);
    return from(visit, fewer);
  }

  private Track from(int visit, @Nullable Setting[] changed) {
    Track other = new Track(context, first, arrivals.get(visit).copy(), changed);
    other.stops.addAll(stops.subList(0, visit));
    other.arrivals.addAll(arrivals.subList(0, visit));
    return other;
  }

  /**
   * The tire at every node of the timeline where something is known of it, in time order; where air
   * is set, before and after.
   */
  public List<TireSnapshot> course() {
    Track replay = begin(context, first, settings);
    List<TireSnapshot> moments = new ArrayList<>();
    replay.recorder = moments;
    replay.goOn(timeline.arrive.length - 1);
    return List.copyOf(moments);
  }

  /**
   * The tire at every node of a stay where something is known of it, in time order; where air is
   * set, before and after.
   *
   * @param visit index of the stop
   */
  public List<TireSnapshot> stay(int visit) {
    goOn(visit);
    Track replay = from(visit, settings);
    List<TireSnapshot> moments = new ArrayList<>();
    replay.recorder = moments;
    replay.goOn(visit);
    double end = timeline.seconds[timeline.leave[visit]];
    return moments.stream().filter(moment -> moment.seconds() <= end).toList();
  }

  private void record(int node) {
    List<TireSnapshot> moments = recorder;
    TireSnapshot moment = moments == null ? null : tire.momentToJudge(node);
    if (moments != null && moment != null) {
      moments.add(moment);
    }
  }

  /** Goes on up to a stop and over the leg that leaves it. */
  private void goOn(int last) {
    for (int visit = stops.size(); visit <= last; visit++) {
      arrivals.add(tire.copy());
      visit(visit);
    }
  }

  private void visit(int visit) {
    int arrive = timeline.arrive[visit];
    int leave = timeline.leave[visit];
    // After a leg that takes no time, what was noted at this moment was applied at the stop before.
    boolean sameMoment = visit > 0 && arrive == timeline.leave[visit - 1];
    List<ReadingCheck> readings = new ArrayList<>();
    int bareBefore = log.bare().size();
    TireSnapshot arrival = tire.momentToJudge(arrive);
    PublishedBuildUp published = context.publishedAt(visit, tire.tire());
    TireSnapshot check = null;
    Setting setting = settings[visit];
    boolean unset = true;
    for (int node = arrive; node <= leave; node = stay(node, visit)) {
      if (node >= timeline.cold[visit]) {
        tire.regainWarmth(node);
      }
      if (node > arrive || !sameMoment) {
        log.apply(node, readings);
      }
      if (node == arrive && arrival == null) {
        arrival = tire.momentToJudge(node);
      }
      if (node == timeline.check[visit]) {
        if (context.coldWhenLeaving(visit)) {
          tire.regainWarmth(node);
        }
        check = tire.momentToJudge(node);
        if (setting != null && check != null) {
          record(node);
          tire.known(new Readings(context, tire, node).assumed(setting, check));
          unset = false;
        }
      }
      record(node);
    }
    boolean asChecked = unset && timeline.check[visit] == leave;
    TireSnapshot leaving = asChecked ? check : tire.momentToJudge(leave);
    Limits limits = context.limits(visit, tire.tire());
    LoadChance chance = LoadChance.of(limits, leaving);
    FittedTire fitted = tire.tire();
    LegLow low = visit + 1 < timeline.arrive.length ? leg(visit, limits, leaving, chance) : null;
    stops.add(
        new TireAtStop(
            visit,
            fitted,
            limits,
            arrival,
            check,
            leaving,
            setting,
            low,
            chance,
            context.coldWhenLeaving(visit),
            readings,
            log.bare().subList(bareBefore, log.bare().size()),
            published));
  }

  /** Stands until something may change; past the end of the stay where it ends. */
  private int stay(int node, int visit) {
    int leave = timeline.leave[visit];
    if (node == leave) {
      return node + 1;
    }
    int next = Math.min(leave, next(node));
    for (int change : new int[] {timeline.cold[visit], timeline.check[visit]}) {
      next = change > node ? Math.min(next, change) : next;
    }
    tire.goOver(node, next, 0, 0, stretch);
    return next;
  }

  /** The next node at which something was noted; every one where all are recorded. */
  private int next(int node) {
    return recorder == null ? context.nextEventAfter(node) : node + 1;
  }

  /** Drives the leg that leaves a stop and finds the lowest judged pressure on it. */
  private @Nullable LegLow leg(
      int visit, Limits limits, @Nullable TireSnapshot leaving, LoadChance leavingChance) {
    int from = timeline.leave[visit];
    int to = timeline.arrive[visit + 1];
    double rise = tire.rise(limits, timeline.speed[from]);
    double unsure = TireState.loadSpread(limits);
    TireSnapshot low = leaving;
    int lowNode = from;
    for (int node = from; node < to; ) {
      int next = Math.min(to, next(node));
      TireState before = tire.copy();
      tire.goOver(node, next, rise, unsure, stretch);
      int found = stretch.lowest(next < to ? next - 1 : to, judged(low));
      if (found >= 0) {
        before.goOver(node, found, rise, unsure, stretch);
        low = before.moment(found);
        lowNode = found;
      }
      if (next < to) {
        log.apply(next, new ArrayList<>());
        record(next);
        TireSnapshot here = tire.momentToJudge(next);
        lowNode = judged(here) < judged(low) ? next : lowNode;
        low = judged(here) < judged(low) ? here : low;
      }
      node = next;
    }
    if (to > from) {
      tire.rolled(true);
    }
    if (low == null) {
      return null;
    }
    LoadChance chance = lowNode == from ? leavingChance : LoadChance.of(limits, low);
    return new LegLow(timeline.meters[lowNode] - timeline.meters[from], low, chance);
  }

  private static double judged(@Nullable TireSnapshot moment) {
    return moment == null ? Double.POSITIVE_INFINITY : moment.judged();
  }
}
