package dawngauge.testdata;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;

/** Tests that need something of the computer are skipped without it, and fail in CI. */
public final class Needed {

  private Needed() {}

  /** Whether a class of tests runs, by what it lacks, if anything. */
  public static ConditionEvaluationResult judge(
      Class<?> tests, boolean ci, Optional<String> missing) {
    if (missing.isEmpty()) {
      return ConditionEvaluationResult.enabled("all that it needs is there");
    } else if (ci) {
      throw new IllegalStateException("CI is set, and these tests cannot run: " + missing.get());
    }
    long count =
        Arrays.stream(tests.getDeclaredMethods())
            .filter(method -> method.isAnnotationPresent(Test.class))
            .count();
    String line = tests.getSimpleName() + ": " + count + " tests skipped: " + missing.get();
    System.out.println(line);
    return ConditionEvaluationResult.disabled(line);
  }
}
