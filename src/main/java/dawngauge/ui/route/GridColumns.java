package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import dawngauge.ledger.TireColumn;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the columns of the grid are, from its left. Where there is no room for all tires, they go
 * left and right between the others.
 */
final class GridColumns {

  /** What a column shows. */
  enum Kind {
    /** Clock on arrival. */
    TIME("time"),
    /** Name of the stop. */
    PLACE("stop"),
    /** Temperature. */
    AIR("air"),
    /** Compressed air. */
    HOSE("hose"),
    /** A tire, or those of an axle. */
    TIRE(""),
    /** Lowest margin. */
    MARGIN("margin"),
    /** Strongest mark. */
    MARK("mark");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * A column.
   *
   * @param tire which of the tires' columns it is; -1 of another
   * @param x left end
   */
  record Column(Kind kind, int tire, double x, double width) {
    double right() {
      return x + width;
    }
  }

  private final List<Column> columns = new ArrayList<>();
  private final double width;
  private final double tiresFrom;
  private final double tiresTo;
  private final double most;
  private final double scroll;

  /**
   * Lays columns out.
   *
   * @param width what there is for them
   * @param wanted how far the tires are to go left
   */
  GridColumns(StopGrid grid, GridSizes sizes, double width, double wanted) {
    double fixed = sizes.time() + sizes.air() + sizes.hose() + sizes.margin() + sizes.mark();
    double tires = tires(grid, sizes);
    double place = Math.max(sizes.leastPlace(), width - fixed - tires);
    this.width = width;
    double x = 0;
    x = add(Kind.TIME, -1, x, sizes.time());
    x = add(Kind.PLACE, -1, x, place);
    x = add(Kind.AIR, -1, x, sizes.air());
    x = add(Kind.HOSE, -1, x, sizes.hose());
    tiresFrom = x;
    tiresTo = Math.max(x, width - sizes.margin() - sizes.mark());
    most = Math.max(0, tires - (tiresTo - tiresFrom));
    scroll = Math.max(0, Math.min(most, wanted));
    x -= scroll;
    for (int i = 0; i < grid.columns().size(); i++) {
      x += gap(grid, i, sizes);
      x = add(Kind.TIRE, i, x, tire(grid, sizes));
    }
    x = add(Kind.MARGIN, -1, tiresTo, sizes.margin());
    add(Kind.MARK, -1, x, sizes.mark());
  }

  private double add(Kind kind, int tire, double x, double wide) {
    columns.add(new Column(kind, tire, x, wide));
    return x + wide;
  }

  private static double gap(StopGrid grid, int column, GridSizes sizes) {
    List<TireColumn> columns = grid.columns();
    boolean same = column > 0 && columns.get(column).axle().equals(columns.get(column - 1).axle());
    boolean folded = column > 0 && columns.get(column).folded() && columns.get(column - 1).folded();
    return same || folded ? 0 : sizes.axleGap();
  }

  private static double tires(StopGrid grid, GridSizes sizes) {
    double wide = 0;
    for (int i = 0; i < grid.columns().size(); i++) {
      wide += gap(grid, i, sizes) + tire(grid, sizes);
    }
    return wide;
  }

  private static double tire(StopGrid grid, GridSizes sizes) {
    return sizes.tire(grid.decimals());
  }

  /** Width at which all is seen and names have their usual room. */
  static double natural(StopGrid grid, GridSizes sizes) {
    return sizes.time()
        + sizes.place()
        + sizes.air()
        + sizes.hose()
        + tires(grid, sizes)
        + sizes.margin()
        + sizes.mark();
  }

  int count() {
    return columns.size();
  }

  Column get(int column) {
    return columns.get(column);
  }

  double width() {
    return width;
  }

  /** Left end of what is seen of the tires. */
  double tiresFrom() {
    return tiresFrom;
  }

  /** Right end of it. */
  double tiresTo() {
    return tiresTo;
  }

  /** How far the tires went left. */
  double scroll() {
    return scroll;
  }

  /** Whether some tires are not seen. */
  boolean scrolls() {
    return most > 0;
  }

  /** The column at a place, or -1. */
  int at(double x) {
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      boolean seen = column.kind() != Kind.TIRE || (x >= tiresFrom && x < tiresTo);
      if (seen && x >= column.x() && x < column.right()) {
        return i;
      }
    }
    return -1;
  }

  /** The column of a tire, by its number among those. */
  int ofTire(int tire) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).tire() == tire) {
        return i;
      }
    }
    return -1;
  }

  /** How far the tires are to go left so that a column is seen whole. */
  double revealing(int column) {
    Column shown = columns.get(column);
    if (shown.kind() != Kind.TIRE) {
      return scroll;
    }
    double left = shown.x() - tiresFrom;
    double right = shown.right() - tiresTo;
    return scroll + (left < 0 ? left : Math.max(0, right));
  }
}
