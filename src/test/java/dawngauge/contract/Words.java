package dawngauge.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Key words and figures of the pages. */
final class Words {

  private static final double PSI_PER_BAR = 14.503774;

  /** A figure and, unless a table's heading gives it, its unit. */
  static final String FIGURE = "([0-9.]+)";

  /** A tire that ran low is told so, in every page that says what to do then. */
  private static final Pattern RAN_LOW = Pattern.compile("[Dd]o not (?:just )?add air");

  private static final Pattern STOP =
      Pattern.compile("(?m)^.*?\\b([123])\\. (?:start|rest|end)\\b");

  /** "hold t1l t1r: ..." of a timetable, "hold, t1l t1r: ..." of a reminder. */
  private static final Pattern TASK =
      Pattern.compile(
          "\\b(hold|adjust|re-check|clear),?\\s+(all tires|(?:all but )?t\\d[^:.]*):\\s");

  /** "Hold t1l: ...", "Add: t1l to ...", "Only once it is found sound, add: t1l to ...". */
  private static final Pattern CARD =
      Pattern.compile(
          "\\b(Hold|Check|[Aa]dd:|[Ll]et out(?:, only cold)?:) (all tires|(?:all but )?t\\d\\w*(?: t\\d\\w*)*):?");

  private Words() {}

  static boolean ranLow(String text) {
    return RAN_LOW.matcher(oneLine(text)).find();
  }

  /** The parts of a text between separators. */
  static List<String> parts(String text, String separator) {
    return Pattern.compile(separator).splitAsStream(text.strip()).map(String::strip).toList();
  }

  static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** The parts of a page that belong to the stops, by index; what follows the last is cut off. */
  static Map<Integer, String> stops(String text, String end) {
    Map<Integer, String> parts = new LinkedHashMap<>();
    Matcher stop = STOP.matcher(text);
    int from = -1;
    int index = 0;
    while (stop.find()) {
      if (from >= 0) {
        parts.merge(index, text.substring(from, stop.start()), String::concat);
      }
      from = stop.start();
      index = Integer.parseInt(stop.group(1)) - 1;
    }
    if (from >= 0) {
      int last = text.indexOf(end, from);
      parts.merge(index, text.substring(from, last < 0 ? text.length() : last), String::concat);
    }
    return parts;
  }

  /**
   * One thing to do.
   *
   * @param mark its mark
   * @param tires short forms, "all but" these, or "all tires"
   * @param text what
   */
  record Task(String mark, String tires, String text) {
    boolean of(String tire) {
      boolean named = parts(tires, "[ ,]+").contains(tire);
      return tires.startsWith("all but ") ? !named : named || tires.equals("all tires");
    }
  }

  static List<Task> tasks(String text) {
    return tasks(text, TASK);
  }

  /** What to do as it stands on a card. */
  static List<Task> cards(String text) {
    return tasks(text, CARD);
  }

  private static List<Task> tasks(String text, Pattern pattern) {
    List<Task> tasks = new ArrayList<>();
    String line = oneLine(text);
    Matcher task = pattern.matcher(line);
    int from = -1;
    String mark = "";
    String tires = "";
    while (task.find()) {
      if (from >= 0) {
        tasks.add(new Task(mark, tires, line.substring(from, task.start())));
      }
      mark = task.group(1);
      tires = task.group(2);
      from = task.end();
    }
    if (from >= 0) {
      tasks.add(new Task(mark, tires, line.substring(from)));
    }
    return tasks;
  }

  /** Whether a tire is told, among things to do, that it ran low. */
  static boolean ranLow(List<Task> tasks, String tire) {
    return tasks.stream().anyMatch(task -> task.of(tire) && ranLow(task.text()));
  }

  /** A figure of a table in the units of the trip. */
  static Optional<Figure> figure(Grid.Haul haul, String cell, double within) {
    if (!cell.matches(FIGURE)) {
      return Optional.empty();
    }
    double unit = haul.cell().units() == Cell.Units.BAR ? PSI_PER_BAR : 1;
    return Optional.of(new Figure(Double.parseDouble(cell) * unit, within));
  }

  /** The first figure that a pattern with one group finds. */
  static Optional<Figure> find(Grid.Haul haul, String text, String pattern, double within) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    return found.find() ? figure(haul, found.group(1), within) : Optional.empty();
  }

  /** Half of the last place of tables: whole psi, hundredths of a bar. */
  static double half(Grid.Haul haul) {
    return haul.cell().units() == Cell.Units.BAR ? 0.005 * PSI_PER_BAR : 0.5;
  }

  /** The same where tenths of a psi are shown. */
  static double halfTenth(Grid.Haul haul) {
    return haul.cell().units() == Cell.Units.BAR ? 0.005 * PSI_PER_BAR : 0.05;
  }
}
