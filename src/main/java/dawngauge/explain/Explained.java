package dawngauge.explain;

import dawngauge.quantity.Quantity;
import java.util.List;

/**
 * A number with the steps that led to it.
 *
 * @param <Q> the type of the number
 * @param value the number
 * @param steps how it came about, in order
 */
public record Explained<Q extends Quantity>(Q value, List<Step> steps) {

  /** Copies the list. */
  public Explained {
    steps = List.copyOf(steps);
  }
}
