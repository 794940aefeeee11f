package dawngauge.tire;

import dawngauge.quantity.Quantity;
import dawngauge.quantity.UnitSystem;

/** Figures in the texts of problems, which know no chosen units: written in both systems. */
final class Figures {
  private Figures() {}

  static String both(Quantity quantity) {
    return UnitSystem.US.format(quantity) + " (" + UnitSystem.SI.format(quantity) + ")";
  }
}
