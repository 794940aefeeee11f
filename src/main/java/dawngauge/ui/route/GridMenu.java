package dawngauge.ui.route;

import java.util.NavigableSet;
import java.util.TreeSet;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;

/** What can be done with the taken rows and the cell that has the keyboard, the keys beside. */
final class GridMenu {

  private final StopGridPane grid;
  private final GridHands hands;
  private final ContextMenu menu = new ContextMenu();

  GridMenu(StopGridPane grid, GridHands hands) {
    this.grid = grid;
    this.hands = hands;
  }

  /** Shows it at a place on the screen. */
  void show(double x, double y) {
    boolean any = grid.stops() > 0;
    boolean typed = any && grid.isTyped(grid.column());
    boolean tire = grid.isTire(grid.column());
    menu.getItems()
        .setAll(
            item("Type in this cell", "F2", typed, grid.writing()::edit),
            item("Open this stop", "Enter", any, hands::open),
            item("Copy", "Shortcut+C", any, grid.writing()::copy),
            item("Paste", "Shortcut+V", typed, grid.writing()::paste),
            new SeparatorMenuItem(),
            item("Insert a stop after", "Insert", true, () -> hands.insertAfter(grid.chosen())),
            item("Duplicate", "", any, () -> hands.duplicate(taken())),
            item("Move up", "Alt+Up", any, () -> grid.shift(-1)),
            item("Move down", "Alt+Down", any, () -> grid.shift(1)),
            item("Remove", "Delete", any, () -> hands.remove(taken())),
            new SeparatorMenuItem(),
            item(
                "A column for each tire of the axle",
                "Shortcut+Right",
                tire,
                () -> grid.fold(grid.column(), true)),
            item(
                "One column for the axle",
                "Shortcut+Left",
                tire,
                () -> grid.fold(grid.column(), false)));
    menu.show(grid, x, y);
  }

  private NavigableSet<Integer> taken() {
    return new TreeSet<>(grid.taken());
  }

  private static MenuItem item(String text, String key, boolean able, Runnable action) {
    MenuItem item = new MenuItem(text);
    if (!key.isEmpty()) {
      item.setAccelerator(KeyCombination.valueOf(key)); // shown; the grid itself hears the keys
    }
    item.setDisable(!able);
    item.setOnAction(event -> action.run());
    return item;
  }
}
