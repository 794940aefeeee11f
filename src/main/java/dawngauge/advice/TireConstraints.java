package dawngauge.advice;

import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;

/**
 * One tire from stop to stop as the adjustment plan sees it: how much air it must and may hold
 * before leaving each stop, and which figures it can be set to there. Amounts of air are fills, in
 * pascal per kelvin, just after the tire was gauged and set at a stop. Air lost on the way makes
 * the fill at a later stop a rising straight line of that at an earlier one.
 *
 * <p>An origin is where the tire's air is known from: 0 for what is in it already, 1 + i for a
 * setting at stop i. What a tire must hold depends on the origin, since an old reading is less
 * certain than a fresh setting.
 */
final class TireConstraints {

  /** Forgives rounding, in steps of the gauge. */
  private static final double ROUNDING = 1e-6;

  private final WheelPosition position;

  private final int first;
  private final double step;
  private final Stop[] stops;

  /** Fill of an example of each origin at each stop. */
  private final double[][] example;

  /** Growth of a difference of fills from the first stop to each one. */
  private final double[] growth;

  /** Least fill at each stop by origin. */
  private final RequiredFill asked;

  /** Most fill at each stop; infinite where nothing is asked. */
  private final double[] most;

  /** From the example of each setting: figures that last through a stop, in steps. */
  private final int[][] lowest;

  private final int[][] highest;

  /** The last stop through which the tire lasts as it is. */
  private int lastsTo;

  /**
   * What can be done with a tire at a stop.
   *
   * @param canAdd whether air can be added
   * @param canRelease whether air may be let out
   * @param from lowest figure that air is added to, in steps of the gauge
   * @param addTo highest one, which a hose may cut
   * @param releaseTo lowest figure that air is let out to: never under the aim
   * @param most highest figure it may be set to
   * @param air pressure of the air around when it is set, in pascal
   * @param kelvins temperature of the air in the tire then
   * @param wanted figure of the gauge that gives the aim, in pascal; NaN without an aim
   * @param aimed fill that is no more than a step under the aim; negative infinity where the aim is
   *     not judged
   */
  record Stop(
      boolean canAdd,
      boolean canRelease,
      int from,
      int addTo,
      int releaseTo,
      int most,
      double air,
      double kelvins,
      double wanted,
      double aimed) {

    /** A stop at which nothing can be done. */
    static final Stop NOTHING =
        new Stop(false, false, 1, 0, 1, 0, 0, 1, Double.NaN, Double.NEGATIVE_INFINITY);

    /** Whether anything can be done. */
    boolean acts() {
      return (canAdd && from <= addTo) || (canRelease && releaseTo <= most);
    }

    /** Whether any figure from the aim to the most can be set, whatever the tire has. */
    boolean resets() {
      return canAdd && canRelease && addTo >= most && releaseTo <= from;
    }

    /** Lowest figure that may be set. */
    int lowest() {
      return canAdd && canRelease ? Math.min(from, releaseTo) : canAdd ? from : releaseTo;
    }

    /** The same for a figure chosen by hand, which may be under the aim. */
    boolean allowsByHand(double shown, int steps) {
      return steps > shown ? canAdd && steps <= addTo : canRelease && steps <= most;
    }

    /** Whether a figure may be set on a tire that shows so much, both in steps. */
    boolean allows(double shown, int steps) {
      return steps > shown
          ? canAdd && steps >= from && steps <= addTo
          : canRelease && steps >= releaseTo && steps <= most;
    }
  }

  /** Some settings of one origin, in whole steps; of what is in the tire already, one. */
  private record Alive(int origin, int from, int to) {}

  TireConstraints(
      WheelPosition position,
      int first,
      double step,
      Stop[] stops,
      double[][] example,
      double[] growth,
      RequiredFill asked,
      double[] most) {
    this.position = position;
    this.first = first;
    this.step = step;
    this.stops = stops.clone();
    this.example = example;
    this.growth = growth.clone();
    this.asked = asked;
    this.most = most.clone();
    this.lowest = new int[stops.length][stops.length];
    this.highest = new int[stops.length][stops.length];
    bound();
  }

  private void bound() {
    lastsTo = first - 1;
    while (lastsTo + 1 < stops.length && fits(0, lastsTo + 1, example[0][lastsTo + 1])) {
      lastsTo++;
    }
    for (int from = first; from < stops.length; from++) {
      int low = stops[from].lowest();
      int high = stops[from].most();
      for (int at = from; at < stops.length && stops[from].acts(); at++) {
        int origin = 1 + from;
        double under = figure(from, back(origin, asked.least(origin, at), at)) - ROUNDING;
        double over = figure(from, back(origin, most[at], at)) + ROUNDING;
        low = (int) Math.max(low, Math.ceil(Math.min(under, Integer.MAX_VALUE)));
        high = (int) Math.min(high, Math.floor(Math.max(over, Integer.MIN_VALUE)));
        lowest[from][at] = low;
        highest[from][at] = high;
      }
    }
  }

  /** Whether a fill is enough and not too much at a stop. */
  private boolean fits(int origin, int at, double fill) {
    double slack = ROUNDING * step / stops[at].kelvins();
    return fill >= asked.least(origin, at) - slack && fill <= most[at] + slack;
  }

  WheelPosition position() {
    return position;
  }

  int first() {
    return first;
  }

  int count() {
    return stops.length;
  }

  double step() {
    return step;
  }

  Stop stop(int at) {
    return stops[at];
  }

  RequiredFill asked() {
    return asked;
  }

  /** Fill at a stop of a setting, in steps, of an origin; of origin 0 the steps do not count. */
  double fill(int origin, int steps, int at) {
    return origin == 0
        ? example[0][at]
        : example[origin][at]
            + growth[at]
                / growth[origin - 1]
                * (set(origin - 1, steps) - example[origin][origin - 1]);
  }

  /** The fill that a figure gives where it is set. */
  private double set(int at, int steps) {
    return (steps * step + stops[at].air()) / stops[at].kelvins();
  }

  /** What the gauge shows at a stop, in steps. */
  private double figure(int at, double fill) {
    return (fill * stops[at].kelvins() - stops[at].air()) / step;
  }

  /** What the gauge shows at a stop of a setting of an origin, in steps. */
  double shown(int origin, int steps, int at) {
    return figure(at, fill(origin, steps, at));
  }

  /** The fill where an origin was set that gives a fill at a later stop. */
  private double back(int origin, double fill, int at) {
    return example[origin][origin - 1]
        + growth[origin - 1] / growth[at] * (fill - example[origin][at]);
  }

  /** Whether some figure set at a stop lasts through a later one. */
  boolean helps(int set, int through) {
    return stops[set].acts() && lowest[set][through] <= highest[set][through];
  }

  /**
   * Whether the tire can be kept within its limits with settings at some stops only.
   *
   * @param chosen the stops, rising
   * @return the first stop that it cannot last through; the number of stops where it lasts
   */
  int failsAt(List<Integer> chosen) {
    List<Alive> alive = new ArrayList<>();
    alive.add(new Alive(0, 0, 0));
    int next = 0;
    while (next < chosen.size() && chosen.get(next) < first) {
      next++;
    }
    for (; next <= chosen.size(); next++) {
      int until = next < chosen.size() ? chosen.get(next) : stops.length;
      List<Alive> lasting = new ArrayList<>();
      int furthest = first - 1;
      for (Alive some : alive) {
        int last = Math.min(until - 1, last(some, until - 1));
        furthest = Math.max(furthest, last);
        if (last == until - 1) {
          lasting.add(within(some, last));
        }
      }
      if (lasting.isEmpty()) {
        return furthest + 1;
      }
      alive = lasting;
      if (next < chosen.size()) {
        settings(until, alive);
      }
    }
    return stops.length;
  }

  /** What may be in the tire just after a stop up to which it lasts with the chosen ones. */
  private List<Alive> aliveAt(List<Integer> chosen, int at) {
    List<Alive> alive = new ArrayList<>();
    alive.add(new Alive(0, 0, 0));
    for (int set : chosen) {
      if (set >= first && set <= at) {
        alive = lasting(alive, set - 1);
        settings(set, alive);
      }
    }
    return lasting(alive, at - 1);
  }

  private List<Alive> lasting(List<Alive> alive, int through) {
    List<Alive> lasting = new ArrayList<>();
    for (Alive some : alive) {
      if (some.origin() - 1 > through || last(some, through) >= through) {
        lasting.add(within(some, through));
      }
    }
    return lasting;
  }

  /**
   * Whether at a stop that the tire cannot last through some of what it may have holds enough to
   * keep the floor; then it is too little for the aim or too much.
   *
   * @param chosen stops with which it lasts until then
   */
  boolean keepsFloorAt(List<Integer> chosen, int at) {
    for (Alive some : aliveAt(chosen, at)) {
      if (fill(some.origin(), some.to(), at) >= asked.leastForFloor(some.origin(), at)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some of it holds all that is asked; then it is too much. */
  boolean enoughAt(List<Integer> chosen, int at) {
    for (Alive some : aliveAt(chosen, at)) {
      if (fill(some.origin(), some.to(), at) >= asked.least(some.origin(), at)) {
        return true;
      }
    }
    return false;
  }

  /** The most that can be in the tire just after such a stop. */
  double mostAt(List<Integer> chosen, int at) {
    double most = Double.NEGATIVE_INFINITY;
    for (Alive some : aliveAt(chosen, at)) {
      most = Math.max(most, fill(some.origin(), some.to(), at));
    }
    return most;
  }

  /** The last stop through which some of these settings last. */
  private int last(Alive some, int limit) {
    if (some.origin() == 0) {
      return lastsTo;
    }
    int set = some.origin() - 1;
    int last = set - 1;
    while (last < limit
        && Math.max(some.from(), lowest[set][last + 1])
            <= Math.min(some.to(), highest[set][last + 1])) {
      last++;
    }
    return last;
  }

  private Alive within(Alive some, int through) {
    int set = some.origin() - 1;
    return some.origin() == 0 || through < set
        ? some
        : new Alive(
            some.origin(),
            Math.max(some.from(), lowest[set][through]),
            Math.min(some.to(), highest[set][through]));
  }

  /** Adds what can be set at a stop. */
  private void settings(int at, List<Alive> alive) {
    Stop stop = stops[at];
    if (!stop.acts()) {
      return;
    }
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Alive some : alive) {
      low = Math.min(low, shown(some.origin(), some.from(), at));
      high = Math.max(high, shown(some.origin(), some.to(), at));
    }
    int added = Math.max(stop.from(), (int) Math.floor(low) + 1);
    if (stop.canAdd() && added <= stop.addTo()) {
      alive.add(new Alive(1 + at, added, stop.addTo()));
    }
    int released = Math.min(stop.most(), (int) Math.ceil(high) - 1);
    if (stop.canRelease() && stop.releaseTo() <= released) {
      alive.add(new Alive(1 + at, stop.releaseTo(), released));
    }
  }

  /** Whether what is in the tire at a stop lasts until just before another. */
  boolean lasts(int origin, int steps, int from, int until) {
    for (int at = from; at < until; at++) {
      if (!fits(origin, at, fill(origin, steps, at))) {
        return false;
      }
    }
    return true;
  }

  /** How often, from a stop until just before another, a day starts more than a step under aim. */
  int underAim(int origin, int steps, int from, int until) {
    int under = 0;
    for (int at = from; at < until; at++) {
      under += fill(origin, steps, at) < stops[at].aimed() ? 1 : 0;
    }
    return under;
  }

  /** The same tire, of which something else is asked. */
  TireConstraints asking(RequiredFill other) {
    return new TireConstraints(position, first, step, stops, example, growth, other, most);
  }

  /** The same tire, which may hold any amount at a stop. */
  TireConstraints withoutMost(int at) {
    double[] upper = most.clone();
    upper[at] = Double.POSITIVE_INFINITY;
    return new TireConstraints(position, first, step, stops, example, growth, asked, upper);
  }
}
