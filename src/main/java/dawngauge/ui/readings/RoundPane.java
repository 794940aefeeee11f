package dawngauge.ui.readings;

import dawngauge.advice.StopAdvice;
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
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Round;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
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
import java.util.stream.Stream;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
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
final class RoundPane extends VBox implements RoundRow.Hands {

  /** Narrower than this, a tire goes by the short form of its position alone. */
  private static final double ROOM_FOR_NAMES = 1100;

  private final TripDocument document;
  private final Clock clock;
  private final ChoiceBox<String> stop = new ChoiceBox<>();
  private final ChoiceBox<String> state = new ChoiceBox<>();
  private final ChoiceBox<String> gauge = new ChoiceBox<>();
  private final Label sunny = new Label("sun on");
  private final ChoiceBox<String> sun = new ChoiceBox<>();
  private final FigureField<Optional<TypedTime>> start;
  private final FigureField<Optional<Entered<Temperature>>> air;
  private final GridPane grid = new GridPane();
  private final RoundTelling said;
  private final Label none = new Label();
  private final List<RoundRow> rows = new ArrayList<>();
  private List<Object> laidOut = List.of();
  private int visit = -1;
  private @Nullable TypedTime begins;
  private @Nullable Entered<Temperature> measured;
  private @Nullable RoundRow looked;
  private boolean filling;
  private int asked;

  RoundPane(TripDocument document, Clock clock) {
    this.document = document;
    this.clock = clock;
    this.said = new RoundTelling(document);
    start =
        new FigureField<>(
            "Begun at",
            this::readStart,
            value -> {
              begins = value.orElse(null);
              refresh();
            });
    air =
        new FigureField<>(
            "Air as measured",
            text -> Forms.figure(QuantityKind.TEMPERATURE, document.units()).apply(text),
            value -> {
              measured = value.orElse(null);
              refresh();
            });
    start.field().setPrefColumnCount(12);
    air.field().setPrefColumnCount(6);
    air.field().setPromptText("if measured");
    stop.setAccessibleText("Stop of the round");
    state.setAccessibleText("How warm the tires are");
    gauge.setAccessibleText("Gauge");
    for (ReadingState each : ReadingState.values()) {
      state.getItems().add(each.word());
    }
    sun.setAccessibleText("Side of the rig in the sun");
    for (Round.Sun each : Round.Sun.values()) {
      sun.getItems().add(each.words());
    }
    sun.setValue(Round.Sun.NEITHER.words());
    sun.setOnAction(event -> shone());
    sun.managedProperty().bind(sun.visibleProperty());
    sunny.managedProperty().bind(sunny.visibleProperty());
    stop.setOnAction(event -> chosen(stop.getSelectionModel().getSelectedIndex()));
    state.setOnAction(event -> refreshUnlessFilling());
    gauge.setOnAction(event -> refreshUnlessFilling());
    FlowPane head =
        new FlowPane(
            8,
            6,
            new Label("at"),
            stop,
            new Label("begun"),
            start,
            new Label("tires"),
            state,
            sunny,
            sun,
            new Label("gauge"),
            gauge,
            new Label("air"),
            air);
    head.getStyleClass().add("asked");
    grid.getStyleClass().add("round");
    none.getStyleClass().add("lesser");
    none.setWrapText(true);
    none.managedProperty().bind(none.visibleProperty());
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(head, none, new HBox(24, grid, said));
    setSpacing(6);
    widthProperty().addListener(change -> fit());
  }

  private void fit() {
    rows.forEach(row -> row.inFull(getWidth() >= ROOM_FOR_NAMES));
  }

  private void refreshUnlessFilling() {
    if (!filling) {
      refresh();
    }
  }

  private RoundAtStop at() {
    return new RoundAtStop(document.planned(), visit);
  }

  private Outcome<Optional<TypedTime>> readStart(String text) {
    Itinerary.Visit at = at().stay().orElse(null);
    return at == null
        ? Outcome.of(Optional.empty())
        : Forms.time(at.zone(), at.arrive().atZone(at.zone()).toLocalDate()).apply(text);
  }

  private void chosen(int index) {
    if (!filling && index >= 0 && index != visit) {
      go(index);
      refresh();
    }
  }

  /** Goes to a stop: the usual time and warmth of a round there. */
  private void go(int index) {
    visit = index;
    begins = null;
    measured = null;
    start.drop();
    air.put("");
    begins = at().usualStart(clock.instant()).orElse(null);
    if (begins != null) {
      filling = true;
      state.setValue(at().usualState(clock.instant()).word());
      sun.setValue(at().sunnySide().words());
      filling = false;
    }
  }

  /** Goes where the crew is, unless it is there. */
  void goToCrew() {
    RoundAtStop.nextOf(document.trip())
        .filter(wanted -> wanted != visit)
        .ifPresent(
            wanted -> {
              go(wanted);
              refresh();
            });
  }

  /** Shows the trip as it is now. */
  void refresh() {
    Trip trip = document.trip();
    List<StopAdvice> stops = RoundAtStop.stops(document.planned());
    boolean possible = !stops.isEmpty() && !trip.rig().gauges().isEmpty();
    none.setVisible(!possible);
    none.setText(
        stops.isEmpty()
            ? "Readings can be noted as soon as the departure is typed, on the route."
            : "Readings can be noted as soon as there is a gauge, on the rig's page.");
    grid.setVisible(possible);
    if (!possible) {
      return;
    }
    if (visit < 0 || visit >= stops.size()) {
      go(0);
    }
    filling = true;
    List<String> names = RoundAtStop.names(document.planned());
    if (!stop.getItems().equals(names)) {
      stop.getItems().setAll(names);
    }
    stop.getSelectionModel().select(visit);
    List<String> gauges = trip.rig().gauges().stream().map(Gauge::name).toList();
    if (!gauge.getItems().equals(gauges)) {
      String before = gauge.getValue();
      gauge.getItems().setAll(gauges);
      gauge.setValue(gauges.contains(before) ? before : gauges.get(0));
    }
    filling = false;
    TypedTime time = begins;
    start.show(time == null ? "" : Forms.text(time));
    showSun();
    layOut(trip);
    figures();
    RoundRow row = looked;
    if (row != null && rows.contains(row)) {
      looking(row);
    }
  }

  private Optional<Round> round() {
    return at().round(begins, stateChosen(), gauge.getValue(), measured, sunnySide());
  }

  private Round.Sun sunnySide() {
    return Stream.of(Round.Sun.values())
        .filter(each -> sun.isVisible() && each.words().equals(sun.getValue()))
        .findFirst()
        .orElse(Round.Sun.NEITHER);
  }

  /** The sun was said to stand on a side: what the round has read there is noted so. */
  private void shone() {
    if (!filling) {
      round().ifPresent(round -> document.edit(at().sunny(round)));
      refresh();
    }
  }

  /** Asks which side is in the sun, where tires are cold and it is up. */
  private void showSun() {
    TypedTime time = begins;
    boolean asked = stateChosen() == ReadingState.COLD && time != null && at().maySunny(time);
    sun.setVisible(asked);
    sunny.setVisible(asked);
  }

  private ReadingState stateChosen() {
    return Stream.of(ReadingState.values())
        .filter(each -> each.word().equals(state.getValue()))
        .findFirst()
        .orElse(ReadingState.COLD);
  }

  private void layOut(Trip trip) {
    Round round = round().orElse(null);
    Map<WheelPosition, Tire> fitted =
        round == null ? Map.of() : LogEdits.fittedAt(trip, round.start().instant());
    List<Object> layout = new ArrayList<>();
    fitted.forEach(
        (position, tire) -> {
          layout.add(trip.rig().shortForm(position));
          layout.add(position);
          layout.add(tire.id());
        });
    layout.add(visit);
    layout.add(document.units());
    if (layout.equals(laidOut)) {
      return;
    }
    laidOut = layout;
    rows.forEach(
        row -> {
          row.reading.retire();
          row.setTo.retire();
        });
    rows.clear();
    grid.getChildren().clear();
    looked = null;
    said.getChildren().clear();
    String[] heads = {"tire", "", "should read", "reads", "off by", "then set to", ""};
    for (int i = 0; i < heads.length; i++) {
      Label head = new Label(heads[i]);
      head.getStyleClass().add("table-head");
      head.setMinWidth(USE_PREF_SIZE);
      grid.add(head, i, 0);
    }
    fitted.forEach(
        (position, tire) -> {
          RoundRow row =
              new RoundRow(tire.id(), position.words(), rows.size(), this::readPressure, this);
          rows.add(row);
          row.addTo(grid, rows.size(), trip.rig().shortForm(position));
        });
    fit();
  }

  /** A figure within the gauge's scale; zero is a flat tire. */
  private Outcome<Optional<Entered<GaugePressure>>> readPressure(String text) {
    Outcome<Optional<Entered<GaugePressure>>> outcome =
        Forms.figure(QuantityKind.GAUGE_PRESSURE, document.units()).apply(text);
    Entered<GaugePressure> figure = outcome.value().flatMap(Function.identity()).orElse(null);
    Gauge chosen = document.trip().rig().gauge(String.valueOf(gauge.getValue())).orElse(null);
    return Optional.ofNullable(figure)
        .flatMap(known -> RoundAtStop.offScale(known, chosen))
        .map(Outcome::<Optional<Entered<GaugePressure>>>failed)
        .orElse(outcome);
  }

  private void figures() {
    Round round = round().orElse(null);
    if (round == null) {
      return;
    }
    UnitSystem units = document.units();
    RoundAtStop at = at();
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
    round()
        .ifPresent(
            round ->
                document.edit(
                    figure
                        .map(typed -> at().with(round, row.tire, row.order, typed))
                        .orElseGet(() -> at().without(round, row.tire))));
  }

  @Override
  public void set(RoundRow row, Entered<GaugePressure> figure) {
    round()
        .ifPresent(
            round ->
                document.edit(at().adjusted(round, row.tire, row.order, figure, clock.instant())));
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
    Round round = round().orElse(null);
    Entered<GaugePressure> figure =
        readPressure(row.reading.typed()).value().flatMap(Function.identity()).orElse(null);
    if (round == null || figure == null) {
      said.tell(row, visit, round(), document.planned(), null, List.of(), null);
      return;
    }
    RoundAtStop stop = at();
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
    int at = visit;
    Instant minute = stop.minute(round, row.order, clock.instant()).instant();
    UnitSystem units = document.units();
    Tasks.compute(
        () -> {
          Plan tried = planner.plan(trial);
          Plan planned = logged ? known : tried.computed();
          List<ReadingCheck> checks = tried.checks(at);
          String setNow = RoundTelling.setNow(tried, at, judged, checks, minute, units);
          return new Answer(planned, checks, setNow);
        },
        answer -> {
          if (question == asked && looked == row) {
            said.tell(row, at, round(), answer.planned, judged, answer.checks, answer.setNow);
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
    return visit;
  }

  /** When the round is begun, for what else is noted at its stop. */
  Optional<TypedTime> time() {
    return Optional.ofNullable(begins);
  }
}
