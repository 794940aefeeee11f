package dawngauge.quantity;

/**
 * Height of the ground above mean sea level; negative below it.
 *
 * @param meters geometric height in meter, above mean sea level
 */
public record Elevation(double meters) implements Quantity, Comparable<Elevation> {

  /** Refuses what is not a finite number. */
  public Elevation {
    Finite.require(meters, "meters");
  }

  /** The quantity given in any unit of its kind. */
  public static Elevation of(double number, Unit unit) {
    return new Elevation(unit.toSi(number, QuantityKind.ELEVATION));
  }

  @Override
  public double si() {
    return meters;
  }

  @Override
  public QuantityKind<Elevation> kind() {
    return QuantityKind.ELEVATION;
  }

  @Override
  public int compareTo(Elevation other) {
    return Double.compare(meters, other.meters);
  }
}
