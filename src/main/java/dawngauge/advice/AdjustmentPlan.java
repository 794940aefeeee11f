package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.trip.WheelPosition;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The fewest stops at which the crew gets gauge and hose out so that each tire stays within its
 * limits for the rest of the trip, with what is set there.
 *
 * @param from index of the first stop that is planned; what lies before it is done
 * @param possible stops at which some tire could be set, the forbidden ones too
 * @param stops the stops of the plan, in order
 * @param clashes what no plan can keep, with the limits that clash; the plan is then the least bad
 * @param leftOut tires that are not planned, and why
 * @param why in one line why there is none better
 * @param proven whether that no plan has fewer stops is proven
 * @param worstMargin lowest load margin of the rig on the rest of the trip; NaN where not known
 */
public record AdjustmentPlan(
    int from,
    List<Integer> possible,
    List<Planned> stops,
    List<Clash> clashes,
    List<LeftOut> leftOut,
    Phrase why,
    boolean proven,
    double worstMargin) {

  /**
   * What is set at a stop.
   *
   * @param visit index of the stop
   * @param settings what each tire is set to, in walking order; tires that stay as they are are not
   *     in it
   */
  public record Planned(int visit, Map<WheelPosition, PlannedSetting> settings) {

    /** Keeps the order. */
    public Planned {
      settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }
  }

  /**
   * What one tire is set to.
   *
   * @param timed the figure by the minute at which the crew stands there
   * @param now what the gauge is expected to show before, in pascal; the settled pressure where the
   *     tire's warmth is not known
   * @param ceiling limit of its cold pressure in pascal; NaN where not known
   * @param aim its aim in pascal
   * @param nextStart index of the stop from which a day is next started; −1 where there is none
   * @param atNextStart what the gauge is expected to show there before anything is set, in pascal
   * @param compressorSeconds how long the crew's own compressor takes from what is expected; empty
   *     where nothing is added or it is not known
   */
  public record PlannedSetting(
      TimedFigures timed,
      double now,
      double ceiling,
      double aim,
      int nextStart,
      double atNextStart,
      OptionalDouble compressorSeconds) {

    /** The figure at the planned minute. */
    public SetFigure set() {
      return timed.at();
    }
  }

  /**
   * A limit that cannot be kept.
   *
   * @param position which tire
   * @param limit which limit
   * @param visit index of the stop at which, or on whose leg ahead
   * @param text which figures clash
   */
  public record Clash(WheelPosition position, Limit limit, int visit, Phrase text) {}

  /** What a plan keeps, the most important first. */
  public enum Limit {
    /** A load that no pressure carries, or that an axle or wheel is not rated for. */
    LOAD,
    /** What the load needs, with the chosen confidence. */
    FLOOR,
    /** The cold limit before a day's first start. */
    CEILING,
    /** The aim at a day's first start, within what a plan lets a tire be under it. */
    AIM,
    /** A figure chosen by hand, which is not set where it may not be or would not last. */
    WISH
  }

  /**
   * A tire that is not planned.
   *
   * @param position which tire
   * @param why why not
   */
  public record LeftOut(WheelPosition position, Phrase why) {}

  /** What it says of a tire; empty where the tire is not planned. */
  Optional<TirePlan> of(WheelPosition position) {
    if (leftOut.stream().anyMatch(left -> left.position().equals(position))) {
      return Optional.empty();
    }
    Map<Integer, Double> figures = new HashMap<>();
    for (Planned stop : stops) {
      PlannedSetting setting = stop.settings().get(position);
      if (setting != null) {
        figures.put(stop.visit(), setting.set().figure().pascals());
      }
    }
    return Optional.of(new TirePlan(from, figures));
  }

  /** Whether floor and ceiling are kept by all tires that are planned. */
  public boolean safe() {
    return clashes.stream().allMatch(clash -> clash.limit().compareTo(Limit.AIM) >= 0);
  }

  /** Copies the lists. */
  public AdjustmentPlan {
    possible = List.copyOf(possible);
    stops = List.copyOf(stops);
    clashes = List.copyOf(clashes);
    leftOut = List.copyOf(leftOut);
  }
}
