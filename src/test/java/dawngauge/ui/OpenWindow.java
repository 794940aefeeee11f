package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.settings.UserState;
import dawngauge.testdata.FakeWeatherAccess;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.RouteView;
import dawngauge.ui.route.StopGridPane;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import javafx.event.EventHandler;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A planner window on the screen, looked at and worked by mouse and keyboard. */
final class OpenWindow {

  private static final int PATIENCE_SECONDS = 60;

  final Stage stage;
  final TripDocument document;
  final PlannerWindow window;
  final FakeAsker answers = new FakeAsker();
  final FakeWeatherAccess weather = new FakeWeatherAccess();
  private final FxRobot robot = new FxRobot();

  private OpenWindow(Stage stage, UserFolder userFolder, TripDocument document) {
    this.stage = stage;
    this.document = document;
    this.window =
        new PlannerWindow(
            stage, WindowTest.planner(), userFolder, weather, document, answers, false);
    stage.setX(0);
    stage.setY(0);
    if (userFolder.state().window().equals(UserState.Window.FIRST)) {
      // As wide at twice its size, where it reaches beyond the screen, so that all is laid out
      // alike.
      stage.setMaxWidth(Double.MAX_VALUE);
      stage.setMaxHeight(Double.MAX_VALUE);
      stage.setWidth(UserState.Window.FIRST.width());
      stage.setHeight(UserState.Window.FIRST.height());
    }
    stage.show();
    stage.requestFocus();
  }

  /** Opens a window on a trip and waits until it is there. */
  static OpenWindow on(Planner planner, UserFolder userFolder, Trip trip) {
    OpenWindow open =
        onToolkit(() -> new OpenWindow(new Stage(), userFolder, new TripDocument(planner, trip)));
    open.until("the window has the keyboard", () -> open.stage.isFocused());
    open.until(
        "the page has the window's width",
        () ->
            Math.abs(open.stage.getWidth() - open.stage.getScene().getWidth())
                <= WindowPlace.FRAME_WIDTH);
    open.run(
        () -> {
          open.stage.getScene().getRoot().applyCss();
          open.stage.getScene().getRoot().layout();
        });
    WaitForAsyncUtils.waitForFxEvents();
    return open;
  }

  /** Runs on the toolkit's thread and waits for the answer. */
  static <T> T onToolkit(Callable<T> work) {
    return WaitForAsyncUtils.waitForAsyncFx(PATIENCE_SECONDS * 1000L, work);
  }

  /** Runs on the toolkit's thread. */
  void run(Runnable work) {
    onToolkit(
        () -> {
          work.run();
          document.settle();
          return true;
        });
  }

  void close() {
    run(stage::close);
  }

  /** Waits until something holds. */
  void until(String what, Callable<Boolean> condition) {
    try {
      WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, () -> onToolkit(condition));
    } catch (TimeoutException late) {
      throw new AssertionError("waited in vain until " + what, late);
    }
  }

  /** All nodes of a type on the page that are not hidden. */
  <T extends Node> List<T> nodes(Class<T> type, Predicate<T> wanted) {
    return onToolkit(
        () -> {
          document.settle();
          List<RouteView> routes = new ArrayList<>();
          gather(stage.getScene().getRoot(), RouteView.class, route -> true, routes);
          routes.forEach(RouteView::fields); // those of the chosen stop, a frame before they come
          List<T> found = new ArrayList<>();
          gather(stage.getScene().getRoot(), type, wanted, found);
          return found;
        });
  }

  private static <T extends Node> void gather(
      Node node, Class<T> type, Predicate<T> wanted, List<T> found) {
    if (!node.isVisible()) {
      return;
    }
    if (type.isInstance(node) && wanted.test(type.cast(node))) {
      found.add(type.cast(node));
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, type, wanted, found));
    }
  }

  /** The texts of the labels with a style class. */
  List<String> texts(String styleClass) {
    return nodes(Label.class, label -> label.getStyleClass().contains(styleClass)).stream()
        .map(Labeled::getText)
        .toList();
  }

  /** The figures in the tire table of the chosen stop, which is unfolded where there is one. */
  List<String> tireTable() {
    for (TitledPane tires : nodes(TitledPane.class, pane -> "Tires here".equals(pane.getText()))) {
      run(
          () -> {
            tires.setExpanded(true);
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
          });
    }
    return nodes(Button.class, button -> button.getStyleClass().contains("figure-button")).stream()
        .map(Labeled::getText)
        .toList();
  }

  /** The grid of stops and tires. */
  StopGridPane grid() {
    List<StopGridPane> found = nodes(StopGridPane.class, grid -> true);
    assertThat(found).as("the grid is seen").hasSize(1);
    return found.get(0);
  }

  /** How many stops are shown; none where the grid is not. */
  int stops() {
    return nodes(StopGridPane.class, grid -> true).stream()
        .mapToInt(StopGridPane::stops)
        .findFirst()
        .orElse(0);
  }

  /** What stands in a column of the grid: "stop", "time", "mark", a tire's short form. */
  List<String> column(String head) {
    StopGridPane grid = grid();
    return onToolkit(() -> grid.texts(head));
  }

  /** The number of the row that is shown as chosen, 0 first. */
  int chosen() {
    return stops() == 0 ? -1 : grid().chosen();
  }

  /** Chooses a stop and gives the grid the keyboard. */
  void focusStop(int row) {
    StopGridPane grid = grid();
    run(() -> grid.choose(row));
    focus(grid);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Where the name of a stop is on the screen. */
  private Point2D placeOf(int row) {
    StopGridPane grid = grid();
    return onToolkit(
        () -> {
          Bounds cell = grid.bounds(row, 1);
          return grid.localToScreen(cell.getMinX() + 20, cell.getCenterY());
        });
  }

  void clickStop(int row, KeyCode... held) {
    robot.press(held);
    robot.clickOn(placeOf(row), MouseButton.PRIMARY);
    robot.release(held);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Drags one stop to just above the middle of another. */
  void drag(int from, int onto) {
    Point2D end = placeOf(onto).subtract(0, 6);
    robot.drag(placeOf(from), MouseButton.PRIMARY).moveTo(end).drop();
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** A text field, by the name that is read out. */
  TextField field(String name) {
    List<TextField> found = nodes(TextField.class, field -> name.equals(field.getAccessibleText()));
    assertThat(found).as(name).hasSize(1);
    return found.get(0);
  }

  /** A button by what is written on it. */
  List<Button> buttons(String text) {
    return nodes(Button.class, button -> text.equals(button.getText()));
  }

  /** Whether the ground of the page is dark; on the toolkit's thread. */
  boolean isDark() {
    Region root = (Region) stage.getScene().getRoot();
    root.applyCss(); // a theme just changed has no ground until the next pulse
    return root.getBackground().getFills().get(0).getFill() instanceof Color ground
        && ground.getBrightness() < 0.5;
  }

  String onTitle() {
    return onToolkit(stage::getTitle);
  }

  void choosePaper(String name) {
    choose("Paper", name);
  }

  /** Chooses an item of a menu. */
  void choose(String menuName, String name) {
    MenuBar bar = nodes(MenuBar.class, known -> true).get(0);
    Menu menu =
        bar.getMenus().stream()
            .filter(known -> known.getText().equals(menuName))
            .findFirst()
            .orElseThrow();
    MenuItem item =
        menu.getItems().stream()
            .filter(known -> name.equals(known.getText()))
            .findFirst()
            .orElseThrow();
    run(item::fire);
  }

  void press(Button button) {
    run(button::fire);
  }

  void focus(Node node) {
    run(node::requestFocus);
    until("it has the keyboard", node::isFocused);
  }

  /** Puts a text into a field by keyboard in the place of what stood there. */
  void write(String fieldName, String text) {
    WaitForAsyncUtils.waitForFxEvents();
    TextField field = field(fieldName);
    focus(field);
    keys(KeyCode.SHORTCUT, KeyCode.A);
    untilWritten(
        field, "all of it is taken", () -> field.getSelectedText().equals(field.getText()));
    if (text.isEmpty()) {
      keys(KeyCode.DELETE);
    } else {
      type(field, text);
    }
    untilWritten(field, "the text is in", () -> field.getText().equals(text));
  }

  /** Types into a field of this window, whichever window the display thinks of as in front. */
  void type(TextInputControl field, String text) {
    until("it is laid out", () -> field.getSkin() != null); // before that it takes no keys
    run(
        () -> {
          for (int i = 0; i < text.length(); i++) {
            String letter = text.substring(i, i + 1);
            boolean next = "\n".equals(letter);
            field.fireEvent(
                new KeyEvent(
                    next ? KeyEvent.KEY_PRESSED : KeyEvent.KEY_TYPED,
                    letter,
                    letter,
                    next ? KeyCode.ENTER : KeyCode.UNDEFINED,
                    false,
                    false,
                    false,
                    false));
          }
        });
  }

  /** Waits for a field; what is told where that is in vain says where the keyboard was. */
  private void untilWritten(TextField field, String what, Callable<Boolean> condition) {
    try {
      until(what, condition);
    } catch (AssertionError vain) {
      String state =
          onToolkit(
              () ->
                  "the field holds “"
                      + field.getText()
                      + "”, on the page: "
                      + (field.getScene() == stage.getScene())
                      + ", the keyboard is at "
                      + stage.getScene().getFocusOwner()
                      + ", windows "
                      + Window.getWindows());
      throw new AssertionError(vain.getMessage() + ": " + state, vain);
    }
  }

  /** Strikes keys, the last while the ones before are held, and waits for what comes of it. */
  void keys(KeyCode... keys) {
    strike(keys);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /**
   * Strikes keys, the last while the ones before are held. All of it is sent before the window gets
   * to answer: a key that is held down while the window works is repeated by the display, and where
   * the answer takes longer than the repeat the key would never be let go.
   */
  void strike(KeyCode... keys) {
    CountDownLatch letGo = new CountDownLatch(keys.length);
    EventHandler<KeyEvent> counting = event -> letGo.countDown();
    run(
        () -> {
          stage.addEventFilter(KeyEvent.KEY_RELEASED, counting);
          Robot striking = new Robot();
          for (KeyCode key : keys) {
            striking.keyPress(real(key));
          }
          for (int i = keys.length - 1; i >= 0; i--) {
            striking.keyRelease(real(keys[i]));
          }
        });
    until("the keys were let go", () -> letGo.getCount() == 0);
    run(() -> stage.removeEventFilter(KeyEvent.KEY_RELEASED, counting));
  }

  private static KeyCode real(KeyCode key) {
    return key == KeyCode.SHORTCUT ? KeyCode.CONTROL : key;
  }

  void click(Node node) {
    robot.clickOn(node);
  }
}
