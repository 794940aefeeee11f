package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.Forecasts;
import java.time.LocalDateTime;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Popup;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;

/** The day of a time is chosen from a month; what is typed stays what counts. */
class DayChooserWindowTest extends WindowTest {

  private static boolean shown() {
    return Window.getWindows().stream().anyMatch(Popup.class::isInstance);
  }

  private static void month(OpenWindow open, String field) {
    open.focus(open.field(field));
    open.keys(KeyCode.ALT, KeyCode.DOWN);
    open.until("a month is shown", DayChooserWindowTest::shown);
  }

  private static LocalDateTime leaves(OpenWindow open) {
    return Forecasts.known(open.document.trip().route().stops().get(0).leave())
        .time()
        .toLocalDateTime();
  }

  /** The window's clock stands at 2027-04-06, so tomorrow at six is offered. */
  @Test
  void onTheFirstPageItBeginsWithTheDayOffered() {
    OpenWindow open = open(planner().store().starterTrip().get());
    open.run(open.window::showFirst);
    open.until("the page is there", () -> !open.texts("first-title").isEmpty());
    month(open, "Departure");
    open.keys(KeyCode.RIGHT);
    open.keys(KeyCode.PAGE_DOWN);
    open.keys(KeyCode.ENTER);
    open.until(
        "day and time are there",
        () -> open.field("Departure").getText().equals("2027-05-08 06:00"));
    assertThat(shown()).isFalse();
    open.write("Departure", "4:15");
    month(open, "Departure");
    open.keys(KeyCode.DOWN);
    open.keys(KeyCode.ENTER);
    open.until(
        "the time typed stays", () -> open.field("Departure").getText().equals("2027-04-14 04:15"));
    open.write("Departure", "5 o'clock");
    month(open, "Departure");
    open.keys(KeyCode.ENTER);
    open.until("no time is made up", () -> open.texts("field-error").size() == 1);
    assertThat(open.field("Departure").getText()).isEqualTo("2027-04-07 5 o'clock");
  }

  @Test
  void theDayOfAStopIsOneEdit() {
    OpenWindow open = open(demo());
    LocalDateTime before = leaves(open);
    assertThat(before).hasToString("2027-04-06T05:45");
    month(open, "Leaving time");
    open.keys(KeyCode.LEFT);
    open.keys(KeyCode.ESCAPE);
    open.until("it is closed", () -> !shown());
    assertThat(leaves(open)).isEqualTo(before);
    assertThat(open.document.undoableProperty().get()).isFalse();
    month(open, "Leaving time");
    open.keys(KeyCode.LEFT);
    open.keys(KeyCode.ENTER);
    open.until("it leaves a day before", () -> leaves(open).equals(before.minusDays(1)));
    assertThat(open.field("Leaving time").getText()).isEqualTo("2027-04-05 05:45");
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("that was one edit", () -> leaves(open).equals(before));
    assertThat(open.document.undoableProperty().get()).isFalse();
  }

  @Test
  void aClickTakesADayAndTypingClosesTheMonth() {
    OpenWindow open = open(demo());
    month(open, "Leaving time");
    open.run(() -> click(day("9")));
    open.until("it is that day", () -> leaves(open).toString().equals("2027-04-09T05:45"));
    assertThat(shown()).isFalse();
    month(open, "Leaving time");
    open.type(open.field("Leaving time"), "1");
    open.until("it is closed", () -> !shown());
  }

  private static Node day(String text) {
    return Window.getWindows().stream()
        .filter(Popup.class::isInstance)
        .flatMap(popup -> popup.getScene().getRoot().lookupAll(".label").stream())
        .filter(node -> node instanceof Label label && label.getText().equals(text))
        .findFirst()
        .orElseThrow();
  }

  private static void click(Node node) {
    node.fireEvent(
        new MouseEvent(
            MouseEvent.MOUSE_CLICKED,
            0,
            0,
            0,
            0,
            MouseButton.PRIMARY,
            1,
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
  }
}
