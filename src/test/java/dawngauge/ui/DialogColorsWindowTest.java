package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.UserFolder;
import dawngauge.settings.UserState;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Control;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Dialogs, menus, lists and tips are windows of their own. In both themes all their text has a
 * contrast of at least 4.5:1 against its ground (WCAG 2.1, 2018, success criterion 1.4.3), and no
 * colour that a style sheet asks for is missing.
 */
class DialogColorsWindowTest extends WindowTest {

  @Retention(RetentionPolicy.RUNTIME)
  @ParameterizedTest
  @EnumSource(
      value = UserState.Theme.class,
      names = {"LIGHT", "DARK"})
  private @interface InBothThemes {}

  private static final double TEXT = 4.5;

  /** Held here, as the logging library forgets a logger that nobody holds. */
  private static final Logger CSS = Logger.getLogger("javafx.css");

  private final Queue<String> warned = new ConcurrentLinkedQueue<>();

  private final Handler listener =
      new Handler() {
        @Override
        public void publish(LogRecord said) {
          warned.add(said.getMessage());
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
      };

  @BeforeEach
  void listenToStyles() {
    CSS.addHandler(listener);
  }

  @AfterEach
  void nothingWasMissing() {
    CSS.removeHandler(listener);
    assertThat(warned).as("warnings about style sheets").isEmpty();
  }

  @InBothThemes
  void questions(UserState.Theme theme) {
    OpenWindow open = open(theme);
    DialogAsker asker = new DialogAsker(open.stage);
    asked(open, () -> asker.unsaved("Spring fleece haul"), "not saved", "Do not save", "Cancel");
    asked(open, () -> asker.saveWithout(List.of("Stay: x")), "Stay: x", "Go back");
    asked(
        open,
        () -> asker.replaceChanged("a.dawngauge"),
        "another program",
        "Replace it",
        "Keep the file");
    asked(open, () -> asker.rigName("six-axle set"), "Name of the rig", "six-axle set");
    asked(
        open,
        () -> asker.agree("Weather", List.of("What is sent", "And where"), "x", "No address: x"),
        "What is sent",
        "No address: x",
        "I agree");
  }

  /** Enter takes the answer that loses nothing. */
  @Test
  void theDefaultOfAConflictLosesNothing() {
    OpenWindow open = open(UserState.Theme.LIGHT);
    DialogAsker asker = new DialogAsker(open.stage);
    assertThat(defaultOf(open, () -> asker.replaceChanged("a.dawngauge")))
        .isEqualTo("Keep the file");
    assertThat(defaultOf(open, () -> asker.saveWithout(List.of("Stay: x")))).isEqualTo("Go back");
    assertThat(defaultOf(open, () -> asker.unsaved("Spring fleece haul"))).isEqualTo("Save");
  }

  private static String defaultOf(OpenWindow open, Runnable question) {
    Platform.runLater(question);
    Window dialog = popped(open);
    String text =
        OpenWindow.onToolkit(
            () ->
                dialog.getScene().getRoot().lookupAll(".button").stream()
                    .filter(node -> node instanceof Button button && button.isDefaultButton())
                    .map(node -> ((Button) node).getText())
                    .collect(Collectors.joining(", ")));
    open.run(dialog::hide);
    open.until("it is closed", () -> others(open).isEmpty());
    return text;
  }

  @InBothThemes
  void aboutAndHelp(UserState.Theme theme) {
    OpenWindow open = open(theme);
    open.run(open.window::help);
    Window words = popped(open);
    read(open, words, "Cautions", "Keys", "Words");
    open.run(words::hide);
    Menu help = menus(open).get(menus(open).size() - 1);
    MenuItem about = help.getItems().get(help.getItems().size() - 1);
    asked(
        open, about::fire, "About Dawngauge", "Apache License 2.0", "GeoNames", "OpenJFX", "Close");
  }

  @InBothThemes
  void menusOfTheBarAndOfAField(UserState.Theme theme) {
    OpenWindow open = open(theme);
    for (Menu menu : menus(open)) {
      open.run(menu::show);
      read(open, popped(open), enabled(menu));
      open.run(menu::hide);
    }
    TextField field = open.field("Elevation");
    ContextMenu own = new ContextMenu(new MenuItem("Paste here"));
    open.run(() -> own.show(field, 200, 200));
    read(open, popped(open), "Paste here");
    open.run(own::hide);
  }

  @InBothThemes
  void listsOfChoices(UserState.Theme theme) {
    OpenWindow open = open(theme);
    ChoiceBox<?> kind =
        open.nodes(ChoiceBox.class, box -> "Kind of stop".equals(box.getAccessibleText())).get(0);
    open.run(kind::show);
    read(open, popped(open), "waypoint");
    open.run(kind::hide);
    open.run(open.window::showRig);
    open.until("the rig is shown", () -> !open.nodes(ChoiceBox.class, any -> true).isEmpty());
    ToggleButton axle =
        open.nodes(ToggleButton.class, fold -> fold.getText().startsWith("▸ trailer axle 1"))
            .get(0);
    open.run(
        () -> {
          axle.setSelected(true);
          axle.getScene().getRoot().applyCss();
          axle.getScene().getRoot().layout();
        });
    ChoiceBox<?> choice =
        open.nodes(
                ChoiceBox.class,
                box -> "Class of label line 1, trailer axle 1".equals(box.getAccessibleText()))
            .get(0);
    open.run(choice::show);
    read(open, popped(open), "special trailer");
    open.run(choice::hide);
    MenuButton copy =
        open.nodes(MenuButton.class, known -> "Copy to".equals(known.getText())).get(0);
    open.run(copy::show);
    read(open, popped(open), "all tires of this axle");
    open.run(copy::hide);
  }

  @InBothThemes
  void placesOfferedAndTips(UserState.Theme theme) {
    OpenWindow open = open(theme);
    open.write("Place", "Gunnison");
    open.until("places are offered", () -> !others(open).isEmpty());
    read(open, popped(open), "Down and Enter take a place");
    open.keys(KeyCode.ESCAPE);
    open.until("the list is closed", () -> others(open).isEmpty());
    List<Control> all = open.nodes(Control.class, DialogColorsWindowTest::isTipped);
    assertThat(all).isNotEmpty();
    for (Control tipped : all) {
      Tooltip tip = tipped.getTooltip();
      open.run(() -> tip.show(tipped, 300, 300));
      read(open, popped(open), tip.getText().strip());
      open.run(tip::hide);
    }
  }

  @InBothThemes
  void theMonthOfATime(UserState.Theme theme) {
    OpenWindow open = open(theme);
    open.focus(open.field("Leaving time"));
    open.keys(KeyCode.ALT, KeyCode.DOWN);
    read(open, popped(open), "April 2027", "Sun", "30", "Tue 6 Apr 2027");
  }

  /** Whether pointing at a control gives it a tip. */
  private static boolean isTipped(Control control) {
    control.fireEvent(
        new MouseEvent(
            MouseEvent.MOUSE_ENTERED,
            0,
            0,
            0,
            0,
            MouseButton.NONE,
            0,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            null));
    return control.getTooltip() != null;
  }

  private OpenWindow open(UserState.Theme theme) {
    UserFolder userFolder = userFolder(1);
    userFolder.remember(state -> state.withTheme(theme));
    return open(demo(), userFolder);
  }

  private static List<Menu> menus(OpenWindow open) {
    return List.copyOf(open.nodes(MenuBar.class, known -> true).get(0).getMenus());
  }

  private static String[] enabled(Menu menu) {
    return menu.getItems().stream()
        .filter(item -> !item.isDisable() && item.getText() != null)
        .map(item -> item.getText())
        .toArray(String[]::new);
  }

  /** Asks a question that waits for its answer, reads it and closes it. */
  private static void asked(OpenWindow open, Runnable question, String... words) {
    Platform.runLater(question);
    Window dialog = popped(open);
    read(open, dialog, words);
    open.run(dialog::hide);
    open.until("it is closed", () -> others(open).isEmpty());
  }

  private static List<Window> others(OpenWindow open) {
    return Window.getWindows().stream()
        .filter(window -> window.isShowing() && window != open.stage)
        .toList();
  }

  /** The one other window, as soon as it is there. */
  private static Window popped(OpenWindow open) {
    open.until("a window has come", () -> others(open).size() == 1);
    return OpenWindow.onToolkit(() -> others(open).get(0));
  }

  private static void read(OpenWindow open, Window shown, String... words) {
    open.until(
        "it has its size and shows " + List.of(words),
        () -> List.of(words).stream().allMatch(all(texts(shown))::contains));
    List<TextOnGround> texts = OpenWindow.onToolkit(() -> texts(shown));
    assertThat(texts).isNotEmpty();
    assertThat(texts)
        .allSatisfy(
            text -> assertThat(text.contrast()).as("%s", text).isGreaterThanOrEqualTo(TEXT));
  }

  /** What is written in a window, once it is laid out in the size that it has by now. */
  private static List<TextOnGround> texts(Window shown) {
    shown.getScene().getRoot().applyCss();
    shown.getScene().getRoot().layout();
    return TextOnGround.of(shown.getScene());
  }

  private static String all(List<TextOnGround> texts) {
    return String.join("\n", texts.stream().map(TextOnGround::words).toList());
  }
}
