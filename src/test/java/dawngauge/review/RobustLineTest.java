package dawngauge.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;

/** Lines that one wrong reading does not bend. */
class RobustLineTest {

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  private static List<String[]> reference() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            RobustLineTest.class.getResourceAsStream("/dawngauge/review/robust-lines.tsv"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split("\t"))
          .toList();
    }
  }

  /**
   * Sen (1968), section 7: slope 4; interval 26/7 to 35/8 (his list of slopes mended), the fourth
   * from either end. By the exact distribution the fifth bounds 93 % already.
   */
  @Test
  void theExampleOfSen() {
    double[] days = {1, 2, 3, 4, 10, 12, 18};
    double[] values = {9, 15, 19, 20, 45, 55, 78};
    RobustLine line = RobustLine.theilSen(days, values, 1e-9);
    assertThat(line.slope()).isEqualTo(4);
    assertThat(line.start()).isEqualTo(6);
    double[] slopes = RobustLine.slopes(days, values);
    assertThat(RobustLine.rank(7)).isEqualTo(5);
    assertThat(slopes[3]).isCloseTo(26.0 / 7, within(1e-12));
    assertThat(slopes[slopes.length - 4]).isCloseTo(35.0 / 8, within(1e-12));
  }

  /** Forty rows, half of them with one reading six deviations off, by SciPy and statsmodels. */
  @Test
  void bothLinesAreThoseOfTheReferenceLibraries() throws IOException {
    List<String[]> rows = reference();
    assertThat(rows).hasSize(40);
    for (String[] row : rows) {
      double[] days = numbers(row[0]);
      double[] values = numbers(row[1]);
      assertThat(RobustLine.theilSen(days, values, 0.005).slope())
          .isCloseTo(Double.parseDouble(row[2]), within(1e-11));
      RobustLine huber = RobustLine.huber(days, values, 0.005);
      assertThat(huber.start()).isCloseTo(Double.parseDouble(row[3]), within(1e-9));
      assertThat(huber.slope()).isCloseTo(Double.parseDouble(row[4]), within(1e-9));
    }
  }

  /** Kendall's tau of what the line leaves over is nothing (Hipparchus). */
  @Test
  void whatTheilAndSenLeaveOverHasNoTrend() {
    Random random = new Random(1968);
    for (int i = 0; i < 100; i++) {
      int count = 9; // 36 slopes: the middle lies between two of them, none is met
      double[] days = new double[count];
      double[] values = new double[count];
      for (int j = 0; j < count; j++) {
        days[j] = j + 0.4 * random.nextDouble();
        values[j] = 0.3 * j + random.nextGaussian();
      }
      RobustLine line = RobustLine.theilSen(days, values, 1);
      double[] rests = new double[count];
      for (int j = 0; j < count; j++) {
        rests[j] = line.off(days[j], values[j]);
      }
      assertThat(new KendallsCorrelation().correlation(days, rests)).isCloseTo(0, within(1e-12));
    }
  }

  /**
   * Ranks of the exact distribution as SciPy has it (stats.kendalltau, exact), 8 to 20 readings.
   */
  @Test
  void theRanksOfKendallsInterval() {
    int[] expected = {7, 10, 13, 17, 21, 26, 30, 36, 42, 48, 55, 62, 70};
    for (int count = 8; count <= 20; count++) {
      assertThat(RobustLine.rank(count)).as("%d", count).isEqualTo(expected[count - 8]);
    }
  }

  @Test
  void oneWrongReadingDoesNotBendTheLine() {
    double[] days = {0, 1, 2, 3, 4, 5, 6, 7, 8};
    double[] values = {0, 1, 2, 3, 4, 5, 6, 7, 30};
    assertThat(RobustLine.of(days, values, 0.5).slope()).isCloseTo(1, within(0.05));
    double[] six = {0, 1, 2, 3, 4, 12};
    double[] first = Arrays.copyOf(days, 6);
    assertThat(RobustLine.of(first, six, 0.5).slope()).isCloseTo(1, within(0.35));
  }
}
