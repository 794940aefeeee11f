package dawngauge.testdata;

import java.time.Duration;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Ends a run of tests in which none begins or ends for longer than any may take, and says where
 * every thread stands. A run that goes on may take as long as the machine needs.
 */
public final class StalledRun implements TestExecutionListener {

  /** Twice the longest that one test is given. */
  private static final Duration PATIENCE = Duration.ofMinutes(20);

  private static final Duration LOOK = Duration.ofSeconds(10);

  private final LongSupplier nanos;
  private final Consumer<String> end;
  private volatile long last;
  private volatile String current = "no test yet";

  /** Ends this process. */
  public StalledRun() {
    this(
        System::nanoTime,
        told -> {
          System.err.println(told);
          Runtime.getRuntime().halt(1);
        });
  }

  StalledRun(LongSupplier nanos, Consumer<String> end) {
    this.nanos = nanos;
    this.end = end;
    this.last = nanos.getAsLong();
  }

  @Override
  public void testPlanExecutionStarted(TestPlan plan) {
    last = nanos.getAsLong();
    Thread looking = new Thread(this::look, "stalled run");
    looking.setDaemon(true);
    looking.start();
  }

  @Override
  public void executionStarted(TestIdentifier test) {
    current = test.getUniqueId();
    last = nanos.getAsLong();
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    last = nanos.getAsLong();
  }

  private void look() {
    try {
      while (!judge()) {
        Thread.sleep(LOOK.toMillis());
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the run stands still, which then was told. */
  boolean judge() {
    if (nanos.getAsLong() - last < PATIENCE.toNanos()) {
      return false;
    }
    StringBuilder told = new StringBuilder();
    told.append("No test began or ended for ").append(PATIENCE.toMinutes());
    told.append(" minutes; the last that began is ").append(current).append('\n');
    for (Map.Entry<Thread, StackTraceElement[]> each : Thread.getAllStackTraces().entrySet()) {
      told.append(each.getKey()).append('\n');
      for (StackTraceElement at : each.getValue()) {
        told.append("  at ").append(at).append('\n');
      }
    }
    end.accept(told.toString());
    return true;
  }
}
