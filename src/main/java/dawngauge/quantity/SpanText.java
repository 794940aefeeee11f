package dawngauge.quantity;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Spans of time as they are typed: "45 min", "2 h", "2 h 30 min". */
public final class SpanText {

  private static final Pattern SPAN =
      Pattern.compile("(?:(\\d{1,3})\\s*h)?\\s*(?:(\\d{1,4})\\s*min)?");

  private SpanText() {}

  /** Reads a span. */
  public static Outcome<Duration> parse(String text) {
    Matcher matcher = SPAN.matcher(text.strip());
    if (text.isBlank() || !matcher.matches()) {
      String shown = text.length() <= 60 ? text : text.substring(0, 57) + "...";
      return Outcome.failed(
          Problem.of(ProblemCode.NOT_A_DURATION, "", shown, "999 h", "\"2 h 30 min\""));
    }
    return Outcome.of(Duration.ofHours(number(matcher, 1)).plusMinutes(number(matcher, 2)));
  }

  private static long number(Matcher matcher, int group) {
    String digits = matcher.group(group);
    return digits == null ? 0 : Long.parseLong(digits);
  }
}
