package dawngauge.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;

/** A value, problems, or both; never neither by way of a failure. */
class OutcomeTest {
  private static final Problem NO_AIR = Problem.of(ProblemCode.NO_AMBIENT, "Salida CO");
  private static final Problem NO_HEIGHT = Problem.of(ProblemCode.NO_ELEVATION, "Salida CO");

  @Test
  void aValueAlone() {
    Outcome<String> outcome = Outcome.of("80 psi");
    assertThat(outcome.get()).isEqualTo("80 psi");
    assertThat(outcome.value()).contains("80 psi");
    assertThat(outcome.problems()).isEmpty();
  }

  @Test
  void aValueWithProblems() {
    Outcome<Integer> outcome = Outcome.of("80 psi", List.of(NO_AIR)).map(String::length);
    assertThat(outcome.get()).isEqualTo(6);
    assertThat(outcome.with(List.of(NO_HEIGHT)).problems()).containsExactly(NO_AIR, NO_HEIGHT);
    assertThat(outcome.with(List.of(NO_HEIGHT)).get()).isEqualTo(6);
  }

  @Test
  void aFailureHasNoValueAndSaysWhyWhenAskedForIt() {
    Outcome<String> outcome = Outcome.failed(NO_AIR);
    assertThat(outcome.hasValue()).isFalse();
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.map(String::length).problems()).containsExactly(NO_AIR);
    assertThat(outcome.map(String::length).hasValue()).isFalse();
    assertThatExceptionOfType(NoSuchElementException.class)
        .isThrownBy(outcome::get)
        .withMessageContaining("NO_AMBIENT");
  }

  @Test
  void aFailureWithoutAProblemIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Outcome.failed(List.of()));
  }

  @Test
  void theListIsCopied() {
    List<Problem> problems = new ArrayList<>(List.of(NO_AIR));
    Outcome<String> outcome = Outcome.failed(problems);
    problems.clear();
    assertThat(outcome.problems()).containsExactly(NO_AIR);
  }
}
