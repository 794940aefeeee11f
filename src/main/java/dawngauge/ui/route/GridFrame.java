package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.text.Font;

/**
 * Which part of a grid is seen, and where its cells are in the control: heading on top, rows that
 * scroll below it, the trace at the right where there is room.
 */
final class GridFrame {

  private GridSizes sizes;
  private StopGrid grid;
  private GridRows rows;
  private GridColumns columns;
  private double width;
  private double height;
  private double trace;
  private double scroll;
  private double sideways;

  GridFrame(StopGrid grid, Font font) {
    this.grid = grid;
    this.sizes = GridSizes.of(font);
    this.rows = new GridRows(grid, sizes);
    this.columns = new GridColumns(grid, sizes, 1, 0);
  }

  /** Takes other figures, or other sizes of type. */
  void show(StopGrid next, Font font) {
    grid = next;
    sizes = GridSizes.of(font);
    rows = new GridRows(grid, sizes);
    columns = new GridColumns(grid, sizes, Math.max(1, width - trace), sideways);
  }

  /**
   * Lays out.
   *
   * @param wide what there is for grid and trace
   * @param high height of all
   * @param traced whether there is a trace to be seen
   */
  void layOut(double wide, double high, boolean traced) {
    width = wide;
    height = high;
    trace = traced ? traceWidth(wide) : 0;
    columns = new GridColumns(grid, sizes, wide - trace, sideways);
    sideways = columns.scroll();
    scroll = within(scroll);
  }

  private double traceWidth(double room) {
    double spare = room - GridColumns.natural(grid, sizes);
    double wide =
        spare > sizes.trace()
            ? Math.min(sizes.mostTrace(), sizes.trace() + (spare - sizes.trace()) * 0.45)
            : Math.min(sizes.trace(), spare + sizes.place() - sizes.leastPlace());
    return wide < sizes.leastTrace() ? 0 : Math.rint(wide);
  }

  GridSizes sizes() {
    return sizes;
  }

  StopGrid grid() {
    return grid;
  }

  GridRows rows() {
    return rows;
  }

  GridColumns columns() {
    return columns;
  }

  /** What stands in the cells. */
  GridCells cells() {
    return new GridCells(grid, columns);
  }

  /** Width of the trace; zero where it is not seen. */
  double trace() {
    return trace;
  }

  /** How far the rows went up. */
  double scroll() {
    return scroll;
  }

  /** Height in which rows are seen. */
  double seen() {
    return Math.max(0, height - sizes.head());
  }

  /** How far they can go up. */
  double over(double high) {
    return Math.max(0, rows.height() - Math.max(0, high - sizes.head()));
  }

  private double within(double y) {
    return Math.rint(Math.max(0, Math.min(over(height), y)));
  }

  /** Scrolls; whether that changes anything. */
  boolean scrollTo(double y) {
    double next = within(y);
    boolean other = next != scroll;
    scroll = next;
    return other;
  }

  void scrollAside(double by) {
    sideways += by;
  }

  /** Scrolls so far that a row is seen. */
  void revealRow(int row, double high) {
    height = high;
    scrollTo(rows.revealing(row, scroll, seen()));
  }

  /** Moves the tires so far that a column is seen. */
  void revealColumn(int column) {
    sideways = columns.revealing(column);
  }

  /** Width at which tires, usual names and trace are seen. */
  double natural() {
    return GridColumns.natural(grid, sizes) + sizes.trace();
  }

  /** Where a cell is in the control; also where it is not in sight. */
  Bounds bounds(int row, int at) {
    if (row < 0 || row >= rows.count()) {
      return new BoundingBox(0, 0, 0, 0);
    }
    GridColumns.Column shown = columns.get(at);
    return new BoundingBox(
        shown.x(), sizes.head() + rows.rowTop(row) - scroll, shown.width(), sizes.row());
  }

  /** Whether a row is seen whole. */
  boolean sees(int row) {
    Bounds at = bounds(row, 0);
    return at.getHeight() > 0 && at.getMinY() >= sizes.head() - 0.5 && at.getMaxY() <= height + 0.5;
  }

  /** The row at a height in the control, or -1. */
  int rowAt(double y) {
    return y < sizes.head() ? -1 : rows.at(along(y));
  }

  /** The row before which something dropped at a height would stand. */
  int before(double y) {
    return rows.before(along(y));
  }

  private double along(double y) {
    return y - sizes.head() + scroll;
  }

  /** How many rows are seen, less one. */
  int page() {
    return Math.max(1, (int) (seen() / (sizes.row() + sizes.leg())) - 1);
  }
}
