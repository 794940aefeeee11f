package dawngauge.ui.route;

import static dawngauge.field.RouteFields.STOP_AIR;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Spot;
import dawngauge.ledger.Wording;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Air;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.DayChooser;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.PlaceOffers;
import dawngauge.ui.common.Texts;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import org.jspecify.annotations.Nullable;

/** Where a stop is, what it is for, and when the rig stands there. */
final class StopFields extends EditorGrid {

  private static final String TIME_PROMPT = "2027-04-06 05:45";

  private final EditedStop stop;

  StopFields(EditedStop stop) {
    this.stop = stop;
    heading(() -> "Stop " + (stop.index() + 1));
    place();
    kind();
    field(
        () -> StopEdits.isEstimated(stop.stop()) ? "Elevation, estimate" : "Elevation",
        new FigureField<Optional<Entered<Elevation>>>(
                "Elevation",
                text -> Forms.figure(QuantityKind.ELEVATION, stop.units()).apply(text),
                value -> stop.edit(s -> StopEdits.withElevation(s, value.orElse(null))))
            .confirming(),
        () -> text(stop.stop().elevation()));
    field(
        () -> "Lat, lon",
        new FigureField<>("Latitude and longitude", Forms::coordinate, this::moveTo),
        () -> {
          Coordinate at = stop.stop().coordinate();
          return at == null ? "" : Forms.text(at);
        });
    field(
        () -> StopEdits.isZoneEstimated(stop.stop()) ? "Time zone, estimate" : "Time zone",
        new FigureField<Optional<ZoneId>>(
                "Time zone",
                Forms::zone,
                value -> stop.edit(s -> StopEdits.withZone(s, value.orElse(null))))
            .confirming(),
        () -> {
          var zone = stop.stop().zone();
          return zone == null ? "" : zone.getId();
        });
    times();
    FigureField<Air> hose =
        new FigureField<>(
            STOP_AIR.label(),
            text -> STOP_AIR.codec().typed().apply(stop.units(), text),
            value -> stop.edit(s -> s.withAir(value)));
    hose.exampled(stop.document(), "none, yes, or up to 100 psi", "none, yes, or up to 7 bar");
    field(STOP_AIR::label, hose, () -> STOP_AIR.text(stop.stop()));
  }

  private void place() {
    FigureField<String> name =
        new FigureField<>("Place", Forms::name, value -> stop.edit(s -> s.withPlace(value)));
    new PlaceOffers(
        name,
        stop::units,
        stop::near,
        (typed, near) -> stop.document().planner().places().search(typed, near, PlaceOffers.MOST),
        place -> {
          int at = stop.index();
          if (at >= 0) {
            Stop placed = StopEdits.at(stop.stop(), Spot.of(place));
            stop.document().edit(RouteEdits.at(stop.trip(), at, placed));
          }
        });
    field(() -> "Place", name, () -> stop.stop().place());
    note(
        () ->
            stop.stop().coordinate() == null
                ? "Not on the map yet: take a place from the list while typing (Down, Enter), or type"
                    + " its latitude and longitude."
                : "");
  }

  private void kind() {
    ChoiceBox<Stop.Kind> kind =
        choice("Kind", "Kind of stop", List.of(Stop.Kind.values()), Stop.Kind::word);
    onRefresh(() -> kind.setValue(stop.stop().kind()));
    kind.setOnAction(
        event -> {
          if (!filling()) {
            stop.edit(s -> s.withKind(kind.getValue()));
          }
        });
  }

  private void moveTo(Optional<Coordinate> typed) {
    int at = stop.index();
    if (at >= 0) {
      Coordinate place = typed.orElse(null);
      Stop moved =
          StopEdits.at(
              stop.stop(),
              place,
              typed.flatMap(
                  coordinate -> stop.document().planner().places().estimateAt(coordinate)));
      stop.document().edit(RouteEdits.at(stop.trip(), at, moved));
    }
  }

  private void times() {
    time(
        () -> isFirst() ? "Here since, typed" : "Arrive, typed",
        "Arrival time",
        () -> stop.stop().arrive(),
        () -> stop.clock().arrives(),
        value -> stop.edit(s -> s.withTimes(value, s.leave())));
    findings(() -> stop.clock().ofArrival(stop.units()));
    FigureField<Optional<Duration>> stay =
        new FigureField<>(
            "Stay", Forms::span, value -> stop.edit(s -> s.withStay(value.orElse(null))));
    Label label = row(() -> "Stay", stay);
    onRefresh(
        () -> {
          Duration typed = stop.stop().stay();
          stay.show(typed == null ? "" : Forms.text(typed));
        });
    onlyWhere(() -> !isFirst() || stop.stop().stay() != null, label, stay);
    note(
        () ->
            stop.stop().stay() != null && stop.stop().leave() != null
                ? "The typed time of leaving counts, not the stay."
                : "");
    time(
        () -> isFirst() ? "Departure" : "Leave, typed",
        "Leaving time",
        () -> stop.stop().leave(),
        () -> stop.clock().leaves(),
        value -> stop.edit(s -> s.withTimes(s.arrive(), value)));
    findings(() -> stop.clock().ofDeparture());
  }

  private boolean isFirst() {
    return stop.index() == 0;
  }

  private interface TimeTaker {
    void take(@Nullable TypedTime time);
  }

  private void time(
      Supplier<String> label,
      String name,
      Supplier<@Nullable TypedTime> typed,
      Supplier<@Nullable ZonedDateTime> computed,
      TimeTaker taker) {
    FigureField<Optional<TypedTime>> field =
        new FigureField<>(
            name,
            text -> {
              ZonedDateTime known = computed.get();
              return Forms.time(stop.clock().zone(), known == null ? null : known.toLocalDate())
                  .apply(text);
            },
            value -> taker.take(value.orElse(null)));
    DayChooser.on(field);
    onRefresh(
        () -> {
          ZonedDateTime known = computed.get();
          boolean any = known != null && typed.get() == null;
          field
              .field()
              .setPromptText(known == null || !any ? TIME_PROMPT : "computed: " + clock(known));
        });
    field(
        label,
        field,
        () -> {
          TypedTime time = typed.get();
          return time == null ? "" : Forms.text(time);
        });
  }

  private static String clock(ZonedDateTime time) {
    ZonedDateTime shown = Wording.toTheMinute(time.toInstant(), time.getZone());
    return Texts.shortened(Forms.text(TypedTime.of(shown.toLocalDateTime(), shown.getZone())));
  }
}
