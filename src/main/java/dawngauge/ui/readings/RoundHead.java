package dawngauge.ui.readings;

import dawngauge.planner.RoundAtStop;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ReadingRound;
import dawngauge.trip.ReadingState;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TripDocument;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/** What a round is: its stop and beginning, how warm the tires are, its gauge, sun and air. */
final class RoundHead extends FlowPane {

  private final TripDocument document;
  private final Clock clock;
  private final Runnable leaving;
  private final Runnable changed;
  private final ChoiceBox<String> stop = new ChoiceBox<>();
  private final ChoiceBox<String> state = new ChoiceBox<>();
  private final ChoiceBox<String> gauge = new ChoiceBox<>();
  private final ChoiceBox<String> sun = new ChoiceBox<>();
  private final FigureField<Optional<TypedTime>> start;
  private final FigureField<Optional<Entered<Temperature>>> air;
  private int visit = -1;
  private @Nullable TypedTime begins;
  private @Nullable Entered<Temperature> measured;
  private boolean filling;

  /**
   * The head of a round.
   *
   * @param leaving is told before another stop takes the place of this one
   * @param changed is told after anything of it has changed
   */
  RoundHead(TripDocument document, Clock clock, Runnable leaving, Runnable changed) {
    super(8, 6);
    this.document = document;
    this.clock = clock;
    this.leaving = leaving;
    this.changed = changed;
    start =
        new FigureField<>(
            "Begun at",
            this::readStart,
            value -> {
              begins = value.orElse(null);
              changed.run();
            });
    air =
        new FigureField<>(
            "Air as measured",
            text -> Forms.figure(QuantityKind.TEMPERATURE, document.units()).apply(text),
            value -> {
              measured = value.orElse(null);
              changed.run();
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
    for (ReadingRound.Sun each : ReadingRound.Sun.values()) {
      sun.getItems().add(each.words());
    }
    sun.setValue(ReadingRound.Sun.NEITHER.words());
    sun.setOnAction(event -> shone());
    HBox sunny = asked("sun on", sun);
    sunny.visibleProperty().bind(sun.visibleProperty());
    sunny.managedProperty().bind(sun.visibleProperty());
    stop.setOnAction(event -> chosen(stop.getSelectionModel().getSelectedIndex()));
    state.setOnAction(event -> tellUnlessFilling());
    gauge.setOnAction(event -> tellUnlessFilling());
    getChildren()
        .addAll(
            asked("at", stop),
            asked("begun", start),
            asked("tires", state),
            sunny,
            asked("gauge", gauge),
            asked("air", air));
    getStyleClass().add("asked");
  }

  /** A word and what it asks for, which stay side by side. */
  private static HBox asked(String word, Node control) {
    HBox both = new HBox(8, new Label(word), control);
    both.setAlignment(Pos.CENTER_LEFT);
    return both;
  }

  /** The stop whose round is shown, counted from 0; below 0 where there is none. */
  int visit() {
    return visit;
  }

  /** When the round is begun. */
  Optional<TypedTime> begins() {
    return Optional.ofNullable(begins);
  }

  /** The stop of the round in the plan. */
  RoundAtStop at() {
    return new RoundAtStop(document.planned(), visit);
  }

  /** The round as it is chosen; none while its start or its gauge is missing. */
  Optional<ReadingRound> round() {
    return at().round(begins, stateChosen(), gauge.getValue(), measured, sunnySide());
  }

  /** The gauge that it is read with. */
  @Nullable Gauge gauge() {
    return document.trip().rig().gauge(String.valueOf(gauge.getValue())).orElse(null);
  }

  private void tellUnlessFilling() {
    if (!filling) {
      changed.run();
    }
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
      changed.run();
    }
  }

  /** Goes to a stop: the usual time and warmth of a round there. */
  void go(int index) {
    leaving.run();
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

  /** Shows the trip as it is now; there is a stop and a gauge. */
  void refresh() {
    List<String> names = RoundAtStop.names(document.planned());
    if (visit < 0 || visit >= names.size()) {
      go(0);
    }
    filling = true;
    if (!stop.getItems().equals(names)) {
      stop.getItems().setAll(names);
    }
    stop.getSelectionModel().select(visit);
    List<String> gauges = document.trip().rig().gauges().stream().map(Gauge::name).toList();
    if (!gauge.getItems().equals(gauges)) {
      String before = gauge.getValue();
      gauge.getItems().setAll(gauges);
      gauge.setValue(gauges.contains(before) ? before : gauges.get(0));
    }
    filling = false;
    TypedTime time = begins;
    start.show(time == null ? "" : Forms.text(time));
    boolean asked = stateChosen() == ReadingState.COLD && time != null && at().maySunny(time);
    sun.setVisible(asked);
  }

  private ReadingRound.Sun sunnySide() {
    return Stream.of(ReadingRound.Sun.values())
        .filter(each -> sun.isVisible() && each.words().equals(sun.getValue()))
        .findFirst()
        .orElse(ReadingRound.Sun.NEITHER);
  }

  /** The sun was said to stand on a side: what the round has read there is noted so. */
  private void shone() {
    if (!filling) {
      round().ifPresent(round -> document.edit(at().sunny(round)));
      changed.run();
    }
  }

  private ReadingState stateChosen() {
    return Stream.of(ReadingState.values())
        .filter(each -> each.word().equals(state.getValue()))
        .findFirst()
        .orElse(ReadingState.COLD);
  }
}
