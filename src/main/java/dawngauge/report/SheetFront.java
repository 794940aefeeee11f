package dawngauge.report;

import dawngauge.advice.Mark;
import dawngauge.ledger.AxleLine;
import dawngauge.ledger.Card;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The front page: whether the rig may go, where something is to be set or held, the marks of all
 * stops, label and limits, cautions.
 */
final class SheetFront {

  private static final float TICK = 6 * SheetCanvas.MM;
  private static final float CELL = 4 * SheetCanvas.MM;
  private static final float GAP = 4;

  /** What is set or held, in points. */
  private static final float BOLD = 11;

  /** Width of the words of the marks. */
  private static final float LEGEND = 60;

  /** Labels and limits stand beside the marks where there is so much room. */
  private static final float LEAST_RIG = 150;

  private static final String LIMITS = "Labels and limits";

  private final SheetCanvas canvas;
  private final SheetFlow flow;
  private final Ledger ledger;
  private final SheetTires tires;
  private final float scale;
  private final Set<String> named = new HashSet<>();

  SheetFront(SheetCanvas canvas, SheetFlow flow, Ledger ledger, SheetTires tires, boolean large) {
    this.canvas = canvas;
    this.flow = flow;
    this.ledger = ledger;
    this.tires = tires;
    this.scale = large ? SheetPen.LARGER : 1;
  }

  void draw() {
    flow.text(ledger.title(), true, 16 * scale);
    flow.text(ledger.when(), false);
    go();
    flow.text(ledger.summary(), true);
    flow.down(GAP);
    List<StopLine> busy = ledger.stops().stream().filter(SheetFront::busy).toList();
    if (!busy.isEmpty()) {
      canvas.in("Table", () -> busy.forEach(stop -> canvas.in("TR", () -> stop(stop))));
    }
    flow.text(
        (busy.isEmpty() ? "All" : "All other")
            + " stops: gauge on arrival, compare with the day page.",
        true);
    grid();
    flow.title("Cautions");
    Ledger.CAUTIONS.forEach(text -> flow.text(text, true, 8 * scale));
  }

  /** Whether something is to be set or held at a stop. */
  private static boolean busy(StopLine stop) {
    return stop.card().todo().stream().anyMatch(SheetFront::binds);
  }

  private static boolean binds(Card.Line line) {
    return line.mark() == Mark.HOLD || line.mark() == Mark.ADJUST;
  }

  private void go() {
    List<String> lines = new ArrayList<>(ledger.go());
    ledger.putRight().forEach(text -> lines.add("□ " + text));
    if (lines.isEmpty()) {
      return;
    }
    float size = 7.5f * scale;
    float wide = flow.width() - 2 * GAP;
    float high = 2 * GAP;
    for (String text : lines) {
      high += canvas.height(text, wide, size, ledger.go().contains(text));
    }
    flow.room(high);
    canvas.box(flow.x(), flow.y() - high, flow.width(), high, 1.2f);
    float y = flow.y() - GAP;
    for (String text : lines) {
      float at = y;
      boolean bold = ledger.go().contains(text);
      canvas.in("P", () -> canvas.wrapped(text, flow.x() + GAP, at, wide, size, bold));
      y -= canvas.height(text, wide, size, bold);
    }
    flow.down(high + GAP);
  }

  private void stop(StopLine stop) {
    float size = 14 * scale;
    float clockWide = canvas.wide("00:00", size, true) + 2 * GAP;
    float tick = TICK * scale;
    float placeX = flow.x() + tick + GAP + clockWide;
    float placeWide = flow.width() * 0.27f;
    float tasksX = placeX + placeWide + GAP;
    float tasksWide = flow.x() + flow.width() - tasksX;
    List<String> bold = new ArrayList<>();
    List<String> small = new ArrayList<>();
    for (Card.Line line : stop.card().todo()) {
      if (binds(line)) {
        (line.mark() == Mark.HOLD ? bold : small).add(line.text());
      }
    }
    Map<String, List<String>> changes = new LinkedHashMap<>();
    for (StopLine.TireRow row : stop.rows()) {
      if (row.sets()) {
        changes
            .computeIfAbsent(lead(stop, row) + "\t" + SheetCell.change(row), k -> new ArrayList<>())
            .addAll(SheetTires.names(row.tires()));
      }
    }
    changes.forEach(
        (change, names) -> bold.add(change.replace("\t", String.join(" ", names) + " ")));
    small.addAll(words(changes.values().stream().flatMap(List::stream).toList()));
    String place = stop.number() + ". " + stop.place();
    boolean onLeaving = stop.arrive().isEmpty() || onlyCold(stop);
    String hose =
        onLeaving && !stop.arrive().isEmpty()
            ? (stop.leave().contains("+") ? "next day, " : "") + "before leaving · " + stop.hose()
            : stop.hose();
    float placeHigh =
        canvas.height(place, placeWide, 10 * scale, true)
            + canvas.height(hose, placeWide, 7.5f * scale, false);
    float tasksHigh = 0;
    for (String text : bold) {
      tasksHigh += canvas.height(text, tasksWide, BOLD * scale, true);
    }
    for (String text : small) {
      tasksHigh += canvas.height(text, tasksWide, 7.5f * scale, false);
    }
    float high = Math.max(tick + 2, Math.max(placeHigh, tasksHigh)) + GAP;
    flow.room(high);
    float top = flow.y();
    canvas.rule(flow.x(), top, flow.x() + flow.width(), top, 0.4f);
    canvas.box(flow.x(), top - 2 - tick, tick, tick, 0.9f);
    canvas.rowHead(
        () -> {
          String clock = onLeaving ? stop.leave().replaceAll("\\+.*", "") : stop.arrive();
          canvas.line(clock, flow.x() + tick + GAP, top - size, size, true);
        });
    canvas.in(
        "TD",
        () -> {
          float used = canvas.wrapped(place, placeX, top - 1, placeWide, 10 * scale, true);
          canvas.wrapped(hose, placeX, top - 1 - used, placeWide, 7.5f * scale, false);
        });
    canvas.in(
        "TD",
        () -> {
          float y = top - 1;
          for (String text : bold) {
            y -= canvas.wrapped(text, tasksX, y, tasksWide, BOLD * scale, true);
          }
          for (String text : small) {
            y -= canvas.wrapped(text, tasksX, y, tasksWide, 7.5f * scale, false);
          }
        });
    flow.down(high);
  }

  /** Whether all that is set there is set cold, before the rig leaves. */
  private static boolean onlyCold(StopLine stop) {
    List<Card.Line> sets =
        stop.card().todo().stream().filter(line -> line.mark() == Mark.ADJUST).toList();
    return !sets.isEmpty() && sets.stream().allMatch(Card.Line::onlyCold);
  }

  /** What is told before a figure that is set, such as a condition. */
  private static String lead(StopLine stop, StopLine.TireRow row) {
    String first = SheetTires.names(row.tires()).get(0);
    return stop.card().todo().stream()
        .filter(line -> line.mark() == Mark.ADJUST && line.of(first))
        .map(Card.Line::lead)
        .findFirst()
        .orElse("");
  }

  /** Which tires these are, where it was not told further up. */
  private List<String> words(List<String> names) {
    List<String> told = tires.untold(names, named);
    return told.isEmpty() ? List.of() : List.of(String.join(", ", told));
  }

  /** Marks alone, a row a tire, a column a stop; so many columns as there is room for. */
  private void grid() {
    List<String> names = tires.all();
    if (names.isEmpty()) {
      return;
    }
    float cell = CELL * scale;
    float size = 7 * scale;
    float head = canvas.wide("h2ro ", size, true) + 2;
    int most = (int) ((flow.width() - head) / cell);
    List<StopLine> stops = ledger.stops();
    for (int from = 0; from < stops.size(); from += most) {
      List<StopLine> here = stops.subList(from, Math.min(stops.size(), from + most));
      flow.title("Every stop, every tire");
      float right = head + here.size() * cell + 3 * GAP;
      flow.room(Math.max((names.size() + 1) * cell, rigHigh(right + LEGEND * scale)) + GAP);
      flow.down(GAP);
      float top = flow.y();
      canvas.in(
          "Table",
          () -> {
            canvas.in("TR", () -> numbers(here, head, top, cell));
            for (int i = 0; i < names.size(); i++) {
              String name = names.get(i);
              float y = top - (i + 1) * cell;
              canvas.in("TR", () -> marks(name, here, head, y, cell));
            }
          });
      legend(flow.x() + right, top, cell);
      float high = (names.size() + 1) * cell;
      boolean last = from + most >= stops.size();
      float words = right + LEGEND * scale;
      boolean beside = flow.width() - words >= LEAST_RIG * scale;
      if (last && beside) {
        high = Math.max(high, rig(flow.x() + words, top));
      }
      flow.down(high + GAP);
      if (last && !beside) {
        flow.title(LIMITS);
        rigLines().forEach(line -> flow.text(line, false, 7 * scale));
      }
    }
  }

  private void numbers(List<StopLine> stops, float head, float top, float cell) {
    float size = 7 * scale;
    canvas.columnHead(() -> canvas.line("tire", flow.x(), top - size, size, false));
    for (int i = 0; i < stops.size(); i++) {
      String number = String.valueOf(stops.get(i).number());
      float x = flow.x() + head + i * cell + (cell - canvas.wide(number, size, true)) / 2;
      canvas.columnHead(() -> canvas.line(number, x, top - size, size, true));
    }
  }

  private void marks(String name, List<StopLine> stops, float head, float top, float cell) {
    float size = 7 * scale;
    canvas.rowHead(() -> canvas.line(name, flow.x(), top - cell * 0.75f, size, true));
    for (int i = 0; i < stops.size(); i++) {
      StopLine.TireRow row = stops.get(i).row(name);
      float x = flow.x() + head + i * cell;
      canvas.box(x, top - cell, cell, cell, 0.25f);
      if (row != null) {
        float wide = cell * 0.72f;
        canvas.shape(row.mark(), x + (cell - wide) / 2, top - cell + (cell - wide) / 2, wide);
      }
    }
  }

  private void legend(float x, float top, float cell) {
    float y = top - cell;
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST, Mark.RECHECK, Mark.UNKNOWN, Mark.CLEAR)) {
      canvas.shape(mark, x, y - cell * 0.8f, cell * 0.72f);
      float at = y - cell * 0.75f;
      canvas.in("P", () -> canvas.line(mark.word(), x + cell, at, 7 * scale, false));
      y -= cell;
    }
  }

  /** Rig, label and limits at the first stop, beside the marks; returns its height. */
  private float rig(float x, float top) {
    float wide = flow.x() + flow.width() - x;
    float[] y = {top};
    canvas.in("H2", () -> y[0] -= canvas.wrapped(LIMITS, x, y[0], wide, 8 * scale, true));
    for (String line : rigLines()) {
      canvas.in("P", () -> y[0] -= canvas.wrapped(line, x, y[0], wide, 7 * scale, false));
    }
    return top - y[0];
  }

  /** How high it is at a distance from the left; 0 where it does not stand beside the marks. */
  private float rigHigh(float from) {
    float wide = flow.width() - from;
    float high = 10 * scale;
    for (String line : wide < LEAST_RIG * scale ? List.<String>of() : rigLines()) {
      high += canvas.height(line, wide, 7 * scale, false);
    }
    return high;
  }

  private List<String> rigLines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "in "
            + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + ", cold, with the loads of the start");
    for (AxleLine axle : ledger.rig()) {
      lines.add(axle.positions() + "  " + axle.words());
    }
    List<StopLine> stops = ledger.stops();
    List<String> limits = new ArrayList<>();
    for (StopLine.TireRow row :
        stops.isEmpty() ? List.<StopLine.TireRow>of() : stops.get(0).rows()) {
      limits.add(
          row.tires()
              + ": lowest safe "
              + row.floor()
              + ", set cold to "
              + row.aim()
              + ", never over "
              + row.ceiling());
    }
    lines.add(String.join("; ", limits));
    return lines;
  }
}
