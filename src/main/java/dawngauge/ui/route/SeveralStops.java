package dawngauge.ui.route;

import dawngauge.field.Codec;
import dawngauge.field.Field;
import dawngauge.field.RouteFields;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
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
import dawngauge.ui.common.TripDocument;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiFunction;
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
    ofStops(RouteFields.STOP_STAY, () -> rows().tailSet(1)); // a start's stay is nothing to a trip
    ofStops(RouteFields.STOP_AIR, this::rows);
    grid.heading(() -> "Air temperature at all of them");
    shared(
        "Steady",
        RouteFields.TEMPERATURE,
        () -> stops().map(stop -> EditorGrid.text(air(stop).temperature())),
        (trip, typed) -> GroupAir.withSteady(trip, rows(), typed));
    lowHigh();
    grid.heading(() -> "Legs that leave them");
    ofLegs(RouteFields.LEG_AVERAGE_SPEED);
    ofLegs(RouteFields.LEG_TOP_SPEED);
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

  private StopAir air(Stop stop) {
    return StopAir.of(document.trip(), stop.id());
  }

  private <V> void ofStops(Field<Stop, V> field, Supplier<SortedSet<Integer>> of) {
    shared(
        field.label(),
        field.codec(),
        () -> of.get().stream().map(document.trip().route().stops()::get).map(field::text),
        (trip, value) ->
            GroupEdits.withStops(trip, of.get(), stop -> field.with().apply(stop, value)));
  }

  private <V> void ofLegs(Field<Leg, V> field) {
    shared(
        field.label(),
        field.codec(),
        () ->
            rows().headSet(document.trip().route().legs().size()).stream()
                .map(document.trip().route().legs()::get)
                .map(field::text),
        (trip, value) -> GroupEdits.withLegs(trip, rows(), leg -> field.with().apply(leg, value)));
  }

  /** A field that sets what is typed, which must be something, at all stops. */
  private <V> void shared(
      String name,
      Codec<V> codec,
      Supplier<Stream<String>> shown,
      BiFunction<Trip, V, Trip> change) {
    FigureField<V> field =
        new FigureField<>(
            name + " of all",
            text ->
                text.isEmpty()
                    ? Outcome.failed(Problem.of(ProblemCode.NOTHING_FOR_ALL, ""))
                    : codec.typed().apply(document.units(), text),
            value -> document.edit(change.apply(document.trip(), value)));
    grid.field(() -> name, field, () -> follow(field, shown.get().toList()));
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
}
