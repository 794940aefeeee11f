package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.Forecasts;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.trip.Worksheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Expected weights and the dealer's card on the rig page. */
class WorksheetWindowTest extends WindowTest {

  private static final Path THREE_LOADS =
      Path.of("src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge");

  private static Trip threeLoads() {
    return planner().store().open(THREE_LOADS).get();
  }

  private static Worksheet sheet(Trip trip) {
    return Forecasts.known(trip.rig().worksheet());
  }

  private static Worksheet sheet(OpenWindow open) {
    return sheet(open.document.trip());
  }

  private OpenWindow unfolded(Trip trip, String title) {
    OpenWindow open = open(trip);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    open.until("the rig is shown", () -> !open.buttons("+ trailer").isEmpty());
    ToggleButton fold =
        open.nodes(ToggleButton.class, t -> t.getText().equals("▸ " + title)).get(0);
    open.focus(fold);
    open.keys(KeyCode.SPACE);
    open.until("it is unfolded", fold::isSelected);
    return open;
  }

  private static void type(OpenWindow open, String field, String text) {
    open.write(field, text);
    open.keys(KeyCode.ENTER);
  }

  /** By mouse, once the page has scrolled to it. */
  private static void clickInSight(OpenWindow open, Node node) {
    open.focus(node);
    open.click(node);
  }

  private static void choose(OpenWindow open, String spoken, String word) {
    ChoiceBox<?> box =
        open.nodes(ChoiceBox.class, each -> spoken.equals(each.getAccessibleText())).get(0);
    open.run(
        () -> {
          for (int i = 0; i < box.getItems().size(); i++) {
            if (box.getItems().get(i).toString().contains(word.toUpperCase(Locale.ROOT))
                || box.getItems().get(i).toString().contains(word)) {
              box.getSelectionModel().select(i);
            }
          }
        });
  }

  private static boolean shows(OpenWindow open, String text) {
    return !open.nodes(Label.class, label -> label.getText().contains(text)).isEmpty();
  }

  @Test
  void aLineIsTypedAndItsWeightExpectedAtOnce() {
    Trip before =
        threeLoads()
            .withRig(
                threeLoads()
                    .rig()
                    .withWorksheet(
                        sheet(threeLoads())
                            .withLoads(sheet(threeLoads()).loads().subList(1, 3)))); // no ewes
    OpenWindow open = unfolded(before, "Expected weights");
    assertThat(shows(open, "3890 lb")).isFalse();
    String line = " of deck load 3, the worksheet";
    type(open, "What" + line, "ewes");
    type(open, "Head" + line, "20");
    open.until("it is told what is missing", () -> shows(open, "weight of each is missing"));
    assertThat(open.document.trip()).isEqualTo(before);
    type(open, "Weight of each" + line, "180");
    choose(open, "Known by" + line, "typical");
    choose(open, "Vehicle" + line, "trailer");
    type(open, "Hitch to its middle" + line, "16");
    open.until("it is loaded", () -> sheet(open).loads().size() == 3);
    DeckLoad ewes = sheet(open).loads().get(2);
    assertThat(ewes).isEqualTo(sheet(threeLoads()).loads().get(0));
    // The figures by hand are those of ExpectedLoadsTest.
    open.until("its weight is in", () -> shows(open, "3890 lb"));
    assertThat(shows(open, "Expected, never firm: weigh the loaded rig on a certified scale"))
        .isTrue();
    assertThat(shows(open, "The ratings on the certification label hold")).isTrue();
    assertThat(shows(open, "Weigh trailer axle 1 alone")).isTrue();
    type(open, "Hitch to its middle" + line, "20");
    open.until(
        "it is further back", () -> sheet(open).loads().get(2).place().text().equals("20 ft"));
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.press(open.buttons("Undo").get(0));
    open.until("all is undone", () -> open.document.trip().equals(before));
    open.until("the figures too", () -> !shows(open, "3890 lb"));
  }

  @Test
  void whatIsRefusedKeepsItsTextAndIsNotExpected() {
    OpenWindow open = unfolded(threeLoads(), "Expected weights");
    String place = "Hitch to its middle of deck load 1, the worksheet";
    type(open, place, "160 ft");
    open.until("it is told", () -> shows(open, "160 ft is outside 0 ft to 130 ft"));
    assertThat(open.field(place).getText()).isEqualTo("160 ft");
    assertThat(open.document.trip()).isEqualTo(threeLoads());
    type(open, "Hitch to trailer's axles of the worksheet", "about 20");
    open.until("it is told", () -> shows(open, "\"about 20\" is not a length"));
    assertThat(open.document.trip()).isEqualTo(threeLoads());
  }

  @Test
  void anEmptyTicketIsTypedAsItIsPrinted() {
    Trip bare = threeLoads().withRig(threeLoads().rig().withWorksheet(null));
    OpenWindow open = unfolded(bare, "Expected weights");
    assertThat(shows(open, "No empty weight of pickup axle 1")).isTrue();
    clickInSight(open, open.buttons("+ empty ticket").get(0));
    open.until(
        "its date has the keyboard",
        () ->
            open.stage.getScene().getFocusOwner() instanceof TextField field
                && "Date of empty ticket 1".equals(field.getAccessibleText()));
    MenuButton axles =
        open.nodes(
                MenuButton.class,
                button -> spoken(button).startsWith("Axles of platform 1, empty ticket 1"))
            .get(0);
    open.run(() -> ((CheckMenuItem) axles.getItems().get(0)).setSelected(true));
    open.run(() -> axles.getItems().get(0).fire());
    type(open, "Weight of platform 1, empty ticket 1", "4500");
    open.until("it is weighed", () -> !sheet(open).empty().get(0).platforms().isEmpty());
    ScaleTicket ticket = sheet(open).empty().get(0);
    assertThat(ticket.hitched()).isTrue();
    assertThat(ticket.platforms().get(0).weight().text()).isEqualTo("4500 lb");
    assertThat(open.document.trip().rig().tickets()).isEmpty();
    open.press(
        open.nodes(Button.class, b -> "Remove empty ticket 1".equals(b.getAccessibleText()))
            .get(0));
    open.until("nothing is left", () -> open.document.trip().rig().worksheet() == null);
    assertThat(shows(open, "With it went 1 empty weight")).isTrue();
  }

  private static String spoken(Node node) {
    return node.getAccessibleText() == null ? "" : node.getAccessibleText();
  }

  @Test
  void theDealersCardIsOfOneAxleAndCopied() {
    OpenWindow open = unfolded(threeLoads(), "Dealer's card");
    assertThat(shows(open, "Pickup axle 1")).isTrue();
    choose(open, "Axle on the dealer's card", "trailer axle 1");
    open.until("it is of one axle", () -> !shows(open, "Pickup axle 1"));
    assertThat(shows(open, "1945 lb, give or take 132 lb: expected by the worksheet")).isTrue();
    clickInSight(open, open.buttons("Copy").get(0));
    String copied = OpenWindow.onToolkit(() -> Clipboard.getSystemClipboard().getString());
    assertThat(copied)
        .contains("TRAILER AXLE 1", "ST225/75R15", "1945 lb", "Never set above the tire's")
        .doesNotContain("PICKUP");
  }

  @Test
  void cardAndWeightsArePrintedFromTheMenu(@TempDir Path here) {
    OpenWindow open = open(threeLoads());
    for (List<String> each :
        List.of(
            List.of("Dealer's card, Letter…", "write dealer's card Three loads dealer's card.pdf"),
            List.of(
                "Expected weights, A4…",
                "write expected weights Three loads expected weights.pdf"))) {
      Path file = here.resolve(each.get(0).length() + ".pdf");
      open.answers.file = Optional.of(file);
      open.choosePaper(each.get(0));
      open.until("it is there", () -> Files.exists(file));
      assertThat(open.answers.asked).contains(each.get(1));
    }
  }
}
