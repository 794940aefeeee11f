package dawngauge.problem;

import java.util.List;

/**
 * One thing that is wrong or missing, as a value: what (the code), where, and the figures that its
 * text needs.
 *
 * @param code what kind of problem it is; owns the text
 * @param where the place: a JSON Pointer in a file, or words such as "trailer axle 2 left"; may be
 *     empty
 * @param arguments what fills the placeholders of the code's text, in order
 */
public record Problem(ProblemCode code, String where, List<String> arguments) {

  /** Refuses a problem whose arguments do not fit its text. */
  public Problem {
    arguments = List.copyOf(arguments);
    if (arguments.size() != code.argumentCount()) {
      throw new IllegalArgumentException(
          code + " takes " + code.argumentCount() + " arguments, not " + arguments.size());
    }
  }

  /** A problem at a place. */
  public static Problem of(ProblemCode code, String where, String... arguments) {
    return new Problem(code, where, List.of(arguments));
  }

  /** The same problem, found at another place. */
  public Problem at(String place) {
    return new Problem(code, place, arguments);
  }

  /** The sentence a person reads, without the place. */
  public String text() {
    return code.text(arguments);
  }

  /** Place and sentence. */
  public String message() {
    return where.isEmpty() ? text() : where + ": " + text();
  }
}
