package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.page.Page;
import dawngauge.testdata.Pages;
import dawngauge.ui.common.Look;
import dawngauge.ui.common.PageView;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;

/** The window shows every block of a page, and gives its text away. */
class PagesWindowTest extends WindowTest {

  private static PageView shown(Stage stage, Page page) {
    BooleanProperty dark = new SimpleBooleanProperty(false);
    PageView view = new PageView("Test", dark);
    Scene scene = new Scene(view, 700, 800);
    Look.rule(scene);
    stage.setScene(scene);
    view.show(page);
    stage.show();
    view.applyCss();
    view.layout();
    return view;
  }

  private static void gather(Node node, List<Node> found) {
    found.add(node);
    if (node instanceof TitledPane pane && !pane.isExpanded()) {
      found.add(new Label(pane.getText()));
      gather(pane.getContent(), found);
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, found));
    }
  }

  private static List<String> labels(PageView view) {
    List<Node> found = new ArrayList<>();
    gather(view, found);
    return found.stream()
        .filter(Label.class::isInstance)
        .map(node -> ((Label) node).getText())
        .toList();
  }

  @Test
  void everyTextOfEveryPageIsThere() {
    List<Page> pages = Pages.all();
    assertThat(pages).hasSizeGreaterThan(3);
    for (Page page : pages) {
      List<String> shown =
          OpenWindow.onToolkit(
              () -> {
                Stage stage = new Stage();
                List<String> texts = labels(shown(stage, page));
                stage.close();
                return texts;
              });
      assertThat(shown)
          .as(page.title())
          .containsAll(Pages.said(page).stream().filter(text -> !text.isEmpty()).toList());
    }
  }

  @Test
  void whatStandsBehindTheRestIsFolded() {
    List<Node> found = new ArrayList<>();
    OpenWindow.onToolkit(
        () -> {
          Stage stage = new Stage();
          gather(shown(stage, Pages.everyBlock()), found);
          stage.close();
          return true;
        });
    assertThat(found.stream().filter(TitledPane.class::isInstance))
        .hasSize(2)
        .allMatch(pane -> !((TitledPane) pane).isExpanded());
  }

  @Test
  void allOfItIsCopiedByKeyboard() {
    String copied =
        OpenWindow.onToolkit(
            () -> {
              Stage stage = new Stage();
              PageView view = shown(stage, Pages.everyBlock());
              view.fireEvent(key(KeyCode.A));
              view.fireEvent(key(KeyCode.C));
              stage.close();
              return Clipboard.getSystemClipboard().getString();
            });
    assertThat(copied)
        .startsWith("main note\ncard title\nfirst thing to do\n")
        .contains("\nhead of words\thead of figures\nfirst row\t12.5\n")
        .endsWith("caution of the page");
  }

  @Test
  void aPartIsSelectedByMouseFromLetterToLetter() {
    String copied =
        OpenWindow.onToolkit(
            () -> {
              Stage stage = new Stage();
              PageView view = shown(stage, Pages.everyBlock());
              List<Node> found = new ArrayList<>();
              gather(view, found);
              Label first = label(found, "first thing to do");
              Label second = label(found, "second thing");
              fire(view, MouseEvent.MOUSE_PRESSED, first, first.getWidth());
              fire(view, MouseEvent.MOUSE_DRAGGED, second, 0);
              fire(view, MouseEvent.MOUSE_DRAGGED, second, second.getWidth());
              view.fireEvent(key(KeyCode.C));
              stage.close();
              return Clipboard.getSystemClipboard().getString();
            });
    assertThat(copied).isEqualTo("\nsecond thing");
  }

  private static Label label(List<Node> nodes, String text) {
    return nodes.stream()
        .filter(Label.class::isInstance)
        .map(Label.class::cast)
        .filter(label -> label.getText().equals(text))
        .findFirst()
        .orElseThrow();
  }

  private static KeyEvent key(KeyCode code) {
    return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false);
  }

  private static void fire(
      PageView view, javafx.event.EventType<MouseEvent> type, Label at, double x) {
    var scene = at.localToScene(x, at.getHeight() / 2);
    view.fireEvent(
        new MouseEvent(
            type,
            scene.getX(),
            scene.getY(),
            scene.getX(),
            scene.getY(),
            MouseButton.PRIMARY,
            1,
            false,
            false,
            false,
            false,
            true,
            false,
            false,
            true,
            false,
            true,
            null));
  }
}
