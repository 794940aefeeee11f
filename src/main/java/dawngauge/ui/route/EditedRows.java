package dawngauge.ui.route;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * Rows of fields, one for each item of a list in the trip. A row stays with its item while that
 * changes, so that focus, drafts and a pressed button are of the same item afterwards.
 *
 * @param <T> the items
 */
final class EditedRows<T> extends VBox {

  /** A row; it says which item it shows, and takes another one. */
  abstract static class Row<T> extends VBox {
    private T item;

    Row(T item) {
      this.item = item;
    }

    final T item() {
      return item;
    }

    /** Follows an edit of its own, before the trip tells of it. */
    final void becomes(T other) {
      item = other;
    }

    /** Shows its item. */
    abstract void refresh();
  }

  private final Function<T, Row<T>> maker;
  private List<Row<T>> rows = new ArrayList<>();

  EditedRows(Function<T, Row<T>> maker) {
    this.maker = maker;
    getStyleClass().add("edited-rows");
  }

  /** Shows a list: rows of the same items stay, others take items that are left over. */
  void show(List<T> items) {
    List<Row<T>> free = new ArrayList<>(rows);
    List<Row<T>> next = new ArrayList<>();
    for (T item : items) {
      Row<T> same = null;
      for (Row<T> row : free) {
        same = row.item().equals(item) ? row : same;
      }
      free.remove(same);
      next.add(same);
    }
    for (int i = 0; i < next.size(); i++) {
      if (next.get(i) == null) {
        Row<T> row = free.isEmpty() ? maker.apply(items.get(i)) : free.remove(0);
        row.becomes(items.get(i));
        next.set(i, row);
      }
    }
    rows = next;
    List<Node> nodes = List.copyOf(next);
    if (!getChildren().equals(nodes)) {
      getChildren().setAll(nodes);
    }
    rows.forEach(Row::refresh);
  }
}
