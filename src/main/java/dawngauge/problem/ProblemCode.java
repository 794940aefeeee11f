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
      Severity.GAP, "no elevation: nothing is forecast here; give the height of the ground"),

  // Tires
  NOT_A_DATE_CODE(
      Severity.ERROR,
      "\"{0}\" has no date code; type the last four digits of the tire's identification number, such"
          + " as \"0109\"; if it ends without digits, the whole number is on the other sidewall"),
  NO_SUCH_WEEK(
      Severity.ERROR,
      "\"{0}\" means week {1} of {2}, whose weeks run from 01 to {3}; read the digits at the end of"
          + " the identification number again"),
  RATED_LOAD_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no rated load; type the load on its sidewall, or its load index (70 to 150)"),
  RATED_PRESSURE_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no rated pressure; type the cold pressure that its sidewall or its maker"
          + " gives with the rated load"),
  DUAL_LOAD_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no dual figure, and for this class none is estimated; type the dual load or"
          + " the dual load index on its sidewall, or the maker's dual rows"),
  DUAL_LOAD_ABOVE_SINGLE(
      Severity.ERROR,
      "tire \"{0}\" has a dual load of {1}, above its single load of {2}; check the two figures"),
  DUAL_LOAD_ESTIMATED(
      Severity.NOTE,
      "tire \"{0}\" has no dual figure; {1} is estimated as 0.91 of the single load; type the dual"
          + " load on its sidewall"),
  TIRE_CLASS_UNKNOWN(
      Severity.NOTE,
      "tire \"{0}\" is of no known class and is judged as a passenger-car tire, its rating divided by"
          + " 1.10; type its class or its full size"),
  ROWS_END_EARLY(
      Severity.NOTE,
      "tire \"{0}\" has rows up to {1}, below its rated pressure of {2}; above the last row its load"
          + " counts as no higher; type the rows up to the rated pressure"),
  LABEL_POINT_NOT_USED(
      Severity.NOTE,
      "the label's {1} at {2} does not fit tire \"{0}\", which may carry {3}; the label is left out"
          + " of its estimate; check the label's figures and the sidewall"),

  // Fitting
  NO_TIRE_TYPE(
      Severity.GAP,
      "tire \"{0}\" has no figures of its sidewall: load and margin unknown; give its type"),
  NO_LABEL_PRESSURE(
      Severity.GAP,
      "no cold pressure from the certification label: the aim is taken from the tire; read it off"
          + " the label or placard"),
  LABEL_DOES_NOT_SPEAK(
      Severity.GAP,
      "the label speaks of {0}, fitted is {1}: its pressure is not of these tires; have a tire"
          + " technician confirm pressure and wheel limit"),
  NO_TIRE_FITTED(Severity.GAP, "no tire is fitted here in the file: nothing is forecast; name one"),
  NO_READING(
      Severity.GAP,
      "no cold reading of this tire: nothing is forecast for it; gauge it cold and log the reading"),
  NO_LOAD(
      Severity.GAP,
      "{0} has neither a scale weight nor a GAWR: its load margin is unknown; weigh it or read the"
          + " label"),
  NOT_WEIGHED(
      Severity.NOTE, "{0} was not weighed: judged at its GAWR; weigh the loaded rig axle by axle"),
  TARGET_NOT_USED(
      Severity.NOTE,
      "{0}: the chosen cold pressure {1} is not used: it needs the maker's rows, a scale weight, and"
          + " at least {2}");

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
