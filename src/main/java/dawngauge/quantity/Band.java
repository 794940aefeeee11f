package dawngauge.quantity;

/**
 * A range in which a figure is expected, with the middle.
 *
 * @param <Q> the type of the quantity
 * @param low lower end
 * @param middle the median
 * @param high upper end
 */
public record Band<Q extends Quantity>(Q low, Q middle, Q high) {

  /** Refuses ends in the wrong order. */
  public Band {
    if (!(low.si() <= middle.si() && middle.si() <= high.si())) {
      throw new IllegalArgumentException("band out of order: " + low + ", " + middle + ", " + high);
    }
  }
}
