package dawngauge.quantity;

/**
 * Free air that a compressor delivers: its volume as it lies around, before it is pressed together.
 *
 * @param cubicMetersPerSecond in cubic meter per second
 */
public record AirFlow(double cubicMetersPerSecond) implements Quantity, Comparable<AirFlow> {

  /** Refuses what is not a finite number. */
  public AirFlow {
    Finite.require(cubicMetersPerSecond, "cubicMetersPerSecond");
  }

  /** The quantity given in any unit of its kind. */
  public static AirFlow of(double number, Unit unit) {
    return new AirFlow(unit.toSi(number, QuantityKind.AIR_FLOW));
  }

  @Override
  public double si() {
    return cubicMetersPerSecond;
  }

  @Override
  public QuantityKind<AirFlow> kind() {
    return QuantityKind.AIR_FLOW;
  }

  @Override
  public int compareTo(AirFlow other) {
    return Double.compare(cubicMetersPerSecond, other.cubicMetersPerSecond);
  }
}
