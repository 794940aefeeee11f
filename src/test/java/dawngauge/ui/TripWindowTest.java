package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole trip: its stops, its file, how it is shown. */
class TripWindowTest extends WindowTest {

  private static final String UNITS = "Switch units: psi, °F, mi or bar, °C, km";

  @Test
  void otherUnitsChangeWhatIsShownAndNothingElse() {
    OpenWindow open = open(demo());
    List<String> table = open.tireTable();
    List<String> figures = open.column("t2r");
    open.choose("View", UNITS);
    assertThat(open.column("t2r")).hasSameSizeAs(figures).isNotEqualTo(figures);
    assertThat(open.tireTable()).isNotEmpty().isNotEqualTo(table);
    assertThat(open.texts("lesser").toString()).contains("°C", " m").doesNotContain("°F", " ft ");
    assertThat(open.field("Elevation").getText()).isEqualTo("7543 ft"); // as it was typed
    assertThat(open.document.trip()).isEqualTo(demo());
    assertThat(TripFile.text(open.document.trip())).isEqualTo(TripFile.text(demo()));
    assertThat(open.document.dirtyProperty().get()).isFalse();
    open.choose("View", UNITS);
    assertThat(open.column("t2r")).isEqualTo(figures);
    assertThat(open.tireTable()).isEqualTo(table);
  }

  @Test
  void darkAndLight() {
    OpenWindow open = open(demo());
    List<String> table = open.tireTable();
    open.until("it is light", () -> !open.isDark());
    open.keys(KeyCode.SHORTCUT, KeyCode.D);
    open.until("it is dark", open::isDark);
    assertThat(open.tireTable()).isEqualTo(table);
    open.choose("View", "Switch light and dark");
    open.until("it is light again", () -> !open.isDark());
  }

  @Test
  void aStopIsAddedAndRemovedAndUndone() {
    OpenWindow open = open(demo());
    int stops = demo().route().stops().size();
    assertThat(open.buttons("+ stop")).hasSize(1);
    open.press(open.buttons("+ stop").get(0));
    assertThat(open.stops()).isEqualTo(stops + 1);
    assertThat(open.chosen()).isEqualTo(1);
    assertThat(open.texts("chosen-stop")).containsExactly("New stop");
    open.press(open.buttons("Remove").get(0));
    assertThat(open.document.trip().route().stops()).isEqualTo(demo().route().stops());
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("the stop is back", () -> open.stops() == stops + 1);
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip()).isEqualTo(demo());
    assertThat(open.buttons("Undo").get(0).isDisabled()).isTrue();
  }

  @Test
  void theWayIsReversed() {
    OpenWindow open = open(demo());
    menu(open, "Edit", "Reverse the route");
    assertThat(open.column("stop")).startsWith("Childress TX").endsWith("Alamosa CO");
    assertThat(open.nodes(TitledPane.class, pane -> true).get(0).getText())
        .startsWith("Missing or assumed");
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void savedItIsNoLongerMarkedAndOpensAgainTheSame(@TempDir Path folder) {
    OpenWindow open = open(demo());
    Path file = folder.resolve("haul.dawngauge");
    open.press(open.buttons("Remove").get(0));
    Trip edited = open.document.trip();
    assertThat(open.onTitle()).startsWith("• ").contains("not saved");
    open.run(() -> open.window.saveTo(file));
    assertThat(open.onTitle()).isEqualTo("Spring fleece haul (haul.dawngauge) – Dawngauge");
    assertThat(planner().store().open(file).get()).isEqualTo(edited);
    OpenWindow other = open(demo());
    other.run(() -> other.window.open(file));
    other.until("it is open", () -> other.document.trip().equals(edited));
    assertThat(other.onTitle()).contains("haul.dawngauge");
    assertThat(other.texts("notice")).isEmpty();
  }

  @Test
  void aBrokenFileIsToldAndTheTripStays(@TempDir Path folder) throws IOException {
    OpenWindow open = open(demo());
    open.press(open.buttons("Remove").get(0));
    Trip edited = open.document.trip();
    String broken = TripFile.text(demo()).replace("\"7543 ft\"", "\"7543 psi\"");
    Path file = Files.writeString(folder.resolve("broken.dawngauge"), broken);
    open.run(() -> open.window.open(file));
    open.until("it is told", () -> !open.texts("notice").isEmpty());
    assertThat(open.texts("notice"))
        .singleElement()
        .asString()
        .startsWith("broken.dawngauge: ")
        .contains("/route/stops/0/elevation", "psi");
    assertThat(open.document.trip()).isEqualTo(edited);
    assertThat(open.onTitle()).startsWith("• ");
    assertThat(Files.readString(file)).isEqualTo(broken);
  }

  @Test
  void whatCouldNotBeOpenedAgainIsNotSavedAndSaysWhy(@TempDir Path folder) {
    OpenWindow open = open(demo());
    open.write("Leaving time", "2027-04-08 05:45");
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    open.run(() -> open.window.saveTo(folder.resolve("late.dawngauge")));
    assertThat(open.texts("notice")).singleElement().asString().contains("is earlier than");
    assertThat(folder.resolve("late.dawngauge")).doesNotExist();
    assertThat(open.document.dirtyProperty().get()).isTrue();
  }

  @Test
  void sixtyStopsOpen() {
    Trips trips = Trips.of(RigBuilder.trailer());
    for (int i = 0; i < 60; i++) {
      StopBuilder stop = StopBuilder.stop("stop " + i).steady("60 °F");
      trips.stop(i == 0 ? stop.leaves("2027-06-01T06:00Z") : stop.stays(Duration.ofMinutes(15)));
    }
    OpenWindow open = open(trips.readAll("2027-06-01T05:50Z", "80 psi").trip());
    assertThat(open.stops()).isEqualTo(60);
    open.focusStop(58);
    open.keys(KeyCode.DOWN);
    open.until("the last stop is chosen", () -> open.chosen() == 59);
    assertThat(open.tireTable()).isNotEmpty();
  }

  @Test
  void theStarterOpensAndSaysWhatIsMissing() {
    OpenWindow open = open(planner().store().starterTrip().get());
    assertThat(open.column("stop")).containsExactly("Home", "Show");
    TitledPane missing = open.nodes(TitledPane.class, pane -> true).get(0);
    assertThat(missing.getText()).matches("Missing or assumed( \\([0-9]+\\))?: .*departure.*");
    open.run(() -> missing.setExpanded(true));
    assertThat(open.nodes(Label.class, label -> label.getText().contains("departure")))
        .isNotEmpty();
    assertThat(open.tireTable()).isEmpty();
    open.write("Leaving time", "2027-04-06 05:45");
    open.keys(KeyCode.ENTER);
    open.until("it has a time", () -> open.document.planned().advice() != null);
    assertThat(open.column("time")).contains("05:45");
  }

  @Test
  void aVeryLongNameIsShownAndKept() {
    String name =
        "Behind the water tower and the sale barn at the old county road ".repeat(40).strip();
    Stop first = demo().route().stops().get(0);
    Trip trip =
        RouteEdits.withStop(
            demo(),
            0,
            new Stop(
                first.id(),
                name,
                first.kind(),
                first.coordinate(),
                first.elevation(),
                first.zone(),
                first.stay(),
                first.arrive(),
                first.leave(),
                first.air(),
                first.loadChanges(),
                first.remarks()));
    OpenWindow open = open(trip);
    assertThat(open.texts("chosen-stop").get(0)).hasSizeLessThan(400).endsWith("…");
    assertThat(name).startsWith(open.texts("chosen-stop").get(0).replace("…", ""));
    assertThat(open.column("stop").get(0)).isEqualTo(name);
    assertThat(open.field("Place").getText()).isEqualTo(name);
    open.keys(KeyCode.SHORTCUT, KeyCode.D);
    open.until("it is dark", open::isDark);
    assertThat(open.document.trip()).isEqualTo(trip);
  }

  /** Warmth goes along only where that is agreed to, and is dropped again by a button. */
  @Test
  void theNextTripKeepsHowWarmTiresRanOnceAsked() {
    Trip logged =
        planner().store().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
    OpenWindow open = open(logged);
    open.answers.leave = FileAsker.Leave.DROP;
    menu(open, "File", "Start the next trip from this one");
    open.until("the next trip is there", () -> open.document.trip().log().isEmpty());
    assertThat(open.answers.asked)
        .anySatisfy(text -> assertThat(text).startsWith("heat By their warm"));
    Tire kept = open.document.trip().rig().tire("T1").orElseThrow();
    assertThat(kept.heatRecord()).isNotNull();
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT5);
    Predicate<Button> forget = button -> "Forget it".equals(button.getText());
    open.until("it is told", () -> !open.nodes(Button.class, forget).isEmpty());
    open.run(() -> open.nodes(Button.class, forget).get(0).fire());
    open.until("it is gone", () -> open.nodes(Button.class, forget).isEmpty());
    assertThat(open.document.trip().rig().tire("T1").orElseThrow().heatRecord()).isNull();
  }

  private static void menu(OpenWindow open, String menu, String item) {
    MenuBar bar = open.nodes(MenuBar.class, any -> true).get(0);
    MenuItem found =
        bar.getMenus().stream()
            .filter(each -> menu.equals(each.getText()))
            .flatMap(each -> each.getItems().stream())
            .filter(each -> item.equals(each.getText()))
            .findFirst()
            .orElseThrow();
    open.run(found::fire);
  }
}
