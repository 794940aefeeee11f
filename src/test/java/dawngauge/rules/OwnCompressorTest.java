package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.testdata.RigBuilder;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Rig;
import java.util.OptionalDouble;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How long the crew's own compressor takes, by Boyle's law. */
class OwnCompressorTest {

  /** U.S. Standard Atmosphere, 1976, at sea level. */
  private static final double AIR = 101_325;

  private static final TireSpec TIRE = spec("ST235/80R16");

  private static TireSpec spec(@Nullable String size) {
    return new TireSpec(
        "kind", size, null, null, null, null, null, null, null, null, null, null, null);
  }

  private static Rig rig(@Nullable String top, @Nullable String flow, @Nullable String at) {
    return RigBuilder.trailer()
        .rig()
        .withCompressorTop(top == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, top))
        .withCompressorFlow(flow == null ? null : Entered.of(QuantityKind.AIR_FLOW, flow))
        .withCompressorFlowAt(at == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, at));
  }

  private static Rig sheet() {
    return rig("120 psi", "45 L/min", "90 psi");
  }

  private static OptionalDouble seconds(Rig rig, @Nullable TireSpec spec, double from, double to) {
    double psi = GaugePressure.of(1, Unit.PSI).pascals();
    return OwnCompressor.secondsToRaise(rig, spec, from * psi, to * psi, AIR);
  }

  /** By hand: 64.80 liter · 20 psi/14.696 psi = 88.18 liter of free air, at 45 L/min 117.6 s. */
  @Test
  void twentyPsiIntoATrailerTire() {
    assertThat(seconds(sheet(), TIRE, 60, 80).orElseThrow()).isCloseTo(117.6, within(0.1));
  }

  /** A tire is flat at the pressure around it: as many fillings of its volume as atmospheres. */
  @Test
  void oneAtmosphereIsOneVolume() {
    double seconds = OwnCompressor.secondsToRaise(sheet(), TIRE, 0, AIR, AIR).orElseThrow();
    assertThat(seconds * 45 / 60).isCloseTo(64.80, within(0.01));
  }

  @Test
  void thinAirHasToBeTakenInMore() {
    double here = OwnCompressor.secondsToRaise(sheet(), TIRE, 4e5, 5e5, AIR).orElseThrow();
    double high = OwnCompressor.secondsToRaise(sheet(), TIRE, 4e5, 5e5, 77_000).orElseThrow();
    assertThat(high / here).isCloseTo(AIR / 77_000, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "80, 90, true",
    "80, 90.1, false",
    "80, 80, false",
    "85, 80, false",
    "NaN, 80, false"
  })
  void onlyUpToThePressureOfTheSheet(double from, double to, boolean known) {
    assertThat(seconds(sheet(), TIRE, from, to).isPresent()).isEqualTo(known);
  }

  @ParameterizedTest
  @CsvSource({", 45 L/min, 90 psi", "120 psi, , 90 psi", "120 psi, 45 L/min, "})
  void withoutTheWholeSheetThereIsNone(
      @Nullable String top, @Nullable String flow, @Nullable String at) {
    assertThat(seconds(rig(top, flow, at), TIRE, 60, 80)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"7.00-15LT", "like the old ones"})
  void noVolumeNoTime(String size) {
    assertThat(seconds(sheet(), spec(size), 60, 80)).isEmpty();
    assertThat(seconds(sheet(), spec(null), 60, 80)).isEmpty();
    assertThat(seconds(sheet(), null, 60, 80)).isEmpty();
  }

  /** In two steps it takes as long as in one. */
  @Test
  void stepsAddUp() {
    Random random = new Random(20270309);
    for (int i = 0; i < 500; i++) {
      double low = random.nextDouble() * 40;
      double middle = low + 0.1 + random.nextDouble() * 20;
      double high = middle + 0.1 + random.nextDouble() * 20;
      double whole = seconds(sheet(), TIRE, low, high).orElseThrow();
      double parts =
          seconds(sheet(), TIRE, low, middle).orElseThrow()
              + seconds(sheet(), TIRE, middle, high).orElseThrow();
      assertThat(parts).isCloseTo(whole, within(1e-9 * whole));
    }
  }
}
