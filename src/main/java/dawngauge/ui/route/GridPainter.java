package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ledger.StopGrid;
import dawngauge.ui.common.Palette;
import java.util.Set;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;

/**
 * Draws the part of the grid that is seen. A mark is told by shape as well as by ink: pale figure
 * for clear, a tick in the corner for re-check, a frame around a figure to set, a filled cell for
 * hold, a dot for not known.
 */
final class GridPainter {

  private static final double DIMMED = 0.32;
  private static final double FRAME = 1.6;

  /**
   * What is pointed out.
   *
   * @param chosen the chosen row
   * @param taken the rows that are taken with it
   * @param column the column that has the keyboard
   * @param traced the column of the tire whose trace is shown; -1 where there is none
   * @param focused whether the keyboard is here
   * @param hoverRow the row that is pointed at; -1 where there is none
   * @param hoverColumn the column that is pointed at
   * @param bright rows that stay as they are while all others are dimmed; empty where none is
   * @param drop the row before which something would be dropped; -1 where nothing is dragged
   */
  record State(
      int chosen,
      Set<Integer> taken,
      int column,
      int traced,
      boolean focused,
      int hoverRow,
      int hoverColumn,
      Set<Integer> bright,
      int drop) {}

  private final GraphicsContext g;
  private final GridPen pen;
  private final StopGrid grid;
  private final GridRows rows;
  private final GridColumns columns;
  private final GridSizes sizes;
  private final Palette palette;
  private final CutTexts texts;
  private final State state;

  GridPainter(
      GraphicsContext g,
      StopGrid grid,
      GridRows rows,
      GridColumns columns,
      GridSizes sizes,
      Palette palette,
      CutTexts texts,
      State state) {
    this.g = g;
    this.pen = new GridPen(g);
    this.grid = grid;
    this.rows = rows;
    this.columns = columns;
    this.sizes = sizes;
    this.palette = palette;
    this.texts = texts;
    this.state = state;
  }

  /**
   * Draws.
   *
   * @param scroll how far the rows went up
   * @param height of all, the heading with it
   */
  void paint(double scroll, double height) {
    double seen = height - sizes.head();
    g.setTextBaseline(VPos.CENTER);
    g.setFill(palette.paper());
    g.fillRect(0, 0, columns.width(), height);
    g.save();
    g.translate(0, sizes.head() - scroll);
    int first = rows.firstFrom(scroll);
    int last = first;
    while (last < rows.count() && rows.rowTop(last) < scroll + seen) {
      last++;
    }
    for (int row = first; row < last; row++) {
      ground(row);
      day(row);
    }
    clipped(
        columns.tiresFrom(), scroll, columns.tiresTo() - columns.tiresFrom(), seen, first, last);
    for (int row = first; row < last; row++) {
      dim(row);
      fixed(row);
      g.setGlobalAlpha(1);
      leg(row);
    }
    focus(scroll);
    drop();
    sticky(first, scroll);
    g.restore();
    new GridHeadPainter(pen, grid, columns, sizes, palette, texts, state.traced()).paint();
  }

  /** The tires, which may go left and right below what stands beside them. */
  private void clipped(double x, double y, double width, double height, int first, int last) {
    g.save();
    if (columns.scrolls()) {
      g.beginPath();
      g.rect(x, y, width, height);
      g.clip();
    }
    for (int row = first; row < last; row++) {
      dim(row);
      for (int i = 0; i < columns.count(); i++) {
        GridColumns.Column column = columns.get(i);
        boolean here = column.right() > x && column.x() < x + width;
        if (column.kind() == GridColumns.Kind.TIRE && here) {
          cell(row, column);
        }
      }
      g.setGlobalAlpha(1);
    }
    g.restore();
  }

  private void dim(int row) {
    boolean dimmed = !state.bright().isEmpty() && !state.bright().contains(row);
    g.setGlobalAlpha(dimmed ? DIMMED : 1);
  }

  private double middle(int row) {
    return Math.rint(rows.rowTop(row) + sizes.row() / 2);
  }

  private void ground(int row) {
    double top = rows.rowTop(row);
    if (row == state.chosen() || state.taken().contains(row)) {
      g.setFill(row == state.chosen() ? palette.chosen() : palette.raised());
      g.fillRect(0, top, columns.width(), sizes.row());
      g.setFill(palette.ink());
      g.fillRect(0, top, sizes.whole(3), sizes.row());
    } else if (row == state.hoverRow()) {
      g.setFill(palette.raised());
      g.fillRect(0, top, columns.width(), sizes.row());
    }
    column(state.hoverColumn(), top, palette.raised());
    if (row != state.chosen()) {
      column(state.traced(), top, palette.raised());
    }
  }

  /** Ground of a tire's column. */
  private void column(int index, double top, Color color) {
    if (index >= 0 && index < columns.count()) {
      GridColumns.Column column = columns.get(index);
      if (column.kind() == GridColumns.Kind.TIRE) {
        double from = Math.max(column.x(), columns.tiresFrom());
        g.setFill(color);
        g.fillRect(
            from,
            top,
            Math.max(0, Math.min(column.right(), columns.tiresTo()) - from),
            sizes.row());
      }
    }
  }

  private void day(int row) {
    String day = rows.row(row).day();
    if (!day.isEmpty()) {
      dayAt(day, rows.rowTop(row) - sizes.day());
    }
  }

  private void dayAt(String day, double top) {
    g.setFill(palette.paper());
    g.fillRect(0, top, columns.width(), sizes.day());
    pen.text(day, sizes.whole(8), top + sizes.day() / 2 + 1, sizes.bold(), palette.ink());
    g.setStroke(palette.ink());
    g.setLineWidth(1);
    double y = Math.rint(top + sizes.day()) - 0.5;
    g.strokeLine(0, y, columns.width(), y);
  }

  /** The heading of the day stays in sight while its stops go by. */
  private void sticky(int first, double scroll) {
    String day = rows.dayOf(first);
    if (first >= rows.count() || day.isEmpty()) {
      return;
    }
    double next = scroll;
    boolean begins = !rows.row(first).day().isEmpty() && rows.rowTop(first) >= scroll + sizes.day();
    if (begins) {
      return;
    }
    int below = first + 1;
    if (below < rows.count() && !rows.row(below).day().isEmpty()) {
      next = Math.min(scroll, rows.rowTop(below) - 2 * sizes.day());
    }
    dayAt(day, next);
  }

  private void fixed(int row) {
    StopGrid.Row facts = rows.row(row);
    double y = middle(row);
    Color ink = facts.passed() || !facts.timed() ? palette.lesser() : palette.ink();
    double pad = sizes.whole(5);
    for (int i = 0; i < columns.count(); i++) {
      GridColumns.Column column = columns.get(i);
      switch (column.kind()) {
        case TIME -> pen.right(grid.clock(row), column.right() - pad, y, sizes.figure(), ink);
        case PLACE -> place(row, column, y, ink);
        case AIR ->
            pen.right(grid.air(row), column.right() - pad, y, sizes.figure(), palette.lesser());
        case HOSE -> hose(grid.hose(row), column.x() + column.width() / 2, y);
        case MARGIN -> pen.right(grid.margin(row), column.right() - pad, y, sizes.figure(), ink);
        case MARK ->
            MarkPainter.draw(
                g, grid.mark(row), palette, column.x() + column.width() / 2, y, sizes.whole(13));
        default -> {}
      }
    }
  }

  /** The name, and behind it the letters of the zone where the clocks change. */
  private void place(int row, GridColumns.Column column, double y, Color ink) {
    String zone = grid.zone(row);
    double room = column.width() - sizes.whole(8);
    double forZone = zone.isEmpty() ? 0 : texts.width(zone, sizes.small()) + sizes.whole(6);
    String name = texts.cut(grid.place(row), sizes.type(), room - forZone);
    pen.text(name, column.x() + sizes.whole(4), y, sizes.type(), ink);
    if (!zone.isEmpty()) {
      pen.right(zone, column.right() - sizes.whole(4), y, sizes.small(), palette.lesser());
    }
  }

  /**
   * A solid round for a hose, half of it where it reaches a pressure only, a ring for one's own.
   */
  private void hose(StopGrid.Hose hose, double x, double y) {
    double r = sizes.whole(4.5);
    g.setStroke(palette.ink());
    g.setFill(palette.ink());
    g.setLineWidth(1.3);
    switch (hose) {
      case NONE -> {}
      case OWN -> g.strokeOval(x - r, y - r, 2 * r, 2 * r);
      case LIMITED -> {
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
        g.fillArc(x - r, y - r, 2 * r, 2 * r, 180, 180, javafx.scene.shape.ArcType.CHORD);
      }
      case FREE -> g.fillOval(x - r, y - r, 2 * r, 2 * r);
    }
  }

  private void cell(int row, GridColumns.Column column) {
    StopGrid.Cell cell = grid.cell(row, column.tire());
    double top = rows.rowTop(row);
    String change = grid.change(row, column.tire());
    double y = middle(row) - (change.isEmpty() ? 0 : sizes.whole(4));
    double right = column.right() - sizes.whole(5);
    double in = sizes.whole(2);
    boolean bold = cell.mark() == Mark.ADJUST || cell.mark() == Mark.HOLD;
    Font font = fitting(cell.text(), bold ? sizes.boldFigure() : sizes.figure(), column.width());
    switch (cell.mark()) {
      case CLEAR, UNKNOWN -> pen.right(cell.text(), right, y, font, palette.lesser());
      case RECHECK -> {
        pen.right(cell.text(), right, y, font, palette.ink());
        tick(column.right() - 1, top + in, sizes.whole(7), palette.ink());
      }
      case ADJUST -> {
        pen.right(cell.text(), right, y, font, palette.accent());
        if (cell.framed()) {
          g.setStroke(palette.accent());
          g.setLineWidth(FRAME);
          double frame = change.isEmpty() ? in : 0; // two lines need all of the cell
          g.strokeRect(
              column.x() + 1.5, top + frame + 0.5, column.width() - 3, sizes.row() - 2 * frame - 1);
        } else {
          MarkPainter.draw(g, Mark.ADJUST, palette, column.x() + sizes.whole(5), y, sizes.whole(7));
        }
      }
      case HOLD -> {
        g.setFill(palette.hold());
        g.fillRect(column.x() + 1, top + 1, column.width() - 2, sizes.row() - 2);
        pen.right(cell.text(), right, y, font, palette.paper());
      }
    }
    if (cell.mark() == Mark.UNKNOWN && !cell.text().equals(StopGrid.NOT_KNOWN)) {
      pen.text(StopGrid.NOT_KNOWN, column.x() + in, y, sizes.boldFigure(), palette.lesser());
    }
    if (!change.isEmpty()) {
      Color ink = cell.mark() == Mark.HOLD ? palette.paper() : palette.ink();
      pen.right(change, right, middle(row) + sizes.whole(7), sizes.change(), ink);
    }
    if (cell.read()) {
      double wide = texts.width(cell.text(), sizes.figure());
      g.setStroke(cell.mark() == Mark.HOLD ? palette.paper() : palette.lesser());
      g.setLineWidth(1);
      double line = Math.rint(y + sizes.whole(7)) + 0.5;
      g.strokeLine(right - wide, line, right, line);
    }
  }

  /** The type, or a smaller one where a figure would reach beyond its cell. */
  private Font fitting(String text, Font font, double width) {
    double room = width - sizes.whole(8);
    double wide = texts.width(text, font);
    return wide <= room ? font : sizes.smaller(font, room / wide);
  }

  private void tick(double x, double y, double size, Color color) {
    g.setFill(color);
    g.fillPolygon(new double[] {x - size, x, x}, new double[] {y, y, y + size}, 3);
  }

  /** The leg is the gap between two rows; a peak in it is a pass. */
  private void leg(int row) {
    StopGrid.Row facts = rows.row(row);
    if (facts.last()) {
      return;
    }
    double y = Math.rint(rows.rowBottom(row) + sizes.leg() / 2) - 0.5;
    g.setStroke(palette.grid());
    g.setLineWidth(1);
    double peak = columns.get(1).x() - sizes.whole(2);
    g.strokeLine(0, y, columns.width(), y);
    if (facts.caution()) {
      g.setStroke(palette.accent());
      g.setLineWidth(2);
      g.strokeLine(sizes.whole(8), y, peak, y);
    }
    if (facts.pass()) {
      double half = sizes.whole(4);
      g.setFill(facts.caution() ? palette.accent() : palette.lesser());
      g.fillPolygon(
          new double[] {peak - half, peak, peak + half},
          new double[] {y + 1.5, y - sizes.whole(5), y + 1.5},
          3);
    }
  }

  private void focus(double scroll) {
    if (state.chosen() < 0 || state.chosen() >= rows.count()) {
      return;
    }
    GridColumns.Column column = columns.get(Math.min(state.column(), columns.count() - 1));
    double top = rows.rowTop(state.chosen());
    if (top + sizes.row() > scroll) {
      g.setStroke(state.focused() ? palette.info() : palette.lesser());
      g.setLineWidth(state.focused() ? 2 : 1);
      g.strokeRect(column.x() + 1, top + 1, column.width() - 2, sizes.row() - 2);
    }
  }

  private void drop() {
    if (state.drop() >= 0 && rows.count() > 0) {
      double y =
          state.drop() < rows.count()
              ? rows.rowTop(state.drop()) - 1
              : rows.rowBottom(rows.count() - 1);
      g.setFill(palette.info());
      g.fillRect(0, y - 1, columns.width(), 3);
    }
  }
}
