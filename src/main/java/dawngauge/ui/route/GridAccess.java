package dawngauge.ui.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * The cells of the grid for who cannot see it. A cell has a node only from when it is asked for
 * until it goes out of sight; the one that has the keyboard always may have one.
 */
final class GridAccess {

  private record Place(int row, int column) {}

  /** Stands for a cell; nothing is drawn. */
  private final class Cell extends Region {
    private final Place place;

    Cell(Place place) {
      this.place = place;
      setManaged(false);
      setMouseTransparent(true);
      setAccessibleRole(AccessibleRole.TABLE_CELL);
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(
        AccessibleAttribute attribute, Object... parameters) {
      return switch (attribute) {
        case TEXT -> grid.spoken(place.row, place.column);
        case ROW_INDEX -> place.row;
        case COLUMN_INDEX -> place.column;
        case SELECTED -> grid.taken().contains(place.row);
        default -> super.queryAccessibleAttribute(attribute, parameters);
      };
    }
  }

  private final StopGridPane grid;
  private final Map<Place, Cell> cells = new HashMap<>();

  GridAccess(StopGridPane grid) {
    this.grid = grid;
  }

  /** What is asked of the whole grid; null where that is nothing of its own. */
  @Nullable Object answer(AccessibleAttribute attribute, Object... parameters) {
    return switch (attribute) {
      case ROW_COUNT -> grid.stops();
      case COLUMN_COUNT -> grid.columnCount();
      case CELL_AT_ROW_COLUMN -> cell((Integer) parameters[0], (Integer) parameters[1]);
      case FOCUS_ITEM -> cell(grid.chosen(), grid.column());
      case MULTIPLE_SELECTION -> true;
      case SELECTED_ITEMS -> cells(grid.taken(), grid.column());
      default -> null;
    };
  }

  /** The cell at a place; null where there is none. */
  private @Nullable Node cell(int row, int column) {
    if (row < 0 || row >= grid.stops() || column < 0 || column >= grid.columnCount()) {
      return null;
    }
    Cell cell = cells.computeIfAbsent(new Place(row, column), this::made);
    place(cell);
    return cell;
  }

  private Cell made(Place place) {
    Cell cell = new Cell(place);
    grid.hold(cell);
    return cell;
  }

  private void place(Cell cell) {
    Bounds at = grid.bounds(cell.place.row, cell.place.column);
    cell.resizeRelocate(at.getMinX(), at.getMinY(), at.getWidth(), at.getHeight());
  }

  /** The cells of some rows in a column. */
  private List<Node> cells(Set<Integer> rows, int column) {
    List<Node> found = new ArrayList<>();
    for (int row : rows) {
      Node cell = cell(row, column);
      if (cell != null) {
        found.add(cell);
      }
    }
    return found;
  }

  /** The keyboard went to another cell. */
  void moved() {
    grid.notifyAccessibleAttributeChanged(AccessibleAttribute.FOCUS_ITEM);
  }

  /** The cells lie elsewhere; those out of sight go. */
  void laidOut() {
    if (!cells.isEmpty()) {
      for (Cell cell : List.copyOf(cells.values())) {
        boolean focused = cell.place.row == grid.chosen() && cell.place.column == grid.column();
        if (focused || grid.sees(cell.place.row)) {
          place(cell);
        } else {
          cells.remove(cell.place);
          grid.release(cell);
        }
      }
    }
  }

  /** Other figures are shown: what was asked for is asked again. */
  void forget() {
    if (!cells.isEmpty()) {
      cells.values().forEach(grid::release);
      cells.clear();
      moved();
    }
  }
}
