package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.OnePart;
import dawngauge.field.Part;
import dawngauge.field.Parts;
import dawngauge.field.RigFields;
import dawngauge.field.TireFields;
import dawngauge.field.VehicleFields;
import dawngauge.field.WeightFields;
import dawngauge.field.WorksheetFields;
import dawngauge.quantity.Entered;
import dawngauge.testdata.Forecasts;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.RigEdits;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The rig as a form: every figure of the catalogue has its field. */
class RigWindowTest extends WindowTest {

  private OpenWindow rig(Trip trip) {
    OpenWindow open = open(trip);
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    open.until("the rig is shown", () -> !open.buttons("+ trailer").isEmpty());
    return open;
  }

  private static void unfold(OpenWindow open, String title) {
    ToggleButton fold =
        open.nodes(ToggleButton.class, t -> t.getText().equals("▸ " + title)).get(0);
    open.run(() -> fold.setSelected(true));
  }

  private static void unfoldAll(OpenWindow open) {
    open.nodes(ToggleButton.class, t -> t.getText().startsWith("▸ "))
        .forEach(fold -> open.run(() -> fold.setSelected(true)));
  }

  /** Tires by place and the names by which others refer are changed where those parts are. */
  @Test
  void everyFieldOfTheCatalogueHasAnEditor() {
    Set<Object> edited = new HashSet<>();
    OpenWindow stop = open(demo());
    stop.press(stop.buttons("+ load").get(0));
    gather(stop, edited);
    // What is kept of earlier trips has its field where there is any.
    OpenWindow open =
        rig(
            RigEdits.withTire(
                demo(),
                demo().rig().tire("T1").orElseThrow().withHeatRecord(new HeatRecord(1.2, 0.1))));
    unfoldAll(open);
    gather(open, edited);
    for (Part<?> part : RigFields.all()) {
      for (Member<?> member : part.members()) {
        if (member instanceof OnePart<?, ?> || isList(member) || isMadeWithThePart(member)) {
          continue;
        }
        assertThat(edited).as("%s of %s", member.key(), part.name()).contains(member);
      }
    }
  }

  private static void gather(OpenWindow open, Set<Object> edited) {
    open.nodes(Node.class, node -> node.getProperties().containsKey("catalogue"))
        .forEach(node -> edited.add(node.getProperties().get("catalogue")));
  }

  /** Lists whose parts have a form each; label lines, rows, platforms and wheels are tables. */
  private static boolean isList(Member<?> member) {
    return member instanceof Parts<?, ?> parts
        && !Set.of(
                VehicleFields.LABEL_LINES,
                TireFields.ROWS,
                WeightFields.PLATFORMS,
                WeightFields.WHEELS,
                WorksheetFields.LOADS)
            .contains(parts);
  }

  /** Fitted tires, ids and pairs of wheels come and go with buttons. */
  private static boolean isMadeWithThePart(Member<?> member) {
    return member.equals(VehicleFields.FITTED)
        || member.equals(VehicleFields.DUAL)
        || member.equals(TireFields.TIRE_ID)
        || (member instanceof Field<?, ?> field && field.label().equals("Tire"));
  }

  @Test
  void aSecondLineOfTheLabelIsTypedAndTakenOnceItIsWhole() {
    OpenWindow open = rig(demo());
    unfold(open, "trailer axle 1");
    open.write("Tire size of label line 2, trailer axle 1", "ST235/85R16");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is told what is missing", () -> !told(open, "cold pressure is missing").isEmpty());
    assertThat(open.document.trip()).isEqualTo(demo());
    open.write("Cold pressure of label line 2, trailer axle 1", "80");
    open.keys(KeyCode.ENTER);
    open.until("it is a line", () -> axle(open, 0).label().size() == 2);
    assertThat(axle(open, 0).label().get(1).size()).isEqualTo("ST235/85R16");
    assertThat(axle(open, 0).label().get(1).coldPressure().text()).isEqualTo("80 psi");
    assertThat(told(open, "missing")).isEmpty();
    open.write("Cold pressure of label line 2, trailer axle 1", "75");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is changed", () -> axle(open, 0).label().get(1).coldPressure().text().equals("75 psi"));
    assertThat(axle(open, 0).label()).hasSize(2);
    open.press(named(open, "Remove label line 2, trailer axle 1"));
    open.until("it is gone", () -> axle(open, 0).label().size() == 1);
    open.press(open.buttons("Undo").get(0));
    open.press(open.buttons("Undo").get(0));
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  /** Loads of a trailer tire from memory; only that they are taken as they stand is asked here. */
  @Test
  void rowsOfTheMakersTableArePastedFromASpreadsheet() {
    OpenWindow open = rig(demo());
    unfold(open, "ST235/80R16 E");
    TextField first = open.field("Cold pressure of row 1, ST235/80R16 E");
    open.focus(first);
    open.run(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putString("50\t2600\t2280\n65\t3085\t2690\n80\t3520 lb\t3080\n");
          Clipboard.getSystemClipboard().setContent(content);
        });
    open.keys(KeyCode.SHORTCUT, KeyCode.V);
    open.until("they are rows", () -> spec(open).rows() != null);
    LoadInflationTable rows = Forecasts.known(spec(open).rows());
    assertThat(rows.rows())
        .extracting(row -> row.pressure().text())
        .containsExactly("50 psi", "65 psi", "80 psi");
    assertThat(rows.rows())
        .extracting(row -> row.single().text())
        .containsExactly("2600 lb", "3085 lb", "3520 lb");
    open.write("Load, single of row 2, ST235/80R16 E", "2000");
    open.keys(KeyCode.ENTER);
    open.until("it is told that the row falls", () -> !told(open, "2000 lb").isEmpty());
    assertThat(spec(open).rows()).isEqualTo(rows);
    open.keys(KeyCode.ESCAPE);
    open.press(named(open, "Remove row 3, ST235/80R16 E"));
    open.until("two are left", () -> Forecasts.known(spec(open).rows()).rows().size() == 2);
    open.press(named(open, "Remove row 2, ST235/80R16 E"));
    open.until("one row is no table", () -> spec(open).rows() == null);
    assertThat(told(open, "row")).isNotEmpty();
    open.press(named(open, "Remove row 1, ST235/80R16 E"));
    open.until("nothing is left to take", () -> told(open, "row").isEmpty());
    assertThat(open.field("Cold pressure of row 1, ST235/80R16 E").getText()).isEmpty();
  }

  private static Button named(OpenWindow open, String spoken) {
    return open.nodes(Button.class, button -> spoken.equals(button.getAccessibleText())).get(0);
  }

  @Test
  void aTicketWithAPlatformAndWheelScales() {
    OpenWindow open = rig(demo());
    int tickets = demo().rig().tickets().size();
    open.press(open.buttons("+ ticket").get(0));
    String ticket = "ticket " + (tickets + 1);
    open.until(
        "its first field has the keyboard",
        () ->
            ("Date of " + ticket)
                .equals(open.stage.getScene().getFocusOwner().getAccessibleText()));
    open.write("Date of " + ticket, "2027-04-05");
    open.keys(KeyCode.ENTER);
    MenuButton axles =
        open.nodes(
                MenuButton.class,
                button -> spoken(button).startsWith("Axles of platform 1, " + ticket))
            .get(0);
    open.run(() -> ((CheckMenuItem) axles.getItems().get(2)).setSelected(true));
    open.run(() -> axles.getItems().get(2).fire());
    open.write("Weight of platform 1, " + ticket, "5200");
    open.keys(KeyCode.ENTER);
    open.until("it is weighed", () -> !ticket(open).platforms().isEmpty());
    assertThat(ticket(open).platforms().get(0).axles().get(0).words()).isEqualTo("trailer axle 1");
    assertThat(ticket(open).platforms().get(0).weight().text()).isEqualTo("5200 lb");
    assertThat(Forecasts.known(ticket(open).date())).hasToString("2027-04-05");
  }

  private static ScaleTicket ticket(OpenWindow open) {
    List<ScaleTicket> all = open.document.trip().rig().tickets();
    return all.get(all.size() - 1);
  }

  @Test
  void damageIsTickedAndHoldsTheRig() {
    OpenWindow open = rig(demo());
    unfold(open, "trailer axle 1");
    MenuButton damage =
        open.nodes(
                MenuButton.class,
                button -> spoken(button).startsWith("Damage of trailer axle 1 left"))
            .get(0);
    open.run(() -> damage.getItems().get(3).fire());
    open.until("it is noted", () -> !tire(open).damage().isEmpty());
    assertThat(tire(open).damage()).containsExactly(Tire.Damage.BULGE);
    open.until(
        "it is no-go",
        () ->
            !open.nodes(
                    Hyperlink.class,
                    l ->
                        l.getText().startsWith("NO-GO: trailer axle 1 left: ")
                            && l.getText().contains("bulge"))
                .isEmpty());
  }

  @Test
  void aFindingLeadsToItsField() {
    OpenWindow open = rig(demo());
    Hyperlink age = open.nodes(Hyperlink.class, l -> l.getText().contains("date code 2620")).get(0);
    open.run(age::fire);
    open.until(
        "its date code has the keyboard",
        () ->
            "Date code of trailer axle 2 left"
                .equals(open.stage.getScene().getFocusOwner().getAccessibleText()));
  }

  /** "trailer axle 1 left and right" is the name of no field: its axle's are led to. */
  @Test
  void aFindingOfTwoTiresLeadsToTheirAxle() {
    OpenWindow open = rig(demo());
    Hyperlink speed =
        open.nodes(Hyperlink.class, l -> l.getText().startsWith("trailer axle 1 left and right"))
            .get(0);
    open.run(speed::fire);
    open.until(
        "a field of its axle has the keyboard",
        () -> spoken(open.stage.getScene().getFocusOwner()).contains("trailer axle 1"));
  }

  @Test
  void aNewTrailerIsUnderTheKeyboard() {
    OpenWindow open = rig(demo());
    open.press(open.buttons("+ trailer").get(0));
    open.until(
        "its name has the keyboard",
        () ->
            open.stage.getScene().getFocusOwner() instanceof TextField field
                && field.getAccessibleText().startsWith("Name of trailer"));
    Rig now = open.document.trip().rig();
    assertThat(now.vehicles()).hasSize(demo().rig().vehicles().size() + 1);
  }

  @Test
  void whatIsRefusedKeepsItsTextAndIsNotJudged() {
    OpenWindow open = rig(demo());
    open.write("Lever on the rear axle of the hitch", "7");
    open.keys(KeyCode.ENTER);
    open.until("it is told", () -> !told(open, "7").isEmpty());
    assertThat(open.field("Lever on the rear axle of the hitch").getText()).isEqualTo("7");
    assertThat(open.document.trip()).isEqualTo(demo());
    open.write("Letter of pickup", "t");
    open.keys(KeyCode.ENTER);
    open.until("the letter is taken", () -> !told(open, "another vehicle").isEmpty());
    assertThat(open.document.trip()).isEqualTo(demo());
  }

  @Test
  void aCompressorAndAnOwnTargetAreTyped() {
    OpenWindow open = rig(demo());
    open.write("Compressor reaches of the rig", "110");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is aboard",
        () -> {
          Entered<?> top = open.document.trip().rig().compressorTop();
          return top != null && top.text().equals("110 psi");
        });
    unfold(open, "trailer axle 1");
    open.write("Own target, cold of trailer axle 1", "78");
    open.keys(KeyCode.ENTER);
    open.until("it is a target", () -> axle(open, 0).target() != null);
    assertThat(Forecasts.known(axle(open, 0).target()).text()).isEqualTo("78 psi");
  }

  @Test
  void aLoadIsTakenOnAtAStopByItsPlaceOnTheDeck() {
    OpenWindow open = open(demo());
    int there = demo().route().stops().get(0).loadChanges().size();
    String load = "load " + (there + 1);
    open.press(open.buttons("+ load").get(0));
    open.write("What of " + load, "two rams");
    open.keys(KeyCode.ENTER);
    open.write("Weight of " + load, "600");
    open.keys(KeyCode.ENTER);
    open.until("parts are missing", () -> !told(open, "which axles take it").isEmpty());
    assertThat(open.document.trip()).isEqualTo(demo());
    open.write("Hitch to load of " + load + ", trailer", "12");
    open.write("Hitch to axles' middle of " + load + ", trailer", "16 ft");
    open.press(open.buttons("Take the parts").get(there));
    open.until(
        "it is aboard",
        () -> open.document.trip().route().stops().get(0).loadChanges().size() == there + 1);
    LoadChange taken = open.document.trip().route().stops().get(0).loadChanges().get(there);
    assertThat(taken.weight().text()).isEqualTo("600 lb");
    assertThat(Forecasts.known(taken.axles().get(new AxleRef("trailer", 1))).text())
        .isEqualTo("37.5 %");
    assertThat(Forecasts.known(taken.hitch()).text()).isEqualTo("25 %");
    open.until("another may follow", () -> !open.buttons("+ load").isEmpty());
    open.press(open.buttons("+ load").get(0));
    open.write("What of load " + (there + 2), "hay");
    open.keys(KeyCode.ENTER);
    open.write("Weight of load " + (there + 2), "-300 lb");
    open.keys(KeyCode.ENTER);
    open.write("trailer axle 1 of load " + (there + 2), "60");
    open.keys(KeyCode.ENTER);
    open.until("they are not whole", () -> !told(open, "60").isEmpty());
    open.write("trailer axle 2 of load " + (there + 2), "40");
    open.keys(KeyCode.ENTER);
    open.until(
        "it is set down",
        () -> open.document.trip().route().stops().get(0).loadChanges().size() == there + 2);
    open.write("trailer axle 1 of " + load, "30");
    open.keys(KeyCode.ENTER);
    open.until("they are not whole", () -> !told(open, "92.5").isEmpty());
    assertThat(open.document.trip().route().stops().get(0).loadChanges().get(there))
        .isEqualTo(taken);
  }

  private static List<Label> told(OpenWindow open, String part) {
    return open.nodes(
        Label.class,
        label ->
            label.getText().contains(part)
                && (label.getStyleClass().contains("field-error")
                    || label.getText().startsWith("Not taken")));
  }

  private static Axle axle(OpenWindow open, int index) {
    return open.document.trip().rig().vehicles().get(1).axles().get(index);
  }

  private static TireSpec spec(OpenWindow open) {
    return open.document.trip().rig().tireTypes().stream()
        .filter(spec -> spec.name().equals("ST235/80R16 E"))
        .findFirst()
        .orElseThrow();
  }

  private static Tire tire(OpenWindow open) {
    Rig rig = open.document.trip().rig();
    return rig.fittedAt(rig.positions().get(6)).orElseThrow();
  }

  private static String spoken(Node node) {
    return node.getAccessibleText() == null ? "" : node.getAccessibleText();
  }
}
