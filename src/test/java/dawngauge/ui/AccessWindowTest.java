package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * What takes the keyboard has a name that can be read out (WCAG 2.2, success criterion 4.1.2), and
 * can be left by it again (2.1.2).
 */
@Timeout(60)
class AccessWindowTest extends WindowTest {

  /** What has the keyboard's focus in turn but no name, as the class and its style. */
  private static List<String> nameless(OpenWindow open) {
    Set<Node> labeled = new HashSet<>();
    open.nodes(Label.class, label -> label.getLabelFor() != null)
        .forEach(label -> labeled.add(label.getLabelFor()));
    return open
        .nodes(
            Region.class,
            node ->
                (node.isFocusTraversable() || node instanceof TextInputControl)
                    && !(node instanceof ScrollPane)
                    && !(node instanceof SplitPane)
                    && !labeled.contains(node)
                    && !isNamed(node))
        .stream()
        .map(node -> node.getClass().getSimpleName() + " " + node.getStyleClass())
        .toList();
  }

  private static boolean isNamed(Node node) {
    String spoken = node.getAccessibleText();
    boolean written =
        node instanceof Labeled labeled
            && labeled.getText() != null
            && !labeled.getText().isBlank();
    return written || (spoken != null && !spoken.isBlank());
  }

  @Test
  void everyControlOfEveryPageHasAName() {
    OpenWindow open = open(demo());
    List<String> found = new ArrayList<>();
    assertThat(open.nodes(Control.class, Node::isFocusTraversable)).hasSizeGreaterThan(20);
    found.addAll(nameless(open));
    open.keys(KeyCode.SHORTCUT, KeyCode.M);
    found.addAll(nameless(open));
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    found.addAll(nameless(open));
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT4);
    open.until("the plan is there", () -> !open.texts("page-main").isEmpty());
    found.addAll(nameless(open));
    open.keys(KeyCode.SHORTCUT, KeyCode.L);
    found.addAll(nameless(open));
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    found.addAll(nameless(open));
    open.run(open.window::showFirst);
    found.addAll(nameless(open));
    assertThat(found.stream().distinct().toList()).isEmpty();
  }

  @Test
  void theKeyboardGoesAroundTheWholePageAndComesBack() {
    OpenWindow open = open(demo());
    assertThat(around(open))
        .anyMatch(style -> style.contains("text-field"))
        .anyMatch(style -> style.contains("toggle-button"))
        .anyMatch(style -> style.contains("verdict-part"))
        .anyMatch(style -> style.contains("trace"))
        .anyMatch(style -> style.contains("small-button"));
    open.keys(KeyCode.SHORTCUT, KeyCode.M);
    assertThat(around(open))
        .anyMatch(style -> style.contains("map-frame"))
        .anyMatch(style -> style.contains("toggle-button"));
  }

  /** Goes by Tab from the grid until it is back there; the styles of what it met. */
  private static List<String> around(OpenWindow open) {
    open.focusStop(0);
    Node first = open.grid();
    Set<Node> met = new HashSet<>();
    Node now = first;
    for (int i = 0; i < 400 && (i == 0 || now != first); i++) {
      met.add(now);
      open.keys(KeyCode.TAB);
      now = OpenWindow.onToolkit(() -> open.stage.getScene().getFocusOwner());
    }
    assertThat(now).as("it comes around").isSameAs(first);
    return met.stream().map(node -> node.getStyleClass().toString()).toList();
  }

  @Test
  void everyMenuItemHasWordsAndNoKeyIsGivenTwice() {
    OpenWindow open = open(demo());
    MenuBar bar = open.nodes(MenuBar.class, known -> true).get(0);
    List<MenuItem> items =
        bar.getMenus().stream().flatMap(menu -> menu.getItems().stream()).toList();
    List<String> keys =
        items.stream()
            .filter(item -> item.getAccelerator() != null)
            .map(item -> item.getAccelerator().getName())
            .toList();
    assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(15);
    assertThat(items)
        .filteredOn(item -> !item.getStyleClass().contains("separator-menu-item"))
        .filteredOn(item -> item.getClass() == MenuItem.class)
        .allMatch(item -> item.getText() != null && !item.getText().isBlank());
  }
}
