package dawngauge.ledger;

import dawngauge.ambient.AirChange;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherFill;
import dawngauge.problem.Problem;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What came of a question for the air along a trip, in words.
 *
 * @param lines what each source gave, first; then what has changed since the last time
 * @param problems what could not be had or was set aside, each once
 */
public record WeatherSummary(List<String> lines, List<String> problems) {

  private static final int MOST_CHANGES = 6;

  /** Copies the lists. */
  public WeatherSummary {
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  /**
   * Tells it.
   *
   * @param result what came
   * @param changes stops whose air is another than it was
   * @param adjusted how many stops have another mark than before
   */
  public static WeatherSummary of(
      WeatherFill.Result result, List<AirChange> changes, int adjusted, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    lines.add(sources(result));
    if (!changes.isEmpty()) {
      List<String> words = new ArrayList<>();
      changes.stream()
          .limit(MOST_CHANGES)
          .forEach(change -> words.add(words(result.trip(), change, units)));
      if (changes.size() > MOST_CHANGES) {
        words.add("and " + (changes.size() - MOST_CHANGES) + " more stops");
      }
      lines.add("Since the last time: " + String.join(", ", words) + ".");
    }
    if (adjusted > 0) {
      lines.add(adjusted + (adjusted == 1 ? " stop has" : " stops have") + " another mark now.");
    }
    Set<String> problems = new LinkedHashSet<>();
    result.problems().stream().map(Problem::message).forEach(problems::add);
    return new WeatherSummary(lines, List.copyOf(problems));
  }

  /** The air that was measured beside the expected, a line a stop. */
  public static WeatherSummary of(List<MeasuredAir> measured, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    Set<String> problems = new LinkedHashSet<>();
    for (MeasuredAir air : measured) {
      lines.add(
          air.place()
              + ", "
              + Wording.shortDay(air.time(), air.zone())
              + " "
              + Wording.clock(air.time(), air.zone())
              + ": "
              + temperature(air.measuredKelvins(), units)
              + (air.source().isEmpty() ? "" : " measured by " + air.source())
              + ", expected "
              + temperature(air.expectedKelvins(), units));
      air.problems().stream().map(Problem::message).forEach(problems::add);
    }
    if (lines.isEmpty()) {
      lines.add("No stop with a known time and place has been left yet.");
    }
    return new WeatherSummary(lines, List.copyOf(problems));
  }

  private static String temperature(double kelvins, UnitSystem units) {
    return Double.isNaN(kelvins) ? "not known" : units.format(new Temperature(kelvins));
  }

  private static String sources(WeatherFill.Result result) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (WeatherFill.Filled filled : result.places()) {
      counts.merge(filled.from() == null ? "not known" : words(filled.from()), 1, Integer::sum);
      if (filled.typicalToo()) {
        counts.merge("typical behind a forecast's end, not a forecast", 1, Integer::sum);
      }
    }
    if (counts.isEmpty()) {
      return "No place on the way needs a temperature: all are typed, or no time is known.";
    }
    List<String> words = new ArrayList<>();
    counts.forEach((source, count) -> words.add(count + " " + source));
    return "Places on the way: " + String.join("; ", words) + ". What is typed stays.";
  }

  private static String words(Provenance from) {
    Instant issued = from.issued();
    return switch (from.kind()) {
      case TYPED, MEASURED -> from.kind().word();
      case TYPICAL -> "typical for the date, not a forecast";
      case FEED ->
          "by "
              + from.source()
              + (issued == null
                  ? ""
                  : ", issued "
                      + Wording.shortDay(issued, ZoneOffset.UTC)
                      + " "
                      + issued.atOffset(ZoneOffset.UTC).getYear()
                      + " "
                      + Wording.clock(issued, ZoneOffset.UTC)
                      + " UTC");
    };
  }

  private static String words(Trip trip, AirChange change, UnitSystem units) {
    ZoneId known = trip.route().stops().get(change.stop()).zone();
    ZoneId zone = known == null ? ZoneOffset.UTC : known;
    String by = units.format(new TemperatureDifference(Math.abs(change.warmer())));
    return change.place()
        + " "
        + Wording.shortDay(change.time(), zone)
        + " "
        + Wording.clock(change.time(), zone)
        + " "
        + by
        + (change.warmer() > 0 ? " warmer" : " colder");
  }
}
