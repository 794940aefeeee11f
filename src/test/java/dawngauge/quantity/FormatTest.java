package dawngauge.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How figures are shown in both systems of units. */
class FormatTest {

  @Test
  void eachKindInBothSystems() {
    shown(GaugePressure.of(80, Unit.PSI), "80.0 psi", "5.52 bar");
    shown(new Pressure(101_325), "14.7 psi", "1.01 bar");
    shown(Temperature.of(5, Unit.CELSIUS), "41 °F", "5 °C");
    shown(new TemperatureDifference(-10), "-18 °F", "-10 °C");
    shown(new Elevation(2348), "7703 ft", "2348 m");
    shown(Elevation.of(-282, Unit.FOOT), "-282 ft", "-86 m");
    shown(Distance.of(73, Unit.MILE), "73 mi", "117 km");
    shown(Speed.of(65, Unit.MILE_PER_HOUR), "65 mph", "105 km/h");
    shown(Mass.of(3520, Unit.POUND), "3520 lb", "1597 kg");
    shown(TreadDepth.of(6, Unit.THIRTY_SECOND_INCH), "6/32 in", "4.8 mm");
    shown(AirFlow.of(1.6, Unit.CUBIC_FOOT_PER_MINUTE), "1.6 cfm", "45 L/min");
    shown(new Ratio(0.1), "10 %", "10 %");
  }

  /** A half is rounded away from zero as it is written, whatever its binary digits are. */
  @ParameterizedTest
  @CsvSource({
    "64.95 psi, 65.0 psi",
    "64.94 psi, 64.9 psi",
    "64.949 psi, 64.9 psi",
    "0.05 psi, 0.1 psi",
    "0.04 psi, 0.0 psi"
  })
  void halfUpInPsi(String typed, String shown) {
    assertThat(UnitSystem.US.format(QuantityKind.GAUGE_PRESSURE.parse(typed).get().value()))
        .isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"1.005 bar, 1.01 bar", "5.525 bar, 5.53 bar", "5.5249 bar, 5.52 bar"})
  void halfUpInBar(String typed, String shown) {
    assertThat(UnitSystem.SI.format(QuantityKind.GAUGE_PRESSURE.parse(typed).get().value()))
        .isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "40.5 °F, 41 °F",
    "-0.5 °F, -1 °F",
    "-0.4 °F, 0 °F",
    "0.4 °F, 0 °F",
    "-10.5 °F, -11 °F"
  })
  void halfUpAndNeverMinusZero(String typed, String shown) {
    assertThat(UnitSystem.US.format(QuantityKind.TEMPERATURE.parse(typed).get().value()))
        .isEqualTo(shown);
  }

  /** Every half of a shown step from 0 to 200 psi is rounded as on paper. */
  @Test
  void everyHalfStepOfThePsiScale() {
    for (int i = 0; i < 2000; i++) {
      BigDecimal typed = new BigDecimal(i).movePointLeft(1).add(new BigDecimal("0.05"));
      GaugePressure pressure =
          QuantityKind.GAUGE_PRESSURE.parse(typed.toPlainString() + " psi").get().value();
      assertThat(UnitSystem.US.number(pressure))
          .isEqualTo(typed.setScale(1, RoundingMode.HALF_UP).toPlainString());
    }
  }

  @Test
  void decimalsAsAskedFor() {
    GaugePressure set = GaugePressure.of(78, Unit.PSI);
    assertThat(UnitSystem.US.format(set, 0)).isEqualTo("78 psi");
    assertThat(UnitSystem.US.number(set, 2)).isEqualTo("78.00");
    assertThat(UnitSystem.SI.format(set, 1)).isEqualTo("5.4 bar");
    assertThat(UnitSystem.US.format(TreadDepth.of(4.25, Unit.THIRTY_SECOND_INCH), 1))
        .isEqualTo("4.3/32 in");
  }

  @Test
  void plainNumbersInLimits() {
    assertThat(UnitSystem.plain(100)).isEqualTo("100");
    assertThat(UnitSystem.plain(203.0500001)).isEqualTo("203.05");
    assertThat(UnitSystem.plain(-0.001)).isEqualTo("0");
    assertThat(UnitSystem.plain(-130.00000000000003)).isEqualTo("-130");
  }

  /** What is shown can be typed again and means the same, within half a step of the last digit. */
  @ParameterizedTest
  @EnumSource
  void whatIsShownCanBeTyped(UnitSystem units) {
    Random random = new Random(20270309);
    for (QuantityKind<?> kind : Kinds.ALL) {
      Unit unit = units.unitOf(kind);
      assertThat(kind.units()).contains(unit);
      double half = kind == QuantityKind.GAUGE_PRESSURE ? 0.05 : 0.5;
      for (int i = 0; i < 200; i++) {
        double number = random.nextDouble() * 9; // within the range of every kind and unit
        Quantity quantity = Kinds.of(new Kinds.Pair(kind, unit), number);
        String text = units.format(quantity);
        Quantity read = kind.parse(text).get().value();
        assertThat(read.in(unit)).as(text).isCloseTo(number, within(half + 1e-9));
      }
    }
  }

  private static void shown(Quantity quantity, String us, String si) {
    assertThat(UnitSystem.US.format(quantity)).isEqualTo(us);
    assertThat(UnitSystem.SI.format(quantity)).isEqualTo(si);
  }
}
