package dawngauge.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.GaugeErrors;
import org.junit.jupiter.api.Test;

/** The rule of thumb that crews know stands beside our figure, and is no part of it. */
class RuleOfThumbTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  /**
   * 59 psi read at 15 °F; at 49 °F the rule says 3.4 times 1 to 2 psi more: 62.4 to 65.8 psi, at 5
   * °F one to two less, 57 to 58 psi.
   */
  @Test
  void oneToTwoPsiForTenDegrees() {
    assertThat(at(49).low() / PSI).isCloseTo(62.4, within(0.01));
    assertThat(at(49).high() / PSI).isCloseTo(65.8, within(0.01));
    assertThat(at(5).low() / PSI).isCloseTo(57, within(0.01));
    assertThat(at(5).high() / PSI).isCloseTo(58, within(0.01));
  }

  private static RuleOfThumb at(double fahrenheit) {
    double then = (15 + 459.67) / 1.8;
    double around = 101325;
    FillOrigin read =
        new FillOrigin(
            FillOrigin.Kind.READING,
            "stick",
            GaugeErrors.of(null),
            0,
            59 * PSI,
            then,
            then,
            around,
            0,
            (59 * PSI + around) / then,
            0,
            0,
            0,
            false,
            0);
    double now = (fahrenheit + 459.67) / 1.8;
    return RuleOfThumb.of(
        new TireSnapshot(
            0, now, around, 0, now, read.fill(), read, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
  }
}
