package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.AmbientSource;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.problem.Outcome;
import dawngauge.settings.SettingsFile;
import dawngauge.ui.common.Tasks;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import javafx.event.Event;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.Clipboard;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What goes wrong beside the window's thread is seen, kept, and can be copied. */
class FailuresWindowTest extends WindowTest {

  private final List<String> told = new CopyOnWriteArrayList<>();

  @AfterEach
  void stopTelling() {
    Tasks.onUncaught(wrong -> {});
  }

  @Test
  void whatGoesWrongInShortWorkIsToldAndKept() {
    OpenWindow open = open(demo());
    Tasks.compute(
        () -> {
          throw new IllegalStateException("planted at Quanah TX");
        },
        result -> told.add("done"),
        wrong -> told.add(String.valueOf(wrong.getMessage())));
    open.until("it is told", () -> told.equals(List.of("planted at Quanah TX")));
    assertThat(userFolder(1).failures().text())
        .contains("java.lang.IllegalStateException", "FailuresWindowTest")
        .doesNotContain("Quanah");
  }

  /** An error is no exception, and ends the thread that works unless it is caught. */
  @Test
  void anErrorOfTheCodeIsToldTooAndTheNextWorkIsDone() {
    OpenWindow open = open(demo());
    Tasks.compute(
        () -> {
          throw new NoClassDefFoundError("planted");
        },
        result -> told.add("done"),
        wrong -> told.add("wrong"));
    Tasks.compute(() -> "next", told::add, wrong -> told.add("wrong"));
    open.until("both are told", () -> told.equals(List.of("wrong", "next")));
  }

  /** The plan of this morning is computed beside the window: it fails, and its line says so. */
  @Test
  void thePageSaysSoWhereTheAnswerWouldStand() {
    AmbientSource source =
        needs -> {
          if (Thread.currentThread().getName().equals("dawngauge-work")) {
            throw new IllegalStateException("planted");
          }
          return Outcome.of(Map.of());
        };
    Planner planner = new Planner(SettingsFile.defaults(), List.of(source));
    UserFolder userFolder = userFolder(1);
    OpenWindow open = open(planner, demo(), userFolder);
    open.run(open.window::showReadings);
    open.run(open.window::arrivedNow);
    open.until("it is said", () -> says(open, "planted"));
    open.run(open.window::leftNow);
    open.until("it stays said", () -> says(open, "planted"));
    assertThat(userFolder.failures().text()).contains("FailuresWindowTest");
  }

  @Test
  void whatNobodyCaughtIsToldInTheWindow() {
    OpenWindow open = open(demo());
    open.run(() -> open.window.tellFault(new IllegalStateException("planted")));
    assertThat(open.texts("notice")).anyMatch(text -> text.contains("a fault of the program"));
    Tasks.onUncaught(wrong -> told.add(String.valueOf(wrong.getMessage())));
    Thread thread =
        new Thread(
            () -> {
              throw new IllegalStateException("on a thread of its own");
            });
    thread.start();
    open.until("it is told", () -> told.equals(List.of("on a thread of its own")));
  }

  @Test
  void itCanBeCopiedOnceThereIsSomething() {
    UserFolder userFolder = userFolder(1);
    OpenWindow open = open(demo(), userFolder);
    MenuItem copy = shown(open);
    assertThat(copy.isDisable()).isTrue();
    assertThat(copy.getText()).isEqualTo("Copy what went wrong: nothing did so far");
    userFolder.failures().keep(new IllegalStateException("planted"));
    copy = shown(open);
    assertThat(copy.isDisable()).isFalse();
    open.choose("Help", "Copy what went wrong");
    assertThat(OpenWindow.onToolkit(() -> Clipboard.getSystemClipboard().getString()))
        .contains("java.lang.IllegalStateException");
    assertThat(open.texts("notice")).anyMatch(text -> text.contains("in the clipboard"));
  }

  private static boolean says(OpenWindow open, String word) {
    return !open.nodes(
            Label.class,
            label ->
                label.getText() != null
                    && label.getText().contains("went wrong")
                    && label.getText().contains(word))
        .isEmpty();
  }

  private static MenuItem shown(OpenWindow open) {
    return OpenWindow.onToolkit(
        () -> {
          Menu help = menu(open);
          Event.fireEvent(help, new Event(Menu.ON_SHOWING));
          return help.getItems().get(1);
        });
  }

  private static Menu menu(OpenWindow open) {
    MenuBar bar = open.nodes(MenuBar.class, known -> true).get(0);
    return bar.getMenus().get(bar.getMenus().size() - 1);
  }
}
