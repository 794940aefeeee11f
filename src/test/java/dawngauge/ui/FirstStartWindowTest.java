package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Trip;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** From an empty page to a first forecast, by keyboard. */
class FirstStartWindowTest extends WindowTest {

  private OpenWindow first() {
    OpenWindow open = open(planner().starterTrip().get());
    open.run(open.window::showFirst);
    open.until("the page is there", () -> !open.texts("first-title").isEmpty());
    return open;
  }

  @Test
  void aDozenEntriesAtTheMostGiveAForecastAndATrip() {
    OpenWindow open = first();
    assertThat(open.texts("first-line")).hasSize(3);
    int entries = 0;
    for (String[] entry :
        new String[][] {
          {"From", "Alamosa, CO"},
          {"To", "Amarillo, TX"},
          {"Low of the day", "15"},
          {"High of the day", "58"},
          {"Tire size", "ST235/80R16"},
          {"Load on the sidewall", "3520"},
          {"at cold pressure", "80"},
          {"Cold pressure on the label", "80"},
          {"Weight on its axles", "9800"},
          {"Cold reading", "78"},
        }) {
      open.write(entry[0], entry[1]);
      if (entry[0].equals("From") || entry[0].equals("To")) {
        open.keys(KeyCode.ESCAPE); // the list of places; what is typed is exact
        open.write(entry[0], entry[1]);
      }
      open.keys(KeyCode.TAB);
      entries++;
    }
    assertThat(entries).isLessThanOrEqualTo(12);
    open.until("a forecast is there", () -> !open.texts("first-summary").isEmpty());
    open.until("it has a margin", () -> open.texts("lesser").toString().contains("load margin +"));
    open.until("it can be taken", () -> !goOn(open).isDisabled());
    open.press(goOn(open));
    Trip trip = open.document.trip();
    assertThat(trip.route().stops()).hasSize(2);
    assertThat(trip.rig().tires()).hasSize(4);
    assertThat(open.rows()).hasSize(2);
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

  @Test
  void newLeadsHereAndAnOpenedFileLeavesIt() {
    OpenWindow open = open(demo());
    open.keys(KeyCode.SHORTCUT, KeyCode.N);
    open.until("the page is there", () -> !open.texts("first-title").isEmpty());
    open.run(() -> open.window.open(DEMO));
    open.until("the route is there", () -> !open.rows().isEmpty());
  }

  private static Button goOn(OpenWindow open) {
    return open.buttons("Go on in the planner").get(0);
  }
}
