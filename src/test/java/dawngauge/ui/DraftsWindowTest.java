package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.UserFolder;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** What is half typed survives a crash, is asked about, and is of its trip. */
class DraftsWindowTest extends WindowTest {

  private static final long CRASHED = 1000;
  private static final String AXLE = "trailer axle 1";
  private static final String READING = "Reading of pickup axle 1 left";
  private static final String TARGET = "Own target, cold of " + AXLE;

  private static void toRig(OpenWindow open) {
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    open.until("the rig is shown", () -> !open.buttons("+ trailer").isEmpty());
  }

  private static void unfold(OpenWindow open, String title) {
    open.nodes(ToggleButton.class, fold -> fold.getText().equals("▸ " + title))
        .forEach(fold -> open.run(() -> fold.setSelected(true)));
  }

  private static String first(OpenWindow open, String start) {
    return open.nodes(TextField.class, field -> spoken(field).startsWith(start))
        .get(0)
        .getAccessibleText();
  }

  private static String spoken(Node node) {
    return String.valueOf(node.getAccessibleText());
  }

  private static UserFolder kept(OpenWindow open, int drafts, UserFolder next) {
    open.until(
        "a copy is kept",
        () -> next.unsaved().stream().anyMatch(unsaved -> unsaved.drafts().size() == drafts));
    open.close(); // without any farewell: the program is gone
    return next;
  }

  private OpenWindow openedAgain(UserFolder userFolder) {
    OpenWindow again = open(planner().store().starterTrip().get(), userFolder);
    again.until("it is offered", () -> !again.buttons("Open them").isEmpty());
    return again;
  }

  /** Nothing is edited, only typed; in a vehicle, an axle, a tire, a gauge and a new label line. */
  @Test
  void whatWasHalfTypedOfTheRigComesBackIntoItsFields() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    toRig(open);
    String gauge = demo().rig().gauges().get(0).name();
    unfold(open, AXLE);
    unfold(open, gauge);
    String tread = first(open, "Tread of " + AXLE);
    String label = first(open, "Cold pressure of label line 2, " + AXLE);
    List<String> fields = List.of("Letter of pickup", TARGET, tread, label, "Step of " + gauge);
    List<String> texts = List.of("Qq", "7x", "half of it", "eighty", "1 q");
    for (int i = 0; i < fields.size(); i++) {
      open.write(fields.get(i), texts.get(i));
    }
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    UserFolder next = kept(open, fields.size(), userFolder(1));

    OpenWindow again = openedAgain(next);
    assertThat(again.texts("notice").toString()).contains(tread + ": half of it");
    again.press(again.buttons("Open them").get(0));
    assertThat(next.unsaved()).isEmpty();
    toRig(again);
    for (int i = 0; i < fields.size(); i++) {
      assertThat(again.field(fields.get(i)).getText()).isEqualTo(texts.get(i));
    }
    assertThat(again.texts("field-error").toString()).contains("7x", "half of it", "eighty");
    assertThat(again.document.trip().equals(demo())).as("nothing half typed is taken").isTrue();
  }

  private static void toReadings(OpenWindow open) {
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT5);
    open.until("a round is shown", () -> !roundStops(open).isEmpty());
  }

  @SuppressWarnings("unchecked")
  private static List<ChoiceBox<String>> roundStops(OpenWindow open) {
    return open.nodes(ChoiceBox.class, box -> spoken(box).equals("Stop of the round")).stream()
        .map(box -> (ChoiceBox<String>) box)
        .toList();
  }

  /** At the stop of its round, which is not the one where the crew is. */
  @Test
  void whatWasHalfTypedOfARoundComesBackAtItsStop() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    toReadings(open);
    open.run(() -> roundStops(open).get(0).setValue("8 Floydada TX"));
    open.write("Air as measured", "fifty");
    open.write(READING, "8o");
    open.run(() -> roundStops(open).get(0).setValue("2 Walsenburg CO"));
    assertThat(open.field(READING).getText()).as("of another stop").isEmpty();
    UserFolder next = kept(open, 2, userFolder(1));

    OpenWindow again = openedAgain(next);
    assertThat(again.texts("notice").toString()).contains(READING + ": 8o");
    again.press(again.buttons("Open them").get(0));
    toReadings(again);
    assertThat(roundStops(again).get(0).getValue()).isEqualTo("8 Floydada TX");
    assertThat(again.field(READING).getText()).isEqualTo("8o");
    assertThat(again.field("Air as measured").getText()).isEqualTo("fifty");
    assertThat(again.texts("field-error").toString()).contains("8o", "fifty");
    again.run(() -> again.document.unitsProperty().set(UnitSystem.SI));
    assertThat(again.field(READING).getText()).as("laid out in other units").isEqualTo("8o");
    again.answers.agrees = false;
    again.run(() -> again.window.saveTo(folder.resolve("haul.dawngauge")));
    assertThat(again.answers.asked).contains("without Air as measured: fifty, " + READING + ": 8o");
  }

  /** Another stop comes to stand at the place of the one whose round it is. */
  @Test
  void whatIsHalfTypedOfARoundStaysWithItsStop() {
    OpenWindow open = open(demo());
    toReadings(open);
    open.run(() -> roundStops(open).get(0).setValue("2 Walsenburg CO"));
    open.write(READING, "8o");
    open.run(() -> open.document.edit(RouteEdits.duplicate(open.document.trip(), 0)));
    open.until(
        "the stops have moved",
        () -> roundStops(open).get(0).getItems().contains("3 Walsenburg CO"));
    assertThat(open.field(READING).getText()).doesNotContain("o");
    open.run(() -> roundStops(open).get(0).setValue("3 Walsenburg CO"));
    assertThat(open.field(READING).getText()).isEqualTo("8o");
  }

  /** A copy was kept while only a part of the figure stood there. */
  @Test
  void whatIsTypedOnIsNotTakenBackToWhatACopyHasOfIt() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    open.write("Elevation", "46q");
    UserFolder next = userFolder(1);
    open.until("a copy is kept", () -> !next.unsaved().isEmpty());
    open.write("Elevation", "4600 ft");
    open.keys(KeyCode.ENTER);
    assertThat(open.field("Elevation").getText()).isEqualTo("4600 ft");
    assertThat(open.texts("field-error")).isEmpty();
  }

  /** It is there for a second crash, before the page of its field was ever looked at. */
  @Test
  void whatWaitsForItsFieldIsKeptAsWell() {
    OpenWindow open = open(demo(), userFolder(CRASHED));
    toRig(open);
    unfold(open, AXLE);
    open.write(TARGET, "7x");
    OpenWindow second = openedAgain(kept(open, 1, userFolder(CRASHED + 1)));
    second.press(second.buttons("Open them").get(0));
    second.press(second.buttons("Remove").get(0));
    Trip edited = second.document.trip();
    UserFolder next = userFolder(1);
    second.until(
        "a copy with the edit is kept",
        () -> next.unsaved().stream().anyMatch(copy -> next.open(copy).get().equals(edited)));
    second.close();
    OpenWindow third = openedAgain(next);
    third.press(third.buttons("Open them").get(0));
    toRig(third);
    assertThat(third.field(TARGET).getText()).isEqualTo("7x");
  }

  @Test
  void aDraftOfTheRigIsNamedBeforeASaveLosesIt() {
    OpenWindow open = open(demo());
    toRig(open);
    unfold(open, AXLE);
    open.write(TARGET, "7x");
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    Path file = folder.resolve("haul.dawngauge");
    open.answers.agrees = false;
    open.run(() -> open.window.saveTo(file));
    assertThat(open.answers.asked).contains("without " + TARGET + ": 7x");
    assertThat(file).doesNotExist();
  }

  /**
   * The other trip has the same stops and the same rig, so the fields stay; their drafts do not.
   */
  @Test
  void anotherTripDropsWhatWasHalfTypedInThisOne() throws IOException {
    Trip other = demo().withName("Another");
    Path file = Files.writeString(folder.resolve("other.dawngauge"), TripFile.text(other));
    OpenWindow open = open(demo());
    String elevation = open.field("Elevation").getText();
    open.write("Elevation", "46q");
    toRig(open);
    unfold(open, AXLE);
    open.write(TARGET, "7x");
    open.run(() -> open.window.open(file));
    open.until("it is open", () -> open.document.trip().equals(other));
    unfold(open, AXLE);
    assertThat(open.field(TARGET).getText()).isNotEqualTo("7x");
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    assertThat(open.field("Elevation").getText()).isEqualTo(elevation);
  }
}
