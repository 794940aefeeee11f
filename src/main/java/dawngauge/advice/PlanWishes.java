package dawngauge.advice;

import dawngauge.trip.PlanChoices;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
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

  /** What was chosen for a trip. */
  public static PlanWishes of(Trip trip) {
    Set<Integer> pinned = new HashSet<>();
    Set<Integer> forbidden = new HashSet<>();
    Map<Integer, Map<WheelPosition, Double>> figures = new HashMap<>();
    List<Stop> stops = trip.route().stops();
    for (int i = 0; i < stops.size(); i++) {
      PlanChoices.Wish wish = trip.plan().at(stops.get(i).id()).orElse(null);
      if (wish != null) {
        (wish.kind() == PlanChoices.Kind.HERE ? pinned : forbidden).add(i);
        Map<WheelPosition, Double> here = new HashMap<>();
        wish.figures().forEach((tire, figure) -> here.put(tire, figure.value().pascals()));
        figures.put(i, here);
      }
    }
    return new PlanWishes(pinned, forbidden, figures);
  }

  /** Copies all. */
  public PlanWishes {
    pinned = Set.copyOf(pinned);
    forbidden = Set.copyOf(forbidden);
    figures = Map.copyOf(figures);
  }
}
