package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import dawngauge.ledger.TireColumn;
import dawngauge.ui.common.Palette;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;

/** Draws the heading of the grid, which stays while the rows go by. */
final class GridHeadPainter {

  private final GridPen pen;
  private final StopGrid grid;
  private final GridColumns columns;
  private final GridSizes sizes;
  private final Palette palette;
  private final CutTexts texts;
  private final int traced;

  /**
   * A heading.
   *
   * @param traced the column whose trace is shown; -1 where there is none
   */
  GridHeadPainter(
      GridPen pen,
      StopGrid grid,
      GridColumns columns,
      GridSizes sizes,
      Palette palette,
      CutTexts texts,
      int traced) {
    this.pen = pen;
    this.grid = grid;
    this.columns = columns;
    this.sizes = sizes;
    this.palette = palette;
    this.texts = texts;
    this.traced = traced;
  }

  /** Draws. */
  void paint() {
    GraphicsContext g = pen.graphics();
    double height = sizes.head();
    g.setFill(palette.paper());
    g.fillRect(0, 0, columns.width(), height);
    double low = height - sizes.whole(9);
    double high = sizes.whole(9);
    String unit = grid.unit();
    pen.text(
        grid.display().word() + ", " + unit,
        columns.get(1).x() + sizes.whole(4),
        high,
        sizes.bold(),
        palette.ink());
    vehicles(high);
    for (int i = 0; i < columns.count(); i++) {
      GridColumns.Column column = columns.get(i);
      double right = column.right() - sizes.whole(5);
      switch (column.kind()) {
        case PLACE ->
            pen.text(
                column.kind().word(),
                column.x() + sizes.whole(4),
                low,
                sizes.small(),
                palette.lesser());
        case TIRE -> headOf(i, column, low);
        case AIR -> {
          pen.right(column.kind().word(), right, high, sizes.small(), palette.lesser());
          pen.right(grid.airUnit(), right, low, sizes.small(), palette.lesser());
        }
        case MARGIN -> {
          pen.right(column.kind().word(), column.right(), high, sizes.small(), palette.lesser());
          pen.right("%", right, low, sizes.small(), palette.lesser());
        }
        case HOSE ->
            pen.right(column.kind().word(), column.right(), low, sizes.small(), palette.lesser());
        case TIME -> pen.right(column.kind().word(), right, low, sizes.small(), palette.lesser());
        case MARK -> {}
      }
    }
    g.setStroke(palette.ink());
    g.setLineWidth(1);
    g.strokeLine(0, height - 0.5, columns.width(), height - 0.5);
  }

  private boolean isSeen(GridColumns.Column column) {
    return column.x() >= columns.tiresFrom() - 1 && column.right() <= columns.tiresTo() + 1;
  }

  private void headOf(int index, GridColumns.Column column, double low) {
    TireColumn tire = grid.columns().get(column.tire());
    if (!isSeen(column)) {
      return;
    }
    boolean isTraced = index == traced;
    Font font = isTraced ? sizes.boldFigure() : sizes.small();
    String name = texts.cut(tire.head(), font, column.width() + sizes.whole(4));
    pen.right(name, column.right() - sizes.whole(3), low, font, palette.ink());
    if (isTraced) {
      GraphicsContext g = pen.graphics();
      g.setFill(palette.ink());
      g.fillRect(column.x() + 1, sizes.head() - sizes.whole(3), column.width() - 2, sizes.whole(3));
    }
  }

  /** The name of each vehicle above its tires. */
  private void vehicles(double y) {
    List<TireColumn> tires = grid.columns();
    int from = 0;
    while (from < tires.size()) {
      int to = from;
      while (to + 1 < tires.size()
          && tires.get(to + 1).vehicle().equals(tires.get(from).vehicle())) {
        to++;
      }
      double left = Math.max(columns.tiresFrom(), columns.get(columns.ofTire(from)).x());
      double right = Math.min(columns.tiresTo(), columns.get(columns.ofTire(to)).right());
      if (right - left > sizes.whole(30)) {
        String name = texts.cut(tires.get(from).vehicle(), sizes.small(), right - left - 6);
        pen.text(name, left + sizes.whole(5), y, sizes.small(), palette.lesser());
        GraphicsContext g = pen.graphics();
        g.setStroke(palette.grid());
        g.setLineWidth(1);
        g.strokeLine(
            left + 3,
            Math.rint(y + sizes.whole(8)) + 0.5,
            right - 1,
            Math.rint(y + sizes.whole(8)) + 0.5);
      }
      from = to + 1;
    }
  }
}
