package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.ledger.ReachPage;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.ui.route.RouteView;
import java.util.List;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The same fields are of one stop after the other. */
class StopFormWindowTest extends WindowTest {

  @Test
  void theFieldsFollowTheStopThatIsWalkedTo() {
    OpenWindow open = open(demo());
    TextField place = open.field("Place");
    for (int row = 1; row < demo().route().stops().size(); row++) {
      walkTo(open, row);
      String there = demo().route().stops().get(row).place();
      open.until("the fields are of stop " + row, () -> place.getText().equals(there));
      assertThat(open.field("Place")).isSameAs(place);
      boolean last = row == demo().route().stops().size() - 1;
      assertThat(open.nodes(TextField.class, f -> "Distance".equals(f.getAccessibleText())))
          .hasSize(last ? 0 : 1);
    }
    walkTo(open, 0);
    assertThat(open.nodes(TextField.class, field -> "Stay".equals(field.getAccessibleText())))
        .isEmpty();
  }

  @Test
  void whatIsTypedAtOneStopIsNotSeenAtAnother() {
    OpenWindow open = open(demo());
    walkTo(open, 1);
    open.write("Stay", "a while");
    open.keys(KeyCode.ENTER);
    open.until("it is told of", () -> open.texts("field-error").size() == 1);
    walkTo(open, 2);
    assertThat(open.field("Stay").getText()).isNotEqualTo("a while");
    assertThat(open.texts("field-error")).isEmpty();
    walkTo(open, 1);
    open.until("it is there again", () -> open.field("Stay").getText().equals("a while"));
    assertThat(open.texts("field-error")).hasSize(1);
    assertThat(open.document.dirtyProperty().get()).isFalse();
  }

  @Test
  void takingBackInAFieldBringsNothingOfAnotherStop() {
    OpenWindow open = open(demo());
    walkTo(open, 1);
    open.write("Average speed", "41");
    walkTo(open, 2);
    TextField speed = open.field("Average speed");
    String there = speed.getText();
    assertThat(there).isNotEqualTo("41");
    open.run(speed::undo);
    assertThat(open.field("Average speed").getText()).isEqualTo(there);
  }

  @Test
  void aFurtherDayAndALoadBegunStayBehind() {
    OpenWindow open = open(demo());
    walkTo(open, 1);
    int lows = lows(open);
    open.press(open.buttons("+ day after").get(0));
    open.press(open.buttons("+ load").get(0));
    open.until("both are there", () -> lows(open) == lows + 1 && !open.buttons("Drop").isEmpty());
    walkTo(open, 2);
    assertThat(lows(open)).isEqualTo(lows);
    assertThat(open.buttons("Drop")).isEmpty();
    assertThat(open.buttons("+ load")).hasSize(1);
  }

  @Test
  void whatTheAirReachesFollowsTheStopAndAgreesWithTheCommand() {
    OpenWindow open = open(demo());
    walkTo(open, 2);
    PicturesTest.unfoldReach(open);
    Plan plan = planner().plan(demo());
    Advice advice = Objects.requireNonNull(plan.advice());
    for (int row : new int[] {2, 4, 11}) {
      walkTo(open, row);
      String page =
          PageText.of(
              ReachPage.of(demo(), advice, plan.reach(row).orElseThrow(), UnitSystem.US), false);
      String hose = page.lines().skip(1).findFirst().orElseThrow().strip();
      open.until(
          "it is of stop " + row,
          () -> !open.nodes(Label.class, label -> hose.startsWith(label.getText())).isEmpty());
    }
    walkTo(open, 12); // the last: nothing lies ahead
    assertThat(open.nodes(TitledPane.class, pane -> pane.getText().startsWith("How far")))
        .isEmpty();
  }

  /** Fields for lows of a day. */
  private static int lows(OpenWindow open) {
    return open.nodes(
            TextField.class,
            field ->
                List.of(String.valueOf(field.getAccessibleText()).split(" ")).get(0).equals("Low"))
        .size();
  }

  private static void walkTo(OpenWindow open, int row) {
    RouteView route = open.nodes(RouteView.class, view -> true).get(0);
    open.run(() -> route.choose(row));
  }
}
