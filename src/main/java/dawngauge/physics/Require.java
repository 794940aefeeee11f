package dawngauge.physics;

/** Guards the arguments of the laws: what is out of range is an error of the caller. */
final class Require {
  private Require() {}

  static double positive(double number, String name) {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be above zero, not " + number);
    }
    return number;
  }

  static double notNegative(double number, String name) {
    if (!(number >= 0 && number < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be zero or more, not " + number);
    }
    return number;
  }

  static double finite(double number, String name) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(name + " must be a finite number, not " + number);
    }
    return number;
  }
}
