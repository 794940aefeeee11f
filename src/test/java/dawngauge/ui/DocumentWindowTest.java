package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.UserFolder;
import dawngauge.quantity.UnitSystem;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The trip as a document: its file, a crash, other programs, what the program remembers. */
class DocumentWindowTest extends WindowTest {

  private static final long CRASHED = 1000;

  @Test
  void afterACrashTheEditsAreOfferedAndOpened() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    open.press(open.buttons("Remove").get(0));
    Trip edited = open.document.trip();
    open.write("Elevation", "abc");
    open.keys(KeyCode.ENTER);
    UserFolder next = userFolder(1);
    open.until("a copy is kept", () -> !next.unsaved().isEmpty());
    open.close(); // without any farewell: the program is gone

    OpenWindow again = open(planner().store().starterTrip().get(), next);
    again.until("it is offered", () -> !again.buttons("Open them").isEmpty());
    assertThat(again.texts("notice").toString()).contains("6 Apr 2027, 12:00", "not saved");
    again.press(again.buttons("Open them").get(0));
    assertThat(again.document.trip().equals(edited)).isTrue();
    assertThat(again.onTitle()).startsWith("• ");
    assertThat(next.unsaved()).isEmpty();
  }

  /** Nothing is edited, only typed: at two stops, of which the second is shown last. */
  @Test
  void whatWasHalfTypedComesBackIntoItsFields() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    choose(open, 2);
    open.write("Elevation", "46q");
    choose(open, 4);
    open.write("Elevation", "39");
    UserFolder next = userFolder(1);
    open.until(
        "a copy is kept",
        () -> next.unsaved().stream().anyMatch(unsaved -> unsaved.drafts().size() == 2));
    open.close(); // without any farewell: the program is gone

    OpenWindow again = open(planner().store().starterTrip().get(), next);
    again.until("it is offered", () -> !again.buttons("Open them").isEmpty());
    assertThat(again.texts("notice").toString()).contains("Elevation: 46q");
    again.press(again.buttons("Open them").get(0));
    assertThat(again.chosen()).isEqualTo(2);
    assertThat(again.field("Elevation").getText()).isEqualTo("46q");
    assertThat(again.texts("field-error").toString()).contains("46q");
    again.run(() -> again.grid().choose(4));
    assertThat(again.field("Elevation").getText()).isEqualTo("39");
    assertThat(again.document.trip().equals(demo())).as("nothing half typed is taken").isTrue();
  }

  private static void choose(OpenWindow open, int row) {
    open.focusStop(row);
    String place = open.document.trip().route().stops().get(row).place();
    open.until("its fields are there", () -> open.field("Place").getText().equals(place));
  }

  @Test
  void aCopyThatCannotBeReadStaysWhereItIs() throws IOException {
    Files.createDirectories(folder.resolve("unsaved"));
    Path copy =
        Files.writeString(folder.resolve("unsaved/unsaved-1000.dawngauge"), "{ no longer JSON");
    OpenWindow open = open(demo());
    open.until("it is offered", () -> !open.buttons("Open them").isEmpty());
    open.press(open.buttons("Open them").get(0));
    assertThat(open.texts("notice").toString()).contains("stays where it is", copy.toString());
    assertThat(copy).hasContent("{ no longer JSON");
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  @Test
  void anotherRunningProgramsCopyIsLeftAlone() {
    userFolder(7).keep(demo(), Optional.empty(), List.of());
    assertThat(userFolder(1).unsaved()).isEmpty();
    UserFolder.Draft typed = new UserFolder.Draft("s2", "Stay", "x");
    userFolder(CRASHED).keep(demo(), Optional.of(Path.of("haul.dawngauge")), List.of(typed));
    assertThat(userFolder(1).unsaved())
        .singleElement()
        .satisfies(
            unsaved -> {
              assertThat(unsaved.of()).hasValue(Path.of("haul.dawngauge").toAbsolutePath());
              assertThat(unsaved.drafts()).containsExactly(typed);
            });
  }

  @Test
  void theRigIsComparedWithItsLastTripFoundAmongTheFilesOpenedOfLate() {
    UserFolder userFolder = userFolder(1);
    userFolder.remember(state -> state.withRecent(DEMO.toAbsolutePath().toString()));
    OpenWindow open = open(demo(), userFolder);
    open.run(
        () ->
            open.nodes(MenuBar.class, bar -> true).get(0).getMenus().stream()
                .filter(menu -> menu.getText().equals("Rigs"))
                .flatMap(menu -> menu.getItems().stream())
                .filter(item -> "Compare with its last trip…".equals(item.getText()))
                .forEach(MenuItem::fire));
    open.until(
        "it is compared",
        () ->
            open.texts("rig-heading").stream()
                .anyMatch(text -> text.startsWith("Nothing of rig and way differs from “Spring")));
    // The fields come with the page's first layout, the heading above them before that.
    open.until(
        "the fields are there",
        () -> !open.nodes(TextField.class, f -> spoken(f).startsWith("Tread of")).isEmpty());
    String tread =
        open.nodes(TextField.class, f -> spoken(f).startsWith("Tread of"))
            .get(0)
            .getAccessibleText();
    open.write(tread, "5/32 in");
    open.keys(KeyCode.ENTER);
    open.until(
        "an edit is compared at once",
        () ->
            open.texts("rig-heading").stream()
                .anyMatch(text -> text.startsWith("1 figure differs")));
    open.press(open.nodes(Button.class, b -> spoken(b).startsWith("Close the comp")).get(0));
    assertThat(open.texts("rig-heading")).noneMatch(text -> text.contains("differs"));
  }

  private static String spoken(Node node) {
    return String.valueOf(node.getAccessibleText());
  }

  @Test
  void whatIsSavedLeavesNoCopyBehind() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    open.press(open.buttons("Remove").get(0));
    open.until("a copy is kept", () -> !userFolder(1).unsaved().isEmpty());
    open.run(() -> open.window.saveTo(folder.resolve("haul.dawngauge")));
    open.until("it is dropped", () -> userFolder(1).unsaved().isEmpty());
  }

  @Test
  void aFileThatAnotherProgramChangedIsNotReplacedUnasked() throws IOException {
    OpenWindow open = open(demo());
    Path file = folder.resolve("haul.dawngauge");
    open.run(() -> open.window.saveTo(file));
    String other = TripFile.text(demo()).replace("7543 ft", "7550 ft");
    Files.writeString(file, other);
    open.press(open.buttons("Remove").get(0));
    open.answers.agrees = false;
    open.keys(KeyCode.SHORTCUT, KeyCode.S);
    open.until("it is asked", () -> open.answers.asked.contains("replace haul.dawngauge"));
    assertThat(file).hasContent(other);
    open.answers.agrees = true;
    open.keys(KeyCode.SHORTCUT, KeyCode.S);
    open.until("it is saved", () -> !open.document.dirtyProperty().get());
    assertThat(planner().store().open(file).get().equals(open.document.trip())).isTrue();
  }

  @Test
  void aChangeOnDiskIsToldWhenTheWindowComesBack() throws IOException {
    OpenWindow open = open(demo());
    Path file = folder.resolve("haul.dawngauge");
    open.run(() -> open.window.saveTo(file));
    Files.writeString(file, TripFile.text(demo()).replace("7543 ft", "7550 ft"));
    Stage other = OpenWindow.onToolkit(Stage::new);
    open.run(other::show);
    open.until("the other window has the keyboard", other::isFocused);
    open.run(other::close);
    open.run(open.stage::requestFocus);
    open.until("it is told", () -> !open.buttons("Read it anew").isEmpty());
    open.press(open.buttons("Read it anew").get(0));
    open.until("it is read", () -> open.field("Elevation").getText().equals("7550 ft"));
    assertThat(open.buttons("Read it anew")).isEmpty();
  }

  @Test
  void draftsAreNamedBeforeASaveLosesThem() {
    OpenWindow open = open(demo());
    open.write("Elevation", "abc");
    open.keys(KeyCode.ENTER);
    Path file = folder.resolve("haul.dawngauge");
    open.answers.agrees = false;
    open.run(() -> open.window.saveTo(file));
    assertThat(open.answers.asked).contains("without Elevation: abc");
    assertThat(file).doesNotExist();
    open.answers.agrees = true;
    open.run(() -> open.window.saveTo(file));
    assertThat(file).exists();
  }

  @Test
  void theUserIsAskedBeforeEditsAreLost() throws IOException {
    Path file = Files.writeString(folder.resolve("other.dawngauge"), TripFile.text(demo()));
    OpenWindow open = open(demo());
    open.press(open.buttons("Remove").get(0));
    Trip edited = open.document.trip();
    open.answers.file = Optional.of(file);
    open.answers.leave = FileAsker.Leave.STAY;
    open.keys(KeyCode.SHORTCUT, KeyCode.O);
    open.until("it is asked", () -> open.answers.asked.contains("unsaved Spring fleece haul"));
    assertThat(open.document.trip().equals(edited)).isTrue();
    assertThat(open.onTitle()).contains("not saved");
    open.answers.leave = FileAsker.Leave.DROP;
    open.keys(KeyCode.SHORTCUT, KeyCode.O);
    open.until("it is open", () -> open.onTitle().contains("other.dawngauge"));
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  @Test
  void aDroppedFileOpensAndSeveralDoNot() throws IOException {
    Path file = Files.writeString(folder.resolve("other.dawngauge"), TripFile.text(demo()));
    OpenWindow open = open(planner().store().starterTrip().get());
    open.run(() -> open.window.dropped(List.of(file.toFile(), file.toFile())));
    assertThat(open.texts("notice").toString()).contains("one trip file at a time");
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until("it is open", () -> open.document.trip().equals(demo()));
  }

  @Test
  void anOlderFileIsToldUntilItIsSaved() throws IOException {
    String old = TripFile.text(demo()).replaceFirst("\"version\": 2", "\"version\": 1");
    Path file = Files.writeString(folder.resolve("older.dawngauge"), old);
    OpenWindow open = open(planner().store().starterTrip().get());
    open.run(() -> open.window.open(file));
    open.until("it is open", () -> open.document.trip().equals(demo()));
    assertThat(open.texts("notice").toString())
        .contains("older.dawngauge: the file has version 1", "keep a copy");
    assertThat(open.onTitle()).doesNotContain("not saved");
    open.run(() -> open.window.saveTo(file));
    assertThat(open.texts("notice").toString()).doesNotContain("version 1");
    assertThat(Files.readString(file)).isEqualTo(TripFile.text(demo()));
  }

  @Test
  void aTripOfANewerVersionIsNotSavedOver() throws IOException {
    String newer = TripFile.text(demo()).replaceFirst("\"version\": 2", "\"version\": 3");
    Path file = Files.writeString(folder.resolve("newer.dawngauge"), newer);
    OpenWindow open = open(demo());
    open.run(() -> open.window.saveTo(file));
    assertThat(open.texts("notice").toString()).contains("version 3", "save under another name");
    assertThat(Files.readString(file)).isEqualTo(newer);
  }

  @Test
  void recentFilesAreListedAndThoseThatAreGoneAreTakenOff() throws IOException {
    Path file = Files.writeString(folder.resolve("other.dawngauge"), TripFile.text(demo()));
    UserFolder userFolder = userFolder(1);
    OpenWindow open = open(planner().store().starterTrip().get(), userFolder);
    open.run(() -> open.window.open(file));
    open.until("it is listed", () -> userFolder.state().recent().equals(List.of(file.toString())));
    Files.delete(file);
    open.run(() -> item(open, "File", "Recent", file.toString()).fire());
    assertThat(open.texts("notice").toString()).contains("no longer there");
    assertThat(userFolder.state().recent()).isEmpty();
  }

  @Test
  void theWindowsStateIsRemembered() {
    UserFolder userFolder = userFolder(1);
    OpenWindow open = open(demo(), userFolder);
    open.keys(KeyCode.SHORTCUT, KeyCode.U);
    open.keys(KeyCode.SHORTCUT, KeyCode.D);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    open.until("the rig is shown", () -> open.stops() == 0);
    open.run(() -> open.stage.setWidth(1100));
    open.until("it is narrower", () -> open.stage.getScene().getWidth() == 1100);
    open.run(open.window::quit);
    OpenWindow again = open(demo(), userFolder(2));
    assertThat(again.stops()).isZero();
    assertThat(again.document.units()).isEqualTo(UnitSystem.SI);
    again.until("it is dark", again::isDark);
    assertThat(OpenWindow.<Double>onToolkit(() -> again.stage.getScene().getWidth()))
        .isEqualTo(1100);
  }

  @Test
  void aRigIsKeptAndTakenIntoAnotherTrip() {
    UserFolder userFolder = userFolder(1);
    OpenWindow open = open(demo(), userFolder);
    open.run(() -> item(open, "Rigs", "Keep this rig…").fire());
    open.until("it is kept", () -> !userFolder.rigs().get().isEmpty());
    Trip starter = planner().store().starterTrip().get();
    OpenWindow other = open(starter, userFolder);
    String name = "Kept  (kept 2027-04-06)";
    other.run(() -> item(other, "Rigs", "Take a kept rig", name).fire());
    assertThat(other.document.trip().rig().equals(demo().rig())).isTrue();
    assertThat(other.texts("notice").toString()).contains("kept today", "read them cold");
    other.run(() -> other.document.edit(other.document.trip().withName("Another")));
    other.press(other.buttons("Undo").get(0));
    assertThat(other.texts("notice").toString()).as("its edit is there").contains("kept today");
    other.press(other.buttons("Undo").get(0));
    assertThat(other.document.trip().equals(starter)).isTrue();
    assertThat(other.texts("notice").toString()).as("gone with it").doesNotContain("kept today");
  }

  @Test
  void helpExplainsTheWords() {
    OpenWindow open = open(demo());
    open.keys(KeyCode.F1);
    open.until("help is open", () -> help() != null);
    assertThat(
            OpenWindow.<Boolean>onToolkit(() -> says(Forecasts.known(help()), "settled pressure")))
        .isTrue();
    open.run(() -> Forecasts.known(help()).hide());
  }

  private static boolean says(Window window, String text) {
    return window.getScene().getRoot().lookupAll(".help-word").stream()
        .anyMatch(node -> node instanceof Label label && label.getText().equals(text));
  }

  private static @Nullable Window help() {
    return Window.getWindows().stream()
        .filter(window -> window instanceof Stage stage && stage.getTitle() != null)
        .filter(window -> ((Stage) window).getTitle().startsWith("Help"))
        .findFirst()
        .orElse(null);
  }

  private static MenuItem item(OpenWindow open, String menu, String... path) {
    MenuBar bar = open.nodes(MenuBar.class, any -> true).get(0);
    Menu found =
        bar.getMenus().stream().filter(m -> menu.equals(m.getText())).findFirst().orElseThrow();
    found.getOnShowing().handle(null);
    MenuItem item = found;
    for (String name : path) {
      item =
          ((Menu) item)
              .getItems().stream()
                  .filter(each -> name.equals(each.getText()))
                  .findFirst()
                  .orElseThrow();
    }
    return item;
  }
}
