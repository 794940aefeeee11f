package dawngauge.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasLawTest {

  private static final double PSI = 6894.757293168361;
  private static final double SEA = StandardAtmosphere.SEA_LEVEL_PRESSURE;

  private static double fahrenheit(double degrees) {
    return (degrees + 459.67) * 5 / 9;
  }

  /** OpenStax University Physics vol. 2, ideal gas: 7.00e5 Pa absolute, 18.0 °C to 35.0 °C. */
  @Test
  void absolutePressureRisesWithTemperatureAsInTheTextbook() {
    double fill = GasLaw.fill(7.00e5 - SEA, SEA, 273.15 + 18.0);
    assertThat(GasLaw.gauge(fill, 273.15 + 35.0, SEA) + SEA).isCloseTo(7.41e5, within(0.005e5));
  }

  /** OpenStax College Physics, pressure: gauge 34 psi is 48.7 psi absolute, 336 kPa. */
  @Test
  void absolutePressureIsGaugePlusAirAsInTheTextbook() {
    double absolute = GasLaw.fill(34 * PSI, SEA, 300) * 300;
    assertThat(absolute / PSI).isCloseTo(48.7, within(0.05));
    assertThat(absolute / 1000).isCloseTo(336, within(0.5));
  }

  /**
   * From the law, around 70 °F at sea level; common practice (no source) says 1 to 2 psi per 10 °F.
   */
  @ParameterizedTest
  @CsvSource({"35, 0.94", "50, 1.22", "80, 1.79"})
  void pressureChangesPerTenDegreesFahrenheit(double psi, double change) {
    double fill = GasLaw.fill(psi * PSI, SEA, fahrenheit(70));
    double rise = GasLaw.gauge(fill, fahrenheit(80), SEA) / PSI - psi;
    assertThat(rise).isCloseTo(change, within(0.0051));
  }

  /** From the law, constant fill at sea level. */
  @ParameterizedTest
  @CsvSource({
    "65, 60, 100, 71.13, 0.0051",
    "80, 70, 30, 72.85, 0.0051",
    "80, 70, -20, 63.9, 0.051",
    "65, 70, -20, 51.5, 0.051",
    "50, 70, -20, 39.0, 0.051"
  })
  void settledPressureFollowsTheAir(
      double psi, double from, double to, double settled, double tolerance) {
    double fill = GasLaw.fill(psi * PSI, SEA, fahrenheit(from));
    assertThat(GasLaw.gauge(fill, fahrenheit(to), SEA) / PSI).isCloseTo(settled, within(tolerance));
  }

  /** From the law and the standard air at 5,000 ft (U.S. Standard Atmosphere 1976). */
  @Test
  void heightAloneRaisesTheReading() {
    double fill = GasLaw.fill(65 * PSI, SEA, 288.15);
    double air = StandardAtmosphere.pressureAt(5000 * 0.3048);
    assertThat(GasLaw.gauge(fill, 288.15, air) / PSI).isCloseTo(67.47, within(0.0051));
  }

  @Test
  void fillIsShownAsPressureAtTwentyDegreesCelsiusAtSeaLevel() {
    assertThat(GasLaw.REFERENCE_KELVINS).isCloseTo(fahrenheit(68), within(1e-9));
    double high = StandardAtmosphere.pressureAt(2000);
    double fill = GasLaw.fill(80 * PSI, high, 263.15);
    double atSeaLevel = (80 * PSI + high) * 293.15 / 263.15 - 101_325;
    assertThat(GasLaw.atReference(fill)).isCloseTo(atSeaLevel, within(1e-6));
  }

  @Test
  void readingGivesBackTheGaugeItCameFrom() {
    for (double psi = -10; psi <= 130; psi += 7) {
      for (double kelvins = 230; kelvins <= 360; kelvins += 13) {
        double fill = GasLaw.fill(psi * PSI, 80_000, kelvins);
        assertThat(GasLaw.gauge(fill, kelvins, 80_000)).isCloseTo(psi * PSI, within(1e-6));
      }
    }
  }

  @Test
  void impossibleStatesAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> GasLaw.fill(5e5, SEA, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> GasLaw.fill(5e5, SEA, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> GasLaw.fill(-SEA, SEA, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> GasLaw.fill(5e5, -1, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> GasLaw.gauge(2000, -5, SEA));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GasLaw.atReference(Double.POSITIVE_INFINITY));
  }
}
