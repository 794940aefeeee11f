package dawngauge.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of expected marks follows its own rule. */
class ExpectedMarksTest {

  static List<ExpectedMarks.Row> rows() {
    return ExpectedMarks.ROWS_OF_TABLE.stream()
        .filter(row -> row.under() != ExpectedMarks.NOT_COMPUTED)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theLikelyChanceHoldsAndTheCautiousOneAsks(ExpectedMarks.Row row) {
    assertThat(row.notShown()).isGreaterThanOrEqualTo(row.under());
    assertThat(row.mark())
        .isEqualTo(
            row.under() > ExpectedMarks.THRESHOLD
                ? ExpectedMarks.Mark.HOLD
                : row.notShown() > ExpectedMarks.THRESHOLD
                    ? ExpectedMarks.Mark.RECHECK
                    : ExpectedMarks.Mark.SILENT);
  }
}
