package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A missing display skips on a laptop and fails in CI. */
class NeedsDisplayTest {

  private static final Optional<String> MISSING = Optional.of("no display");

  @Test
  void aDisplayLetsTheTestsRun() {
    assertThat(NeedsDisplay.judge(getClass(), true, Optional.empty()).isDisabled()).isFalse();
    assertThat(NeedsDisplay.judge(getClass(), false, Optional.empty()).isDisabled()).isFalse();
  }

  @Test
  void withoutOneTheTestsAreSkippedAndCounted() {
    var judged = NeedsDisplay.judge(getClass(), false, MISSING);
    assertThat(judged.isDisabled()).isTrue();
    assertThat(judged.getReason()).contains("NeedsDisplayTest: 3 tests skipped: no display");
  }

  @Test
  void inCiItFails() {
    assertThatThrownBy(() -> NeedsDisplay.judge(getClass(), true, MISSING))
        .hasMessageContaining("no display");
  }
}
