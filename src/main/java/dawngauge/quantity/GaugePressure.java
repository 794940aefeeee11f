package dawngauge.quantity;

/**
 * Gauge pressure: zero is the pressure of the air around, so that the same tire reads more on a
 * mountain.
 *
 * @param pascals in pascal, above the air around
 */
public record GaugePressure(double pascals) implements Quantity, Comparable<GaugePressure> {

  /** Refuses what is not a finite number. */
  public GaugePressure {
    Finite.require(pascals, "pascals");
  }

  /** The quantity given in any unit of its kind. */
  public static GaugePressure of(double number, Unit unit) {
    return new GaugePressure(unit.toSi(number, QuantityKind.GAUGE_PRESSURE));
  }

  /** The absolute pressure behind this reading, where the air has the given pressure. */
  public Pressure absoluteIn(Pressure air) {
    return new Pressure(pascals + air.pascals());
  }

  /** Higher by so much. */
  public GaugePressure plus(GaugePressure more) {
    return new GaugePressure(pascals + more.pascals);
  }

  /** The lower of two. */
  public static GaugePressure min(GaugePressure a, GaugePressure b) {
    return a.pascals <= b.pascals ? a : b;
  }

  /** The higher of two. */
  public static GaugePressure max(GaugePressure a, GaugePressure b) {
    return a.pascals >= b.pascals ? a : b;
  }

  @Override
  public double si() {
    return pascals;
  }

  @Override
  public QuantityKind<GaugePressure> kind() {
    return QuantityKind.GAUGE_PRESSURE;
  }

  @Override
  public int compareTo(GaugePressure other) {
    return Double.compare(pascals, other.pascals);
  }
}
