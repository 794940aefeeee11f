package dawngauge.field;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;

/**
 * What is wrong between the figures of a part.
 *
 * @param at the field at which it is told, and what is below it, such as "rows/2"
 * @param problem what is wrong, without a place
 */
public record Fault(String at, Problem problem) {

  static Fault of(String at, ProblemCode code, String... arguments) {
    return new Fault(at, Problem.of(code, "", arguments));
  }
}
