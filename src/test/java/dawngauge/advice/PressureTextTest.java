package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** Figures are written as a gauge shows them, with no needless decimal. */
class PressureTextTest {

  private static double psi(double number) {
    return GaugePressure.of(number, Unit.PSI).pascals();
  }

  private static String said(Phrase.Stated stated, UnitSystem units) {
    return Phrase.of("{0}", stated).in(units);
  }

  private static String figure(double number, Unit unit, UnitSystem units) {
    return said(PressureText.figure(GaugePressure.of(number, unit)), units);
  }

  @Test
  void aWholeFigureHasNoDecimal() {
    assertThat(figure(80, Unit.PSI, UnitSystem.US)).isEqualTo("80 psi");
    assertThat(figure(80.5, Unit.PSI, UnitSystem.US)).isEqualTo("80.5 psi");
    assertThat(figure(5.5, Unit.BAR, UnitSystem.SI)).isEqualTo("5.5 bar");
    assertThat(figure(5.55, Unit.BAR, UnitSystem.SI)).isEqualTo("5.55 bar");
    // 80 psi are 5.516 bar, 5.5 bar 79.77 psi.
    assertThat(figure(80, Unit.PSI, UnitSystem.SI)).isEqualTo("5.52 bar");
    assertThat(figure(5.5, Unit.BAR, UnitSystem.US)).isEqualTo("79.8 psi");
  }

  @Test
  void twoThatAreCloseAreToldApart() {
    assertThat(said(PressureText.beside(psi(80.4), psi(80)), UnitSystem.US)).isEqualTo("80.4 psi");
    assertThat(said(PressureText.beside(psi(79.6), psi(80)), UnitSystem.US)).isEqualTo("79.6 psi");
    assertThat(said(PressureText.beside(psi(81.6), psi(80)), UnitSystem.US)).isEqualTo("82 psi");
    assertThat(said(PressureText.beside(psi(78.4), psi(80)), UnitSystem.US)).isEqualTo("78 psi");
  }

  @Test
  void aMarkIsAWordAndTheStrongerOneStands() {
    assertThat(Mark.HOLD.word()).isEqualTo("hold");
    assertThat(Mark.CLEAR.word()).isEqualTo("clear");
    assertThat(Mark.stronger(Mark.RECHECK, Mark.ADJUST)).isEqualTo(Mark.ADJUST);
    assertThat(Mark.stronger(Mark.HOLD, Mark.ADJUST)).isEqualTo(Mark.HOLD);
  }
}
