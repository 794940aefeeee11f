package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.trip.ReadingState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 29 CFR 1910.177(f)(2): a tire that ran at 80 percent or less of its recommended pressure. The
 * gauge has no grade: σ = √(0.5² + (2/√3)²) = 1.2583 psi.
 */
class RanLowTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();
  private static final GaugeErrors UNGRADED = GaugeErrors.of(null);

  private static RanLow read(ReadingState state, double shown, double settled) {
    return RanLow.ofReading(state, shown * PSI, settled * PSI, 0.5 * PSI, UNGRADED, 80 * PSI);
  }

  /**
   * 80 % of 80 psi are 64: exactly that is 80 percent or less. Over one half likely, over 10 % to
   * be excluded: 64 + 1.2816·1.2583 = 65.61 psi. At 64.7 psi Φ(−0.7/1.2583) = 28.9 %.
   */
  @ParameterizedTest
  @CsvSource({
    "45, LIKELY",
    "63.9, LIKELY",
    "64, LIKELY",
    "64.1, MAYBE",
    "64.7, MAYBE",
    "65.6, MAYBE",
    "65.7, NO",
    "80, NO"
  })
  void coldAfterItRolled(double pressure, RanLow expected) {
    assertThat(RanLow.of(pressure * PSI, UNGRADED.sigma(), 80 * PSI)).isEqualTo(expected);
    assertThat(read(ReadingState.COLD, pressure, pressure)).isEqualTo(expected);
  }

  @Test
  void itsChance() {
    assertThat(RanLow.chance(64.7 * PSI, UNGRADED.sigma(), 80 * PSI))
        .isCloseTo(0.289, within(0.0005));
    assertThat(RanLow.line(80)).isEqualTo(64);
  }

  /** Known for sure: 80 percent or less, and not a hair more. */
  @Test
  void withoutSpread() {
    assertThat(RanLow.of(64, 0, 80)).isEqualTo(RanLow.LIKELY);
    assertThat(RanLow.of(64.0001, 0, 80)).isEqualTo(RanLow.NO);
  }

  /** A warm reading is a bound from above: what is behind it counts, and the reading itself. */
  @ParameterizedTest
  @CsvSource({
    "WARM, 45, NaN, LIKELY", // whatever it means cold
    "WARM, 64, 75, LIKELY",
    "WARM, 70, 63, LIKELY",
    "WARM, 70, 65, MAYBE",
    "WARM, 70, 68, NO",
    "WARM, 70, NaN, NO",
    "JUST_FILLED, 70, 63, LIKELY",
    "COLD_IN_SUN, 66, 63.5, LIKELY",
    "COLD, 66, 63.5, NO" // its own settled pressure
  })
  void warmAfterItRolled(ReadingState state, double shown, double settled, RanLow expected) {
    assertThat(read(state, shown, settled)).isEqualTo(expected);
  }

  @Test
  void nothingKnownSaysNothing() {
    assertThat(RanLow.of(Double.NaN, 1, 80)).isEqualTo(RanLow.NO);
    assertThat(RanLow.of(50, 1, Double.NaN)).isEqualTo(RanLow.NO);
  }
}
