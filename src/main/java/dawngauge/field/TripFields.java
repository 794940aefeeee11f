package dawngauge.field;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All that a trip has, as far as it stands in the catalogue. */
public final class TripFields {

  private TripFields() {}

  /** Every kind of part, the rig first, each before those that stand inside it. */
  public static List<Part<?>> all() {
    return with(RigFields.RIG, RouteFields.STOP, RouteFields.LEG, AmbientFields.ENTRY);
  }

  /** Some kinds of part, and all that stand inside them, each once. */
  static List<Part<?>> with(Part<?>... parts) {
    Set<Part<?>> found = new LinkedHashSet<>();
    List<Part<?>> next = new ArrayList<>(List.of(parts));
    while (!next.isEmpty()) {
      Part<?> part = next.remove(0);
      if (found.add(part)) {
        next.addAll(part.inner());
      }
    }
    return List.copyOf(found);
  }
}
