package dawngauge.phone;

import dawngauge.testdata.Needed;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips the tests of a class where there is no browser; in CI the class fails instead. */
final class NeedsBrowser implements ExecutionCondition {

  /** Where Debian and its kin lay the browser and what drives it. */
  static final Path BROWSER = Path.of("/usr/bin/chromium");

  static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    return context
        .getElement()
        .flatMap(element -> element instanceof Class<?> type ? Optional.of(type) : Optional.empty())
        .map(type -> Needed.judge(type, System.getenv("CI") != null, missing()))
        .orElseGet(() -> ConditionEvaluationResult.enabled("its class was judged"));
  }

  private static Optional<String> missing() {
    return List.of(BROWSER, DRIVER).stream()
        .filter(file -> !Files.isExecutable(file))
        .findFirst()
        .map(file -> "no browser (" + file + " is not there)");
  }
}
