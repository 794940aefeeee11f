package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.ui.route.StopGridPane;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Typing, copying and pasting in the cells of the grid, by keyboard. */
class GridTypingWindowTest extends WindowTest {

  private static final int PLACE = 1;
  private static final int AIR = 2;
  private static final int TIRE = 4;

  private static Stop stop(OpenWindow open, int row) {
    return open.document.trip().route().stops().get(row);
  }

  private static StopAir air(OpenWindow open, int row) {
    return StopAir.of(open.document.trip(), stop(open, row).id());
  }

  private static String steady(OpenWindow open, int row) {
    return Objects.requireNonNull(air(open, row).temperature()).text();
  }

  private static StopGridPane at(OpenWindow open, int row, int column) {
    open.focusStop(row);
    open.run(() -> open.grid().goTo(column));
    return open.grid();
  }

  private static boolean edits(OpenWindow open, String name) {
    return !open.nodes(TextField.class, field -> name.equals(field.getAccessibleText())).isEmpty();
  }

  private static void copied(OpenWindow open, String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    open.run(() -> Clipboard.getSystemClipboard().setContent(content));
  }

  /** What is typed over a cell is one edit, which undo takes back; Down goes on in the column. */
  @Test
  void temperaturesAreTypedDownAColumn() {
    OpenWindow open = open(demo());
    at(open, 1, AIR);
    open.keys(KeyCode.DIGIT6);
    open.until("the cell is open", () -> edits(open, "Temperature, or low/high, Walsenburg CO"));
    open.keys(KeyCode.DIGIT1);
    open.keys(KeyCode.DOWN);
    assertThat(steady(open, 1)).isEqualTo("61 °F");
    open.until("the next is open", () -> edits(open, "Temperature, or low/high, Raton NM"));
    open.keys(KeyCode.ESCAPE);
    open.until("it is closed", () -> !edits(open, "Temperature, or low/high, Raton NM"));
    open.until("the grid has the keyboard", () -> open.grid().isFocused());
    open.run(open.document::undo);
    assertThat(air(open, 1).temperature()).isNull();
  }

  /** What is refused stays in its cell with its reason, and Escape drops it. */
  @Test
  void whatIsRefusedStays() {
    OpenWindow open = open(demo());
    var before = open.document.trip();
    at(open, 1, AIR);
    open.keys(KeyCode.DIGIT7);
    open.keys(KeyCode.Y);
    open.keys(KeyCode.ENTER);
    open.until(
        "the reason is told",
        () ->
            !open.nodes(
                    Label.class,
                    label ->
                        label.getStyleClass().contains("field-error")
                            && label.getText().contains("7y"))
                .isEmpty());
    assertThat(open.field("Temperature, or low/high, Walsenburg CO").getText()).isEqualTo("7y");
    assertThat(open.document.trip()).isEqualTo(before);
    open.keys(KeyCode.ESCAPE);
    open.until("it is closed", () -> !edits(open, "Temperature, or low/high, Walsenburg CO"));
  }

  /** What is typed goes to all stops that are taken, as one edit. */
  @Test
  void severalStopsAreTypedAtOnce() {
    OpenWindow open = open(demo());
    at(open, 1, AIR);
    open.keys(KeyCode.SHIFT, KeyCode.DOWN);
    open.keys(KeyCode.F2);
    open.until("the cell is open", () -> edits(open, "Temperature, or low/high, 2 stops"));
    open.write("Temperature, or low/high, 2 stops", "30/44");
    open.keys(KeyCode.ENTER);
    assertThat(air(open, 1).counts()).isEqualTo(StopAir.Kind.LOW_HIGH);
    assertThat(air(open, 2).counts()).isEqualTo(StopAir.Kind.LOW_HIGH);
    open.run(open.document::undo);
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  /** A table of a spreadsheet is pasted; the figures of tires are not typed, and that is said. */
  @Test
  void aTableIsPasted() {
    OpenWindow open = open(demo());
    copied(open, "Walsenburg\t28/50\nRaton\t30\n");
    at(open, 1, PLACE);
    open.keys(KeyCode.SHORTCUT, KeyCode.V);
    assertThat(stop(open, 1).place()).isEqualTo("Walsenburg");
    assertThat(stop(open, 2).place()).isEqualTo("Raton");
    assertThat(steady(open, 2)).isEqualTo("30 °F");
    at(open, 1, TIRE);
    open.keys(KeyCode.SHORTCUT, KeyCode.C);
    assertThat(OpenWindow.onToolkit(() -> Clipboard.getSystemClipboard().getString()))
        .startsWith("time\tstop\tair\those\tp1l\t")
        .contains("Walsenburg");
    open.keys(KeyCode.DIGIT8);
    open.until("it is said", () -> !open.texts("cell-said").isEmpty());
    assertThat(String.join("", open.texts("cell-said"))).contains("Readings");
  }
}
