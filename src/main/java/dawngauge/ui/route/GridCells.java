package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What stands in the cells of the grid, by row and column.
 *
 * @param grid the figures
 * @param columns which column is which
 */
record GridCells(StopGrid grid, GridColumns columns) {

  /** What is written in a cell. */
  String text(int row, int at) {
    GridColumns.Column shown = columns.get(at);
    return switch (shown.kind()) {
      case TIME -> grid.clock(row);
      case PLACE -> grid.place(row);
      case AIR -> grid.air(row);
      case HOSE -> grid.line(row).hose();
      case TIRE -> grid.cell(row, shown.tire()).text();
      case MARGIN -> grid.margin(row);
      case MARK -> grid.mark(row).word();
    };
  }

  /** The texts of all stops in the column that is called so. */
  List<String> texts(String head) {
    for (int i = 0; i < columns.count(); i++) {
      if (head(i).equals(head)) {
        int at = i;
        return IntStream.range(0, grid.rows()).mapToObj(row -> text(row, at)).toList();
      }
    }
    throw new IllegalArgumentException("no column " + head);
  }

  /** What a column is called. */
  String head(int at) {
    GridColumns.Column shown = columns.get(at);
    return shown.tire() < 0 ? shown.kind().word() : grid.columns().get(shown.tire()).head();
  }

  /** The heads of all columns, parted by tabs. */
  String heads() {
    return tabbed(this::head);
  }

  /** A row as it is shown, parted by tabs. */
  String line(int row) {
    return tabbed(at -> text(row, at));
  }

  private String tabbed(IntFunction<String> cell) {
    return IntStream.range(0, columns.count())
        .mapToObj(at -> cell.apply(at).replaceAll("\\s", " "))
        .collect(Collectors.joining("\t"));
  }

  /** A cell as it is read out. */
  String spoken(int row, int at) {
    GridColumns.Column shown = columns.get(at);
    return switch (shown.kind()) {
      case TIRE -> grid.spoken(row, shown.tire());
      case PLACE -> grid.spoken(row);
      case AIR -> grid.place(row) + ", " + grid.line(row).air() + grid.line(row).airFrom();
      default -> grid.place(row) + ", " + head(at) + " " + text(row, at);
    };
  }

  /** What is told of a cell that is pointed at, in two lines. */
  String tip(int row, int at) {
    int tire = columns.get(at).tire();
    return tire >= 0 ? grid.tip(row, tire) : grid.tip(row);
  }
}
