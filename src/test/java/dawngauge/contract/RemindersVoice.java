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
      Pattern.compile("(?m)^\\d\\d:\\d\\d \\S+ · Gauge(.*): (start|rest|end)$");

  /** "t2r 81 78–84 56 80 80": expected, range, lowest safe, set cold to, never over. */
  private static final Pattern ROW =
      Pattern.compile(
          "(?m)^ *((?:t\\d[a-z]+ )+) *(\\S+) +(set |read )?(?:\\S+–\\S+)? +(\\S+) +(\\S+) +(\\S+)$");

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
    String told = cautions < 0 ? text : text.substring(0, cautions);
    List<Words.Task> tasks = Words.cards(told);
    double half = Words.half(haul) + SHARED;
    boolean arriving = what.contains("on arrival");
    Matcher row = ROW.matcher(told);
    while (row.find()) {
      Saying all = Saying.NOTHING;
      all = figure(haul, all, Field.FLOOR, row.group(4), half + Words.half(haul));
      all = figure(haul, all, Field.AIM, row.group(5), half);
      all = figure(haul, all, Field.CEILING, row.group(6), half);
      boolean set = !arriving && "set ".equals(row.group(3));
      if (set && what.contains("cold")) {
        all = figure(haul, all, Field.SET_COLD, row.group(2), half);
      }
      for (String tire : Words.parts(row.group(1), " +")) {
        Saying one =
            all.with(Field.RAN_LOW, Words.ranLow(tasks, tire))
                .with(
                    Field.HOLD,
                    tasks.stream().anyMatch(task -> task.of(tire) && task.mark().equals("Hold")));
        boolean sets = set;
        for (Words.Task task : tasks) {
          Matcher onArrival = Timetable.CARD.matcher(task.text());
          boolean asks = task.of(tire) && task.mark().matches("[Aa]dd:|[Ll]et out.*");
          if (asks && arriving && onArrival.find()) {
            one = figure(haul, one, Field.SET_ON_ARRIVAL, onArrival.group(1), half);
            one = figure(haul, one, Field.SET_COLD, onArrival.group(2), half);
          }
          sets = sets || asks;
        }
        said.put(new Place(tire, stop), one.with(Field.SETS, sets));
      }
    }
  }

  private static Saying figure(
      Grid.Haul haul, Saying saying, Field field, String cell, double within) {
    return Words.figure(haul, cell, within)
        .map(figure -> saying.with(field, figure))
        .orElse(saying);
  }
}
