package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.field.Estimable;
import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.OnePart;
import dawngauge.field.Part;
import dawngauge.field.Parts;
import dawngauge.field.RigFields;
import dawngauge.field.RouteFields;
import dawngauge.field.Texts;
import dawngauge.field.TireFields;
import dawngauge.field.VehicleFields;
import dawngauge.field.WeightFields;
import dawngauge.ledger.Wording;
import dawngauge.testdata.Forecasts;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Leg;
import dawngauge.trip.LoadChange;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.trip.StopClock;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.fields.Cells;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;

/**
 * Builds a trip in a window from the empty starter, each thing entered where the window asks for
 * it. The catalogue says what the trip has; what has no editor cannot be entered.
 */
final class TripByHand {

  private final Trip demo;
  private final Rig rig;
  private final OpenWindow open;
  private final ByHand hand;

  TripByHand(OpenWindow open, Trip wanted) {
    this.open = open;
    this.hand = new ByHand(open);
    this.demo = wanted;
    this.rig = wanted.rig();
  }

  /** Enters rig, route, loads, air and readings. */
  void build() {
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
    open.until("the rig is shown", () -> !open.buttons("+ trailer").isEmpty());
    parts();
    kinds();
    vehicles();
    others();
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    route();
    for (int i = 0; i < demo.route().stops().size(); i++) {
      stop(i);
    }
    readings();
  }

  /** Pairs of wheels, further kinds of tire, hitch and ticket, all unfolded. */
  private void parts() {
    hand.press(spoken(Button.class, "Give pickup axle 2 dual wheels"));
    open.until("it has them", () -> vehicle(0).axles().get(1).dual());
    for (int i = open.document.trip().rig().tireTypes().size(); i < rig.tireTypes().size(); i++) {
      hand.press(open.buttons("+ kind").get(0));
    }
    hand.press(open.buttons("+ hitch").get(0));
    hand.press(open.buttons("+ ticket").get(0));
    open.until("the ticket is there", () -> !open.document.trip().rig().tickets().isEmpty());
    List<ToggleButton> folded = folded();
    while (!folded.isEmpty()) {
      hand.press(folded.get(0));
      folded = folded();
    }
  }

  private List<ToggleButton> folded() {
    return open.nodes(
        ToggleButton.class, toggle -> toggle.getText().matches("▸ (?!Expected|Dealer).*"));
  }

  private void kinds() {
    List<String> before =
        open.document.trip().rig().tireTypes().stream().map(TireSpec::name).toList();
    // The starter's two are those of pickup and trailer; the demo's second and fourth are new.
    List<Integer> order = List.of(0, 2, 1, 3);
    for (int i = 0; i < rig.tireTypes().size(); i++) {
      TireSpec wanted = rig.tireTypes().get(order.get(i));
      enter(TireFields.TIRE_TYPE, wanted, before.get(i), wanted.name());
    }
  }

  private void vehicles() {
    enterFields(RigFields.RIG, rig, "the rig");
    for (int v = 0; v < rig.vehicles().size(); v++) {
      Vehicle vehicle = rig.vehicles().get(v);
      enterFields(VehicleFields.VEHICLE, vehicle, vehicle.name());
      for (int a = 0; a < vehicle.axles().size(); a++) {
        Axle axle = vehicle.axles().get(a);
        enter(
            VehicleFields.AXLE,
            axle,
            new AxleRef(vehicle.name(), a + 1).words(),
            new AxleRef(vehicle.name(), a + 1).words());
      }
    }
    for (WheelPosition position : rig.positions()) {
      tire(rig.fittedAt(position).orElseThrow(), position.words());
    }
    tire(rig.tire(rig.spares().get(0).tire()).orElseThrow(), "spare S1");
  }

  private void tire(Tire tire, String owner) {
    enter(TireFields.TIRE, tire, owner, owner);
  }

  private void others() {
    enter(TireFields.SPARE, rig.spares().get(0), "spare S1", "spare S1");
    enter(WeightFields.HITCH, Forecasts.known(rig.hitch()), "the hitch", "the hitch");
    enter(WeightFields.TICKET, rig.tickets().get(0), "ticket 1", "ticket 1");
    enter(RigFields.GAUGE, rig.gauges().get(0), "cab gauge", "cab gauge");
    hand.type(open.field("Trip name"), demo.name());
  }

  /** Enters all that a part has; its name, where it has one, first. */
  private <R> void enter(Part<R> part, R wanted, String owner, String renamed) {
    String now = owner;
    for (Member<R> member : part.members()) {
      if (member instanceof Field<R, ?> field) {
        field(field, wanted, now);
        now = renamed;
      } else if (member instanceof Estimable<R, ?> estimable) {
        field(estimable.figure(), wanted, now);
      } else if (member instanceof Texts<R, ?> texts) {
        texts(texts, wanted, now);
      } else if (member instanceof Parts<R, ?> parts) {
        rows(parts, wanted, now);
      } else if (member instanceof OnePart<R, ?>) {
        throw new AssertionError(member.key() + " stands in a part of its own");
      }
    }
  }

  private <R> void enterFields(Part<R> part, R wanted, String owner) {
    part.fields().forEach(field -> field(field, wanted, owner));
  }

  private <R, V> void field(Field<R, V> field, R wanted, String owner) {
    V value = field.of(wanted);
    if (value == null || Set.of(VehicleFields.DUAL, TireFields.TIRE_ID).contains(field)) {
      return;
    }
    String text = field.codec().text().apply(value);
    if (field.label().equals("Tire") || text.isEmpty()) {
      return; // a spare's tire is made with it
    }
    Node editor = editor(field, owner);
    if (editor instanceof CheckBox box) {
      hand.tick(box, text.equals("true"));
    } else if (editor instanceof ChoiceBox<?> box) {
      hand.choose(box, text);
    } else if (editor instanceof FigureField<?> figure && !figure.typed().equals(text)) {
      hand.type(figure.field(), text);
    }
  }

  private <R, V> void texts(Texts<R, V> texts, R wanted, String owner) {
    for (V value : texts.get().apply(wanted)) {
      hand.choose((MenuButton) editor(texts, owner), texts.codec().text().apply(value));
    }
  }

  private <R, E> void rows(Parts<R, E> parts, R wanted, String owner) {
    List<E> all = parts.get().apply(wanted);
    for (int i = 0; i < all.size(); i++) {
      String row = parts.part().name() + " " + (i + 1) + ", " + owner;
      enter(parts.part(), all.get(i), row, row);
    }
  }

  private Node editor(Member<?> member, String owner) {
    List<Node> found =
        open.nodes(
            Node.class,
            node ->
                node.getProperties().get(Cells.MEMBER) == member
                    && name(node).matches(".* of \\Q" + owner + "\\E(: .*)?"));
    assertThat(found).as("editor of %s of %s", member.label(), owner).hasSize(1);
    return found.get(0);
  }

  private static String name(Node node) {
    return node instanceof FigureField<?> field
        ? field.name()
        : String.valueOf(node.getAccessibleText());
  }

  private <T extends Node> T spoken(Class<T> type, String name) {
    List<T> found = open.nodes(type, node -> name.equals(node.getAccessibleText()));
    assertThat(found).as(name).hasSize(1);
    return found.get(0);
  }

  private Vehicle vehicle(int index) {
    return open.document.trip().rig().vehicles().get(index);
  }

  private void route() {
    open.keys(KeyCode.SHORTCUT, KeyCode.L);
    open.until("the list is asked for", () -> open.nodes(TextArea.class, a -> true).size() == 1);
    List<String> names = demo.route().stops().stream().map(Stop::place).toList();
    hand.type(open.nodes(TextArea.class, area -> true).get(0), String.join("\n", names));
    open.until(
        "all are known",
        () -> open.buttons("Make this the route").stream().anyMatch(b -> !b.isDisabled()));
    hand.press(open.buttons("Make this the route").get(0));
    open.until("they are the route", () -> open.stops() == names.size());
  }

  private void stop(int index) {
    Stop stop = demo.route().stops().get(index);
    hand.chooseStop(index);
    hand.choose((ChoiceBox<?>) spoken(ChoiceBox.class, "Kind of stop"), stop.kind().word());
    put("Latitude and longitude", Forms.text(Forecasts.known(stop.coordinate())));
    hand.type(open.field("Elevation"), Forecasts.known(stop.elevation()).text());
    hand.type(open.field("Time zone"), Forecasts.known(stop.zone()).getId());
    if (index > 0) {
      put("Stay", stop.stay() == null ? "" : Forms.text(Forecasts.known(stop.stay())));
    }
    time("Leaving time", stop.leave());
    time("Arrival time", stop.arrive());
    put(RouteFields.STOP_AIR.label(), RouteFields.STOP_AIR.text(stop));
    if (index < demo.route().legs().size()) {
      leg(demo.route().legs().get(index));
    }
    for (int i = 0; i < stop.loadChanges().size(); i++) {
      load(index, stop.loadChanges().get(i), "load " + (i + 1));
    }
    air(index, stop.id());
  }

  private void leg(Leg leg) {
    hand.type(open.field("Distance"), Forecasts.known(leg.distance()).text());
    put("Average speed", Forecasts.known(leg.averageSpeed()).text());
    put("Top speed", leg.topSpeed() == null ? "" : Forecasts.known(leg.topSpeed()).text());
    for (ProfilePoint point : leg.profile()) {
      put("Name of a further point", Forecasts.known(point.name()));
      put("Distance of a further point", point.distance().text());
      put("Elevation of a further point", point.elevation().text());
    }
  }

  private void load(int index, LoadChange load, String name) {
    hand.press(open.buttons("+ load").get(0));
    for (Field<LoadChange, ?> field : WeightFields.LOAD_CHANGE.fields()) {
      field(field, load, name);
    }
    load.axles()
        .forEach((axle, part) -> hand.type(open.field(axle.words() + " of " + name), part.text()));
    open.until(
        "it is taken", () -> there(index).loadChanges().contains(load.withRemarks(Remarks.NONE)));
  }

  private void air(int index, String id) {
    StopAir wanted = StopAir.of(demo, id);
    StopAir.Kind kind = wanted.counts();
    if (kind == null) {
      return;
    }
    hand.press(spoken(RadioButton.class, "Air given: " + kind.words()));
    for (AmbientEntry.Hourly.At hour : wanted.hours()) {
      hand.type(open.field("Time of a further temperature"), Forms.text(hour.time()));
      hand.type(open.field("Further temperature"), hour.temperature().text());
      open.until(
          "it is taken",
          () -> StopAir.of(open.document.trip(), there(index).id()).hours().contains(hour));
    }
    if (wanted.temperature() != null) {
      hand.type(open.field("Steady"), Forecasts.known(wanted.temperature()).text());
    }
    if (index > 0 && !wanted.dates().isEmpty()) {
      LocalDate last = wanted.dates().get(wanted.dates().size() - 1);
      if (new StopClock(open.document.trip(), index).days().stream().allMatch(last::isAfter)) {
        hand.press(open.buttons("+ day after").get(0));
      }
    }
    for (LocalDate date : wanted.dates()) {
      put(day("Low", date), Forecasts.known(wanted.low(date)).text());
      put(day("High", date), Forecasts.known(wanted.high(date)).text());
    }
  }

  /** The name of a field of a day, which a stop of one day leaves out. */
  private String day(String figure, LocalDate date) {
    String named =
        figure
            + " "
            + Wording.shortDay(date.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
    return open.nodes(TextField.class, f -> named.equals(f.getAccessibleText())).isEmpty()
        ? figure
        : named;
  }

  /** Each at its minute: a round goes on by a minute a tire. */
  private void readings() {
    open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT5);
    open.until(
        "the tires are there",
        () -> !open.nodes(TextField.class, f -> name(f).startsWith("Reading of")).isEmpty());
    List<WheelPosition> positions = rig.positions();
    for (LogEvent event : demo.log()) {
      LogEvent.Reading reading = (LogEvent.Reading) event;
      WheelPosition position =
          positions.stream()
              .filter(at -> rig.fittedAt(at).orElseThrow().id().equals(reading.tire()))
              .findFirst()
              .orElseThrow();
      ZonedDateTime begun = reading.time().time().minusMinutes(positions.indexOf(position));
      put("Begun at", Forms.text(TypedTime.of(begun.toLocalDateTime(), begun.getZone())));
      hand.choose(
          (ChoiceBox<?>) spoken(ChoiceBox.class, "How warm the tires are"), reading.state().word());
      hand.type(open.field("Reading of " + position.words()), reading.pressure().text());
    }
  }

  private Stop there(int index) {
    return open.document.trip().route().stops().get(index);
  }

  private void put(String field, String text) {
    TextField there = open.field(field);
    if (!there.getText().equals(text)) {
      hand.type(there, text);
    }
  }

  private void time(String field, @Nullable TypedTime time) {
    if (time != null) {
      put(field, Forms.text(time));
    }
  }
}
