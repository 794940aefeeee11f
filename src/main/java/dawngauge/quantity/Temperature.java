package dawngauge.quantity;

/**
 * Temperature: zero is absolute zero.
 *
 * @param kelvins in kelvin, thermodynamic
 */
public record Temperature(double kelvins) implements Quantity, Comparable<Temperature> {

  /** Refuses what is not a finite number. */
  public Temperature {
    Finite.require(kelvins, "kelvins");
  }

  /** The quantity given in any unit of its kind. */
  public static Temperature of(double number, Unit unit) {
    return new Temperature(unit.toSi(number, QuantityKind.TEMPERATURE));
  }

  /** Warmer by a difference. */
  public Temperature plus(TemperatureDifference difference) {
    return new Temperature(kelvins + difference.kelvins());
  }

  /** How much warmer this is than another. */
  public TemperatureDifference minus(Temperature other) {
    return new TemperatureDifference(kelvins - other.kelvins);
  }

  @Override
  public double si() {
    return kelvins;
  }

  @Override
  public QuantityKind<Temperature> kind() {
    return QuantityKind.TEMPERATURE;
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(kelvins, other.kelvins);
  }
}
