package dawngauge.ui.readings;

import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.LiveLines;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.RoundAtStop;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingRound;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.StopDrafts;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A round with the gauge: one figure and Enter for each tire, in walking order. As a figure is
 * typed it is held against what was expected and what the rest of its axle reads, and it is told
 * what to do.
 */
final class RoundPane extends VBox implements RoundRow.Listener, DraftKeeper {

  /** Narrower than this, a tire goes by the short form of its position alone. */
  private static final double ROOM_FOR_NAMES = 1100;

  private final TripDocument document;
  private final Clock clock;
  private final StopDrafts drafts = new StopDrafts("round / ", this);
  private final RoundHead head;
  private final GridPane grid = new GridPane();
  private final ReadingVerdictPane said;
  private final Label none = new Label();
  private final List<RoundRow> rows = new ArrayList<>();
  private List<Object> laidOut = List.of();
  private @Nullable RoundRow looked;
  private int asked;

  RoundPane(TripDocument document, Clock clock) {
    this.document = document;
    this.clock = clock;
    this.said = new ReadingVerdictPane(document);
    head = new RoundHead(document, clock, drafts::leave, this::refresh);
    grid.getStyleClass().add("round");
    none.getStyleClass().add("lesser");
    none.setWrapText(true);
    none.managedProperty().bind(none.visibleProperty());
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(head, none, new HBox(24, grid, said));
    setSpacing(6);
    widthProperty().addListener(change -> fit());
    document.onLeaving(drafts::drop);
  }

  private void fit() {
    rows.forEach(row -> row.inFull(getWidth() >= ROOM_FOR_NAMES));
  }

  /** Goes where the crew is, or where something half typed came back; unless it is there. */
  void goToCrew() {
    drafts
        .wanted()
        .flatMap(this::visitOf)
        .or(() -> RoundAtStop.nextOf(document.trip()))
        .filter(wanted -> wanted != head.visit())
        .ifPresent(
            wanted -> {
              head.go(wanted);
              refresh();
            });
  }

  private Optional<Integer> visitOf(String stop) {
    return RoundAtStop.stops(document.planned()).stream()
        .map(each -> each.stop().visit())
        .filter(visit -> visit.stop().id().equals(stop))
        .map(Itinerary.Visit::index)
        .findFirst();
  }

  /** Shows the trip as it is now. */
  void refresh() {
    Trip trip = document.trip();
    boolean timed = !RoundAtStop.stops(document.planned()).isEmpty();
    boolean possible = timed && !trip.rig().gauges().isEmpty();
    none.setVisible(!possible);
    none.setText(
        timed
            ? "Readings can be noted as soon as there is a gauge, on the rig's page."
            : "Readings can be noted as soon as the departure is typed, on the route.");
    grid.setVisible(possible);
    if (!possible) {
      return;
    }
    head.refresh();
    layOut(trip);
    figures();
    drafts.become(stop());
    RoundRow row = looked;
    if (row != null && rows.contains(row)) {
      looking(row);
    }
  }

  /** The id of the stop of the round. */
  private String stop() {
    return head.at().stay().map(at -> at.stop().id()).orElse("");
  }

  private void layOut(Trip trip) {
    ReadingRound round = head.round().orElse(null);
    Map<WheelPosition, Tire> fitted =
        round == null ? Map.of() : LogEdits.fittedAt(trip, round.start().instant());
    List<Object> layout = new ArrayList<>();
    fitted.forEach(
        (position, tire) -> {
          layout.add(trip.rig().shortForm(position));
          layout.add(position);
          layout.add(tire.id());
        });
    layout.add(stop());
    layout.add(document.units());
    if (layout.equals(laidOut)) {
      return;
    }
    laidOut = layout;
    drafts.leave();
    rows.forEach(
        row -> {
          row.reading.retire();
          row.setTo.retire();
        });
    rows.clear();
    grid.getChildren().clear();
    looked = null;
    said.getChildren().clear();
    String unit = document.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    String[] heads = {"tire", "", "should read, " + unit, "reads", "off by", "then set to", ""};
    for (int i = 0; i < heads.length; i++) {
      Label column = new Label(heads[i]);
      column.getStyleClass().add("table-head");
      column.setMinWidth(USE_PREF_SIZE);
      grid.add(column, i, 0);
    }
    fitted.forEach(
        (position, tire) -> {
          RoundRow row =
              new RoundRow(tire.id(), position.words(), rows.size(), this::readPressure, this);
          rows.add(row);
          row.addTo(grid, 2 * rows.size() - 1, trip.rig().shortForm(position));
        });
    fit();
  }

  /** A figure within the gauge's scale; zero is a flat tire. */
  private Outcome<Optional<Entered<GaugePressure>>> readPressure(String text) {
    Outcome<Optional<Entered<GaugePressure>>> outcome =
        Forms.figure(QuantityKind.GAUGE_PRESSURE, document.units()).apply(text);
    Entered<GaugePressure> figure = outcome.value().flatMap(Function.identity()).orElse(null);
    return Optional.ofNullable(figure)
        .flatMap(known -> RoundAtStop.offScale(known, head.gauge()))
        .map(Outcome::<Optional<Entered<GaugePressure>>>failed)
        .orElse(outcome);
  }

  private void figures() {
    ReadingRound round = head.round().orElse(null);
    if (round == null) {
      return;
    }
    UnitSystem units = document.units();
    RoundAtStop at = head.at();
    Set<String> real = at.read(round).keySet();
    List<String> tires = rows.stream().map(row -> row.tire).toList();
    Map<String, ReadingCheck> expected = at.expected(round, tires, document.planner());
    for (RoundRow row : rows) {
      ReadingCheck check = expected.get(row.tire);
      ReadingCheck logged = real.contains(row.tire) ? check : null;
      row.show(
          LiveLines.expected(check, units),
          logged == null ? "" : LiveLines.off(logged, units),
          LiveLines.unexpected(logged));
      row.reading.show(logged == null ? "" : logged.reading().pressure().text());
      row.setTo.show(at.setTo(row.tire).map(Entered::text).orElse(""));
    }
    for (TireAdvice advice : at.tires()) {
      rows.stream()
          .filter(row -> row.tire.equals(advice.tire().fitted().tire().id()))
          .forEach(row -> row.show(advice.mark()));
    }
  }

  @Override
  public void read(RoundRow row, Optional<Entered<GaugePressure>> figure) {
    head.round()
        .ifPresent(
            round ->
                document.edit(
                    figure
                        .map(typed -> head.at().with(round, row.tire, row.order, typed))
                        .orElseGet(() -> head.at().without(round, row.tire))));
  }

  @Override
  public void set(RoundRow row, Entered<GaugePressure> figure) {
    head.round()
        .ifPresent(
            round ->
                document.edit(
                    head.at().adjusted(round, row.tire, row.order, figure, clock.instant())));
  }

  @Override
  public void next(RoundRow row) {
    int index = rows.indexOf(row) + 1;
    if (index > 0 && index < rows.size()) {
      rows.get(index).reading.field().requestFocus();
      rows.get(index).reading.field().selectAll();
    }
  }

  @Override
  public void looking(RoundRow row) {
    looked = row;
    ReadingRound round = head.round().orElse(null);
    Entered<GaugePressure> figure =
        readPressure(row.reading.typed()).value().flatMap(Function.identity()).orElse(null);
    if (round == null || figure == null) {
      said.tell(row, head.visit(), head.round(), document.planned(), null, List.of(), null);
      return;
    }
    RoundAtStop stop = head.at();
    ReadingCheck before = stop.read(round).get(row.tire);
    boolean logged = before != null && before.reading().pressure().equals(figure);
    int question = ++asked;
    Trip trial = logged ? document.trip() : stop.with(round, row.tire, row.order, figure);
    LogEvent.Reading judged =
        logged && before != null
            ? before.reading()
            : stop.reading(round, row.tire, row.order, figure);
    Planner planner = document.planner();
    Plan known = document.planned();
    int at = head.visit();
    Instant minute = stop.minute(round, row.order, clock.instant()).instant();
    UnitSystem units = document.units();
    Tasks.compute(
        () -> {
          Plan tried = planner.plan(trial);
          Plan planned = logged ? known : tried.computed();
          List<ReadingCheck> checks = tried.checks(at);
          String setNow = ReadingVerdictPane.setNow(tried, at, judged, checks, minute, units);
          return new Answer(planned, checks, setNow);
        },
        answer -> {
          if (question == asked && looked == row) {
            said.tell(row, at, head.round(), answer.planned, judged, answer.checks, answer.setNow);
          }
        },
        wrong -> {
          if (question == asked && looked == row) {
            said.tell(wrong);
          }
        });
  }

  private record Answer(Plan planned, List<ReadingCheck> checks, @Nullable String setNow) {}

  /** The stop whose round is shown, counted from 0; below 0 where there is none. */
  int visit() {
    return head.visit();
  }

  /** When the round is begun, for what else is noted at its stop. */
  Optional<TypedTime> time() {
    return head.begins();
  }

  @Override
  public Map<String, Map<String, String>> drafts() {
    return drafts.all(document.trip());
  }

  @Override
  public void restore(Map<String, Map<String, String>> kept) {
    drafts.restore(document.trip(), kept);
  }
}
