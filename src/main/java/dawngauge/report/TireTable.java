package dawngauge.report;

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
  private record Column(String heading, int gap, boolean right, Function<TireRow, String> cell) {}

  private static final List<Column> ON_ARRIVAL =
      List.of(
          new Column("reads", 1, true, TireRow::arriveReads),
          new Column("range", 1, false, row -> row.read() ? "read" : row.arriveRange()),
          new Column("settled", 1, true, TireRow::arriveSettled));

  private static final List<Column> BEFORE_LEAVING =
      List.of(
          new Column("reads", 2, true, TireRow::checkReads),
          new Column("range", 1, false, row -> row.set() ? "set" : row.checkRange()));

  private static final List<Column> AHEAD =
      List.of(
          new Column("ahead", 1, true, TireRow::lowest),
          new Column("floor", 1, true, TireRow::floor),
          new Column("aim", 1, true, TireRow::aim),
          new Column("limit", 1, true, TireRow::ceiling),
          new Column("margin", 1, true, TireRow::margin),
          new Column("", 1, false, row -> row.byEstimate() ? "e" : ""),
          new Column("mark", 2, false, row -> row.mark().word()));

  private final List<TireRow> all;
  private final int names;

  TireTable(Ledger ledger) {
    all = ledger.stops().stream().flatMap(stop -> stop.rows().stream()).toList();
    int taken = width(ON_ARRIVAL) + width(BEFORE_LEAVING) + width(AHEAD);
    names = Math.min(WIDEST_NAMES, PlainText.WIDTH - INDENT - taken);
  }

  /** Adds the table of a stop; columns without a figure have no heading. */
  void print(PlainText out, StopLine stop) {
    List<TireRow> rows = stop.rows();
    if (rows.isEmpty()) {
      return;
    }
    boolean leaves = rows.stream().anyMatch(row -> !row.checkReads().isEmpty());
    out.line(
        " ".repeat(INDENT + names + ON_ARRIVAL.get(0).gap)
            + PlainText.left(
                stop.arrive().isEmpty() ? "here" : "on arrival",
                width(ON_ARRIVAL) - ON_ARRIVAL.get(0).gap + BEFORE_LEAVING.get(0).gap)
            + (leaves ? "before leaving" : ""));
    out.line(
        line(
            "tires",
            column ->
                rows.stream().allMatch(row -> column.cell.apply(row).isEmpty())
                    ? ""
                    : column.heading));
    for (TireRow row : rows) {
      List<String> lines = PlainText.split(row.tires(), names);
      out.line(line(lines.get(0), column -> column.cell.apply(row)));
      lines.stream().skip(1).forEach(further -> out.line(" ".repeat(INDENT) + further));
    }
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
        .reduce(column.heading.length(), Math::max);
  }
}
