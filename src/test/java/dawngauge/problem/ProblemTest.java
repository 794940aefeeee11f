package dawngauge.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Place and sentence of a problem. */
class ProblemTest {
  @Test
  void placeThenSentence() {
    Problem problem = Problem.of(ProblemCode.OUT_OF_RANGE, "", "999 psi", "0 psi", "203.05 psi");
    String sentence = "999 psi is outside 0 psi to 203.05 psi; check the figure and its unit";
    assertThat(problem.message()).isEqualTo(problem.text()).isEqualTo(sentence);
    Problem placed = problem.at("/log/0/pressure");
    assertThat(placed.message()).isEqualTo("/log/0/pressure: " + sentence);
    assertThat(placed.text()).isEqualTo(sentence);
    assertThat(placed.arguments()).isEqualTo(problem.arguments());
  }

  @Test
  void whatWasTypedIsNeverReadAsAPlaceholder() {
    Problem problem = Problem.of(ProblemCode.NOT_A_QUANTITY, "", "{1} $2", "weight", "3520 lb");
    assertThat(problem.text()).startsWith("\"{1} $2\" is not a weight;");
  }
}
