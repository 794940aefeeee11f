package dawngauge.ui.route;

import java.util.TreeSet;
import javafx.scene.input.KeyEvent;

/**
 * The keyboard on the grid: arrows go over stops and tires, with Shift they take stops along, with
 * Alt they move them, with Ctrl they unfold and fold an axle. What is typed goes into the cell.
 */
final class GridKeys {

  private final StopGridPane grid;
  private final GridHands hands;

  GridKeys(StopGridPane grid, GridHands hands) {
    this.grid = grid;
    this.hands = hands;
  }

  void keyed(KeyEvent event) {
    if (handle(event)) {
      event.consume();
    }
  }

  private boolean handle(KeyEvent event) {
    boolean along = event.isShiftDown();
    int chosen = grid.chosen();
    int last = grid.stops() - 1;
    switch (event.getCode()) {
      case UP -> up(-1, event);
      case DOWN -> up(1, event);
      case PAGE_UP -> grid.step(Math.max(0, chosen - grid.page()), along);
      case PAGE_DOWN -> grid.step(Math.min(last, chosen + grid.page()), along);
      case HOME -> grid.step(0, along);
      case END -> grid.step(last, along);
      case LEFT -> aside(-1, event);
      case RIGHT -> aside(1, event);
      case DELETE -> hands.remove(new TreeSet<>(grid.taken()));
      case INSERT -> hands.insertAfter(chosen);
      case ENTER -> hands.open();
      case SPACE -> grid.choose(chosen);
      case F2 -> grid.writing().edit();
      case CONTEXT_MENU -> grid.menu();
      case C -> {
        return shortcut(event, grid.writing()::copy);
      }
      case V -> {
        return shortcut(event, grid.writing()::paste);
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  private static boolean shortcut(KeyEvent event, Runnable action) {
    boolean meant = event.isShortcutDown() && !event.isShiftDown() && !event.isAltDown();
    if (meant) {
      action.run();
    }
    return meant;
  }

  /** A letter or figure begins to write into the cell. */
  void typed(KeyEvent event) {
    String text = event.getCharacter();
    boolean meant = !event.isShortcutDown() && !event.isAltDown() && !event.isMetaDown();
    if (meant && !text.isBlank() && !Character.isISOControl(text.codePointAt(0))) {
      grid.writing().type(text);
      event.consume();
    }
  }

  private void up(int by, KeyEvent event) {
    if (event.isAltDown()) {
      grid.shift(by);
    } else {
      grid.step(grid.chosen() + by, event.isShiftDown());
    }
  }

  private void aside(int by, KeyEvent event) {
    if (event.isShortcutDown()) {
      grid.fold(grid.column(), by > 0);
    } else {
      grid.aside(by);
    }
  }
}
