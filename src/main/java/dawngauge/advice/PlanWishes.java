package dawngauge.advice;

import dawngauge.trip.WheelPosition;
import java.util.Map;
import java.util.Set;

/**
 * What the crew wants of an adjustment plan, by index of the stop.
 *
 * @param pinned stops at which gauge and hose come out in any case
 * @param forbidden stops at which they do not
 * @param figures what the gauge is to show on a tire after a stop, in pascal
 */
public record PlanWishes(
    Set<Integer> pinned, Set<Integer> forbidden, Map<Integer, Map<WheelPosition, Double>> figures) {

  /** No wishes. */
  public static final PlanWishes NONE = new PlanWishes(Set.of(), Set.of(), Map.of());

  /** Copies all. */
  public PlanWishes {
    pinned = Set.copyOf(pinned);
    forbidden = Set.copyOf(forbidden);
    figures = Map.copyOf(figures);
  }
}
