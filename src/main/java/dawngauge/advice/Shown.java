package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;

/** Writes figures of advice: pressures from pascal, figures to set without needless decimals. */
final class Shown {

  private static final double WHOLE = 1e-6;

  private Shown() {}

  /** A pressure as in the ledger: whole psi, hundredths of a bar. */
  static Phrase.Stated pressure(double pascals) {
    return new Phrase.Stated(new GaugePressure(pascals), 0, 2);
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
