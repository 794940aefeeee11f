package dawngauge.ui.common;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TitledPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Path;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * Text of labels that stand among each other is selected as one: from a letter to a letter by
 * mouse, all by Ctrl+A; Ctrl+C copies it, cells of a row with tabs between them.
 */
final class TextSelection {

  private static final KeyCombination ALL =
      new KeyCodeCombination(KeyCode.A, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination COPY =
      new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN);

  private final Region owner;
  private final Parent content;
  private final Pane shade = new Pane();
  private List<Label> labels = List.of();
  private @Nullable Place from;
  private @Nullable Place to;

  /**
   * A letter.
   *
   * @param label number of the label
   * @param letter its place there
   */
  private record Place(int label, int letter) {
    boolean isBefore(Place other) {
      return label < other.label || (label == other.label && letter < other.letter);
    }
  }

  /**
   * Nothing selected.
   *
   * @param owner takes the keyboard and holds content and shade
   * @param content in which the labels are
   */
  TextSelection(Region owner, Parent content) {
    this.owner = owner;
    this.content = content;
    shade.setMouseTransparent(true);
    shade.setManaged(false);
    owner.setFocusTraversable(true);
    owner.addEventHandler(MouseEvent.MOUSE_PRESSED, this::begin);
    owner.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::reach);
    owner.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    owner.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, this::menu);
    owner.layoutBoundsProperty().addListener(change -> shade());
  }

  /** Lies over the content and shows what is selected. */
  Pane shade() {
    List<Path> shapes = new ArrayList<>();
    Place first = first();
    Place last = last();
    for (int i = 0; first != null && last != null && i < labels.size(); i++) {
      Text text = text(labels.get(i));
      int end = end(i, last);
      if (text != null && i >= first.label() && start(i, first) < end) {
        Path path = new Path(text.rangeShape(start(i, first), end));
        Point2D corner = owner.sceneToLocal(text.localToScene(0, 0));
        path.setLayoutX(corner.getX());
        path.setLayoutY(corner.getY());
        path.getStyleClass().add("selected-text");
        shapes.add(path);
      }
    }
    shade.getChildren().setAll(shapes);
    return shade;
  }

  void clear() {
    from = null;
    to = null;
    labels = List.of();
    shade();
  }

  private @Nullable Place first() {
    return from == null || to == null || from.isBefore(to) ? from : to;
  }

  private @Nullable Place last() {
    return from == null || to == null || from.isBefore(to) ? to : from;
  }

  private static int start(int label, Place first) {
    return label == first.label() ? first.letter() : 0;
  }

  private int end(int label, Place last) {
    return label > last.label()
        ? 0
        : label == last.label() ? last.letter() : labels.get(label).getText().length();
  }

  private void begin(MouseEvent event) {
    if (event.getButton() == MouseButton.PRIMARY && !inTitle(event.getTarget())) {
      owner.requestFocus();
      labels = seen();
      from = at(event.getSceneX(), event.getSceneY());
      to = from;
      shade();
    }
  }

  private void reach(MouseEvent event) {
    if (event.getButton() == MouseButton.PRIMARY && from != null) {
      to = at(event.getSceneX(), event.getSceneY());
      shade();
      event.consume();
    }
  }

  private static boolean inTitle(Object target) {
    for (Node node = target instanceof Node hit ? hit : null;
        node != null;
        node = node.getParent()) {
      if (node.getStyleClass().contains("title")) {
        return true;
      }
    }
    return false;
  }

  private void key(KeyEvent event) {
    if (ALL.match(event)) {
      all();
      event.consume();
    } else if (COPY.match(event)) {
      copy();
      event.consume();
    }
  }

  private void menu(ContextMenuEvent event) {
    MenuItem copy = new MenuItem("Copy");
    copy.setDisable(selected().isEmpty());
    copy.setOnAction(chosen -> copy());
    MenuItem all = new MenuItem("Select all");
    all.setOnAction(chosen -> all());
    ContextMenu menu = new ContextMenu(copy, all);
    menu.show(owner, event.getScreenX(), event.getScreenY());
    event.consume();
  }

  private void all() {
    labels = seen();
    if (!labels.isEmpty()) {
      from = new Place(0, 0);
      to = new Place(labels.size() - 1, labels.get(labels.size() - 1).getText().length());
    }
    shade();
  }

  private void copy() {
    String text = selected();
    if (!text.isEmpty()) {
      ClipboardContent put = new ClipboardContent();
      put.putString(text);
      Clipboard.getSystemClipboard().setContent(put);
    }
  }

  /** What is selected, a line a label, cells of a row with tabs between them. */
  String selected() {
    Place first = first();
    Place last = last();
    StringBuilder text = new StringBuilder();
    for (int i = 0; first != null && last != null && i < labels.size(); i++) {
      if (i >= first.label() && i <= last.label()) {
        boolean sameRow = i > first.label() && row(labels.get(i)).equals(row(labels.get(i - 1)));
        text.append(i == first.label() ? "" : sameRow ? "\t" : "\n")
            .append(
                labels.get(i).getText(), start(i, first), Math.max(start(i, first), end(i, last)));
      }
    }
    return text.toString();
  }

  /** The same of labels in one row of a table. */
  private static Object row(Label label) {
    Integer row = GridPane.getRowIndex(label);
    return row == null ? label : List.of(System.identityHashCode(label.getParent()), row);
  }

  /** Labels that can be seen, in order. */
  private List<Label> seen() {
    List<Label> found = new ArrayList<>();
    gather(content, found);
    return found;
  }

  private static void gather(Parent parent, List<Label> found) {
    for (Node child : parent.getChildrenUnmodifiable()) {
      if (child instanceof Label label) {
        found.add(label);
      } else if (child instanceof TitledPane pane) {
        if (pane.isExpanded() && pane.getContent() instanceof Parent inside) {
          gather(inside, found);
        }
      } else if (child instanceof Parent inside && child.isVisible()) {
        gather(inside, found);
      }
    }
  }

  /** The letter next to a point: of the label there, else of the last one that begins before it. */
  private @Nullable Place at(double sceneX, double sceneY) {
    Place place = labels.isEmpty() ? null : new Place(0, 0);
    for (int i = 0; i < labels.size(); i++) {
      Label label = labels.get(i);
      Bounds bounds = label.localToScene(label.getLayoutBounds());
      if (bounds.getMinY() > sceneY || (bounds.getMaxY() >= sceneY && bounds.getMinX() > sceneX)) {
        continue;
      }
      Text text = text(label);
      int letter =
          text == null || bounds.getMaxY() < sceneY
              ? label.getText().length()
              : text.hitTest(text.sceneToLocal(sceneX, sceneY)).getInsertionIndex();
      place = new Place(i, Math.min(letter, label.getText().length()));
    }
    return place;
  }

  private static @Nullable Text text(Label label) {
    return label.lookup(".text") instanceof Text text ? text : null;
  }
}
