package dawngauge.testdata;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.AbstractTestDescriptor;
import org.junit.platform.launcher.TestIdentifier;

/** A run is ended for standing still, never for its length. */
class StalledRunTest {

  private static final TestIdentifier TEST =
      TestIdentifier.from(
          new AbstractTestDescriptor(UniqueId.forEngine("none").append("test", "long"), "long") {
            @Override
            public TestDescriptor.Type getType() {
              return TestDescriptor.Type.TEST;
            }
          });

  private final AtomicLong minutes = new AtomicLong();
  private final List<String> told = new ArrayList<>();
  private final StalledRun run =
      new StalledRun(() -> Duration.ofMinutes(minutes.get()).toNanos(), told::add);

  @Test
  void aLongRunThatGoesOnIsLeftAlone() {
    for (int test = 0; test < 20; test++) {
      run.executionStarted(TEST);
      minutes.addAndGet(10);
      assertThat(run.judge()).isFalse();
      run.executionFinished(TEST, TestExecutionResult.successful());
      minutes.addAndGet(10);
      assertThat(run.judge()).isFalse();
    }
    assertThat(told).isEmpty();
  }

  @Test
  void oneThatStandsStillIsEndedAndSaysWhere() {
    run.executionStarted(TEST);
    minutes.addAndGet(20);
    assertThat(run.judge()).isTrue();
    assertThat(told).hasSize(1);
    assertThat(told.get(0)).contains("[test:long]").contains("StalledRunTest");
  }
}
