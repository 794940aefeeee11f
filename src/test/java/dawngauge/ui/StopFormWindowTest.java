package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ui.route.RouteView;
import java.util.List;
import javafx.scene.control.TextField;
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
