package dawngauge.field;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All that a trip has, but the wishes for its plan. */
public final class TripFields {

  private TripFields() {}

  /** Every kind of part, the rig first, each before those that stand inside it. */
  public static List<Part<?>> all() {
    List<Part<?>> parts = new ArrayList<>();
    parts.add(RigFields.RIG);
    parts.add(RouteFields.STOP);
    parts.add(RouteFields.LEG);
    parts.add(AmbientFields.ENTRY);
    LogFields.TYPES.forEach(type -> parts.add(type.part()));
    return with(parts);
  }

  /** Some kinds of part, and all that stand inside them, each once. */
  static List<Part<?>> with(List<Part<?>> parts) {
    Set<Part<?>> found = new LinkedHashSet<>();
    List<Part<?>> next = new ArrayList<>(parts);
    while (!next.isEmpty()) {
      Part<?> part = next.remove(0);
      if (found.add(part)) {
        next.addAll(part.inner());
      }
    }
    return List.copyOf(found);
  }
}
