package dawngauge.quantity;

/** Guards the quantities against NaN and infinity. */
final class Finite {
  private Finite() {}

  static void require(double number, String name) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(name + " must be a finite number, not " + number);
    }
  }
}
