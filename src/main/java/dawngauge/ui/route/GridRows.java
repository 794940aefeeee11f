package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import java.util.ArrayList;
import java.util.List;

/** Where days and stops of the grid are, counted from below its heading, without scrolling. */
final class GridRows implements RowSpans {

  /** So far inside its row a stop's stay begins and ends in the trace. */
  private static final double INSET = 4;

  private final GridSizes sizes;
  private final List<StopGrid.Row> rows = new ArrayList<>();
  private final double[] tops;
  private final double height;

  GridRows(StopGrid grid, GridSizes sizes) {
    this.sizes = sizes;
    tops = new double[grid.rows()];
    double y = 0;
    for (int i = 0; i < grid.rows(); i++) {
      StopGrid.Row row = grid.row(i);
      rows.add(row);
      y += row.day().isEmpty() ? 0 : sizes.day();
      tops[i] = y;
      y += sizes.row() + (row.last() ? 0 : sizes.leg());
    }
    height = y;
  }

  StopGrid.Row row(int row) {
    return rows.get(row);
  }

  /** Top of a row. */
  double rowTop(int row) {
    return tops[row];
  }

  double rowBottom(int row) {
    return tops[row] + sizes.row();
  }

  @Override
  public int count() {
    return tops.length;
  }

  @Override
  public double top(int row) {
    return rowTop(row) + sizes.whole(INSET);
  }

  @Override
  public double bottom(int row) {
    return rowBottom(row) - sizes.whole(INSET);
  }

  @Override
  public double height() {
    return height;
  }

  @Override
  public List<Double> headings() {
    return List.of();
  }

  /** The row at a height, or -1 where there is none: above a day's first or below the last. */
  int at(double y) {
    int row = firstFrom(y);
    return row < count() && y >= rowTop(row) && y < rowBottom(row) + sizes.leg() ? row : -1;
  }

  /** The first row that ends below a height; their number where none does. */
  int firstFrom(double y) {
    int low = 0;
    int high = count();
    while (low < high) {
      int middle = (low + high) / 2;
      if (rowBottom(middle) + sizes.leg() > y) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The row before which something that is dropped at a height is to stand. */
  int before(double y) {
    int row = firstFrom(y);
    return row < count() && y >= (rowTop(row) + rowBottom(row)) / 2 ? row + 1 : row;
  }

  /** Heading of the day that a row belongs to; empty where no day is known. */
  String dayOf(int row) {
    for (int i = Math.min(row, count() - 1); i >= 0; i--) {
      if (!rows.get(i).day().isEmpty()) {
        return rows.get(i).day();
      }
    }
    return "";
  }

  /** How far to scroll so that a row is seen whole below the heading of its day. */
  double revealing(int row, double scroll, double seen) {
    if (row < 0 || row >= count()) {
      return scroll;
    }
    double least = rowTop(row) - (dayOf(row).isEmpty() ? 0 : sizes.day());
    if (least < scroll) {
      return least;
    }
    return Math.max(scroll, rowBottom(row) - seen);
  }
}
