package dawngauge.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every problem has a text, and its arguments fill all of it. */
class ProblemCodeTest {
  @ParameterizedTest
  @EnumSource
  void placeholdersAreNumberedWithoutGaps(ProblemCode code) {
    assertThat(code.template()).isNotBlank();
    for (int i = 0; i < code.argumentCount(); i++) {
      assertThat(code.template()).contains("{" + i + "}");
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyArgumentShowsAndNoBraceIsLeft(ProblemCode code) {
    var arguments = IntStream.range(0, code.argumentCount()).mapToObj(i -> "$value\\" + i).toList();
    String text = new Problem(code, "", arguments).text();
    assertThat(text).doesNotContain("{", "}");
    arguments.forEach(argument -> assertThat(text).contains(argument));
  }

  @ParameterizedTest
  @EnumSource
  void aProblemWithOneArgumentTooManyIsRefused(ProblemCode code) {
    var tooMany = Collections.nCopies(code.argumentCount() + 1, "a");
    assertThatIllegalArgumentException().isThrownBy(() -> new Problem(code, "", tooMany));
  }
}
