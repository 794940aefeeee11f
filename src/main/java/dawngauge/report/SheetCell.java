package dawngauge.report;

import dawngauge.advice.Mark;
import dawngauge.ledger.StopLine;
import org.jspecify.annotations.Nullable;

/**
 * A tire at a stop: above, the range to expect on arrival; at the right, a box to write the reading
 * in; at the left, the figure to set in a frame with what it is later and cold, or where nothing is
 * set the range before leaving and what it reads once cooled.
 */
final class SheetCell {

  private static final float BOX_WIDE = 14 * SheetCanvas.MM;
  private static final float BOX_HIGH = 7 * SheetCanvas.MM;
  private static final float EDGE = 1.6f;

  /** A figure of the ledger that is not known. */
  private static final String UNKNOWN = "–";

  /** Stands in the place of further figures where one holds under a condition, told below. */
  private static final String CONDITION = "see below";

  private static final float LEAST = 0.6f;

  private final SheetCanvas canvas;
  private final float scale;
  private final float wide;
  private final float high;

  SheetCell(SheetCanvas canvas, float scale, float wide, float high) {
    this.canvas = canvas;
    this.scale = scale;
    this.wide = wide;
    this.high = high;
  }

  /** What is told of the state of a tire beside its range. */
  private static String word(StopLine.TireRow row) {
    String mark =
        row.mark() == Mark.CLEAR || (row.mark() == Mark.ADJUST && row.sets())
            ? ""
            : row.mark().word();
    String when = row.sets() ? row.when() : "";
    return mark.isEmpty() || when.isEmpty() ? mark + when : mark + ", " + when;
  }

  /** From what to what and when, "81 → 87 on arrival", "to 80 cold" where no reading is of then. */
  static String change(StopLine.TireRow row) {
    String when = row.when();
    boolean same = row.read() || when.equals("on arrival");
    return (same ? row.arriveReads() + " → " : "to ") + row.figure() + " " + when;
  }

  /** The other figures for the same filling: later, cold. */
  private static String others(StopLine.TireRow row) {
    String later = row.setOnArrival().isEmpty() || !row.set() ? "" : row.checkReads() + ", ";
    return row.when().equals(StopLine.COLD) ? "only cold" : later + row.setCold() + " cold";
  }

  private static String expected(StopLine.TireRow row) {
    return row.read()
        ? row.arriveReads() + " read"
        : row.arriveRange().isEmpty() ? row.arriveReads() : row.arriveRange();
  }

  /**
   * Draws it, nothing but a line where the tire is not judged.
   *
   * @param conditional whether the tire is set only once something else is done
   */
  void draw(StopLine.@Nullable TireRow row, boolean conditional, float x, float top) {
    if (row == null) {
      canvas.line(UNKNOWN, x + EDGE * 2, top - 9 * scale, 9 * scale, false);
      return;
    }
    float size = 9 * scale;
    canvas.shape(row.mark(), x + EDGE, top - size * 0.95f, size * 0.8f);
    float from = x + EDGE + size * 0.95f;
    String range = expected(row);
    String word = word(row);
    float small = size * 0.72f;
    float room = x + wide - EDGE - from;
    float takes = canvas.wide(range, size, true) + 3 + canvas.wide(word, small, true);
    float shrunk = Math.max(LEAST, Math.min(1, room / takes));
    canvas.line(range, from, top - size * 0.95f, size * shrunk, true);
    float at = x + wide - EDGE - canvas.wide(word, small * shrunk, true);
    canvas.line(word, at, top - size * 0.95f, small * shrunk, true);
    float boxWide = BOX_WIDE * scale;
    float boxHigh = BOX_HIGH * scale;
    canvas.box(x + wide - EDGE - boxWide, top - high + EDGE, boxWide, boxHigh, 0.6f);
    float left = wide - boxWide - 3 * EDGE;
    float below = top - high + EDGE + boxHigh;
    if (row.sets()) {
      String others = conditional ? CONDITION : others(row);
      set(row.figure(), others, x + EDGE, below, left, boxHigh);
    } else {
      String leaving = row.checkRange().isEmpty() ? "" : "→ " + row.checkRange();
      boolean known = !row.arriveSettled().isEmpty() && !row.arriveSettled().equals(UNKNOWN);
      String cold = known ? row.arriveSettled() + " cold" : "";
      float line = 7 * scale;
      fitted(leaving, x + EDGE, below - line, left, line, false);
      fitted(cold, x + EDGE, below - 2.2f * line, left, line, false);
    }
  }

  private void set(String figure, String others, float x, float top, float room, float boxHigh) {
    float size = 12 * scale;
    float wider = Math.min(room, canvas.wide(figure, size, true) + 4 * scale);
    float frame = size * 1.1f;
    canvas.box(x, top - frame, wider, frame, 1.3f);
    canvas.line(figure, x + 2 * scale, top - frame + size * 0.19f, size, true);
    fitted(others, x, top - boxHigh + 0.5f, room, 6.5f * scale, false);
  }

  /** A line made smaller where it is too wide. */
  private void fitted(String text, float x, float y, float room, float size, boolean bold) {
    float wider = canvas.wide(text, size, bold);
    canvas.line(text, x, y, wider > room ? size * room / wider : size, bold);
  }
}
