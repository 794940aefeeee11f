package dawngauge.quantity;

/**
 * Mass, as scales and labels give it in pound or kilogram ("weight" in the trade); negative where
 * something is set down.
 *
 * @param kilograms in kilogram
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {

  /** Refuses what is not a finite number. */
  public Mass {
    Finite.require(kilograms, "kilograms");
  }

  /** The quantity given in any unit of its kind. */
  public static Mass of(double number, Unit unit) {
    return new Mass(unit.toSi(number, QuantityKind.MASS));
  }

  /** Sum of two. */
  public Mass plus(Mass other) {
    return new Mass(kilograms + other.kilograms);
  }

  /** A part or multiple. */
  public Mass times(double factor) {
    return new Mass(kilograms * factor);
  }

  @Override
  public double si() {
    return kilograms;
  }

  @Override
  public QuantityKind<Mass> kind() {
    return QuantityKind.MASS;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }
}
