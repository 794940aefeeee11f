package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The points along a leg: two lines a point, and two more to add one. */
final class PointRows extends VBox {

  /** An edit of a row: what it shows then, and the trip with it. */
  private record Change(ProfilePoint point, Trip trip) {}

  private final EditedStop stop;
  private final EditedRows<ProfilePoint> rows = new EditedRows<>(PointRow::new);
  private final FigureField<Trip> newName = further("Name of a further point");
  private final FigureField<Trip> newDistance = further("Distance of a further point");
  private final FigureField<Trip> newElevation = further("Elevation of a further point");
  private final FigureField<Trip> newAir = further("Air at a further point");

  PointRows(EditedStop stop) {
    this.stop = stop;
    Button add = new Button("Add");
    add.getStyleClass().add("small-button");
    add.setMinWidth(USE_PREF_SIZE);
    add.setAccessibleText("Add the point");
    add.setOnAction(event -> newDistance.field().requestFocus());
    getStyleClass().add("edited-rows");
    VBox further = new VBox();
    further.getStyleClass().add("edited-row");
    lines(further, newName, newDistance, newElevation, newAir, add);
    getChildren().addAll(rows, further);
  }

  private FigureField<Trip> further(String name) {
    return new FigureField<>(name, text -> added(), this::add);
  }

  private static void lines(
      VBox box,
      FigureField<?> name,
      FigureField<?> distance,
      FigureField<?> elevation,
      FigureField<?> air,
      Button button) {
    name.field().setPromptText("name of the pass or place");
    distance.field().setPromptText("from start");
    elevation.field().setPromptText("elevation");
    air.field().setPromptText("air, if known");
    for (FigureField<?> field : List.of(name, distance, elevation, air)) {
      field.setMinWidth(0);
      HBox.setHgrow(field, Priority.ALWAYS);
    }
    box.getChildren()
        .addAll(
            new HBox(6, name, button),
            new HBox(6, distance, elevation, air),
            new VBox(name.message(), distance.message(), elevation.message(), air.message()));
  }

  void refresh() {
    rows.show(stop.leg().profile());
  }

  private <Q extends Quantity> Outcome<Optional<Entered<Q>>> read(
      QuantityKind<Q> kind, String text) {
    return Forms.figure(kind, stop.units()).apply(text);
  }

  private Outcome<Trip> added() {
    return EditedStop.then(
        read(QuantityKind.DISTANCE, newDistance.typed()),
        distance ->
            EditedStop.then(
                read(QuantityKind.ELEVATION, newElevation.typed()),
                elevation ->
                    EditedStop.then(
                        read(QuantityKind.TEMPERATURE, newAir.typed()),
                        air -> added(distance, elevation, air))));
  }

  private Outcome<Trip> added(
      Optional<Entered<Distance>> distance,
      Optional<Entered<Elevation>> elevation,
      Optional<Entered<Temperature>> air) {
    if (distance.isEmpty() || elevation.isEmpty()) {
      return incomplete(distance.isEmpty() ? "distance" : "elevation");
    }
    String name = newName.typed();
    ProfilePoint point =
        new ProfilePoint(
            name.isEmpty() ? null : name,
            distance.get(),
            elevation.get(),
            air.orElse(null),
            Remarks.NONE);
    return trip(LegEdits.withPoint(stop.leg(), point));
  }

  private static <T> Outcome<T> incomplete(String what) {
    return Outcome.failed(Problem.of(ProblemCode.PROFILE_POINT_INCOMPLETE, "", what));
  }

  private Outcome<Trip> trip(Outcome<Leg> leg) {
    return leg.map(changed -> RouteEdits.withLeg(stop.trip(), stop.index(), changed));
  }

  private void add(Trip trip) {
    List.of(newName, newDistance, newElevation, newAir).forEach(field -> field.put(""));
    stop.document().edit(trip);
  }

  /** A point. */
  private final class PointRow extends EditedRows.Row<ProfilePoint> {
    private final FigureField<Change> name =
        field(text -> changed(item().withName(text.isEmpty() ? null : text)));
    private final FigureField<Change> distance =
        field(
            text ->
                needed(read(QuantityKind.DISTANCE, text), "distance", d -> item().withDistance(d)));
    private final FigureField<Change> elevation =
        field(
            text ->
                needed(
                    read(QuantityKind.ELEVATION, text), "elevation", e -> item().withElevation(e)));
    private final FigureField<Change> air =
        field(
            text ->
                EditedStop.then(
                    read(QuantityKind.TEMPERATURE, text),
                    typed -> changed(item().withAmbient(typed.orElse(null)))));
    private final Button remove = new Button("✕");

    PointRow(ProfilePoint point) {
      super(point);
      getStyleClass().add("edited-row");
      remove.getStyleClass().add("small-button");
      remove.setMinWidth(USE_PREF_SIZE);
      remove.setOnAction(event -> stop.editLeg(leg -> LegEdits.withoutPoint(leg, item())));
      lines(this, name, distance, elevation, air, remove);
    }

    private FigureField<Change> field(Function<String, Outcome<Change>> parser) {
      return new FigureField<>(
          "",
          parser,
          change -> {
            becomes(change.point());
            stop.document().edit(change.trip());
          });
    }

    private <T> Outcome<Change> needed(
        Outcome<Optional<T>> read, String what, Function<T, ProfilePoint> change) {
      return EditedStop.then(
          read, typed -> typed.map(change).map(this::changed).orElseGet(() -> incomplete(what)));
    }

    private Outcome<Change> changed(ProfilePoint point) {
      return trip(LegEdits.withPoint(stop.leg(), item(), point))
          .map(trip -> new Change(point, trip));
    }

    @Override
    void refresh() {
      String where = "point at " + item().distance().text();
      name.named("Name of the " + where);
      distance.named("Distance of the " + where);
      elevation.named("Elevation of the " + where);
      air.named("Air at the " + where);
      remove.setAccessibleText("Remove the " + where);
      String called = item().name();
      name.show(called == null ? "" : called);
      distance.show(item().distance().text());
      elevation.show(item().elevation().text());
      air.show(EditorGrid.text(item().ambient()));
    }
  }
}
