package dawngauge.quantity;

/**
 * A bare ratio, such as a load margin; shown in percent.
 *
 * @param value 1 is the whole; a margin of 0.1 is 10 %
 */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {

  /** Refuses what is not a finite number. */
  public Ratio {
    Finite.require(value, "value");
  }

  /** The quantity given in any unit of its kind. */
  public static Ratio of(double number, Unit unit) {
    return new Ratio(unit.toSi(number, QuantityKind.RATIO));
  }

  @Override
  public double si() {
    return value;
  }

  @Override
  public QuantityKind<Ratio> kind() {
    return QuantityKind.RATIO;
  }

  @Override
  public int compareTo(Ratio other) {
    return Double.compare(value, other.value);
  }
}
