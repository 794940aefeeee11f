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

  /**
   * By hand from Sen's example (1968): of 21 slopes the fifth from either end are 3.75 and 46/11;
   * half their distance is 1.6449 deviations: 0.13126. Where a reading is sure to 5 only, least
   * squares is wider: 5/√240.857 = 0.32217, the squares of the days about their middle 50/7.
   */
  @Test
  void howSureTheMiddleSlopeIs() {
    double[] days = {1, 2, 3, 4, 10, 12, 18};
    double[] values = {9, 15, 19, 20, 45, 55, 78};
    assertThat(RobustLine.theilSen(days, values, 1e-9).sigma()).isCloseTo(0.13126, within(1e-5));
    assertThat(RobustLine.theilSen(days, values, 5).sigma()).isCloseTo(0.32217, within(1e-5));
  }

  /**
   * By hand: 0, 1, 2, 3 and 14 on days 0 to 4 rise by (−1 + 3 + 28)/10 = 3 by least squares, which
   * the fourth of four readings still bends by; with five the wrong one is told. On the line all
   * weights are 1: 0.5/√(0.95 · 10) = 0.16222. With eight the middle of the slopes is 1 exactly.
   */
  @Test
  void howManyReadingsTellTheWrongOne() {
    double[] five = {0, 1, 2, 3, 4};
    assertThat(RobustLine.squares(five, new double[] {0, 1, 2, 3, 14}, 0.5).slope())
        .isCloseTo(3, within(1e-12));
    assertThat(RobustLine.of(five, new double[] {0, 1, 2, 3, 14}, 0.5).slope()).isLessThan(1.5);
    assertThat(RobustLine.of(five, five, 0.5).sigma()).isCloseTo(0.16222, within(1e-5));
    double[] eight = {0, 1, 2, 3, 4, 5, 6, 7};
    assertThat(RobustLine.of(eight, new double[] {0, 1, 2, 3, 4, 5, 6, 30}, 0.5).slope())
        .isEqualTo(1);
  }
}
