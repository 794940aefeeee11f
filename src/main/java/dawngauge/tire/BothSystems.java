package dawngauge.tire;

import dawngauge.quantity.Quantity;
import dawngauge.quantity.UnitSystem;

/** Writes figures in both systems of units, for the texts of problems, which know no choice. */
public final class BothSystems {
  private BothSystems() {}

  /** A figure as it is shown in one system, and in the other behind it. */
  public static String both(Quantity quantity) {
    return UnitSystem.US.format(quantity) + " (" + UnitSystem.SI.format(quantity) + ")";
  }
}
