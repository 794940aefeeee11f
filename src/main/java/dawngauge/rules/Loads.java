package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Axle;
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
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What each tire carries when the rig leaves each stop. From the best source there is: wheel scale,
 * axle weighed alone, axle group weighed together, else the axle's rating.
 */
public final class Loads {

  /** Side share judged where sides were not weighed; inferred, on the unsafe side of even. */
  public static final double UNWEIGHED_SIDE_SHARE = 0.525;

  /** Axles of a group may share unequally: judged so much above an equal share; inferred. */
  public static final double GROUP_ALLOWANCE = 1.10;

  private static final Map<LoadChange.Source, Double> CHANGE_SIGMA =
      Map.of(
          LoadChange.Source.WEIGHED, 0.01,
          LoadChange.Source.TYPICAL, 0.08,
          LoadChange.Source.GUESSED, 0.15);

  /** Spread of a scale's weight, part of it; ours, no source. */
  private static final double SCALE_SIGMA = 0.01;

  /** How an axle's load is known, best first. */
  public enum Source {
    /** Each side weighed. */
    WHEEL_SCALE("wheel scale"),
    /** Axle weighed alone. */
    AXLE_SCALE("axle scale"),
    /** Axles weighed together, shared equally, judged 10 % above. */
    GROUP_SCALE("axles weighed together, judged at an equal share + 10 %"),
    /** Not weighed: judged at the axle's rating. */
    GAWR("judged at GAWR, not weighed"),
    /** Neither weighed nor rated. */
    UNKNOWN("no weight and no GAWR");

    private final String words;

    Source(String words) {
      this.words = words;
    }

    /** As shown beside the figure. */
    public String words() {
      return words;
    }
  }

  /**
   * Load of an axle when leaving a stop.
   *
   * @param kilograms load of the axle as judged (group allowance included); NaN if unknown
   * @param likelyKilograms load without the allowance
   * @param sigma one standard deviation, kilograms
   * @param source how it is known
   */
  public record AxleLoad(double kilograms, double likelyKilograms, double sigma, Source source) {}

  /**
   * Load of a tire when leaving a stop.
   *
   * @param kilograms as judged; NaN if unknown
   * @param sigma one standard deviation, kilograms
   * @param side part of the axle's load on this side
   * @param sideKnown whether that part was weighed or typed
   * @param axle the axle's load
   */
  public record TireLoad(
      double kilograms, double sigma, double side, boolean sideKnown, AxleLoad axle) {}

  private record Weighed(double kilograms, double allowance, Source source) {}

  private final Rig rig;
  private final List<Map<AxleRef, AxleLoad>> byStop = new ArrayList<>();
  private final BitSet changed = new BitSet();
  private final Map<AxleRef, Double> leftShares = new HashMap<>();

  /**
   * Loads along a trip.
   *
   * @param trip the trip
   * @param offer a load that is only offered and is to be counted as taken on, or null
   * @param part how much of the offer, 0 to 1
   */
  public Loads(Trip trip, @Nullable LoadChange offer, double part) {
    rig = trip.rig();
    Map<AxleRef, Weighed> base = new HashMap<>();
    for (AxleRef ref : axles()) {
      base.put(ref, weigh(ref));
    }
    Map<AxleRef, Double> added = new HashMap<>();
    Map<AxleRef, Double> variance = new HashMap<>();
    for (Stop stop : trip.route().stops()) {
      boolean changes = byStop.isEmpty();
      for (LoadChange change : stop.loadChanges()) {
        if (!change.offered()) {
          add(change, 1, added, variance);
          changes = true;
        } else if (change.equals(offer)) {
          add(change, part, added, variance);
          changes = true;
        }
      }
      changed.set(byStop.size(), changes);
      byStop.add(changes ? now(base, added, variance) : byStop.get(byStop.size() - 1));
    }
  }

  private static Map<AxleRef, AxleLoad> now(
      Map<AxleRef, Weighed> base, Map<AxleRef, Double> added, Map<AxleRef, Double> variance) {
    Map<AxleRef, AxleLoad> loads = new HashMap<>();
    base.forEach(
        (ref, weighed) ->
            loads.put(
                ref,
                axleLoad(weighed, added.getOrDefault(ref, 0.0), variance.getOrDefault(ref, 0.0))));
    return loads;
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

  /** Load of the tire at a position on leaving the stop with an index. */
  public TireLoad tire(int stop, WheelPosition position) {
    AxleLoad load = axle(stop, position.axle());
    Axle axle = rig.axle(position.axle()).orElseThrow();
    Double left = leftShares.get(position.axle());
    double side = left == null ? UNWEIGHED_SIDE_SHARE : position.slot().isLeft() ? left : 1 - left;
    double part = side / axle.tiresPerSide();
    return new TireLoad(load.kilograms * part, load.sigma * part, side, left != null, load);
  }

  private static AxleLoad axleLoad(Weighed weighed, double added, double variance) {
    if (weighed.source == Source.GAWR || weighed.source == Source.UNKNOWN) {
      return new AxleLoad(weighed.kilograms, weighed.kilograms, 0, weighed.source);
    }
    double likely = Math.max(0, weighed.kilograms + added);
    double scale = SCALE_SIGMA * weighed.kilograms;
    return new AxleLoad(
        likely * weighed.allowance, likely, Math.sqrt(scale * scale + variance), weighed.source);
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
    for (int i = rig.tickets().size() - 1; i >= 0; i--) {
      ScaleTicket ticket = rig.tickets().get(i);
      Weighed wheels = byWheels(ticket, ref);
      Weighed weighed = wheels == null ? byPlatform(ticket, ref) : wheels;
      if (weighed != null && !Double.isNaN(weighed.kilograms)) {
        return weighed;
      }
    }
    Entered<Mass> gawr = axle.gawr();
    return gawr == null
        ? new Weighed(Double.NaN, 1, Source.UNKNOWN)
        : new Weighed(gawr.value().kilograms(), 1, Source.GAWR);
  }

  private @Nullable Weighed byWheels(ScaleTicket ticket, AxleRef ref) {
    double left = Double.NaN;
    double right = Double.NaN;
    for (ScaleTicket.WheelWeight wheel : ticket.wheels()) {
      if (wheel.axle().equals(ref) && wheel.left()) {
        left = wheel.weight().value().kilograms();
      } else if (wheel.axle().equals(ref)) {
        right = wheel.weight().value().kilograms();
      }
    }
    double both = left + right;
    if (!(both > 0)) {
      return null;
    }
    leftShares.put(ref, left / both);
    return new Weighed(both + (ticket.hitched() ? 0 : hitchPart(ref)), 1, Source.WHEEL_SCALE);
  }

  /** The platform that weighed an axle with the fewest others on it. */
  private @Nullable Weighed byPlatform(ScaleTicket ticket, AxleRef ref) {
    return ticket.platforms().stream()
        .filter(platform -> platform.axles().contains(ref))
        .min(Comparator.comparingInt(platform -> platform.axles().size()))
        .map(
            platform -> {
              int axles = platform.axles().size();
              double share = platform.weight().value().kilograms() / axles;
              return new Weighed(
                  share + (ticket.hitched() ? 0 : hitchPart(ref)),
                  axles == 1 ? 1 : GROUP_ALLOWANCE,
                  axles == 1 ? Source.AXLE_SCALE : Source.GROUP_SCALE);
            })
        .orElse(null);
  }

  /**
   * What the trailer's hitch load adds to an axle of the tow vehicle; NaN where a trailer's hitch
   * load is not known, so that a ticket without the trailer does not speak for that axle.
   */
  private double hitchPart(AxleRef ref) {
    double lever = lever(ref);
    Hitch hitch = rig.hitch();
    Entered<Mass> load = hitch == null ? null : hitch.load();
    if (lever == 0 || (load == null && rig.vehicles().size() < 2)) {
      return 0;
    }
    return load == null ? Double.NaN : load.value().kilograms() * lever;
  }

  /**
   * The part of a hitch load that an axle takes: the tow vehicle's rear one the lever (all of it
   * where no hitch is described), its front one the rest.
   */
  private double lever(AxleRef ref) {
    Hitch hitch = rig.hitch();
    double rear = hitch == null ? 1 : hitch.lever();
    Vehicle tow = rig.vehicles().get(0);
    if (!ref.vehicle().equals(tow.name())) {
      return 0;
    }
    if (ref.number() == tow.axles().size()) {
      return rear;
    }
    return ref.number() == 1 ? 1 - rear : 0;
  }

  private void add(
      LoadChange change, double part, Map<AxleRef, Double> added, Map<AxleRef, Double> variance) {
    double weight = change.weight().value().kilograms() * part;
    double relative = CHANGE_SIGMA.getOrDefault(change.source(), 0.15);
    Map<AxleRef, Double> parts = new HashMap<>();
    change.axles().forEach((ref, share) -> parts.put(ref, share.value().value()));
    Entered<Ratio> toHitch = change.hitch();
    if (toHitch != null) {
      for (AxleRef ref : axles()) {
        double lever = lever(ref);
        if (lever != 0) {
          parts.merge(ref, toHitch.value().value() * lever, Double::sum);
        }
      }
    }
    parts.forEach(
        (ref, share) -> {
          double kilograms = weight * share;
          added.merge(ref, kilograms, Double::sum);
          variance.merge(ref, kilograms * kilograms * relative * relative, Double::sum);
        });
  }
}
