package dawngauge.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dawngauge.physics.DiurnalCurve.Day;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiurnalCurveTest {

  private static final double HOUR = 3600;
  private static final double ZERO = 273.15;

  private static Day day(int number, double low, double high) {
    return new Day((24 * number + 6) * HOUR, (24 * number + 18) * HOUR, low + ZERO, high + ZERO);
  }

  private static double celsius(double hour, Day before, Day day, Day after) {
    return DiurnalCurve.temperatureAt(hour * HOUR, before, day, after) - ZERO;
  }

  private static double celsiusOnEqualDays(double hour) {
    return celsius(hour, day(-1, 10, 30), day(0, 10, 30), day(1, 10, 30));
  }

  /**
   * Computed by hand from the formula of Parton and Logan 1981; high 30, low 10 °C, sun 6 to 18.
   */
  @ParameterizedTest
  @CsvSource({"8, 18.40", "12, 28.87", "14, 29.96", "18, 23.03"})
  void dayIsThatOfThePaper(double hour, double celsius) {
    assertThat(celsiusOnEqualDays(hour)).isCloseTo(celsius, within(0.0051));
  }

  /**
   * Parton and Logan's unjoined night gives 16.26 °C at 22 h and steps by 1.49 K at the low. Joined
   * to the low with the square of the time since sunset it is 16.09; joined by Kimball and
   * Bellamy's asymptote it would be 15.34.
   */
  @Test
  void eveningStaysNearThePaper() {
    assertThat(celsiusOnEqualDays(22))
        .isCloseTo(16.26, within(0.2))
        .isCloseTo(16.09, within(0.005));
  }

  @Test
  void lowAndHighAreReached() {
    Day before = day(-1, 5, 22);
    Day day = day(0, 10, 30);
    Day after = day(1, 2, 15);
    assertThat(celsius(day.timeOfLow() / HOUR, before, day, after)).isCloseTo(10, within(1e-9));
    assertThat(celsius(after.timeOfLow() / HOUR, before, day, after)).isCloseTo(2, within(1e-9));
    assertThat(celsius(day.timeOfHigh() / HOUR, before, day, after)).isCloseTo(30, within(1e-9));
    double lowest = 99;
    double highest = -99;
    for (double hour = 0; hour < 18; hour += 1 / 3600.0) {
      double celsius = celsius(hour, before, day, after);
      lowest = Math.min(lowest, celsius);
      highest = Math.max(highest, celsius);
    }
    assertThat(highest).isCloseTo(30, within(1e-6));
    assertThat(lowest).isCloseTo(10, within(1e-3));
  }

  /** After midnight the night aims at tomorrow's low, not at yesterday's. */
  @Test
  void nightAimsAtTheNextLow() {
    Day before = day(-1, 10, 30);
    Day day = day(0, 10, 30);
    assertThat(celsius(28, before, day, day(1, -5, 20)))
        .isLessThan(celsius(28, before, day, day(1, 10, 30)) - 10);
  }

  @Test
  void curveHasNoStepAnywhere() {
    Random random = new Random(1986);
    for (int trial = 0; trial < 20; trial++) {
      Day before = randomDay(random, -1);
      Day day = randomDay(random, 0);
      Day after = randomDay(random, 1);
      double second = before.timeOfLow();
      double previous = DiurnalCurve.temperatureAt(second, before, day, after);
      while (second + 5 <= after.sunsetSeconds()) {
        second += 5;
        double kelvins = DiurnalCurve.temperatureAt(second, before, day, after);
        // The steepest slope of such days is under 20 K/h, 0.028 K in 5 s.
        assertThat(kelvins).as("trial %s at %s s", trial, second).isCloseTo(previous, within(0.03));
        previous = kelvins;
      }
      assertJoined(before.sunsetSeconds(), before, day, after);
      assertJoined(day.timeOfLow(), before, day, after);
      assertJoined(day.sunsetSeconds(), before, day, after);
      assertJoined(after.timeOfLow(), before, day, after);
    }
  }

  private static void assertJoined(double seconds, Day before, Day day, Day after) {
    double left = DiurnalCurve.temperatureAt(seconds - 1e-4, before, day, after);
    double right = DiurnalCurve.temperatureAt(seconds + 1e-4, before, day, after);
    assertThat(left).isCloseTo(right, within(2e-6));
  }

  private static Day randomDay(Random random, int number) {
    double half = (4 + 4 * random.nextDouble()) * HOUR;
    double noon = (24 * number + 12) * HOUR;
    double low = 255 + 30 * random.nextDouble();
    return new Day(noon - half, noon + half, low, low + 20 * random.nextDouble());
  }

  /** Epoch seconds are large; nothing may hang on where the time line starts. */
  @Test
  void theTimeLineMayStartAnywhere() {
    double epoch = 1_804_550_400;
    Day before = moved(day(-1, 5, 22), epoch);
    Day day = moved(day(0, 10, 30), epoch);
    Day after = moved(day(1, 2, 15), epoch);
    for (double hour = -12; hour <= 36; hour += 0.25) {
      assertThat(celsius(epoch / HOUR + hour, before, day, after))
          .isCloseTo(celsius(hour, day(-1, 5, 22), day(0, 10, 30), day(1, 2, 15)), within(1e-8));
    }
  }

  private static Day moved(Day day, double by) {
    return new Day(
        day.sunriseSeconds() + by, day.sunsetSeconds() + by, day.lowKelvins(), day.highKelvins());
  }

  @Test
  void aDayWithoutRangeIsFlat() {
    for (double hour = -12; hour <= 36; hour += 0.5) {
      assertThat(celsius(hour, day(-1, 4, 4), day(0, 4, 4), day(1, 4, 4)))
          .isCloseTo(4, within(1e-12));
    }
  }

  @Test
  void impossibleDaysAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(0, 12 * HOUR, 290, 280));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(0, 24 * HOUR, 280, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(0, 3.3 * HOUR, 280, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(12 * HOUR, 0, 280, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(Double.NaN, HOUR, 280, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(0, 12 * HOUR, -5, 290));
    assertThatIllegalArgumentException().isThrownBy(() -> new Day(0, 12 * HOUR, 280, Double.NaN));
  }

  /** The shortest day that is taken has its high at sunset. */
  @Test
  void theShortestDayHasItsHighAtSunset() {
    Day shortest = new Day(0, DiurnalCurve.SHORTEST_DAY_SECONDS, 280, 290);
    assertThat(DiurnalCurve.SHORTEST_DAY_SECONDS).isCloseTo(3.38 * HOUR, within(1e-9));
    assertThat(shortest.timeOfHigh()).isCloseTo(shortest.sunsetSeconds(), within(1e-9));
  }

  @Test
  void momentsOutsideTheDaysAndDaysOutOfOrderAreRefused() {
    Day before = day(-1, 5, 22);
    Day day = day(0, 10, 30);
    Day after = day(1, 2, 15);
    assertThatIllegalArgumentException().isThrownBy(() -> celsius(-20, before, day, after));
    assertThatIllegalArgumentException().isThrownBy(() -> celsius(43, before, day, after));
    assertThatIllegalArgumentException().isThrownBy(() -> celsius(Double.NaN, before, day, after));
    assertThatIllegalArgumentException().isThrownBy(() -> celsius(12, day, before, after));
    assertThatIllegalArgumentException().isThrownBy(() -> celsius(12, before, day, day));
  }

  /** From the low of the day before to the sunset of the day after, both included. */
  @Test
  void theEndsOfTheThreeDaysAreOfThem() {
    Day before = day(-1, 10, 30);
    Day day = day(0, 10, 30);
    Day after = day(1, 10, 30);
    assertThat(DiurnalCurve.temperatureAt(before.timeOfLow(), before, day, after) - ZERO)
        .isCloseTo(10, within(1e-9));
    assertThat(DiurnalCurve.temperatureAt(after.sunsetSeconds(), before, day, after) - ZERO)
        .isCloseTo(23.03, within(0.0051));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                DiurnalCurve.temperatureAt(Math.nextDown(before.timeOfLow()), before, day, after));
  }
}
