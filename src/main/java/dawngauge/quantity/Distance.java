package dawngauge.quantity;

/**
 * Length of a way along the ground.
 *
 * @param meters in meter
 */
public record Distance(double meters) implements Quantity, Comparable<Distance> {

  /** Refuses what is not a finite number. */
  public Distance {
    Finite.require(meters, "meters");
  }

  /** The quantity given in any unit of its kind. */
  public static Distance of(double number, Unit unit) {
    return new Distance(unit.toSi(number, QuantityKind.DISTANCE));
  }

  @Override
  public double si() {
    return meters;
  }

  @Override
  public QuantityKind<Distance> kind() {
    return QuantityKind.DISTANCE;
  }

  @Override
  public int compareTo(Distance other) {
    return Double.compare(meters, other.meters);
  }
}
