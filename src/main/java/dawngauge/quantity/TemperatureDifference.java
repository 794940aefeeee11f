package dawngauge.quantity;

/**
 * Difference of two temperatures, or a spread; positive is warmer.
 *
 * @param kelvins in kelvin
 */
public record TemperatureDifference(double kelvins)
    implements Quantity, Comparable<TemperatureDifference> {

  /** Refuses what is not a finite number. */
  public TemperatureDifference {
    Finite.require(kelvins, "kelvins");
  }

  /** The quantity given in any unit of its kind. */
  public static TemperatureDifference of(double number, Unit unit) {
    return new TemperatureDifference(unit.toSi(number, QuantityKind.TEMPERATURE_DIFFERENCE));
  }

  @Override
  public double si() {
    return kelvins;
  }

  @Override
  public QuantityKind<TemperatureDifference> kind() {
    return QuantityKind.TEMPERATURE_DIFFERENCE;
  }

  @Override
  public int compareTo(TemperatureDifference other) {
    return Double.compare(kelvins, other.kelvins);
  }
}
