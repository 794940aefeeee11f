package dawngauge.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The timetable as text: with reasons, or with its cards alone. */
final class TextVoice implements Voice {

  private final boolean why;

  TextVoice(boolean why) {
    this.why = why;
  }

  /** What follows the last stop. */
  private static final String RULE = "\n──────";

  @Override
  public String name() {
    return why ? "timetable" : "cards";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    return why
        ? Timetable.of(haul, joined(Page.inUnits(haul, "forecast", "--why")), RULE)
        : Timetable.ofCards(haul, joined(Page.inUnits(haul, "forecast")), RULE);
  }

  /** Names of tires that did not fit into a row stand in the next line: put back before it. */
  private static String joined(String text) {
    List<String> lines = new ArrayList<>();
    for (String line : text.lines().toList()) {
      int last = lines.size() - 1;
      if (last >= 0 && Timetable.onlyNames(line) && Timetable.row(lines.get(last))) {
        lines.set(last, line + " " + lines.get(last));
      } else {
        lines.add(line);
      }
    }
    return String.join("\n", lines);
  }
}
