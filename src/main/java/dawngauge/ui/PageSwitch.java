package dawngauge.ui;

import dawngauge.ui.common.FirstField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;

/** The pages of the window and the buttons that show them; one of them is always pressed. */
final class PageSwitch {

  static final String ROUTE = "Route";
  static final String RIG = "Rig";
  static final String READINGS = "Readings";
  static final String REVIEW = "Review";

  private final BorderPane root;
  private final ToggleGroup group = new ToggleGroup();
  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
  private final Map<Toggle, Node> pages = new LinkedHashMap<>();
  private final Runnable turned;

  /**
   * Pages, of which none is chosen yet.
   *
   * @param root shows a page in its center
   * @param route the first one
   * @param turned is told after each press
   */
  PageSwitch(BorderPane root, Node route, Node rig, Node readings, Node review, Runnable turned) {
    this.root = root;
    this.turned = turned;
    add(ROUTE, route);
    add(RIG, rig);
    add(READINGS, readings);
    add(REVIEW, review);
    group.selectedToggleProperty().addListener(change -> pressed());
  }

  private void add(String name, Node page) {
    ToggleButton button = new ToggleButton(name);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setToggleGroup(group);
    buttons.put(name, button);
    pages.put(button, page);
  }

  /** The buttons in their order. */
  List<ToggleButton> buttons() {
    return new ArrayList<>(buttons.values());
  }

  /** Whether no page can be chosen, as on the first page. */
  ObservableValue<Boolean> closed() {
    return first().disabledProperty();
  }

  private ToggleButton first() {
    return buttons().get(0);
  }

  /** Chooses a page by its name; the first one where there is no such. */
  void choose(String name) {
    group.selectToggle(buttons.getOrDefault(name, first()));
  }

  /** Whether a page is chosen. */
  boolean isChosen(String name) {
    return group.getSelectedToggle() == buttons.get(name);
  }

  /** The name of the page that is shown; of the first one where it is none of them. */
  String shown() {
    return shownButton().getText();
  }

  private ToggleButton shownButton() {
    return buttons.values().stream()
        .filter(button -> pages.get(button) == root.getCenter())
        .findFirst()
        .orElse(first());
  }

  private void pressed() {
    if (group.getSelectedToggle() == null) {
      group.selectToggle(shownButton());
    } else {
      showChosen();
    }
    turned.run();
  }

  private void showChosen() {
    Node page = pages.get(group.getSelectedToggle());
    if (page != null) {
      show(page);
    }
  }

  /** Shows a page, whose first field gets the keyboard. */
  private void show(Node page) {
    boolean other = root.getCenter() != page;
    root.setCenter(page);
    if (other) {
      Platform.runLater(() -> FirstField.focus(page));
    }
  }

  /** Shows another page; until {@link #open} no page can be chosen. */
  void close(Node page) {
    show(page);
    buttons.values().forEach(button -> button.setDisable(true));
  }

  /** Shows the chosen page again, after another one; all can be chosen. */
  void open() {
    buttons.values().forEach(button -> button.setDisable(false));
    if (!pages.containsValue(root.getCenter())) {
      showChosen();
    }
  }
}
