package dawngauge.contract;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rows and tasks of a timetable, as printed. */
final class Timetable {

  /** Tires whose figures agree to half a psi share a row. */
  private static final double SHARED = 0.5;

  private static final Pattern ROW =
      Pattern.compile(
          "(?m)^\\s*((?:t\\d[a-z]+ +)+)(.*?) *(\\S+) +(\\S+) +(\\S+) +(?:–|[-+−]?\\d+ %)(?: e)?"
              + "\\W+(hold|adjust|check|re-check|clear|not known|○)\\s*$");

  private static final Pattern SET = Pattern.compile("([0-9.]+) +set\\b");

  /** The rig at the head: what an axle carries and how that is known, up to the next axle. */
  private static final Pattern HEAD =
      Pattern.compile(
          "(?ms)^\\s*((?:t\\d[a-z]+ +)+) *trailer axle [^\\n]*?(?:lb|kg), (.*?)"
              + "(?=\\n *(?:t\\d|\\n|Pressures))");

  private static final Pattern ON_ARRIVAL =
      Pattern.compile(
          "add to ([0-9.]+) (?:psi|bar) on arrival, [^:]*:[0-9]{2}[^,]*, ([0-9.]+) (?:psi|bar) cold");

  /** " to 85 psi on arrival (82 at 13:14, 80 cold)". */
  static final Pattern CARD =
      Pattern.compile(" to ([0-9.]+) (?:psi|bar) on arrival \\(.*?, ([0-9.]+) cold\\)");

  private static final Pattern NAMES = Pattern.compile("\\s*(?:t\\d[a-z]+ *)+");

  private Timetable() {}

  static boolean onlyNames(String line) {
    return NAMES.matcher(line).matches();
  }

  static boolean row(String line) {
    return ROW.matcher(line).find();
  }

  /** The same with what to do as on its cards. */
  static Map<Place, Saying> ofCards(Grid.Haul haul, String text, String end) {
    return of(haul, text, end, true);
  }

  static Map<Place, Saying> of(Grid.Haul haul, String text, String end) {
    return of(haul, text, end, false);
  }

  private static Map<Place, Saying> of(Grid.Haul haul, String text, String end, boolean cards) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    Map<String, LoadBasis> bases = new LinkedHashMap<>();
    Matcher head = HEAD.matcher(text);
    while (head.find()) {
      for (String tire : Words.parts(head.group(1), " +")) {
        bases.put(tire, LoadBasis.of(Words.oneLine(head.group(2))));
      }
    }
    Words.stops(text, end).forEach((stop, part) -> rows(haul, stop, part, bases, cards, said));
    return said;
  }

  private static void rows(
      Grid.Haul haul,
      int stop,
      String part,
      Map<String, LoadBasis> bases,
      boolean cards,
      Map<Place, Saying> said) {
    int begin = Math.max(0, part.indexOf(cards ? "\n  do " : "\n  why "));
    String asked = part.substring(begin);
    List<Words.Task> tasks = cards ? Words.cards(asked) : Words.tasks(asked);
    double half = Words.half(haul) + SHARED;
    Matcher row = ROW.matcher(part);
    while (row.find()) {
      Saying all = Saying.NOTHING.with(Field.HOLD, row.group(6).equals("hold"));
      // The floor is rounded up.
      all = figure(haul, all, Field.FLOOR, row.group(3), half + Words.half(haul));
      all = figure(haul, all, Field.AIM, row.group(4), half);
      all = figure(haul, all, Field.CEILING, row.group(5), half);
      Matcher set = SET.matcher(row.group(2));
      boolean sets = set.find();
      all = all.with(Field.SETS, sets);
      if (sets && stop == 0) {
        all = figure(haul, all, Field.SET_COLD, set.group(1), half);
      }
      for (String tire : Words.parts(row.group(1), " +")) {
        Saying one = all.with(Field.RAN_LOW, Words.ranLow(tasks, tire));
        for (Words.Task task : sets && stop > 0 ? tasks : List.<Words.Task>of()) {
          Matcher onArrival = (cards ? CARD : ON_ARRIVAL).matcher(Words.oneLine(task.text()));
          if (task.of(tire) && onArrival.find()) {
            one = figure(haul, one, Field.SET_ON_ARRIVAL, onArrival.group(1), half);
            one = figure(haul, one, Field.SET_COLD, onArrival.group(2), half);
          }
        }
        LoadBasis basis = bases.get(tire);
        said.put(new Place(tire, stop), basis == null ? one : one.with(Field.LOAD_BASIS, basis));
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
