package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.problem.ProblemCode.Severity;
import dawngauge.trip.Trip;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each small file has one fault, and that one problem is reported at its place. */
class OneProblemEachTest {
  static Stream<Arguments> files() {
    return Samples.text("problems.tsv")
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split("\t", -1))
        .map(f -> Arguments.of(f[0], ProblemCode.valueOf(f[1]), f[2], f[3]));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files")
  void oneProblemIsReported(String file, ProblemCode code, String where, String part) {
    Outcome<Trip> outcome = TripFile.parse(Samples.text(file + ".dawngauge"));
    assertThat(outcome.problems()).as("%s", outcome.problems()).hasSize(1);
    Problem problem = outcome.problems().get(0);
    assertThat(problem.code()).as(problem.message()).isEqualTo(code);
    assertThat(problem.where()).isEqualTo(where);
    assertThat(problem.text()).contains(part);
    assertThat(outcome.hasValue()).isEqualTo(code.severity() != Severity.ERROR);
  }

  @Test
  void theFileTheyAllComeFromIsSound() {
    assertThat(TripFile.parse(Samples.text("small.dawngauge")).problems()).isEmpty();
  }
}
