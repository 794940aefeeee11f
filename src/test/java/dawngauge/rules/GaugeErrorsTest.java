package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.trip.Gauge;
import dawngauge.trip.Remarks;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Errors of a gauge, and the dead band in which what it cannot tell is no reason to act. */
class GaugeErrorsTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  private static GaugeErrors gauge(double step, @Nullable String grade) {
    return GaugeErrors.of(
        new Gauge(
            "g",
            Gauge.Kind.OPEN,
            Entered.of(QuantityKind.GAUGE_PRESSURE, "100 psi"),
            grade == null ? null : Entered.of(QuantityKind.RATIO, grade),
            Entered.of(QuantityKind.GAUGE_PRESSURE, String.format(Locale.ROOT, "%.3f psi", step)),
            Remarks.NONE));
  }

  /** Grade as a limit of error, spread evenly: 2 % of 100 psi over √3 (ASME B40.100 grade A). */
  @Test
  void spreads() {
    GaugeErrors errors = gauge(1, "2 %");
    assertThat(errors.repeat() / PSI).isCloseTo(0.5, within(1e-9));
    assertThat(errors.offset() / PSI).isCloseTo(1.1547, within(1e-4));
    assertThat(errors.sigma() / PSI).isCloseTo(1.2583, within(1e-4));
    // half a step where that is more than half a psi
    assertThat(gauge(5, "2 %").repeat() / PSI).isCloseTo(2.5, within(1e-9));
    assertThat(gauge(0.1, "2 %").repeat() / PSI).isCloseTo(0.5, within(1e-9));
    // no grade: 2 psi; not listed: steps of 1 psi
    assertThat(gauge(1, null)).isEqualTo(GaugeErrors.of(null));
  }

  /**
   * The larger of one step and 1.2816 σ: with 0.5 psi and 1 % of 100 psi, σ = √(0.25 + 0.3333) =
   * 0.7638 psi, 0.979, under a step of 1; with 2 % 1.613 psi. Never over 4 % of the figure: 3.2 psi
   * of 80, 1.4 of 35.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1 %, 80, 1",
    "1, 2 %, 80, 1.613",
    "2, 2 %, 80, 2",
    "3, 2 %, 80, 3",
    "5, 2 %, 80, 3.2",
    "1, 2 %, 35, 1.4",
    "1, 3 %, 80, 2.310"
  })
  void deadBand(double step, String grade, double figure, double expected) {
    assertThat(gauge(step, grade).deadBand(figure * PSI) / PSI).isCloseTo(expected, within(0.001));
  }

  @Test
  void aCoarserGaugeIsNeverNarrowerAndNeverOverFourPercent() {
    for (double figure = 20; figure <= 120; figure += 5) {
      double before = 0;
      for (double step = 0.1; step <= 10; step += 0.1) {
        double band = gauge(step, "2 %").deadBand(figure * PSI) / PSI;
        assertThat(band).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(0.04 * figure + 1e-9);
        before = band;
      }
    }
  }

  /** Steps over 4 % of 80 psi, 3.2 psi. */
  @Test
  void aFinerGaugeIsWantedWhereAStepIsOverFourPercent() {
    assertThat(gauge(3.2, "2 %").tooCoarse(80 * PSI)).isFalse();
    assertThat(gauge(3.3, "2 %").tooCoarse(80 * PSI)).isTrue();
  }
}
