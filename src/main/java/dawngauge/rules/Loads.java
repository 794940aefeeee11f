package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What each tire carries when the rig leaves each stop: the likely load with its spread, and the
 * heaviest that the weighing leaves open. From the best source there is: wheel scale, axle weighed
 * alone, axle group weighed together, else the axle's rating. The latest ticket counts.
 */
public final class Loads {

  /** One side carries so much of an axle at most where sides were not weighed (2 σ); inferred. */
  public static final double HEAVIEST_SIDE = 0.525;

  /** One axle of a group weighed together is so much over an equal share at most; inferred. */
  public static final double HEAVIEST_OF_GROUP = 1.10;

  /** Spread of a side's part, as part of its load: 1.25 points of the axle; inferred. */
  public static final double SIDE_SIGMA = 0.025;

  /** Spread of an axle's part of a group, as part of its load; inferred. */
  public static final double GROUP_SIGMA = 0.05;

  /** Spread of a scale's weight, part of it; ours, no source. */
  public static final double SCALE_SIGMA = 0.01;

  /**
   * An axle that was not weighed: middle and spread, parts of its GAWR at its fullest; inferred.
   */
  private static final double UNWEIGHED_MIDDLE = 0.80;

  private static final double UNWEIGHED_SIGMA = 0.12;

  private static final Map<LoadChange.Source, Double> CHANGE_SIGMA =
      Map.of(
          LoadChange.Source.WEIGHED, 0.01,
          LoadChange.Source.TYPICAL, 0.08,
          LoadChange.Source.GUESSED, 0.15);

  /** How an axle's load is known, best first. */
  public enum Basis {
    /** Each side weighed. */
    WHEEL("wheel", "each side weighed"),
    /** Axle weighed alone. */
    AXLE("axle", "weighed alone"),
    /** Axles weighed together, shared equally. */
    GROUP("group", "weighed as a group"),
    /** Not weighed: taken from the axle's rating. */
    NOT_WEIGHED("not weighed", "not weighed"),
    /** Neither weighed nor rated. */
    UNKNOWN("not known", "no weight and no GAWR");

    private final String word;
    private final String words;

    Basis(String word, String words) {
      this.word = word;
      this.words = words;
    }

    /** Its name in machine output. */
    public String word() {
      return word;
    }

    /** As shown beside the figure. */
    public String words() {
      return words;
    }

    /** Whether a scale tells. */
    public boolean weighed() {
      return this == WHEEL || this == AXLE || this == GROUP;
    }
  }

  /**
   * Load of an axle when leaving a stop.
   *
   * @param spread what it may be, kilograms
   * @param heaviest the heaviest that the weighing leaves open, kilograms; NaN if unknown
   * @param basis how it is known
   */
  public record AxleLoad(LoadSpread spread, double heaviest, Basis basis) {
    /** The likely load; NaN if not known. */
    public double kilograms() {
      return spread.mean();
    }
  }

  /**
   * Load of a tire when leaving a stop.
   *
   * @param spread what it may be, kilograms
   * @param heaviest the heaviest that the weighing leaves open, kilograms; NaN if unknown
   * @param side part of the axle's load on this side
   * @param sideKnown whether that part was weighed or typed
   * @param axle the axle's load
   */
  public record TireLoad(
      LoadSpread spread, double heaviest, double side, boolean sideKnown, AxleLoad axle) {
    /** The likely load; NaN if not known. */
    public double kilograms() {
      return spread.mean();
    }

    /** One standard deviation of the likely load. */
    public double sigma() {
      return spread.sigma();
    }

    /** The same where the tire carries more or less than an even part of its side. */
    TireLoad times(double part) {
      return new TireLoad(spread.times(part), heaviest * part, side, sideKnown, axle);
    }

    /** The same where it carries for another. */
    private TireLoad and(TireLoad other) {
      return new TireLoad(
          spread.plus(other.spread), heaviest + other.heaviest, side, sideKnown, axle);
    }
  }

  private record Weighed(double kilograms, Basis basis) {}

  private final Rig rig;
  private final List<Map<AxleRef, AxleLoad>> byStop = new ArrayList<>();
  private final BitSet changed = new BitSet();
  private final Map<AxleRef, Double> leftShares = new HashMap<>();
  private final Map<AxleRef, Double> hitchShare;
  private final FlatTires flats;

  /** What came on and off until a stop is left. */
  private record Changes(Map<AxleRef, Double> added, Map<AxleRef, Double> variance) {
    double added(AxleRef ref) {
      return added.getOrDefault(ref, 0.0);
    }

    double variance(AxleRef ref) {
      return variance.getOrDefault(ref, 0.0);
    }
  }

  /**
   * Loads along a trip.
   *
   * @param trip the trip
   * @param offer a load that is only offered and is to be counted as taken on, or null
   * @param part how much of the offer, 0 to 1
   */
  public Loads(Trip trip, @Nullable LoadChange offer, double part) {
    rig = trip.rig();
    hitchShare = HitchShare.of(rig).parts();
    flats = new FlatTires(trip);
    Map<AxleRef, Weighed> base = new HashMap<>();
    for (AxleRef ref : axles()) {
      base.put(ref, weigh(ref));
    }
    List<Changes> changes = changes(trip, offer, part);
    Map<AxleRef, Double> fullest = new HashMap<>();
    for (Changes some : changes) {
      base.keySet().forEach(ref -> fullest.merge(ref, some.added(ref), Math::max));
    }
    for (int stop = 0; stop < changes.size(); stop++) {
      byStop.add(changed.get(stop) ? now(base, changes.get(stop), fullest) : byStop.get(stop - 1));
    }
  }

  private List<Changes> changes(Trip trip, @Nullable LoadChange offer, double part) {
    List<Changes> all = new ArrayList<>();
    Map<AxleRef, Double> added = new HashMap<>();
    Map<AxleRef, Double> variance = new HashMap<>();
    for (Stop stop : trip.route().stops()) {
      boolean changes = all.isEmpty();
      for (LoadChange change : stop.loadChanges()) {
        if (!change.offered() || change.equals(offer)) {
          add(change, change.offered() ? part : 1, added, variance);
          changes = true;
        }
      }
      changed.set(all.size(), changes);
      all.add(
          changes ? new Changes(Map.copyOf(added), Map.copyOf(variance)) : all.get(all.size() - 1));
    }
    return all;
  }

  private static Map<AxleRef, AxleLoad> now(
      Map<AxleRef, Weighed> base, Changes changes, Map<AxleRef, Double> fullest) {
    Map<AxleRef, AxleLoad> loads = new HashMap<>();
    base.forEach(
        (ref, weighed) ->
            loads.put(
                ref,
                weighed.basis.weighed()
                    ? weighed(weighed, changes.added(ref), changes.variance(ref))
                    : unweighed(
                        weighed,
                        changes.added(ref) - fullest.getOrDefault(ref, 0.0),
                        changes.variance(ref))));
    return loads;
  }

  private static AxleLoad weighed(Weighed weighed, double added, double variance) {
    boolean group = weighed.basis == Basis.GROUP;
    double likely = Math.max(0, weighed.kilograms + added);
    double share = group ? GROUP_SIGMA * likely : 0;
    double scale = SCALE_SIGMA * weighed.kilograms;
    double sigma = Math.sqrt(share * share + scale * scale + variance);
    return new AxleLoad(
        LoadSpread.about(likely, sigma), likely * (group ? HEAVIEST_OF_GROUP : 1), weighed.basis);
  }

  /** By its rating, if any, which it reaches at the fullest point of the trip at the most. */
  private static AxleLoad unweighed(Weighed weighed, double underFullest, double variance) {
    double gawr = weighed.kilograms;
    double most = Math.max(0, gawr + underFullest);
    double middle = Math.max(0, UNWEIGHED_MIDDLE * gawr + underFullest);
    double sigma = Math.hypot(UNWEIGHED_SIGMA * gawr, Math.sqrt(variance));
    return new AxleLoad(new LoadSpread(middle, sigma, most), most, weighed.basis);
  }

  /** Spread of a weight that is not from one of the tickets, part of it; inferred. */
  public static double relativeSigma(LoadChange.Source source) {
    return CHANGE_SIGMA.getOrDefault(source, 0.15);
  }

  /** Whether the rig leaves a stop loaded as it left the one before. */
  public boolean asBefore(int stop) {
    return !changed.get(stop);
  }

  /** Load of an axle on leaving the stop with an index. */
  public AxleLoad axle(int stop, AxleRef ref) {
    AxleLoad load = byStop.get(stop).get(ref);
    if (load == null) {
      throw new IllegalArgumentException("no " + ref.words());
    }
    return load;
  }

  /**
   * Load of the tire at a position on leaving the stop with an index, an even part of its side;
   * what a flat tire beside it no longer carries is on it too.
   */
  public TireLoad tire(int stop, WheelPosition position) {
    TireLoad own = even(stop, position);
    for (WheelPosition flat : flats.leftTo(position)) {
      own = own.and(even(stop, flat));
    }
    return own;
  }

  /** The flat tires whose load the tire at a position takes over. */
  public List<WheelPosition> leftTo(WheelPosition position) {
    return flats.leftTo(position);
  }

  /** The same with every tire of the axle taken as carrying its even part. */
  public TireLoad even(int stop, WheelPosition position) {
    AxleLoad load = axle(stop, position.axle());
    Axle axle = rig.axle(position.axle()).orElseThrow();
    Double left = leftShares.get(position.axle());
    double side = left == null ? 0.5 : position.slot().isLeft() ? left : 1 - left;
    double part = side / axle.tiresPerSide();
    if (left != null || !load.basis.weighed()) {
      return new TireLoad(load.spread.times(part), load.heaviest * part, side, left != null, load);
    }
    double sides = SIDE_SIGMA * load.spread.middle();
    LoadSpread spread =
        LoadSpread.about(load.spread.middle(), Math.hypot(load.spread.deviation(), sides));
    double heaviest = load.heaviest * HEAVIEST_SIDE / axle.tiresPerSide();
    return new TireLoad(spread.times(part), heaviest, side, false, load);
  }

  private List<AxleRef> axles() {
    List<AxleRef> all = new ArrayList<>();
    for (Vehicle vehicle : rig.vehicles()) {
      for (int number = 1; number <= vehicle.axles().size(); number++) {
        all.add(new AxleRef(vehicle.name(), number));
      }
    }
    return all;
  }

  private Weighed weigh(AxleRef ref) {
    Axle axle = rig.axle(ref).orElseThrow();
    Entered<Ratio> typedShare = axle.leftShare();
    if (typedShare != null) {
      leftShares.put(ref, typedShare.value().value());
    }
    for (Weighing each : Weighing.latestFirst(rig.tickets(), ref)) {
      if (!Double.isNaN(each.leftShare())) {
        leftShares.put(ref, each.leftShare());
      }
      double kilograms = each.kilograms() + (each.hitched() ? 0 : hitchPart(ref));
      if (!Double.isNaN(kilograms)) {
        return new Weighed(kilograms, each.basis());
      }
    }
    Entered<Mass> gawr = axle.gawr();
    return gawr == null
        ? new Weighed(Double.NaN, Basis.UNKNOWN)
        : new Weighed(gawr.value().kilograms(), Basis.NOT_WEIGHED);
  }

  /**
   * What the trailer's hitch load adds to an axle of the tow vehicle; NaN where a trailer's hitch
   * load is not known, so that a ticket without the trailer does not speak for that axle.
   */
  private double hitchPart(AxleRef ref) {
    double lever = hitchShare.getOrDefault(ref, 0.0);
    Hitch hitch = rig.hitch();
    Entered<Mass> load = hitch == null ? null : hitch.load();
    if (lever == 0 || (load == null && rig.vehicles().size() < 2)) {
      return 0;
    }
    return load == null ? Double.NaN : load.value().kilograms() * lever;
  }

  private void add(
      LoadChange change, double part, Map<AxleRef, Double> added, Map<AxleRef, Double> variance) {
    double weight = change.weight().value().kilograms() * part;
    double relative = relativeSigma(change.source());
    Map<AxleRef, Double> parts = new HashMap<>();
    change.axles().forEach((ref, share) -> parts.put(ref, share.value().value()));
    Entered<Ratio> toHitch = change.hitch();
    if (toHitch != null) {
      hitchShare.forEach(
          (ref, lever) -> parts.merge(ref, toHitch.value().value() * lever, Double::sum));
    }
    parts.forEach(
        (ref, share) -> {
          double kilograms = weight * share;
          added.merge(ref, kilograms, Double::sum);
          variance.merge(ref, kilograms * kilograms * relative * relative, Double::sum);
        });
  }
}
