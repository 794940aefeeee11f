package dawngauge.report;

import dawngauge.advice.Mark;
import dawngauge.ledger.Card;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A page of a day: a column a stop with its times, a row a tire, a cell with the range to expect, a
 * box to write in and the figure to set; under each column what to do and the leg; then what else
 * there is to know, lines for notes and one caution.
 */
final class SheetDay {

  private static final float COLUMN = 26 * SheetCanvas.MM;

  /** Columns grow to this where there is room. */
  private static final float WIDEST_COLUMN = 1.5f * COLUMN;

  /** Nine columns are a little narrower, so that the names of the tires have room. */
  private static final float LEAST_HEAD = 84;

  private static final float WIDEST_HEAD = 150;

  private static final float ROW = 11 * SheetCanvas.MM;

  /** Rows grow to this where there is room. */
  private static final float HIGHEST_ROW = 1.25f * ROW;

  /** Sizes of what is told under the table. */
  private static final float MORE = 7;

  private static final float LEAST_MORE = 6.2f;

  /** Where not all has room, so many lines at least go on. */
  private static final int LEAST_LINES = 5;

  private static final float NOTES = 25 * SheetCanvas.MM;
  private static final float NOTE_LINE = 7 * SheetCanvas.MM;

  /** On a crowded page there is room for two lines at least. */
  private static final float LEAST_NOTES = 2 * NOTE_LINE;

  private static final float GAP = 2.5f;

  /** Between columns of text. */
  private static final float BETWEEN = 14;

  /** A name or a task of more lines stands under the table. */
  private static final int MOST_LINES = 4;

  private static final int MOST_LEG_LINES = 5;
  private static final String BELOW = "(below)";

  private final SheetCanvas canvas;
  private final SheetTires tires;
  private final SheetPart part;
  private final float scale;
  private final float column;
  private final float head;

  /** What is told under the table, and the size of its letters. */
  private final List<String> more;

  private float size;

  /** Where the table ends. */
  private final float right;

  SheetDay(SheetCanvas canvas, SheetTires tires, SheetPart part, boolean large) {
    this.canvas = canvas;
    this.tires = tires;
    this.part = part;
    this.scale = large ? SheetPen.LARGER : 1;
    float room = canvas.width() - LEAST_HEAD * scale;
    int stops = part.stops().size();
    float wide = (canvas.width() - WIDEST_HEAD * scale) / stops;
    this.column =
        Math.min(Math.max(COLUMN * scale, Math.min(WIDEST_COLUMN * scale, wide)), room / stops);
    this.head = Math.min(WIDEST_HEAD * scale, canvas.width() - column * stops);
    this.right = canvas.left() + head + column * stops;
    this.more = more();
    this.size = MORE * scale;
    this.size = fits() ? size : LEAST_MORE * scale;
  }

  /** Whether all of it has room on one page, with lines for notes. */
  boolean fits() {
    return fits(LEAST_NOTES);
  }

  private boolean fits(float notes) {
    float high = canvas.headHigh() + heads(0, false) + tasks(0, false) + 2 * GAP;
    for (String tire : part.tires()) {
      high += Math.max(ROW * scale, tire(tire, 0, false));
    }
    return high + moreHigh() + notes + caution() <= canvas.top() - canvas.bottom();
  }

  private float caution() {
    return canvas.height(Ledger.AT_THE_VALVE, canvas.width(), MORE * scale, true);
  }

  /**
   * Draws it on the page that is open.
   *
   * @return the lines for which there was no room, with the stops they are of
   */
  List<String> draw(String title) {
    canvas.head(
        title,
        (part.day().isEmpty() ? "Stops without a time" : part.day())
            + (part.continued() ? ", continued" : ""));
    float y = canvas.top() - canvas.headHigh();
    float above = heads(0, false);
    float below = tasks(0, false);
    float room = y - canvas.bottom() - above - below - NOTES - moreHigh();
    int rows = Math.max(1, part.tires().size());
    float row = Math.max(ROW * scale, Math.min(HIGHEST_ROW * scale, room / rows));
    float[] at = {y};
    canvas.in(
        "Table",
        () -> {
          canvas.in("TR", () -> heads(at[0], true));
          at[0] -= above;
          for (String tire : part.tires()) {
            float high = Math.max(row, tire(tire, 0, false));
            canvas.in("TR", () -> row(tire, at[0], high));
            at[0] -= high;
          }
          canvas.rule(canvas.left(), at[0], right, at[0], 0.8f);
          canvas.in("TR", () -> tasks(at[0], true));
          at[0] -= below;
        });
    return foot(at[0]);
  }

  private float x(int index) {
    return canvas.left() + head + index * column;
  }

  private static String clock(StopLine stop) {
    String zone = stop.zone().isEmpty() ? "" : " " + stop.zone();
    if (!stop.timed()) {
      return "time not known";
    } else if (stop.arrive().isEmpty()) {
      return stop.leave().isEmpty() ? "" : "leave " + stop.leave() + zone;
    }
    return stop.leave().isEmpty()
        ? "arrive " + stop.arrive() + zone
        : stop.arrive() + "→" + stop.leave() + zone;
  }

  /** Heads of the columns from a top; returns their height. */
  private float heads(float top, boolean draw) {
    float highest = 0;
    if (draw) {
      canvas.columnHead(() -> words("tire", canvas.left(), top, head, 7, false, true));
    }
    for (int i = 0; i < part.stops().size(); i++) {
      StopLine stop = part.stops().get(i);
      float x = x(i);
      float[] high = {0};
      Runnable drawing = () -> high[0] = head(stop, x, top, draw);
      if (draw) {
        canvas.columnHead(drawing);
      } else {
        drawing.run();
      }
      highest = Math.max(highest, high[0]);
    }
    return highest + GAP;
  }

  private float head(StopLine stop, float x, float top, boolean draw) {
    float high = words(place(stop), x, top, column, 8.5f, true, draw);
    String clock = clock(stop);
    float fits = (column - 2 * GAP) * 0.98f;
    float size = 12 * Math.min(1, fits / Math.max(1, canvas.wide(clock, 12 * scale, true)));
    high += words(clock, x, top - high, column, size, true, draw);
    if (stop.timed()) {
      String air = stop.air() + " · " + stop.elevation();
      high += words(air, x, top - high, column, 7, false, draw);
      high += words(stop.hose() + " · " + stop.kind(), x, top - high, column, 7, true, draw);
    }
    return high;
  }

  private String place(StopLine stop) {
    String full = stop.number() + ". " + stop.place();
    return tooLong(full) ? stop.number() + ". " + BELOW : full;
  }

  private boolean tooLong(String text) {
    return canvas.lines(text, column - 2 * GAP, 8.5f * scale, true) > MOST_LINES;
  }

  /** A text within a column; returns its height. */
  private float words(
      String text, float x, float top, float wide, float points, boolean bold, boolean draw) {
    float size = points * scale;
    return draw
        ? canvas.wrapped(text, x + GAP, top, wide - 2 * GAP, size, bold)
        : canvas.height(text, wide - 2 * GAP, size, bold);
  }

  private void row(String tire, float top, float high) {
    canvas.rule(canvas.left(), top, right, top, 0.4f);
    canvas.rowHead(() -> tire(tire, top, true));
    SheetCell cell = new SheetCell(canvas, scale, column, high);
    for (int i = 0; i < part.stops().size(); i++) {
      StopLine stop = part.stops().get(i);
      StopLine.TireRow row = stop.row(tire);
      boolean conditional = stop.conditional(tire);
      float x = x(i);
      canvas.rule(x, top, x, top - high, 0.4f);
      canvas.in("TD", () -> cell.draw(row, conditional, x, top));
    }
  }

  /** The head of a row: name, words and limits of a tire; returns its height. */
  private float tire(String tire, float top, boolean draw) {
    float size = 11 * scale;
    float wide = canvas.wide(tire + " ", size, true);
    if (draw) {
      canvas.line(tire, canvas.left() + GAP, top - size, size, true);
    }
    float used =
        words(tires.words(tire), canvas.left() + wide, top - 2, head - wide, 6, false, draw);
    float high = Math.max(size * 1.1f, used + 2);
    return high + words(limits(tire), canvas.left(), top - high, head, 6.3f, false, draw) + 1;
  }

  private String limits(String tire) {
    List<StopLine> stops = part.stops();
    String floor = SheetTires.overTheStops(stops, tire, StopLine.TireRow::floor);
    return floor.isEmpty()
        ? ""
        : "lowest safe "
            + floor
            + "; set cold to "
            + SheetTires.overTheStops(stops, tire, StopLine.TireRow::aim)
            + "; never over "
            + SheetTires.overTheStops(stops, tire, StopLine.TireRow::ceiling);
  }

  /** The task of a stop; null where there is none or it is too long for its column. */
  private Card.@Nullable Line task(StopLine stop) {
    List<Card.Line> todo = stop.card().todo();
    if (todo.isEmpty()) {
      return null;
    }
    Card.Line first = todo.get(0);
    Card.Line task =
        first.mark() == Mark.HOLD
            ? first
            : todo.stream().filter(Card.Line::conditional).findFirst().orElse(first);
    int lines = canvas.lines(task.text(), column - 2 * GAP, 7 * scale, true);
    return lines > MOST_LEG_LINES ? null : task;
  }

  private boolean longLeg(StopLine stop) {
    return canvas.lines(stop.leg(), column - 2 * GAP, 6.5f * scale, false) > MOST_LEG_LINES;
  }

  private float tasks(float top, boolean draw) {
    float highest = 0;
    if (draw) {
      canvas.rowHead(() -> words("do, then drive", canvas.left(), top - GAP, head, 7, false, true));
    }
    for (int i = 0; i < part.stops().size(); i++) {
      StopLine stop = part.stops().get(i);
      Card.Line task = task(stop);
      float x = x(i);
      float[] high = {GAP};
      Runnable drawing =
          () -> {
            String todo = task == null ? "" : task.text();
            String text = task == null && !stop.card().todo().isEmpty() ? BELOW : todo;
            high[0] += words(text, x, top - high[0], column, 7, true, draw);
            String leg =
                longLeg(stop) ? "▼ " + BELOW : stop.leg().isEmpty() ? "" : "▼ " + stop.leg();
            high[0] += words(leg, x, top - high[0], column, 6.5f, false, draw);
          };
      if (draw) {
        canvas.in("TD", drawing);
      } else {
        drawing.run();
      }
      highest = Math.max(highest, high[0]);
    }
    return highest + GAP;
  }

  /** What else there is to know, what binds first; the same of several stops once. */
  private List<String> more() {
    Map<String, List<Integer>> lines = new LinkedHashMap<>();
    for (StopLine stop : part.stops()) {
      if (tooLong(stop.number() + ". " + stop.place())) {
        add(lines, stop.place(), stop);
      }
    }
    part.stops().stream()
        .filter(this::longLeg)
        .forEach(stop -> add(lines, "▼ " + stop.leg(), stop));
    part.stops().forEach(stop -> stop.loads().forEach(text -> add(lines, text, stop)));
    part.stops().forEach(stop -> stop.cautions().forEach(text -> add(lines, text, stop)));
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST, Mark.RECHECK)) {
      for (StopLine stop : part.stops()) {
        for (Card.Line line : stop.card().todo()) {
          if (line.mark() == mark && !line.equals(task(stop))) {
            add(lines, line.text(), stop);
          }
        }
      }
    }
    part.stops().forEach(stop -> stop.card().watch().forEach(text -> add(lines, text, stop)));
    part.stops().stream()
        .filter(stop -> !stop.slightChance())
        .forEach(stop -> add(lines, stop.chance(), stop));
    List<String> said = new ArrayList<>();
    lines.forEach(
        (text, numbers) ->
            said.add(
                (numbers.size() == 1 ? "Stop " : "Stops ")
                    + String.join(" ", numbers.stream().map(String::valueOf).toList())
                    + ": "
                    + text));
    return said;
  }

  private static void add(Map<String, List<Integer>> lines, String text, StopLine stop) {
    lines.computeIfAbsent(text, key -> new ArrayList<>()).add(stop.number());
  }

  private float moreHigh() {
    float half = high(more) / 2;
    float left = 0;
    int first = 0;
    while (first < more.size() && left < half) {
      left += high(more.subList(first, first + 1));
      first++;
    }
    return Math.max(left, high(more.subList(first, more.size())));
  }

  private float high(List<String> lines) {
    float high = 0;
    for (String text : lines) {
      high += canvas.height(text, half(), size, false);
    }
    return high;
  }

  /** Width of one of two columns. */
  private float half() {
    return (canvas.width() - BETWEEN) / 2;
  }

  /** From a top to the end of the page; returns what found no room. */
  private List<String> foot(float top) {
    float caution = caution();
    float end = canvas.bottom() + caution + GAP;
    float start = top - GAP;
    float low = Math.max(end, start - moreHigh());
    int drawn = 0;
    int most = fits(0) ? more.size() : Math.max(0, more.size() - LEAST_LINES);
    for (int i = 0; i < 2; i++) {
      float x = canvas.left() + i * (half() + BETWEEN);
      float y = start;
      while (drawn < most && y - high(more.subList(drawn, drawn + 1)) >= low - 0.1f) {
        String text = more.get(drawn);
        float at = y;
        canvas.in("P", () -> canvas.wrapped(text, x, at, half(), size, false));
        y -= high(more.subList(drawn, drawn + 1));
        drawn++;
      }
    }
    notes(low, end);
    float at = canvas.bottom() + caution;
    String said = Ledger.AT_THE_VALVE;
    canvas.in(
        "P", () -> canvas.wrapped(said, canvas.left(), at, canvas.width(), MORE * scale, true));
    return more.subList(drawn, more.size());
  }

  /** Lines to write on, as many as there is room for. */
  private void notes(float top, float end) {
    for (float y = top - NOTE_LINE; y >= end; y -= NOTE_LINE) {
      canvas.rule(canvas.left(), y, canvas.right(), y, 0.3f);
    }
  }
}
