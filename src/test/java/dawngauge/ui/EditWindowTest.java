package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.Forecasts;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Leg;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;

/** What is typed into the fields of a stop. */
class EditWindowTest extends WindowTest {

  private static final String HOLD_LIGHT = "#7a0c2e"; // -dg-hold of planner.css

  @Test
  void aSpeedChangesTheFiguresAndUndoBringsTheSameTripBack() {
    OpenWindow open = open(demo());
    List<String> clocks = open.column("time");
    open.write("Average speed", "40");
    open.keys(KeyCode.ENTER);
    open.until(
        "the speed is taken",
        () -> "40 mph".equals(Forecasts.known(leg(open, 0).averageSpeed()).text()));
    assertThat(open.column("time")).isNotEqualTo(clocks);
    Trip edited = open.document.trip();
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip()).isEqualTo(demo());
    assertThat(open.column("time")).isEqualTo(clocks);
    open.press(open.buttons("Redo").get(0));
    assertThat(open.document.trip()).isEqualTo(edited);
  }

  @Test
  void aPassByTheLegIsOfferedAndTaken() {
    Leg bare = demo().route().legs().get(0).withProfile(List.of());
    OpenWindow open = open(RouteEdits.withLeg(demo(), 0, bare));
    String question = "La Veta Pass, 9413 ft, 3 mi off the line: over it?";
    open.until("it is offered", () -> open.buttons(question).size() == 1);
    open.press(open.buttons(question).get(0));
    open.until("it is a point of the leg", () -> !leg(open, 0).profile().isEmpty());
    assertThat(leg(open, 0).profile().get(0).elevation().text()).isEqualTo("9413 ft");
    open.until("it is no longer offered", () -> open.buttons(question).isEmpty());
  }

  @Test
  void aStayMovesWhatFollows() {
    OpenWindow open = open(demo());
    choose(open, 1);
    List<String> clocks = open.column("time");
    open.write("Stay", "1 h 20 min");
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    List<String> later = open.column("time");
    assertThat(later.subList(0, 2)).isEqualTo(clocks.subList(0, 2));
    // 05:45 and 73 mi at 50 mph and 20 min: 07:32.6; 60 mi at 50 mph more: 08:44.6
    assertThat(clocks.get(2)).isEqualTo("08:45");
    assertThat(later.get(2)).isEqualTo("09:45");
    assertThat(open.texts("lesser")).anyMatch(text -> text.contains("07:13 to 08:33"));
  }

  @Test
  void aLowTemperatureChangesTheTires() {
    OpenWindow open = open(demo());
    open.focusStop(0);
    open.keys(KeyCode.DOWN);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    List<String> before = open.tireTable();
    open.write("Low", "2");
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    assertThat(open.tireTable()).hasSameSizeAs(before).isNotEqualTo(before);
    assertThat(airOf(open.document.trip(), "walsenburg")).containsExactly("2027-04-06 2 °F 49 °F");
  }

  @Test
  void oneDaysLowLeavesTheOtherDaysOfTheStopAsTheyAre() {
    OpenWindow open = open(demo());
    choose(open, 9);
    open.write("Low Wed 7 Apr", "40 °F");
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    assertThat(airOf(open.document.trip(), "graham"))
        .containsExactlyInAnyOrder("2027-04-07 40 °F 84 °F", "2027-04-08 70 °F 90 °F");
  }

  @Test
  void whatIsNoFigureStaysAsADraftAndTheTripKeepsItsOwn() {
    OpenWindow open = open(demo());
    open.write("Elevation", "abc");
    open.keys(KeyCode.ENTER);
    open.until("the error is shown", () -> !errors(open).isEmpty());
    assertThat(errors(open))
        .singleElement()
        .asString()
        .contains("abc", "elevation", "last valid: 7543 ft");
    assertThat(open.document.trip()).isEqualTo(demo());
    assertThat(open.field("Elevation").getText()).isEqualTo("abc");
    var label = open.nodes(Label.class, l -> l.getStyleClass().contains("field-error")).get(0);
    assertThat(label.getTextFill()).isEqualTo(Color.web(HOLD_LIGHT));
    open.keys(KeyCode.ESCAPE);
    open.until("the draft is dropped", () -> errors(open).isEmpty());
    assertThat(open.field("Elevation").getText()).isEqualTo("7543 ft");
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void aWrongUnitAndAnImpossibleFigureAreNamedWithWhatIsPossible() {
    OpenWindow open = open(demo());
    open.write("Elevation", "999 psi");
    open.keys(KeyCode.ENTER);
    open.until("the error is shown", () -> !errors(open).isEmpty());
    assertThat(errors(open)).singleElement().asString().contains("psi", "ft, m");
    open.write("Elevation", "99999 ft");
    open.keys(KeyCode.ENTER);
    open.until("the limit is named", () -> errors(open).toString().contains("19685"));
    open.write("Average speed", "0 mph");
    open.keys(KeyCode.ENTER);
    open.until("both stand there", () -> errors(open).size() == 2);
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void aDraftOutlivesAnEditBesideIt() {
    OpenWindow open = open(demo());
    open.write("Elevation", "abc");
    open.keys(KeyCode.ENTER);
    open.write("Average speed", "45");
    open.keys(KeyCode.ENTER);
    open.until("the speed is taken", () -> open.document.dirtyProperty().get());
    assertThat(open.field("Elevation").getText()).isEqualTo("abc");
    assertThat(errors(open)).hasSize(1);
  }

  @Test
  void whatIsTypedBelongsToItsStopAlthoughAnotherOneIsChosenMeanwhile() {
    OpenWindow open = open(demo());
    open.write("Place", "Alamosa yard");
    open.clickStop(1);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    assertThat(open.document.trip().route().stops().get(0).place()).isEqualTo("Alamosa yard");
    assertThat(open.document.trip().route().stops().get(1).place()).isEqualTo("Walsenburg CO");
  }

  @Test
  void aDraftOutlivesAVisitToAnotherStop() {
    OpenWindow open = open(demo());
    open.write("Elevation", "abc");
    open.clickStop(1);
    open.until("the second stop is chosen", () -> open.chosen() == 1);
    assertThat(errors(open)).isEmpty();
    open.clickStop(0);
    open.until("the first stop is chosen", () -> open.chosen() == 0);
    assertThat(open.field("Elevation").getText()).isEqualTo("abc");
    assertThat(errors(open)).hasSize(1);
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void tabGoesOnToTheNextFieldAfterAnEdit() {
    OpenWindow open = open(demo());
    open.write("Average speed", "45");
    open.keys(KeyCode.TAB);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    open.until("the next field has the keyboard", () -> "Top speed".equals(focused(open)));
  }

  @Test
  void aDistanceShortOfAPassOnTheLegIsRefused() {
    OpenWindow open = open(demo());
    open.write("Distance", "40 mi");
    open.keys(KeyCode.ENTER);
    open.until("the error is shown", () -> !errors(open).isEmpty());
    assertThat(errors(open)).singleElement().asString().contains("47 mi", "40 mi");
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void aStopIsInsertedByAPressThatEndsAnEdit() {
    OpenWindow open = open(demo());
    int stops = demo().route().stops().size();
    open.write("Place", "Alamosa yard");
    open.click(open.buttons("+ stop").get(0));
    open.until("the stop is there", () -> open.stops() == stops + 1);
    assertThat(open.document.trip().route().stops().get(0).place()).isEqualTo("Alamosa yard");
    assertThat(open.document.trip().route().stops().get(1).place()).isEqualTo("New stop");
  }

  @Test
  void theTripIsNamedAtTheHeadOfTheWindow() {
    OpenWindow open = open(demo());
    open.write("Trip name", "Fleece haul, second year");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is its name", () -> open.document.trip().name().equals("Fleece haul, second year"));
    assertThat(open.onTitle()).contains("Fleece haul, second year");
    open.write("Trip name", "");
    open.keys(KeyCode.ENTER);
    open.until("an empty one is refused", () -> !errors(open).isEmpty());
    assertThat(errors(open)).singleElement().asString().contains("no name");
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  /** Readings before the departure belong to the start only where the rig stood there by then. */
  @Test
  void sinceWhenTheRigStandsAtTheStartIsTypedWhereNothingStood() {
    Stop start = demo().route().stops().get(0);
    OpenWindow open = open(RouteEdits.withStop(demo(), 0, start.withTimes(null, start.leave())));
    open.write("Arrival time", "04:45");
    open.keys(KeyCode.ENTER);
    open.until("it is as it was", () -> open.document.trip().equals(demo()));
  }

  @Test
  void aKindIsChosen() {
    OpenWindow open = open(demo());
    choose(open, 1);
    ChoiceBox<?> kind =
        open.nodes(ChoiceBox.class, box -> "Kind of stop".equals(box.getAccessibleText())).get(0);
    open.focus(kind);
    open.keys(KeyCode.SPACE);
    open.until("the choices are shown", kind::isShowing);
    open.keys(KeyCode.DOWN);
    open.keys(KeyCode.ENTER);
    open.until("it is an edit", () -> open.document.dirtyProperty().get());
    assertThat(open.document.trip().route().stops().get(1).kind().word()).isNotEqualTo("rest");
  }

  private static void choose(OpenWindow open, int stop) {
    open.focusStop(0);
    for (int i = 0; i < stop; i++) {
      open.keys(KeyCode.DOWN);
    }
    open.until("the stop is chosen", () -> open.chosen() == stop);
  }

  private static String focused(OpenWindow open) {
    Node owner = open.stage.getScene().getFocusOwner();
    return owner instanceof TextField field ? field.getAccessibleText() : String.valueOf(owner);
  }

  private static Leg leg(OpenWindow open, int index) {
    return open.document.trip().route().legs().get(index);
  }

  private static List<String> airOf(Trip trip, String stop) {
    return trip.ambient().stream()
        .filter(entry -> entry.stop().equals(stop))
        .map(AmbientEntry::figure)
        .map(
            figure ->
                figure instanceof AmbientEntry.LowHigh day
                    ? day.date() + " " + day.low().text() + " " + day.high().text()
                    : figure.toString())
        .toList();
  }

  private static List<String> errors(OpenWindow open) {
    return open.texts("field-error");
  }
}
