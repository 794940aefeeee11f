package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Popup;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;

/** From an empty page to a first forecast, by keyboard. */
class FirstStartWindowTest extends WindowTest {

  private OpenWindow first() {
    OpenWindow open = open(planner().store().starterTrip().get());
    open.run(open.window::showFirst);
    open.until("the page is there", () -> !open.texts("first-title").isEmpty());
    return open;
  }

  @Test
  void aDozenEntriesAtTheMostGiveAForecastAndATrip() {
    OpenWindow open = first();
    assertThat(open.texts("first-line")).hasSize(3);
    assertThat(fill(open)).isLessThanOrEqualTo(12);
    open.until("a forecast is there", () -> !open.texts("first-summary").isEmpty());
    open.until("it has a margin", () -> open.texts("lesser").toString().contains("load margin +"));
    open.until("it can be taken", () -> !goOn(open).isDisabled());
    open.press(goOn(open));
    Trip trip = open.document.trip();
    assertThat(trip.route().stops()).hasSize(2);
    assertThat(trip.rig().tires()).hasSize(4);
    assertThat(open.stops()).isEqualTo(2);
    assertThat(open.onTitle()).startsWith("• ");
  }

  @Test
  void halfTypedAndImpossibleFiguresAreMarkedAndNothingElseChanges() {
    OpenWindow open = first();
    open.write("Cold reading", "78 p");
    open.keys(KeyCode.TAB);
    open.until("the error is shown", () -> !open.texts("field-error").isEmpty());
    open.write("Load on the sidewall", "-5 lb");
    open.keys(KeyCode.TAB);
    open.until("both are marked", () -> open.texts("field-error").size() == 2);
    assertThat(open.texts("first-line").toString()).contains("cold reading");
    assertThat(goOn(open).isDisabled()).isTrue();
  }

  /** The window's clock stands at 2027-04-06. */
  @Test
  void aTimeAloneIsOfTheDayShown() {
    OpenWindow open = first();
    fill(open);
    open.write("Departure", "5:00");
    open.keys(KeyCode.TAB);
    open.until(
        "the day is shown with it",
        () -> open.field("Departure").getText().equals("2027-04-07 05:00"));
    open.write("Departure", "2027-05-01 07:30");
    open.keys(KeyCode.TAB);
    open.write("Departure", "4:15");
    open.press(goOn(open)); // what is typed is taken on going on
    open.until("the route is there", () -> open.stops() == 2);
    TypedTime leave = Forecasts.known(open.document.trip().route().stops().get(0).leave());
    assertThat(leave.time().toLocalDateTime()).hasToString("2027-05-01T04:15");
  }

  @Test
  void aRefusedEntryIsNotLeftBehind() {
    OpenWindow open = first();
    fill(open);
    open.write("Departure", "5 o'clock");
    open.keys(KeyCode.TAB);
    open.until("it can be taken", () -> !goOn(open).isDisabled());
    open.press(goOn(open));
    open.until(
        "it is told",
        () ->
            open.texts("field-error").stream()
                .anyMatch(text -> text.contains("“5 o'clock” cannot be taken")));
    assertThat(open.texts("first-title")).isNotEmpty();
    assertThat(open.field("Departure").getText()).isEqualTo("5 o'clock");
    assertThat(open.field("Departure").isFocused()).isTrue();
    open.keys(KeyCode.ESCAPE);
    open.until("it is dropped", () -> open.field("Departure").getText().isEmpty());
    open.press(goOn(open));
    open.until("the route is there", () -> open.stops() == 2);
  }

  @Test
  void examplesAreInTheUnitsShown() {
    OpenWindow open = first();
    for (String[] each :
        new String[][] {
          {"Low of the day", "15 °F", "-9 °C"},
          {"Load on the sidewall", "3520 lb", "1597 kg"},
          {"Cold reading", "78 psi", "5.4 bar"},
        }) {
      assertThat(open.field(each[0]).getPromptText()).isEqualTo(each[1]);
      open.run(() -> open.document.unitsProperty().set(UnitSystem.SI));
      assertThat(open.field(each[0]).getPromptText()).isEqualTo(each[2]);
      open.run(() -> open.document.unitsProperty().set(UnitSystem.US));
    }
  }

  @Test
  void newLeadsHereAndAnOpenedFileLeavesIt() {
    OpenWindow open = open(demo());
    open.keys(KeyCode.SHORTCUT, KeyCode.N);
    open.until("its first field has the keyboard", () -> open.field("From").isFocused());
    assertThat(open.field("Trip name").isDisabled())
        .as("it is of the trip that was there")
        .isTrue();
    open.run(() -> open.window.open(DEMO));
    open.until("the route is there", () -> open.stops() > 0);
    assertThat(open.field("Trip name").isDisabled()).isFalse();
  }

  @Test
  void aHaulOfThreeStopsIsBuiltByKeyboardAloneAndUndone() {
    OpenWindow open = first();
    fill(open);
    open.until("it can be taken", () -> !goOn(open).isDisabled());
    open.focus(goOn(open));
    open.keys(KeyCode.SPACE);
    open.until("the route is there", () -> open.stops() == 2);
    open.focusStop(0);
    open.keys(KeyCode.INSERT);
    open.until("a stop came", () -> open.stops() == 3);
    open.until("its place has the keyboard", () -> open.field("Place").isFocused());
    open.write("Place", "Raton NM");
    open.until("places are offered", FirstStartWindowTest::offers);
    open.keys(KeyCode.DOWN);
    open.keys(KeyCode.ENTER);
    open.until("it is known", () -> open.column("stop").contains("Raton NM"));
    open.write("Low", "20");
    open.write("High", "55");
    open.keys(KeyCode.ENTER);
    open.until(
        "its tires are known", () -> open.tireTable().stream().anyMatch(s -> s.contains("±")));
    assertThat(open.document.trip().route().stops())
        .extracting(Stop::place)
        .containsExactly("Alamosa CO", "Raton NM", "Amarillo TX");
    int edits = 0;
    while (open.document.undoableProperty().get() && edits < 9) {
      open.keys(KeyCode.SHORTCUT, KeyCode.Z);
      edits++;
    }
    assertThat(edits).isEqualTo(4); // the stop, its place, its low, its high
    assertThat(open.stops()).isEqualTo(2);
  }

  /**
   * Types what a first haul needs.
   *
   * @return how many entries that took
   */
  static int fill(OpenWindow open) {
    int entries = 0;
    for (String[] entry :
        new String[][] {
          {"From", "Alamosa, CO"},
          {"To", "Amarillo, TX"},
          {"Low of the day", "15 °F"},
          {"High of the day", "58 °F"},
          {"Tire size", "ST235/80R16"},
          {"Load on the sidewall", "3520 lb"},
          {"at cold pressure", "80 psi"},
          {"Cold pressure on the label", "80 psi"},
          {"Weight on its axles", "9800 lb"},
          {"Cold reading", "78 psi"},
        }) {
      open.write(entry[0], entry[1]);
      if (entry[0].equals("From") || entry[0].equals("To")) {
        open.keys(KeyCode.ESCAPE); // the list of places; what is typed is exact
        open.write(entry[0], entry[1]);
      }
      open.keys(KeyCode.TAB);
      entries++;
    }
    return entries;
  }

  private static boolean offers() {
    return Window.getWindows().stream().anyMatch(Popup.class::isInstance);
  }

  private static Button goOn(OpenWindow open) {
    return open.buttons("Go on in the planner").get(0);
  }
}
