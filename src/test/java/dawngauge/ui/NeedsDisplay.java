package dawngauge.ui;

import dawngauge.testdata.Needed;
import java.lang.reflect.AnnotatedElement;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.testfx.api.FxToolkit;

/**
 * Skips the tests of a class where no window can be opened, and says in one line how many and why.
 * Where the environment variable CI is set, the class fails instead.
 */
final class NeedsDisplay implements ExecutionCondition {

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    Optional<Class<?>> whole = context.getElement().flatMap(NeedsDisplay::asClass);
    return whole
        .map(type -> Needed.judge(type, System.getenv("CI") != null, missing()))
        .orElseGet(() -> ConditionEvaluationResult.enabled("its class was judged"));
  }

  private static Optional<Class<?>> asClass(AnnotatedElement element) {
    return element instanceof Class<?> type ? Optional.of(type) : Optional.empty();
  }

  private static Optional<String> missing() {
    boolean linux = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    if (linux && Optional.ofNullable(System.getenv("DISPLAY")).orElse("").isBlank()) {
      return Optional.of("no display (DISPLAY is not set)");
    }
    try {
      FxToolkit.registerPrimaryStage();
      return Optional.empty();
    } catch (TimeoutException | RuntimeException failure) {
      return Optional.of("the display does not answer (" + failure.getMessage() + ")");
    }
  }
}
