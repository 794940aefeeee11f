package dawngauge.quantity;

/**
 * Absolute pressure: zero is vacuum.
 *
 * @param pascals in pascal, above vacuum
 */
public record Pressure(double pascals) implements Quantity, Comparable<Pressure> {

  /** Refuses what is not a finite number. */
  public Pressure {
    Finite.require(pascals, "pascals");
  }

  /** The quantity given in any unit of its kind. */
  public static Pressure of(double number, Unit unit) {
    return new Pressure(unit.toSi(number, QuantityKind.PRESSURE));
  }

  /** What a gauge open to the air shows of it, where the air has the given pressure. */
  public GaugePressure gaugeIn(Pressure air) {
    return new GaugePressure(pascals - air.pascals);
  }

  @Override
  public double si() {
    return pascals;
  }

  @Override
  public QuantityKind<Pressure> kind() {
    return QuantityKind.PRESSURE;
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pascals, other.pascals);
  }
}
