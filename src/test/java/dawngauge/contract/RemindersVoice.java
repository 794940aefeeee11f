package dawngauge.contract;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** When to look at the tires, with the figures of that moment. */
final class RemindersVoice implements Voice {

  private static final List<String> STOPS = List.of("start", "rest", "end");
  private static final double SHARED = 0.5;

  private static final Pattern HEAD =
      Pattern.compile("(?m)^\\w+ \\d+ \\w+ \\d{4}, .*? · Gauge (.*): (start|rest|end)$");

  private static final Pattern ROW =
      Pattern.compile("- ((?:t\\d[a-z]+ ?)+): (.*?cold limit (?:[0-9.]+|–))");

  @Override
  public String name() {
    return "reminders";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    String text = Page.inUnits(haul, "reminders");
    Matcher head = HEAD.matcher(text);
    int from = -1;
    String what = "";
    int stop = 0;
    while (head.find()) {
      if (from >= 0) {
        reminder(haul, stop, what, text.substring(from, head.start()), said);
      }
      from = head.end();
      what = head.group(1);
      stop = STOPS.indexOf(head.group(2));
    }
    if (from >= 0) {
      reminder(haul, stop, what, text.substring(from), said);
    }
    return said;
  }

  private static void reminder(
      Grid.Haul haul, int stop, String what, String text, Map<Place, Saying> said) {
    int cautions = text.indexOf("A forecast replaces");
    String line = Words.oneLine(cautions < 0 ? text : text.substring(0, cautions));
    List<Words.Task> tasks = Words.tasks(line);
    double half = Words.half(haul) + SHARED;
    boolean arriving = what.contains("on arrival");
    Matcher row = ROW.matcher(line);
    while (row.find()) {
      String rest = row.group(2);
      Saying all = Saying.NOTHING;
      all = figure(haul, all, Field.FLOOR, rest, "floor ", half + Words.half(haul));
      all = figure(haul, all, Field.AIM, rest, "aim ", half);
      all = figure(haul, all, Field.CEILING, rest, "cold limit ", half);
      all =
          arriving
              ? figure(haul, all, Field.SET_ON_ARRIVAL, rest, "add to ", half)
              : figure(haul, all, Field.SET_COLD, rest, "set to ", half);
      boolean sets =
          rest.contains(", set (") || rest.contains("add to ") || rest.contains("set to ");
      all = all.with(Field.SETS, sets);
      for (String tire : Words.parts(row.group(1), " +")) {
        Saying one =
            all.with(Field.RAN_LOW, Words.ranLow(tasks, tire))
                .with(
                    Field.HOLD,
                    tasks.stream().anyMatch(task -> task.of(tire) && task.mark().equals("hold")));
        said.put(new Place(tire, stop), one);
      }
    }
  }

  private static Saying figure(
      Grid.Haul haul, Saying saying, Field field, String line, String before, double within) {
    return Words.find(haul, line, before + Words.FIGURE, within)
        .map(figure -> saying.with(field, figure))
        .orElse(saying);
  }
}
