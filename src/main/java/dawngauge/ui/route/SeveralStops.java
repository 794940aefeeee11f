package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.GroupAir;
import dawngauge.trip.GroupEdits;
import dawngauge.trip.Leg;
import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.trip.StopClock;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TripDocument;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The fields that several chosen stops share. Each shows the figure that all of them have, or that
 * they differ; what is typed is set at all of them, as one edit.
 */
public final class SeveralStops extends VBox {

  private final TripDocument document;
  private final EditorGrid grid = new EditorGrid();
  private List<String> ids = List.of();

  /** Fields for stops of a document. */
  public SeveralStops(TripDocument document) {
    this.document = document;
    getStyleClass().add("editor");
    getChildren().add(grid);
    grid.heading(() -> ids.size() + " stops together");
    grid.wideNote(() -> String.join(" · ", stops().map(Stop::place).toList()));
    shared(
        "Stay",
        Forms::span,
        () -> behindStart().map(stop -> stop.stay() == null ? "" : Forms.text(stop.stay())),
        this::withStay);
    shared(
        "Air hose",
        text ->
            text.isEmpty()
                ? Outcome.of(Optional.empty())
                : AirField.parse(text, document.units()).map(Optional::of),
        () -> stops().map(stop -> AirField.text(stop.air())),
        (trip, air) -> GroupEdits.withStops(trip, rows(), stop -> stop.withAir(air)));
    grid.heading(() -> "Air temperature at all of them");
    shared(
        "Steady",
        text -> Forms.figure(QuantityKind.TEMPERATURE, document.units()).apply(text),
        () -> stops().map(stop -> EditorGrid.text(air(stop).temperature())),
        (trip, typed) -> GroupAir.withSteady(trip, rows(), typed));
    lowHigh();
    grid.heading(() -> "Legs that leave them");
    speed("Average speed", Leg::averageSpeed, Leg::withAverageSpeed);
    speed("Top speed", Leg::topSpeed, Leg::withTopSpeed);
  }

  /** Shows the stops of some rows, counted from 0. What is typed for others is dropped. */
  public void show(NavigableSet<Integer> rows) {
    List<Stop> all = document.trip().route().stops();
    List<String> wanted =
        rows.stream().filter(row -> row < all.size()).map(row -> all.get(row).id()).toList();
    if (!wanted.equals(ids)) {
      FigureFields.below(this).forEach(FigureField::drop);
      ids = wanted;
    }
    grid.refresh();
  }

  private NavigableSet<Integer> rows() {
    NavigableSet<Integer> rows = new TreeSet<>();
    List<Stop> all = document.trip().route().stops();
    for (int i = 0; i < all.size(); i++) {
      if (ids.contains(all.get(i).id())) {
        rows.add(i);
      }
    }
    return rows;
  }

  private Stream<Stop> stops() {
    return rows().stream().map(document.trip().route().stops()::get);
  }

  /** The stops but the start, whose stay is nothing to the trip. */
  private Stream<Stop> behindStart() {
    return rows().tailSet(1).stream().map(document.trip().route().stops()::get);
  }

  private StopAir air(Stop stop) {
    return StopAir.of(document.trip(), stop.id());
  }

  private Trip withStay(Trip trip, Duration stay) {
    return GroupEdits.withStops(trip, rows().tailSet(1), stop -> stop.withStay(stay));
  }

  /** A field that sets what is typed at all stops. */
  private <T> void shared(
      String name,
      Function<String, Outcome<Optional<T>>> reader,
      Supplier<Stream<String>> shown,
      BiFunction<Trip, T, Trip> change) {
    FigureField<T> field =
        new FigureField<>(
            name + " of all",
            text -> EditedStop.then(reader.apply(text), SeveralStops::needed),
            value -> document.edit(change.apply(document.trip(), value)));
    grid.field(() -> name, field, () -> follow(field, shown.get().toList()));
  }

  private static <T> Outcome<T> needed(Optional<T> typed) {
    return typed
        .map(Outcome::of)
        .orElseGet(() -> Outcome.failed(Problem.of(ProblemCode.NOTHING_FOR_ALL, "")));
  }

  /** The text that all have; else the field says that they differ. */
  private static String follow(FigureField<?> field, List<String> texts) {
    List<String> distinct = texts.stream().distinct().toList();
    field.field().setDisable(texts.isEmpty());
    field.field().setPromptText(distinct.size() > 1 ? "differs" : "");
    return distinct.size() == 1 ? distinct.get(0) : "";
  }

  private void lowHigh() {
    LowHighPair pair =
        new LowHighPair(
            " of all",
            document::units,
            (low, high, alone) -> withDays(low, low, high, alone),
            (high, low, alone) -> withDays(high, low, high, alone),
            document::edit);
    grid.field(() -> "Low, each day", pair.low(), () -> follow(pair.low(), days(StopAir::low)));
    grid.field(() -> "High, each day", pair.high(), () -> follow(pair.high(), days(StopAir::high)));
  }

  private Outcome<Trip> withDays(
      @Nullable Entered<Temperature> own,
      @Nullable Entered<Temperature> low,
      @Nullable Entered<Temperature> high,
      boolean alone) {
    return own == null
        ? Outcome.failed(Problem.of(ProblemCode.NOTHING_FOR_ALL, ""))
        : GroupAir.withDays(document.trip(), rows(), low, high, alone);
  }

  private interface OfDay {
    @Nullable Entered<Temperature> of(StopAir air, LocalDate date);
  }

  private List<String> days(OfDay figure) {
    return rows().stream()
        .flatMap(
            row -> {
              Stop stop = document.trip().route().stops().get(row);
              return new StopClock(document.trip(), row)
                  .days().stream().map(date -> EditorGrid.text(figure.of(air(stop), date)));
            })
        .toList();
  }

  private interface SpeedChange {
    Leg of(Leg leg, Entered<Speed> speed);
  }

  private void speed(
      String name, Function<Leg, @Nullable Entered<Speed>> typed, SpeedChange change) {
    shared(
        name,
        text -> Forms.positive(QuantityKind.SPEED, document.units()).apply(text),
        () ->
            rows().headSet(document.trip().route().legs().size()).stream()
                .map(document.trip().route().legs()::get)
                .map(leg -> EditorGrid.text(typed.apply(leg))),
        (trip, speed) -> GroupEdits.withLegs(trip, rows(), leg -> change.of(leg, speed)));
  }
}
