package dawngauge.quantity;

/**
 * Speed over the ground.
 *
 * @param metersPerSecond in meter per second
 */
public record Speed(double metersPerSecond) implements Quantity, Comparable<Speed> {

  /** Refuses what is not a finite number. */
  public Speed {
    Finite.require(metersPerSecond, "metersPerSecond");
  }

  /** The quantity given in any unit of its kind. */
  public static Speed of(double number, Unit unit) {
    return new Speed(unit.toSi(number, QuantityKind.SPEED));
  }

  @Override
  public double si() {
    return metersPerSecond;
  }

  @Override
  public QuantityKind<Speed> kind() {
    return QuantityKind.SPEED;
  }

  @Override
  public int compareTo(Speed other) {
    return Double.compare(metersPerSecond, other.metersPerSecond);
  }
}
