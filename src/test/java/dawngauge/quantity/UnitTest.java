package dawngauge.quantity;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Units against NIST Special Publication 811 (2008), appendix B. */
class UnitTest {

  /** Factors as printed in B.8, seven digits; those called exact there are so here. */
  @ParameterizedTest
  @CsvSource({
    "PSI, 6.894757E+03",
    "BAR, 1.0E+05",
    "KILOPASCAL, 1.0E+03",
    "POUND, 4.535924E-01",
    "MILE, 1.609344E+03",
    "FOOT, 3.048E-01",
    "MILE_PER_HOUR, 4.4704E-01",
    "KILOMETER_PER_HOUR, 2.777778E-01",
    "CUBIC_FOOT_PER_MINUTE, 4.719474E-04",
  })
  void factorIsAsPublished(Unit unit, double published) {
    QuantityKind<?> kind =
        Kinds.all().filter(k -> k.units().contains(unit)).findFirst().orElseThrow();
    assertThat(unit.toSi(1, kind)).isCloseTo(published, within(halfOfTheSeventhDigit(published)));
  }

  /** The international yard and pound of 1959: 0.9144 m and 0.453 592 37 kg (from memory). */
  @Test
  void definitionsAreExact() {
    assertThat(Mass.of(1, Unit.POUND).kilograms()).isEqualTo(0.45359237);
    assertThat(Distance.of(1, Unit.MILE).meters()).isEqualTo(1609.344);
    assertThat(Elevation.of(1, Unit.FOOT).meters()).isEqualTo(0.3048);
    assertThat(Speed.of(1, Unit.MILE_PER_HOUR).metersPerSecond()).isEqualTo(0.44704);
    // psi = lb × gn / in², each exact: 0.453 592 37 × 9.806 65 / 0.0254².
    assertThat(GaugePressure.of(1, Unit.PSI).pascals())
        .isCloseTo(0.45359237 * 9.80665 / (0.0254 * 0.0254), within(1e-11));
    // Liter and minute are exact (table 6): 1e-3 m³ and 60 s.
    assertThat(AirFlow.of(60, Unit.LITER_PER_MINUTE).cubicMetersPerSecond()).isEqualTo(1e-3);
    // 32 thirty-seconds are an inch of exactly 25.4 mm.
    assertThat(TreadDepth.of(32, Unit.THIRTY_SECOND_INCH).in(Unit.MILLIMETER))
        .isCloseTo(25.4, within(1e-12));
  }

  /** B.8: T/K = (t/°F + 459.67)/1.8 and T/K = t/°C + 273.15; an interval of 1 °F is 1/1.8 K. */
  @ParameterizedTest
  @CsvSource({"32, 0", "212, 100", "-40, -40", "0, -17.777777777777779", "-459.67, -273.15"})
  void fahrenheitAgainstCelsius(double fahrenheit, double celsius) {
    Temperature temperature = Temperature.of(fahrenheit, Unit.FAHRENHEIT);
    assertThat(temperature.kelvins()).isCloseTo((fahrenheit + 459.67) / 1.8, within(1e-12 * 400));
    assertThat(temperature.in(Unit.CELSIUS)).isCloseTo(celsius, within(1e-10));
  }

  @Test
  void differencesHaveNoZeroPointOfTheirOwn() {
    assertThat(TemperatureDifference.of(9, Unit.FAHRENHEIT).kelvins())
        .isCloseTo(5, within(1e-14 * 5));
    assertThat(TemperatureDifference.of(5, Unit.CELSIUS).kelvins()).isEqualTo(5);
    assertThat(
            Temperature.of(59, Unit.FAHRENHEIT)
                .minus(Temperature.of(50, Unit.FAHRENHEIT))
                .in(Unit.CELSIUS))
        .isCloseTo(5, within(1e-12 * 300));
    assertThat(
            Temperature.of(50, Unit.FAHRENHEIT)
                .plus(TemperatureDifference.of(9, Unit.FAHRENHEIT))
                .in(Unit.FAHRENHEIT))
        .isCloseTo(59, within(1e-12 * 500));
  }

  /** There and back through SI: as good as double precision of the SI number allows. */
  @ParameterizedTest
  @MethodSource("dawngauge.quantity.Kinds#pairs")
  void roundTrip(Kinds.Pair pair) {
    Random random = new Random(811);
    double point = pair.kind() == QuantityKind.TEMPERATURE ? 500 : 0; // its zero is far off
    for (int i = 0; i < 1000; i++) {
      double number = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-2, 5));
      double back = Kinds.of(pair, number).in(pair.unit());
      assertThat(back).isCloseTo(number, within(1e-12 * (Math.abs(number) + point)));
    }
  }

  @Test
  void everyTypeOfQuantityHasItsKindHere() {
    Set<Class<?>> types = Kinds.all().map(kind -> kind.ofSi(1).getClass()).collect(toSet());
    assertThat(types)
        .isEqualTo(Set.of(Quantity.class.getPermittedSubclasses()))
        .hasSize(Kinds.ALL.size());
    Kinds.all().forEach(kind -> assertThat(kind.ofSi(1).kind()).isSameAs(kind));
  }

  private static double halfOfTheSeventhDigit(double number) {
    return 0.5000001e-6 * Math.pow(10, Math.floor(Math.log10(number)));
  }
}
