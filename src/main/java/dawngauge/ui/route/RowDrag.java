package dawngauge.ui.route;

import java.util.List;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;

/** Dragging a row of the ledger to another place; a line shows where it would stand. */
final class RowDrag {

  /** Pixels the mouse goes before a press becomes a drag. */
  private static final double SLACK = 6;

  /** What a drop asks for. */
  interface Drop {
    /** The row is to stand before another, or at the end where that is their number. */
    void move(int row, int before);
  }

  private final LedgerPane ledger;
  private final Drop drop;
  private final Region line = new Region();
  private double pressedAt;
  private int before = -1;

  RowDrag(LedgerPane ledger, Drop drop) {
    this.ledger = ledger;
    this.drop = drop;
    line.getStyleClass().add("drop-line");
    line.setManaged(false);
    line.setMouseTransparent(true);
  }

  void listen(Region row, int index) {
    row.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> pressedAt = event.getSceneY());
    row.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    row.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> released(row, index));
  }

  private void dragged(MouseEvent event) {
    if (before < 0 && Math.abs(event.getSceneY() - pressedAt) < SLACK) {
      return;
    }
    double y = ledger.sceneToLocal(event.getSceneX(), event.getSceneY()).getY();
    List<Region> rows = ledger.stopRows();
    before = rows.size();
    for (int i = rows.size() - 1; i >= 0; i--) {
      var bounds = rows.get(i).getBoundsInParent();
      if (y < (bounds.getMinY() + bounds.getMaxY()) / 2) {
        before = i;
      }
    }
    double at =
        before < rows.size()
            ? rows.get(before).getBoundsInParent().getMinY()
            : rows.get(rows.size() - 1).getBoundsInParent().getMaxY();
    if (!ledger.getChildren().contains(line)) {
      ledger.getChildren().add(line);
    }
    line.resizeRelocate(0, at - 2, ledger.getWidth(), 3);
    ledger.setCursor(Cursor.MOVE);
  }

  private void released(Region row, int index) {
    int target = before;
    before = -1;
    ledger.getChildren().remove(line);
    ledger.setCursor(Cursor.DEFAULT);
    boolean elsewhere = target >= 0 && target != index && target != index + 1;
    if (elsewhere && row.getScene() != null) {
      drop.move(index, target);
    }
  }
}
