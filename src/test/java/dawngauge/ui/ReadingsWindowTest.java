package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** On the road: a round by keyboard, actual times by one key, wheels and notes. */
class ReadingsWindowTest extends WindowTest {

  private static final Path AUTUMN = Path.of("demo-data", "autumn-stock-haul.dawngauge");

  private OpenWindow readings(Trip trip) {
    OpenWindow open = open(trip);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT5);
    open.until(
        "the page is there",
        () ->
            !open.nodes(TextField.class, field -> spoken(field).startsWith("Reading of"))
                .isEmpty());
    return open;
  }

  private static String spoken(Node node) {
    return String.valueOf(node.getAccessibleText());
  }

  private static List<LogEvent.Reading> warm(OpenWindow open) {
    return open.document.trip().log().stream()
        .filter(LogEvent.Reading.class::isInstance)
        .map(LogEvent.Reading.class::cast)
        .filter(reading -> reading.state() == ReadingState.WARM)
        .toList();
  }

  private static void goTo(OpenWindow open, String stop) {
    open.run(
        () -> {
          @SuppressWarnings("unchecked")
          ChoiceBox<String> box =
              (ChoiceBox<String>)
                  open.nodes(ChoiceBox.class, b -> spoken(b).equals("Stop of the round")).get(0);
          box.setValue(stop);
        });
  }

  /** From any page one key tells what to do about a flat tire; it follows tire and stop. */
  @Test
  void aFlatTireIsAKeyAway() {
    OpenWindow open = open(planner().store().open(AUTUMN).get());
    open.keys(KeyCode.F4);
    open.until(
        "the page is there, its first choice has the keyboard",
        () ->
            open.stage.getScene().getFocusOwner() instanceof ComboBox<?> box
                && spoken(box).equals("Tire that is flat"));
    assertThat(pageTexts(open)).anyMatch(text -> text.contains("No other tire stands for it"));
    open.run(
        () ->
            open.nodes(ComboBox.class, box -> spoken(box).equals("Tire that is flat"))
                .get(0)
                .getSelectionModel()
                .select(position(open.document.trip(), "t1l")));
    assertThat(pageTexts(open))
        .anyMatch(text -> text.contains("R1 fits by its figures"))
        .anyMatch(text -> text.contains("t2l cannot be shown to carry both"));
  }

  /** Asked once a round, where tires are cold and the sun is up. */
  @Test
  void theSunnySideIsNotedWithItsReadings() {
    OpenWindow open = readings(demo());
    assertThat(suns(open)).isEmpty(); // at Alamosa it is still dark
    goTo(open, "8 Floydada TX");
    open.run(() -> suns(open).get(0).setValue("the left side"));
    for (String side : List.of("left", "right")) {
      open.write("Reading of trailer axle 1 " + side, "80 psi");
      open.keys(KeyCode.ENTER);
    }
    assertThat(
            open.document.trip().log().stream()
                .filter(LogEvent.Reading.class::isInstance)
                .map(LogEvent.Reading.class::cast)
                .filter(reading -> reading.time().clock().getDayOfMonth() == 7)
                .map(LogEvent.Reading::state))
        .containsExactly(ReadingState.COLD_IN_SUN, ReadingState.COLD);
    goTo(open, "1 Alamosa CO");
    goTo(open, "8 Floydada TX");
    assertThat(suns(open).get(0).getValue()).isEqualTo("the left side");
  }

  @SuppressWarnings("unchecked")
  private static List<ChoiceBox<String>> suns(OpenWindow open) {
    return open
        .nodes(ChoiceBox.class, box -> spoken(box).equals("Side of the rig in the sun"))
        .stream()
        .map(box -> (ChoiceBox<String>) box)
        .toList();
  }

  private static int position(Trip trip, String shortForm) {
    return trip.rig().positions().stream().map(trip.rig()::shortForm).toList().indexOf(shortForm);
  }

  private static List<String> pageTexts(OpenWindow open) {
    return open.nodes(Label.class, label -> true).stream().map(Label::getText).toList();
  }

  @Test
  void tenTiresAreReadByFigureAndEnterAloneAndTheLowOneSaysWhatToDoNow() {
    OpenWindow open = readings(demo());
    goTo(open, "2 Walsenburg CO");
    List<TextField> fields =
        open.nodes(TextField.class, field -> spoken(field).startsWith("Reading of"));
    assertThat(fields).hasSize(10);
    open.write("Reading of pickup axle 1 left", "64");
    open.keys(KeyCode.ENTER);
    List<String> figures = List.of("64", "70", "64", "70", "70", "86", "86", "86");
    for (int i = 0; i < figures.size(); i++) {
      TextField field = fields.get(i + 1);
      String figure = figures.get(i);
      open.until("Enter led on", field::isFocused);
      open.type(field, figure);
      open.until("the figure is in", () -> field.getText().equals(figure));
      open.keys(KeyCode.ENTER);
    }
    open.until("the last one has the keyboard", () -> fields.get(9).isFocused());
    assertThat(warm(open)).hasSize(9);
    assertThat(warm(open).get(0).pressure().text()).isEqualTo("64 psi");
    // One minute a tire from five minutes after the arrival at 07:13 on.
    assertThat(warm(open).get(0).time().text()).startsWith("2027-04-06T07:17");
    assertThat(warm(open).get(8).time().text()).startsWith("2027-04-06T07:25");

    // 58 warm is less than 80 % of 80 cold: live, before it is taken.
    open.type(fields.get(9), "58");
    open.until(
        "what to do is told",
        () ->
            open.texts("figure-line").stream().anyMatch(text -> text.contains("do not just add")));
    assertThat(open.texts("figure-line").toString()).contains("this one alone is lower");
    assertThat(warm(open)).hasSize(9);
    open.keys(KeyCode.ENTER);
    open.until("it is taken", () -> warm(open).size() == 10);
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("and undone", () -> warm(open).size() == 9);
  }

  /** At Dalhart, reached at 12:29, t2r is to have 80 psi cold; it is the tenth to be read. */
  @Test
  void aLowTireIsAnsweredWithTheFigureOfItsMinute() {
    OpenWindow open = readings(demo());
    goTo(open, "5 Dalhart TX");
    open.until(
        "its tires are there",
        () ->
            !open.nodes(TextField.class, f -> spoken(f).equals("Reading of trailer axle 2 right"))
                .isEmpty());
    open.write("Reading of trailer axle 2 right", "78");
    open.until("the figure is told", () -> !open.texts("set-now").isEmpty());
    assertThat(open.texts("set-now"))
        .containsExactly(
            "Add 8 psi: to 86 psi until 12:48, 80 psi cold. Let no air out of it warm.");
    open.keys(KeyCode.ENTER);
    open.write("Set to, trailer axle 2 right", "84");
    open.keys(KeyCode.ENTER);
    open.until(
        "what was set is noted with its minute",
        () ->
            open.document.trip().log().stream()
                .filter(LogEvent.Adjustment.class::isInstance)
                .anyMatch(event -> event.time().text().startsWith("2027-04-06T12:42")));
  }

  @Test
  void aFigureBeyondTheScaleOfTheGaugeIsRefusedAndAnEmptiedOneGoes() {
    OpenWindow open = readings(demo());
    int before = open.document.trip().log().size();
    open.write("Reading of pickup axle 1 left", "999");
    open.keys(KeyCode.TAB);
    open.until("it is refused", () -> open.texts("field-error").size() == 1);
    assertThat(open.texts("field-error").get(0)).contains("999 psi", "203.05 psi");
    open.write("Reading of pickup axle 1 left", "");
    open.keys(KeyCode.TAB);
    open.until("the reading is gone", () -> open.document.trip().log().size() == before - 1);
  }

  @Test
  void leavingAndArrivingAreNotedByOneKeyAndTheRestShifts() {
    // The clock of the test says 12:00 UTC, 06:00 in Alamosa: a quarter of an hour late.
    OpenWindow open = readings(demo());
    open.keys(KeyCode.F8);
    open.until(
        "it is on the way",
        () ->
            open.texts("crew-where")
                .toString()
                .contains("On the way to Walsenburg CO since 06:00"));
    open.until(
        "it is told that it is late",
        () ->
            open.texts("crew-changed")
                .toString()
                .contains("15 min later than this morning's plan"));
    assertThat(open.document.trip().log().get(open.document.trip().log().size() - 1))
        .isInstanceOf(LogEvent.Left.class);
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until(
        "undone", () -> open.texts("crew-where").toString().contains("At Alamosa CO, not left"));
  }

  @Test
  void aWheelIsChangedAndANoteIsTaken() {
    OpenWindow open = readings(demo());
    open.press(open.buttons("Wheel changed").get(0));
    open.until(
        "it is in the log",
        () -> open.texts("log-line").stream().anyMatch(text -> text.contains("S1 on")));
    open.write("Note", "nail in the tread");
    open.keys(KeyCode.ENTER);
    open.until(
        "the note too",
        () -> open.texts("log-line").stream().anyMatch(text -> text.equals("nail in the tread")));
  }

  @Test
  void aTableOfOursIsTakenAndWhatIsNotSoundIsListed() throws IOException {
    OpenWindow open = readings(demo());
    int before = open.document.trip().log().size();
    Path file =
        Files.writeString(
            folder.resolve("round.csv"),
            """
            time,tire,pressure,state
            2027-04-06 07:20,t1l,86,warm
            2027-04-06 07:21,t1r,999,warm
            2027-04-06 07:22,t9l,86,warm
            2027-04-06 07:23,t2l,86.5,warm
            """);
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until("two are taken", () -> open.document.trip().log().size() == before + 2);
    open.until("two are listed", () -> open.texts("left-out").size() == 2);
    assertThat(open.texts("left-out").get(0)).startsWith("line 3: “999”");
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("undo takes them out", () -> open.document.trip().log().size() == before);
  }

  @Test
  void anotherTableAsksOnceWhatIsWhat() throws IOException {
    OpenWindow open = readings(demo());
    int before = open.document.trip().log().size();
    StringBuilder rows = new StringBuilder("stamp;t1l kPa;t1r kPa\n");
    for (int i = 0; i < 60; i++) {
      rows.append(String.format(Locale.ROOT, "2027-04-06 07:%02d;590,0;591,5%n", i));
    }
    Path file = Files.writeString(folder.resolve("recorder.csv"), rows);
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until("it asks", () -> !open.buttons("Take the readings").isEmpty());
    assertThat(open.buttons("Take the readings").get(0).isDisabled()).isFalse();
    open.press(open.buttons("Take the readings").get(0));
    open.until("one median a tire is taken", () -> open.document.trip().log().size() == before + 2);
    assertThat(warm(open)).allMatch(reading -> reading.pressure().text().endsWith("kPa"));
    assertThat(userFolder(1).tableLayout("stamp|t1l kPa|t1r kPa").orElse(""))
        .contains("pressure of t1l", "kPa");
  }

  /** A round in the morning of a stop at which there are readings of the evening. */
  @Test
  void whatIsExpectedInARoundIsThatOfItsOwnTime() {
    Trip logged =
        planner().store().open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge")).get();
    OpenWindow open = readings(logged);
    open.until(
        "the crew's stop is shown",
        () -> open.texts("crew-where").toString().contains("Weatherford"));
    open.until("ranges are there", () -> open.texts("round-expected").size() == 10);
    for (String range : open.texts("round-expected")) {
      assertThat(range).matches("[6-9]\\d–[6-9]\\d|\\d\\d–1\\d\\d");
    }
    open.write("Reading of trailer axle 1 left", "84");
    open.until(
        "it is held against what was expected then",
        () -> open.texts("figure-line").stream().anyMatch(text -> text.contains("in 9 of 10")));
    open.until(
        "it is near to that, once both figures are typed",
        () ->
            open.texts("round-off").stream()
                .anyMatch(text -> text.matches("[+-][0-4]\\.\\d psi, .*")));
  }
}
