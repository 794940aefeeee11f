package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;

/** Writes figures of advice: pressures from pascal, figures to set without needless decimals. */
final class PressureText {

  private static final double WHOLE = 1e-6;

  /** Two pressures so close need a decimal, or both may be written alike. */
  private static final double CLOSE = GaugePressure.of(1.5, Unit.PSI).pascals();

  private PressureText() {}

  /** A pressure as in the ledger: whole psi, hundredths of a bar. */
  static Phrase.Stated pressure(double pascals) {
    return new Phrase.Stated(new GaugePressure(pascals), 0, 2);
  }

  /** A pressure that stands beside another one, in as many decimals as tell them apart. */
  static Phrase.Stated beside(double pascals, double other) {
    return new Phrase.Stated(
        new GaugePressure(pascals), Math.abs(pascals - other) < CLOSE ? 1 : 0, 2);
  }

  /** A figure to set: whole psi and tenths of a bar where it is that. */
  static Phrase.Stated figure(GaugePressure figure) {
    return new Phrase.Stated(figure, whole(figure.in(Unit.PSI)) ? 0 : 1, tenth(figure) ? 1 : 2);
  }

  private static boolean tenth(GaugePressure figure) {
    return whole(figure.in(Unit.BAR) * 10);
  }

  private static boolean whole(double number) {
    return Math.abs(number - Math.rint(number)) < WHOLE;
  }
}
