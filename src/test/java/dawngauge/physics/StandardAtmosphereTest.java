package dawngauge.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {

  private static final double PSI = 6894.757293168361;
  private static final double FOOT = 0.3048;

  /** U.S. Standard Atmosphere 1976, table I, by geometric height. */
  @ParameterizedTest
  @CsvSource({"0, 1013.25", "1000, 898.76", "2000, 795.01", "3000, 701.21"})
  void pressureIsThatOfThePublishedTable(double meters, double hectopascals) {
    assertThat(StandardAtmosphere.pressureAt(meters) / 100).isCloseTo(hectopascals, within(0.0051));
  }

  /** U.S. Standard Atmosphere 1976, table III, by geometric height in feet. */
  @ParameterizedTest
  @CsvSource({"5000, 12.228", "10000, 10.108"})
  void pressureInPsiIsThatOfThePublishedTable(double feet, double psi) {
    assertThat(StandardAtmosphere.pressureAt(feet * FOOT) / PSI).isCloseTo(psi, within(0.00051));
  }

  /** U.S. Standard Atmosphere 1976, table I; these rows from memory. */
  @ParameterizedTest
  @CsvSource({
    "-500, 291.400, 1074.7",
    "1000, 281.651, 898.7",
    "5000, 255.676, 540.4",
    "10000, 223.252, 264.9"
  })
  void temperatureAndPressureIsThatOfTheTable(double meters, double kelvins, double hectopascals) {
    assertThat(StandardAtmosphere.temperatureAt(meters)).isCloseTo(kelvins, within(0.0011));
    assertThat(StandardAtmosphere.pressureAt(meters) / 100).isCloseTo(hectopascals, within(0.11));
  }

  /** Property of hydrostatic air: dp/dz = −ρg, with ρ from the gas law. */
  @Test
  void pressureFallsByTheWeightOfTheAir() {
    for (double z = -400; z <= 10_900; z += 100) {
      double slope =
          (StandardAtmosphere.pressureAt(z + 1) - StandardAtmosphere.pressureAt(z - 1)) / 2;
      double density =
          StandardAtmosphere.pressureAt(z)
              * StandardAtmosphere.MOLAR_MASS
              / (StandardAtmosphere.GAS_CONSTANT * StandardAtmosphere.temperatureAt(z));
      double shrink = StandardAtmosphere.EARTH_RADIUS / (StandardAtmosphere.EARTH_RADIUS + z);
      double gravity = StandardAtmosphere.GRAVITY * shrink * shrink;
      assertThat(slope).as("at %s m", z).isCloseTo(-density * gravity, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-500.1, 11_020, -6_356_766, Double.NaN, Double.POSITIVE_INFINITY})
  void heightsOutsideTheLayerAreRefused(double meters) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StandardAtmosphere.pressureAt(meters))
        .withMessageContaining(Double.toString(meters));
  }

  /** 11 km geopotential is 11,019 m geometric (U.S. Standard Atmosphere 1976, table I). */
  @Test
  void theLayerEndsAtElevenKilometersGeopotential() {
    assertThat(StandardAtmosphere.temperatureAt(11_019)).isCloseTo(216.65, within(0.001));
  }
}
