package dawngauge.ui.route;

import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The mouse on the grid: choosing, taking along, opening, dragging of rows. */
final class GridMouse {

  /** Pixels the mouse goes before a press becomes a drag. */
  private static final double SLACK = 6;

  private final StopGridPane grid;
  private int pressed = -1;
  private double pressedAt;
  private boolean dragging;

  GridMouse(StopGridPane grid) {
    this.grid = grid;
  }

  void listen() {
    grid.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    grid.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    grid.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
    grid.addEventHandler(
        MouseEvent.MOUSE_MOVED,
        event -> grid.hover(grid.rowAt(event.getY()), grid.columnAt(event.getX())));
    grid.addEventHandler(MouseEvent.MOUSE_EXITED, event -> grid.hover(-1, -1));
    grid.addEventHandler(MouseEvent.MOUSE_CLICKED, this::click);
  }

  private void press(MouseEvent event) {
    if (event.getTarget() != grid || event.getButton() != MouseButton.PRIMARY) {
      return;
    }
    event.consume(); // the page around would take the keyboard
    pressed = grid.rowAt(event.getY());
    pressedAt = event.getY();
    grid.press(pressed, grid.columnAt(event.getX()), event.isShiftDown(), event.isShortcutDown());
  }

  private void click(MouseEvent event) {
    if (event.getTarget() == grid && event.getClickCount() == 2) {
      if (grid.rowAt(event.getY()) >= 0) {
        grid.open();
      } else {
        grid.turn(grid.columnAt(event.getX()));
      }
    }
  }

  private void drag(MouseEvent event) {
    if (pressed < 0 || (!dragging && Math.abs(event.getY() - pressedAt) < SLACK)) {
      return;
    }
    dragging = true;
    grid.setCursor(Cursor.MOVE);
    grid.dragged(Math.max(0, event.getY()));
  }

  private void release(MouseEvent event) {
    int row = pressed;
    boolean dropped = dragging;
    pressed = -1;
    dragging = false;
    grid.setCursor(Cursor.DEFAULT);
    if (dropped) {
      grid.dropped(row, event.getY());
    }
  }
}
