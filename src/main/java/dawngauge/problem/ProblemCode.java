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
  OUT_OF_RANGE(Severity.ERROR, "{0} is outside {1} to {2}; check the figure and its unit"),

  // Itinerary
  NO_STOPS(
      Severity.ERROR, "the route has no stops; give at least the start and one stop to forecast"),
  NO_DEPARTURE(
      Severity.ERROR,
      "the first stop has no leaving time, so no time on the way is known; give it as"
          + " 2027-04-13T05:45-06:00[America/Denver]"),
  NO_DRIVING_TIME(
      Severity.GAP,
      "the leg to {0} has neither a driving time nor distance and average speed: times from there on"
          + " are unknown; give one of them, or the arrival"),
  ARRIVES_BEFORE_LEAVING(
      Severity.GAP,
      "arrives {0}, not after leaving {1} at {2}: times from here on are unknown; correct the typed"
          + " times"),
  LEAVES_BEFORE_ARRIVING(
      Severity.GAP,
      "leaves {0}, before arriving at {1}: times from here on are unknown; correct the typed"
          + " times"),

  // Air
  NO_AMBIENT(
      Severity.GAP,
      "no air temperature: nothing is forecast here; give a temperature, hours, or the day's low and"
          + " high"),
  NO_PLACE_FOR_CURVE(
      Severity.GAP,
      "low and high need sunrise and sunset, so the stop's coordinates and time zone; give them, or"
          + " type temperatures by the hour"),
  NO_SUNRISE(
      Severity.GAP,
      "the sun does not rise and set on {0} here, so low and high cannot be spread over the day; type"
          + " temperatures by the hour"),
  NO_ELEVATION(
      Severity.GAP, "no elevation: nothing is forecast here; give the height of the ground");

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
