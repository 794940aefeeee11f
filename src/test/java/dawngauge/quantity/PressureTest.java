package dawngauge.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Gauge against absolute pressure, and what no quantity may be. */
class PressureTest {
  /** Sea level, U.S. Standard Atmosphere 1976. */
  private static final Pressure SEA_LEVEL = new Pressure(101_325);

  /** OpenStax, College Physics, chapter on pressure: gauge 34 psi is 48.7 psi absolute, 336 kPa. */
  @Test
  void gaugeToAbsoluteAsInTheTextbook() {
    Pressure absolute = GaugePressure.of(34, Unit.PSI).absoluteIn(SEA_LEVEL);
    assertThat(absolute.in(Unit.PSI)).isCloseTo(48.7, within(0.05));
    assertThat(absolute.in(Unit.KILOPASCAL)).isCloseTo(336, within(0.5));
  }

  /** 10,000 ft, U.S. Standard Atmosphere 1976: 10.108 psia, 4.588 below 14.696 at sea level. */
  @Test
  void theSameAirShowsMoreWhereTheAirAroundIsThinner() {
    Pressure inside = GaugePressure.of(65, Unit.PSI).absoluteIn(SEA_LEVEL);
    GaugePressure high = inside.gaugeIn(Pressure.of(10.108, Unit.PSI));
    assertThat(high.in(Unit.PSI)).isCloseTo(65 + 14.696 - 10.108, within(0.0005));
    assertThat(inside.gaugeIn(inside).pascals()).isZero();
    assertThat(inside.gaugeIn(SEA_LEVEL).pascals())
        .isCloseTo(GaugePressure.of(65, Unit.PSI).pascals(), within(1e-9));
  }

  @Test
  void lowerHigherAndSum() {
    GaugePressure low = GaugePressure.of(50, Unit.PSI);
    GaugePressure high = GaugePressure.of(80, Unit.PSI);
    assertThat(GaugePressure.min(low, high)).isEqualTo(GaugePressure.min(high, low)).isEqualTo(low);
    assertThat(GaugePressure.max(low, high))
        .isEqualTo(GaugePressure.max(high, low))
        .isEqualTo(high);
    assertThat(low.plus(GaugePressure.of(30, Unit.PSI)).in(Unit.PSI))
        .isCloseTo(80, within(1e-12 * 80));
    assertThat(low).isLessThan(high);
  }

  @ParameterizedTest
  @MethodSource("dawngauge.quantity.Kinds#all")
  void noQuantityIsNotANumber(QuantityKind<?> kind) {
    for (double bad :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> kind.ofSi(bad))
          .withMessageContaining("finite");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 0, 1})
  void massesAddAndScale(double factor) {
    Mass mass = Mass.of(3000, Unit.POUND);
    assertThat(mass.times(factor).in(Unit.POUND)).isCloseTo(3000 * factor, within(1e-9));
    assertThat(mass.plus(mass.times(factor)).in(Unit.POUND))
        .isCloseTo(3000 * (1 + factor), within(1e-9));
  }
}
