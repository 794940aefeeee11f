package dawngauge.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ends of a band stand in order around its middle. */
class BandTest {
  @Test
  void inOrder() {
    Band<GaugePressure> band = new Band<>(psi(70), psi(72), psi(75));
    assertThat(band.low()).isLessThan(band.middle());
    assertThat(band.middle()).isLessThan(band.high());
    assertThat(new Band<>(psi(72), psi(72), psi(72)).middle()).isEqualTo(psi(72));
  }

  @ParameterizedTest
  @CsvSource({"75, 72, 70", "72, 70, 75", "70, 76, 75"})
  void outOfOrderIsRefused(double low, double middle, double high) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Band<>(psi(low), psi(middle), psi(high)))
        .withMessageContaining("out of order");
  }

  private static GaugePressure psi(double number) {
    return GaugePressure.of(number, Unit.PSI);
  }
}
