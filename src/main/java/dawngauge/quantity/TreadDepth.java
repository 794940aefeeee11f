package dawngauge.quantity;

/**
 * Depth of a tread groove above its bottom.
 *
 * @param meters in meter
 */
public record TreadDepth(double meters) implements Quantity, Comparable<TreadDepth> {

  /** Refuses what is not a finite number. */
  public TreadDepth {
    Finite.require(meters, "meters");
  }

  /** The quantity given in any unit of its kind. */
  public static TreadDepth of(double number, Unit unit) {
    return new TreadDepth(unit.toSi(number, QuantityKind.TREAD_DEPTH));
  }

  @Override
  public double si() {
    return meters;
  }

  @Override
  public QuantityKind<TreadDepth> kind() {
    return QuantityKind.TREAD_DEPTH;
  }

  @Override
  public int compareTo(TreadDepth other) {
    return Double.compare(meters, other.meters);
  }
}
