package dawngauge.ui;

import dawngauge.ui.common.FigureField;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import javafx.event.EventHandler;
import javafx.event.EventTarget;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.robot.Robot;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Fills a window in as a person does: one thing by keyboard alone, the next by mouse. */
final class ByHand {

  private final OpenWindow open;
  private boolean mouse;
  private final Robot striking = OpenWindow.onToolkit(Robot::new);

  ByHand(OpenWindow open) {
    this.open = open;
  }

  /** Types a text in the place of what stands in a field, and finishes it. */
  void type(TextInputControl field, String text) {
    reach(field);
    open.until("it has the keyboard", field::isFocused);
    open.strike(KeyCode.SHORTCUT, KeyCode.A);
    open.until("all of it is taken", () -> field.getSelectedText().equals(field.getText()));
    if (text.isEmpty()) {
      open.strike(KeyCode.DELETE);
    } else {
      open.type(field, text);
    }
    open.until(text + " is in", () -> field.getText().equals(text));
    if (field.getParent() instanceof FigureField<?> figure) {
      open.strike(KeyCode.ENTER);
      open.until(
          text + " is taken, or what it still needs is told",
          () -> figure.draft() == null || figure.message().isVisible());
      boolean refused =
          OpenWindow.onToolkit(
              () ->
                  figure.message().isVisible()
                      && figure.message().getStyleClass().contains("field-error"));
      if (refused) {
        throw new AssertionError(figure.name() + ": " + figure.message().getText());
      }
    }
  }

  /** Presses a button, a heading that folds, a round button. */
  void press(Node button) {
    reach(button);
    if (!mouse) {
      open.strike(KeyCode.SPACE);
    }
  }

  void tick(CheckBox box, boolean wanted) {
    if (OpenWindow.onToolkit(box::isSelected) != wanted) {
      press(box);
      open.until("it is ticked", () -> box.isSelected() == wanted);
    }
  }

  /** Chooses a word of a list. */
  <T> void choose(ChoiceBox<T> box, String word) {
    List<String> words =
        OpenWindow.onToolkit(
            () ->
                box.getItems().stream()
                    .map(
                        item ->
                            box.getConverter() == null
                                ? String.valueOf(item)
                                : box.getConverter().toString(item))
                    .toList());
    int wanted = words.indexOf(word);
    if (wanted < 0) {
      throw new AssertionError(word + " is not among " + words);
    }
    int now = OpenWindow.onToolkit(() -> box.getSelectionModel().getSelectedIndex());
    if (now == wanted) {
      return;
    }
    reach(box);
    if (mouse) {
      open.until("the choices are shown", box::isShowing);
      clickWord(word);
    } else {
      KeyCode way = wanted > now ? KeyCode.DOWN : KeyCode.UP;
      open.strike(KeyCode.SPACE);
      open.until("the choices are shown", box::isShowing);
      for (int i = 0; i < Math.abs(wanted - Math.max(0, now)) + (now < 0 ? 1 : 0); i++) {
        open.strike(way);
      }
      open.strike(KeyCode.ENTER);
    }
    open.until(word + " is chosen", () -> box.getSelectionModel().getSelectedIndex() == wanted);
  }

  /** Chooses a stop of the route. */
  void chooseStop(int index) {
    mouse = !mouse;
    if (mouse) {
      open.clickStop(index);
    } else {
      open.focusStop(0);
      for (int i = 0; i < index; i++) {
        open.strike(KeyCode.DOWN);
      }
    }
    open.until("stop " + index + " is chosen", () -> open.chosen() == index);
  }

  /** Ticks one of several. */
  void choose(MenuButton button, String word) {
    int wanted =
        OpenWindow.onToolkit(
            () -> button.getItems().stream().map(item -> item.getText()).toList().indexOf(word));
    if (((CheckMenuItem) button.getItems().get(wanted)).isSelected()) {
      return;
    }
    reach(button);
    if (mouse) {
      open.until("the choices are shown", button::isShowing);
      clickWord(word);
    } else {
      open.strike(KeyCode.SPACE);
      open.until("the choices are shown", button::isShowing);
      for (int i = 0; i < wanted + 1; i++) {
        open.strike(KeyCode.DOWN);
      }
      open.strike(KeyCode.ENTER);
    }
    open.until(
        word + " is ticked",
        () ->
            button.getItems().size() > wanted
                && ((CheckMenuItem) button.getItems().get(wanted)).isSelected());
  }

  /** Brings the keyboard to a node; by mouse, clicks it once it is in sight. */
  private void reach(Node node) {
    mouse = !mouse;
    if (node instanceof Control control) {
      open.until("it is laid out", () -> control.getSkin() != null);
    }
    if (mouse) {
      click(node);
    } else {
      open.focus(node);
    }
  }

  /** Clicks a node once it is in sight and stays where it is; a field until it has the keyboard. */
  private void click(Node node) {
    AtomicReference<Bounds> before = new AtomicReference<>();
    open.until(
        "it is under the mouse and stays there",
        () -> {
          scrollTo(node);
          Bounds place = node.localToScreen(node.getBoundsInLocal());
          boolean stays = place.equals(before.getAndSet(place));
          striking.mouseMove(place.getCenterX(), place.getCenterY());
          return stays && node.isHover();
        });
    AtomicReference<EventTarget> hit = new AtomicReference<>();
    EventHandler<MouseEvent> telling = event -> hit.set(event.getTarget());
    Window window = node.getScene().getWindow();
    open.run(
        () -> {
          window.addEventFilter(MouseEvent.MOUSE_RELEASED, telling);
          striking.mousePress(MouseButton.PRIMARY);
          striking.mouseRelease(MouseButton.PRIMARY);
        });
    open.until("it is clicked", () -> hit.get() != null);
    open.run(() -> window.removeEventFilter(MouseEvent.MOUSE_RELEASED, telling));
    if (!isWithin(hit.get(), node)) {
      throw new AssertionError("clicked " + hit.get() + ", not " + node);
    }
  }

  private static boolean isWithin(@Nullable EventTarget target, Node node) {
    Node at = target instanceof Node known ? known : null;
    while (at != null && at != node) {
      at = at.getParent();
    }
    return at == node;
  }

  /** Turns the wheel until a node is in sight. */
  private static void scrollTo(Node node) {
    for (Parent at = node.getParent(); at != null; at = at.getParent()) {
      if (at instanceof ScrollPane pane) {
        Node content = pane.getContent();
        pane.applyCss();
        pane.layout();
        Bounds place = content.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        double room = content.getBoundsInLocal().getHeight() - pane.getViewportBounds().getHeight();
        if (room > 0) {
          double middle = place.getCenterY() - pane.getViewportBounds().getHeight() / 2;
          pane.setVvalue(Math.max(0, Math.min(1, middle / room)));
          pane.layout();
        }
      }
    }
  }

  /** Clicks a word of the list that has just opened over the window. */
  private void clickWord(String word) {
    Node item =
        OpenWindow.onToolkit(
            () ->
                Window.getWindows().stream()
                    .filter(window -> window != open.stage && window.isShowing())
                    .map(window -> find(window.getScene().getRoot(), word))
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(word + " is not on any list")));
    click(item);
  }

  private static @Nullable Node find(Node node, String word) {
    if (node.getStyleClass().contains("menu-item")
        && node.lookup(".label") instanceof Label label
        && label.getText().equals(word)) {
      return node;
    }
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        Node found = find(child, word);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }
}
