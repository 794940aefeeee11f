package dawngauge.report;

import dawngauge.advice.Mark;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ledger.StopLine.TireRow;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The tables of tires in a ledger: one set of columns for all stops, as wide as their figures need;
 * the tires' names take what is left and wrap.
 */
final class TireTable {

  private static final int INDENT = 2;
  private static final int WIDEST_NAMES = 19;

  /** A column: its gap is the number of blanks before it. */
  private record Column(
      String above, String heading, int gap, boolean right, Function<TireRow, String> cell) {}

  private static final List<Column> ON_ARRIVAL =
      List.of(
          new Column("arrives", "reads", 1, true, TireRow::arriveReads),
          new Column("", "range", 1, false, row -> row.read() ? "read" : row.arriveRange()),
          new Column("cold", "here", 1, true, TireRow::arriveSettled));

  private static final List<Column> BEFORE_LEAVING =
      List.of(
          new Column("leaves", "reads", 2, true, TireRow::checkReads),
          new Column("", "range", 1, false, row -> row.set() ? "set" : row.checkRange()));

  private static final List<Column> AHEAD =
      List.of(
          new Column("lowest", "ahead", 1, true, TireRow::lowest),
          new Column("lowest", "safe", 1, true, TireRow::floor),
          new Column("set", "cold to", 1, true, TireRow::aim),
          new Column("never", "over", 1, true, TireRow::ceiling),
          new Column("", "margin", 1, true, TireRow::margin),
          new Column("", "", 1, false, row -> row.byEstimate() ? "e" : ""),
          new Column("", "mark", 2, false, row -> mark(row.mark())));

  private final List<TireRow> all;
  private final int names;

  TireTable(Ledger ledger) {
    all = ledger.stops().stream().flatMap(stop -> stop.rows().stream()).toList();
    int taken = width(ON_ARRIVAL) + width(BEFORE_LEAVING) + width(AHEAD);
    names = Math.min(WIDEST_NAMES, PlainText.WIDTH - INDENT - taken);
  }

  /**
   * Adds the table of a stop.
   *
   * @param headed whether with headings; columns without a figure have none
   */
  void print(PlainText out, StopLine stop, boolean headed) {
    List<TireRow> rows = stop.rows();
    if (rows.isEmpty()) {
      return;
    }
    if (headed) {
      out.line(line("", Column::above));
      out.line(line("tires", Column::heading));
    }
    for (TireRow row : rows) {
      List<String> lines = PlainText.split(row.tires(), names);
      out.line(line(lines.get(0), column -> column.cell.apply(row)));
      lines.stream().skip(1).forEach(further -> out.line(" ".repeat(INDENT) + further));
    }
  }

  private static String mark(Mark mark) {
    return switch (mark) {
      case CLEAR -> "○";
      case RECHECK -> "check";
      case ADJUST, HOLD, UNKNOWN -> mark.word();
    };
  }

  private String line(String name, Function<Column, String> cells) {
    StringBuilder line = new StringBuilder(" ".repeat(INDENT) + PlainText.left(name, names));
    List<Column> columns = new ArrayList<>(ON_ARRIVAL);
    columns.addAll(BEFORE_LEAVING);
    columns.addAll(AHEAD);
    for (Column column : columns) {
      int width = width(column);
      String cell = cells.apply(column);
      line.append(" ".repeat(column.gap))
          .append(column.right ? PlainText.right(cell, width) : PlainText.left(cell, width));
    }
    return line.toString();
  }

  private int width(List<Column> columns) {
    return columns.stream().mapToInt(column -> column.gap + width(column)).sum();
  }

  /** Of all stops' figures, so that every table has the same columns. */
  private int width(Column column) {
    return all.stream()
        .mapToInt(row -> PlainText.length(column.cell.apply(row)))
        .reduce(Math.max(column.above.length(), column.heading.length()), Math::max);
  }
}
