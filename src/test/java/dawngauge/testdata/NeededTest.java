package dawngauge.testdata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A missing display skips on a laptop and fails in CI. */
class NeededTest {

  private static final Optional<String> MISSING = Optional.of("no display");

  @Test
  void aDisplayLetsTheTestsRun() {
    assertThat(Needed.judge(getClass(), true, Optional.empty()).isDisabled()).isFalse();
    assertThat(Needed.judge(getClass(), false, Optional.empty()).isDisabled()).isFalse();
  }

  @Test
  void withoutOneTheTestsAreSkippedAndCounted() {
    var judged = Needed.judge(getClass(), false, MISSING);
    assertThat(judged.isDisabled()).isTrue();
    assertThat(judged.getReason()).contains("NeededTest: 3 tests skipped: no display");
  }

  @Test
  void inCiItFails() {
    assertThatThrownBy(() -> Needed.judge(getClass(), true, MISSING))
        .hasMessageContaining("no display");
  }
}
