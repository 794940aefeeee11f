package dawngauge.ui.route;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.layout.Region;

/** Rows that are laid out as regions, as on paper. */
final class RegionRows implements RowSpans {

  private static final double INSET = 10;

  /** Axes are not written again nearer than this to where they stand already. */
  private static final double APART = 60;

  /** Above a day's first stop, beside the heading of the day. */
  private static final double ABOVE = 27;

  private final List<Region> rows;

  RegionRows(List<Region> rows) {
    this.rows = List.copyOf(rows);
  }

  @Override
  public int count() {
    return rows.size();
  }

  private Bounds bounds(int row) {
    return rows.get(row).getBoundsInParent();
  }

  @Override
  public double top(int row) {
    return bounds(row).getMinY() + INSET;
  }

  @Override
  public double bottom(int row) {
    return bounds(row).getMaxY() - INSET;
  }

  @Override
  public double height() {
    return rows.isEmpty() ? 0 : bounds(rows.size() - 1).getMaxY() + INSET;
  }

  @Override
  public List<Double> headings() {
    List<Double> headings = new ArrayList<>();
    double before = -100;
    for (int i = 0; i < rows.size(); i++) {
      boolean newDay = rows.get(i).getUserData() instanceof Boolean day && day;
      if ((i == 0 || newDay) && bounds(i).getMinY() - before > APART) {
        headings.add(Math.max(0, bounds(i).getMinY() - ABOVE));
        before = bounds(i).getMinY();
      }
    }
    return headings;
  }
}
