package dawngauge.problem;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The catalogue of everything that can be wrong or missing. Each text names the value, the limit
 * and the way out; {0}, {1} … are filled from the problem.
 */
public enum ProblemCode {
  // Quantities
  NOT_A_QUANTITY(
      Severity.ERROR, "\"{0}\" is not a {1}; write a number and a unit, such as \"{2}\""),
  UNKNOWN_UNIT(Severity.ERROR, "\"{0}\" has no unit known for a {1}; use one of {2}"),
  OUT_OF_RANGE(Severity.ERROR, "{0} is outside {1} to {2}; check the figure and its unit");

  /** How bad a problem is. */
  public enum Severity {
    /** The input cannot be used. */
    ERROR,
    /** A figure is missing: what needs it is unknown, all else stands. */
    GAP,
    /** Worth knowing; nothing is missing. */
    NOTE
  }

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d)}");

  private final Severity severity;
  private final String template;

  ProblemCode(Severity severity, String template) {
    this.severity = severity;
    this.template = template;
  }

  /** How bad it is. */
  public Severity severity() {
    return severity;
  }

  /** The text with its placeholders. */
  public String template() {
    return template;
  }

  /** How many arguments the text needs: one more than its highest placeholder. */
  public int argumentCount() {
    int count = 0;
    Matcher matcher = PLACEHOLDER.matcher(template);
    while (matcher.find()) {
      count = Math.max(count, Integer.parseInt(matcher.group(1)) + 1);
    }
    return count;
  }

  String text(List<String> arguments) {
    return PLACEHOLDER
        .matcher(template)
        .replaceAll(
            match -> Matcher.quoteReplacement(arguments.get(Integer.parseInt(match.group(1)))));
  }
}
