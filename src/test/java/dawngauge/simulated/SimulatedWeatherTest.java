package dawngauge.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The simulator's weather and gauge: spreads and memories that were asked for are drawn. */
class SimulatedWeatherTest {

  private static final int HAULS = 4000;

  /** What may use the program: what writes the file by its trip builders, and what measures. */
  private static final Set<String> OUTSIDE = Set.of("CrewNotes", "ReadingRanges", "TripChances");

  @Test
  void theSimulatorSharesNoClassWithTheProduct() {
    Set<String> used =
        new ClassFileImporter()
            .importPackages("dawngauge.simulated").stream()
                .filter(each -> !each.getSimpleName().endsWith("Test"))
                .filter(each -> !OUTSIDE.contains(outermost(each)))
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .map(dependency -> dependency.getTargetClass().getPackageName())
                .filter(name -> name.startsWith("dawngauge"))
                .collect(Collectors.toSet());
    assertThat(used).containsExactly("dawngauge.simulated");
  }

  private static String outermost(JavaClass each) {
    String name = each.getName().substring(each.getPackageName().length() + 1);
    int inner = name.indexOf('$');
    return inner < 0 ? name : name.substring(0, inner);
  }

  /** ASA Data Expo 2018, in °F: 5.14 of today's minimum, 4.34 of the maximum two days ahead. */
  @Test
  void spreadsAreThoseOfTheTable() {
    assertThat(ForecastErrors.sigma(0, 1) * 1.8).isCloseTo(5.14, within(1e-9));
    assertThat(ForecastErrors.sigma(2, 0) * 1.8).isCloseTo(4.34, within(1e-9));
    assertThat(ForecastErrors.sigma(6, 1) * 1.8).isCloseTo(5.96, within(1e-9));
    assertThat(ForecastErrors.sigma(9, 0) * 1.8).isCloseTo(6.72, within(1e-9));
  }

  /**
   * Spread 1 and the memory told, over many draws: counting errors 1 / √(2 · 4000) = 1.1 % of the
   * spread and 1 / √4000 = 0.016 of the memory, three of them allowed. Between two drawn quarters
   * of an hour the own part is up to 2 % short.
   */
  @Test
  void errorsHaveTheirSpreadAndTheirMemory() {
    Random random = new Random(20270711);
    double[] squares = new double[6];
    double[] kept = new double[6];
    double[] apart = {0, 1, 3, 12, 24, 48};
    double places = 0;
    double at = 31 * Units.HOUR;
    for (int i = 0; i < HAULS; i++) {
      ForecastErrors errors = new ForecastErrors(random, 2, 0, 5 * Units.DAY);
      for (int k = 0; k < apart.length; k++) {
        double later = errors.drawn(0, at + apart[k] * Units.HOUR);
        squares[k] += later * later / HAULS;
        kept[k] += errors.drawn(0, at) * later / HAULS;
      }
      places += errors.drawn(0, at) * errors.drawn(1, at) / HAULS;
    }
    for (int k = 0; k < apart.length; k++) {
      assertThat(Math.sqrt(squares[k])).isCloseTo(1, within(0.034));
      assertThat(kept[k]).isCloseTo(ForecastErrors.kept(apart[k] * Units.HOUR), within(0.07));
    }
    assertThat(places).as("the region's part alone is shared").isCloseTo(0.5, within(0.05));
  }

  /**
   * The same of lows and highs of whole days as they come against those that were forecast: root
   * mean square within a tenth of the table, as an extreme of a wandering line is a little further
   * out.
   */
  @Test
  void lowsAndHighsMissByAboutTheTable() {
    Random random = new Random(20270712);
    double low = 0;
    double high = 0;
    int hauls = HAULS / 4;
    for (int i = 0; i < hauls; i++) {
      Weather weather = new Weather(random, 39, 1 + random.nextInt(365), new double[] {500}, 5);
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (double t = 3 * Units.DAY; t < 4 * Units.DAY; t += Units.HOUR / 4) {
        double hour = (t - 3 * Units.DAY) / Units.HOUR;
        least = hour < 10 ? Math.min(least, weather.air(0, t)) : least;
        most = hour > 10 && hour < 20 ? Math.max(most, weather.air(0, t)) : most;
      }
      low += Math.pow(least - weather.low(0, 3), 2) / hauls;
      high += Math.pow(most - weather.high(0, 3), 2) / hauls;
    }
    assertThat(Math.sqrt(low) * 1.8).isCloseTo(5.61, within(0.56));
    assertThat(Math.sqrt(high) * 1.8).isCloseTo(4.83, within(0.48));
  }

  /** Low at sunrise, high four hours before sunset, 39 % of the fall done at sunset; 12 h at 0°. */
  @Test
  void theDayGoesAsPublished() {
    DayCurve day = new DayCurve(39, 172);
    assertThat(day.at(day.rise(), 280, 300, 284)).isCloseTo(280, within(1e-9));
    assertThat(day.at(day.set() - 4, 280, 300, 284)).isCloseTo(300, within(1e-9));
    assertThat(day.at(day.set(), 280, 300, 284)).isCloseTo(300 - 0.39 * 16, within(1e-9));
    assertThat(day.at(day.rise() + 24, 280, 300, 284)).isCloseTo(284, within(1e-9));
    DayCurve equator = new DayCurve(0, 80);
    assertThat(equator.rise()).isCloseTo(6, within(1e-9));
    assertThat(day.set() - day.rise()).as("midsummer at 39°").isCloseTo(14.8, within(0.15));
  }

  /**
   * U.S. Standard Atmosphere 1976: 79,501 Pa at 2,000 m where sea level has 15 °C; the barometer
   * has its spread of 700 Pa. The season's mean differs from 15 °C: 1 K is 0.08 % there.
   */
  @Test
  void pressureFallsWithHeight() {
    double sum = 0;
    double squares = 0;
    int hauls = 1000;
    Random random = new Random(20270713);
    for (int i = 0; i < hauls; i++) {
      Weather weather = new Weather(random, 39, 100, new double[] {2000}, 2);
      double ratio = weather.pressure(0, 2000, 40_000) / weather.pressure(0, 0, 40_000);
      sum += ratio / hauls;
      squares += Math.pow(weather.pressure(0, 0, 40_000) - 101_325, 2) / hauls;
    }
    assertThat(sum).isCloseTo(79_501 / 101_325.0, within(0.004));
    assertThat(Math.sqrt(squares)).isCloseTo(700, within(50.0));
  }

  @Test
  void aGaugeErrsWithinItsGradeAndRepeats() {
    Random random = new Random(20270714);
    double between = 0;
    double again = 0;
    for (int i = 0; i < HAULS; i++) {
      HandGauge gauge = new HandGauge(random, 5);
      double error = gauge.error(80 * Units.PSI, 293.15, 0) / Units.PSI;
      assertThat(Math.abs(error)).isLessThanOrEqualTo(2);
      between += error * error / HAULS;
      double first = gauge.reads(80.3 * Units.PSI, 293.15, 0) / Units.PSI;
      assertThat(first).isCloseTo(Math.rint(first), within(1e-9));
      double second = gauge.reads(80.3 * Units.PSI, 293.15, 0) / Units.PSI;
      again += (first - second) * (first - second) / 2 / HAULS;
      assertThat(gauge.sets(80 * Units.PSI, 293.15, 0) / Units.PSI)
          .isCloseTo(80 - error, within(2.0));
    }
    // Cut at two deviations a normal spread of 1 psi is 0.880 psi; 0.4 psi with the step 0.494 psi.
    assertThat(Math.sqrt(between)).isCloseTo(0.880, within(0.03));
    assertThat(Math.sqrt(again)).isCloseTo(0.494, within(0.03));
  }
}
