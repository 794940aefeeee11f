package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes by the size, against closed forms worked by hand and a rougher published one. */
class TireVolumeTest {

  private static double liters(String size) {
    return TireVolume.cubicMeters(TireSize.parse(size).orElseThrow()).orElseThrow() * 1000;
  }

  /**
   * Worked by hand. 185/50R14: H 92.5, d 355.6 mm: π/4·185·92.5 = 13,440 mm², way of its middle
   * π·448.1 = 1,407.7 mm. ST235/80R16: H 188, d 406.4: 34,699 mm², π·594.4 = 1,867.4 mm.
   * 31X10.50R15LT: W 266.7, H (787.4 − 381)/2 = 203.2: 42,563 mm², π·584.2 = 1,835.3 mm.
   */
  @ParameterizedTest
  @CsvSource({"185/50R14, 18.92", "ST235/80R16, 64.80", "31X10.50R15LT, 78.12"})
  void anEllipseTurnedAboutTheAxle(String size, double liters) {
    assertThat(liters(size)).isCloseTo(liters, within(0.01));
  }

  /**
   * Brigham Young University–Idaho, CSE 111, "Approximate Volume of a Tire": the ring between two
   * cylinders, π·W²·A·(W·A + 2540·d)/10¹⁰ liter with W in mm, A in percent, d in inch; printed
   * there 24.09 liter for 185/50R14. The others are computed by that formula. The ellipse is π/4 of
   * it, so that it is an upper bound.
   */
  @ParameterizedTest
  @CsvSource({
    "185/50R14, 185, 50, 14, 24.09",
    "205/60R15, 205, 60, 15, 39.92",
    "ST235/80R16, 235, 80, 16, 82.50"
  })
  void theRingBetweenCylindersHoldsMore(
      String size, double width, double aspect, double rim, double liters) {
    double ring = Math.PI * width * width * aspect * (width * aspect + 2540 * rim) / 1e10;
    assertThat(ring).isCloseTo(liters, within(0.005));
    assertThat(liters(size)).isCloseTo(Math.PI / 4 * ring, within(1e-9)).isLessThan(ring);
  }

  /** A conventional size says nothing of its height. */
  @ParameterizedTest
  @ValueSource(strings = {"7.00-15LT", "8-14.5", "11R22.5", "15X7.00R15LT"})
  void aSizeWithoutHeightHasNoVolume(String size) {
    assertThat(TireVolume.cubicMeters(TireSize.parse(size).orElseThrow())).isEmpty();
  }

  @Test
  void moreInEachDimensionHoldsMore() {
    Random random = new Random(20270309);
    for (int i = 0; i < 1000; i++) {
      int width = 145 + random.nextInt(200);
      int aspect = 35 + random.nextInt(60);
      int rim = 12 + random.nextInt(12);
      double here = liters(metric(width, aspect, rim));
      assertThat(here).isPositive();
      assertThat(liters(metric(width + 5, aspect, rim))).isGreaterThan(here);
      assertThat(liters(metric(width, aspect + 1, rim))).isGreaterThan(here);
      assertThat(liters(metric(width, aspect, rim + 1))).isGreaterThan(here);
      int overall = 2 * rim + random.nextInt(10);
      double wide = 6 + random.nextInt(8);
      double float0 = liters(flotation(overall, wide, rim));
      assertThat(liters(flotation(overall + 1, wide, rim))).isGreaterThan(float0);
      assertThat(liters(flotation(overall, wide + 0.5, rim))).isGreaterThan(float0);
    }
  }

  private static String metric(int width, int aspect, int rim) {
    return width + "/" + aspect + "R" + rim;
  }

  private static String flotation(int overall, double width, int rim) {
    return String.format(Locale.ROOT, "%dX%.2fR%dLT", overall, width, rim);
  }
}
