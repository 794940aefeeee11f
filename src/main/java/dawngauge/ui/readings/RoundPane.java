package dawngauge.ui.readings;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.LiveLines;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.CrewPlace;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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

  /** What is expected does not hang on the figure; some figure is needed to ask for it. */
  private static final Entered<GaugePressure> ANY_FIGURE =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi");

  private final TripDocument document;
  private final Clock clock;
  private final ChoiceBox<String> stop = new ChoiceBox<>();
  private final ChoiceBox<String> state = new ChoiceBox<>();
  private final ChoiceBox<String> gauge = new ChoiceBox<>();
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
    start = new FigureField<>("Begun at", this::readStart, value -> begin(value.orElse(null)));
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
            new Label("gauge"),
            gauge,
            new Label("air"),
            air);
    head.getStyleClass().add("asked");
    grid.getStyleClass().add("round");
    none.getStyleClass().add("lesser");
    none.setWrapText(true);
    none.managedProperty().bind(none.visibleProperty());
    HBox side = new HBox(24, grid, said);
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(head, none, side);
    setSpacing(6);
    widthProperty().addListener(change -> fit());
  }

  private void fit() {
    boolean room = getWidth() >= ROOM_FOR_NAMES;
    rows.forEach(row -> row.inFull(room));
  }

  private void refreshUnlessFilling() {
    if (!filling) {
      refresh();
    }
  }

  private List<StopAdvice> stops() {
    Advice advice = document.planned().advice();
    return advice == null ? List.of() : advice.stops();
  }

  private Optional<Itinerary.Visit> here() {
    List<StopAdvice> stops = stops();
    return visit >= 0 && visit < stops.size()
        ? Optional.of(stops.get(visit).stop().visit())
        : Optional.empty();
  }

  private Outcome<Optional<TypedTime>> readStart(String text) {
    Itinerary.Visit at = here().orElse(null);
    return at == null
        ? Outcome.of(Optional.empty())
        : Forms.time(at.zone(), at.arrive().atZone(at.zone()).toLocalDate()).apply(text);
  }

  private void begin(@Nullable TypedTime time) {
    begins = time;
    refresh();
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
    Itinerary.Visit at = here().orElse(null);
    if (at != null) {
      Instant usual = Round.usualStart(at, clock.instant());
      begins = LogEdits.at(usual, at.zone());
      boolean cold =
          index == 0
              || !usual.isBefore(at.arrive().plus(ReadingState.COLD_AFTER))
              || at.firstStartOfDay();
      filling = true;
      state.setValue((cold ? ReadingState.COLD : ReadingState.WARM).word());
      filling = false;
    }
  }

  /** Goes where the crew is, unless it is there. */
  void goToCrew() {
    Itinerary itinerary = Itinerary.of(document.trip()).valueOrNull();
    if (itinerary != null) {
      CrewPlace place = CrewPlace.of(document.trip(), itinerary);
      int wanted = place.there() ? place.visit() : place.next(itinerary.visits());
      if (wanted != visit) {
        go(wanted);
        refresh();
      }
    }
  }

  /** Shows the trip as it is now. */
  void refresh() {
    Trip trip = document.trip();
    List<StopAdvice> stops = stops();
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
    List<String> names = new ArrayList<>();
    for (StopAdvice each : stops) {
      names.add((each.stop().visit().index() + 1) + " " + each.stop().visit().stop().place());
    }
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
    layOut(trip);
    figures();
    RoundRow row = looked;
    if (row != null && rows.contains(row)) {
      looking(row);
    }
  }

  private Optional<Round> round() {
    TypedTime time = begins;
    Itinerary.Visit at = here().orElse(null);
    return time == null || at == null || gauge.getValue() == null
        ? Optional.empty()
        : Optional.of(new Round(at.stop().id(), time, stateChosen(), gauge.getValue(), measured));
  }

  private ReadingState stateChosen() {
    for (ReadingState each : ReadingState.values()) {
      if (each.word().equals(state.getValue())) {
        return each;
      }
    }
    return ReadingState.COLD;
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
    Entered<GaugePressure> span =
        document.trip().rig().gauge(String.valueOf(gauge.getValue())).map(Gauge::span).orElse(null);
    boolean over =
        figure != null && span != null && figure.value().pascals() > span.value().pascals();
    boolean under = figure != null && figure.value().pascals() < 0;
    return figure != null && (over || under)
        ? Outcome.failed(
            Problem.of(
                ProblemCode.OUT_OF_RANGE,
                "",
                figure.text(),
                "0",
                span == null ? "the gauge's scale" : span.text()))
        : outcome;
  }

  private void figures() {
    Round round = round().orElse(null);
    if (round == null) {
      return;
    }
    Trip trip = document.trip();
    UnitSystem units = document.units();
    Trip trial = trip;
    Map<String, ReadingCheck> real = read();
    for (RoundRow row : rows) {
      if (!real.containsKey(row.tire)) {
        trial = LogEdits.with(trial, reading(round, row, ANY_FIGURE));
      }
    }
    List<ReadingCheck> checks = document.planner().plan(trial).checks(visit);
    for (RoundRow row : rows) {
      ReadingCheck logged = real.get(row.tire);
      ReadingCheck check =
          logged != null
              ? logged
              : RoundTelling.of(checks, reading(round, row, ANY_FIGURE)).orElse(null);
      row.show(
          LiveLines.expected(check, units),
          logged == null ? "" : LiveLines.off(logged, units),
          LiveLines.unexpected(logged));
      row.reading.show(logged == null ? "" : logged.reading().pressure().text());
      row.setTo.show(setHere(row.tire));
    }
    for (TireAdvice advice : stops().get(visit).tires()) {
      rows.stream()
          .filter(row -> row.tire.equals(advice.tire().fitted().tire().id()))
          .forEach(row -> row.show(advice.mark()));
    }
  }

  /** The readings of this stop in the chosen state, by tire. */
  private Map<String, ReadingCheck> read() {
    Map<String, ReadingCheck> all = new LinkedHashMap<>();
    for (TireAdvice advice : stops().get(visit).tires()) {
      for (ReadingCheck check : advice.tire().readings()) {
        if (check.reading().state() == stateChosen()) {
          all.put(check.reading().tire(), check);
        }
      }
    }
    return all;
  }

  private String setHere(String tire) {
    Itinerary.Visit at = here().orElse(null);
    String text = "";
    for (LogEvent event : document.trip().log()) {
      if (at != null
          && event instanceof LogEvent.Adjustment adjustment
          && adjustment.tire().equals(tire)
          && !event.time().instant().isBefore(at.arrive())
          && !event.time().instant().isAfter(at.leave())) {
        text = adjustment.to().text();
      }
    }
    return text;
  }

  private LogEvent.Reading reading(Round round, RoundRow row, Entered<GaugePressure> figure) {
    return round.reading(row.tire, row.order, figure, latest());
  }

  /** No reading of the stop is later than its departure, unless the rig is known to stand there. */
  private @Nullable Instant latest() {
    Itinerary.Visit at = here().orElse(null);
    if (at == null) {
      return null;
    }
    boolean noted = false;
    for (LogEvent event : document.trip().log()) {
      if (event instanceof LogEvent.Arrived arrived && arrived.stop().equals(at.stop().id())) {
        noted = true;
      } else if (event instanceof LogEvent.Left left && left.stop().equals(at.stop().id())) {
        noted = false;
      }
    }
    return noted ? null : at.leave();
  }

  /** A reading with another figure; it keeps all else. */
  private static LogEvent.Reading mended(
      LogEvent.Reading old, Entered<GaugePressure> figure, Round round) {
    return new LogEvent.Reading(
        old.time(),
        old.tire(),
        figure,
        round.gauge(),
        old.state(),
        old.air(),
        old.tireTemperature(),
        old.remarks());
  }

  @Override
  public void read(RoundRow row, Optional<Entered<GaugePressure>> figure) {
    Round round = round().orElse(null);
    Trip trip = document.trip();
    ReadingCheck before = read().get(row.tire);
    if (round == null) {
      return;
    }
    Trip cleared =
        before == null ? trip : LogEdits.without(trip, trip.log().indexOf(before.reading()));
    if (figure.isEmpty()) {
      document.edit(cleared);
    } else if (before != null) {
      document.edit(LogEdits.with(cleared, mended(before.reading(), figure.get(), round)));
    } else {
      document.edit(LogEdits.with(trip, reading(round, row, figure.get())));
    }
  }

  @Override
  public void set(RoundRow row, Entered<GaugePressure> figure) {
    round()
        .ifPresent(
            round ->
                document.edit(
                    LogEdits.adjusted(
                        document.trip(), row.tire, figure, round.gauge(), minute(round, row))));
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
    Trip trip = document.trip();
    ReadingCheck before = read().get(row.tire);
    boolean logged = before != null && before.reading().pressure().equals(figure);
    int question = ++asked;
    LogEvent.Reading typed =
        before == null ? reading(round, row, figure) : mended(before.reading(), figure, round);
    Trip trial =
        logged
            ? trip
            : LogEdits.with(
                before == null
                    ? trip
                    : LogEdits.without(trip, trip.log().indexOf(before.reading())),
                typed);
    LogEvent.Reading judged = logged && before != null ? before.reading() : typed;
    Planner planner = document.planner();
    Plan known = document.planned();
    int at = visit;
    Instant minute = minute(round, row).instant();
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

  /** When a tire is set: now where the crew stands there now, else when it was read. */
  private TypedTime minute(Round round, RoundRow row) {
    Itinerary.Visit at = here().orElse(null);
    TypedTime read = round.time(row.order, latest());
    Instant now = clock.instant();
    return at != null && !now.isBefore(read.instant()) && !now.isAfter(at.leave())
        ? LogEdits.at(now, at.zone())
        : read;
  }

  /** When the round is begun, for what else is noted at its stop. */
  Optional<TypedTime> time() {
    return Optional.ofNullable(begins);
  }
}
