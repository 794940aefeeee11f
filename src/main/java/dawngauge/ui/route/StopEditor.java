package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Leg;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TripDocument;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/**
 * The fields of the chosen stop, its air, and the leg that leaves it. Each finished field is an
 * edit.
 */
public final class StopEditor extends VBox {

  private final TripDocument document;
  private final GridPane grid = new GridPane();
  private int index;

  /** An editor of a document's stops. */
  public StopEditor(TripDocument document) {
    this.document = document;
    getStyleClass().add("editor");
    grid.getStyleClass().add("editor-grid");
    getChildren().add(grid);
  }

  /** Shows the fields of a stop. */
  public void show(int stopIndex) {
    Trip trip = document.trip();
    index = stopIndex;
    grid.getChildren().clear();
    if (index >= trip.route().stops().size()) {
      return;
    }
    Stop stop = trip.route().stops().get(index);
    stopFields(stop);
    airFields(trip, stop);
    if (index < trip.route().legs().size()) {
      legFields(trip.route().legs().get(index));
    }
  }

  private void stopFields(Stop stop) {
    heading("Stop " + (index + 1));
    PlaceField name =
        new PlaceField(
            stop.place(),
            document.units(),
            typed -> document.planner().places(typed, near(), 8),
            value -> edit(s -> with(s, value, s.kind(), s.air())),
            taken -> document.edit(RouteEdits.atPlace(document.trip(), index, taken)));
    add("Place", name);
    ChoiceBox<Stop.Kind> kind =
        new ChoiceBox<>(FXCollections.observableArrayList(Stop.Kind.values()));
    kind.setConverter(words());
    kind.setValue(stop.kind());
    kind.setAccessibleText("Kind of stop");
    kind.setOnAction(event -> edit(s -> with(s, s.place(), kind.getValue(), s.air())));
    add("Kind", kind);
    FigureField<Optional<Entered<Elevation>>> elevation =
        new FigureField<>(
            "Elevation",
            Forms.figure(QuantityKind.ELEVATION, document.units()),
            value -> edit(s -> RouteEdits.withElevation(s, value.orElse(null))));
    elevation.show(stop.elevation() == null ? "" : stop.elevation().text());
    add(RouteEdits.isEstimated(stop) ? "Elevation, estimate" : "Elevation", elevation);
    FigureField<Optional<Coordinate>> place =
        new FigureField<>(
            "Latitude and longitude",
            Forms::coordinate,
            value -> edit(s -> Stops.coordinate(s, value.orElse(null))));
    place.show(stop.coordinate() == null ? "" : Forms.text(stop.coordinate()));
    add("Lat, lon", place);
    FigureField<Optional<ZoneId>> zone =
        new FigureField<>(
            "Time zone", Forms::zone, value -> edit(s -> Stops.zone(s, value.orElse(null))));
    zone.show(stop.zone() == null ? "" : stop.zone().getId());
    add("Time zone", zone);
    FigureField<Optional<Duration>> stay =
        new FigureField<>(
            "Stay", Forms::span, value -> edit(s -> Stops.stay(s, value.orElse(null))));
    stay.show(stop.stay() == null ? "" : Forms.text(stop.stay()));
    add("Stay", stay);
    FigureField<Optional<TypedTime>> leave =
        new FigureField<>(
            "Leaving time",
            Forms.time(zoneOf(stop)),
            value -> edit(s -> Stops.leave(s, value.orElse(null))));
    leave.show(stop.leave() == null ? "" : Forms.text(stop.leave()));
    leave.field().setPromptText("2027-04-06 05:45");
    add(index == 0 ? "Departure" : "Leave, typed", leave);
    airChoice(stop);
  }

  private void airChoice(Stop stop) {
    FigureField<Air> air =
        new FigureField<>(
            "Air to be had",
            StopEditor::air,
            value -> edit(s -> with(s, s.place(), s.kind(), value)));
    air.show(airText(stop.air()));
    air.field().setPromptText("none, yes, or up to 100 psi");
    add("Air hose", air);
  }

  private static Outcome<Air> air(String text) {
    if (text.isEmpty() || text.equals("none")) {
      return Outcome.of(Air.NONE);
    } else if (text.equals("yes")) {
      return Outcome.of(Air.YES);
    }
    String figure = text.startsWith("up to ") ? text.substring(6) : text;
    return QuantityKind.GAUGE_PRESSURE.parse(figure).map(upTo -> new Air(true, upTo));
  }

  private static String airText(Air air) {
    if (!air.available()) {
      return "none";
    }
    return air.upTo() == null ? "yes" : "up to " + air.upTo().text();
  }

  private void airFields(Trip trip, Stop stop) {
    heading("Air temperature here");
    List<AmbientEntry> entries =
        trip.ambient().stream().filter(entry -> entry.stop().equals(stop.id())).toList();
    String steady = "";
    String low = "";
    String high = "";
    LocalDate date = dateAt();
    boolean hourly = false;
    for (AmbientEntry entry : entries) {
      if (entry.figure() instanceof AmbientEntry.Steady figure) {
        steady = figure.temperature().text();
      } else if (entry.figure() instanceof AmbientEntry.LowHigh figure && low.isEmpty()) {
        low = figure.low().text();
        high = figure.high().text();
        date = figure.date();
      } else if (entry.figure() instanceof AmbientEntry.Hourly) {
        hourly = true;
      }
    }
    if (hourly) {
      note("Given by the hour in the file; a figure typed here takes its place.");
    }
    LocalDate day = date;
    String lowText = low;
    String highText = high;
    temperature("Steady", steady, value -> air(stop, value.map(AmbientEntry.Steady::new)));
    temperature(
        "Low", low, value -> air(stop, value.flatMap(t -> lowHigh(day, t, parsed(highText)))));
    temperature(
        "High", high, value -> air(stop, value.flatMap(t -> lowHigh(day, parsed(lowText), t))));
  }

  private static @Nullable Entered<Temperature> parsed(String text) {
    return text.isEmpty() ? null : Entered.of(QuantityKind.TEMPERATURE, text);
  }

  /** A day's pair; while only one is typed it stands for both. */
  private static Optional<AmbientEntry.Figure> lowHigh(
      LocalDate date, @Nullable Entered<Temperature> low, @Nullable Entered<Temperature> high) {
    Entered<Temperature> first = low == null ? high : low;
    Entered<Temperature> second = high == null ? low : high;
    if (first == null || second == null) {
      return Optional.empty();
    }
    boolean ordered = first.value().compareTo(second.value()) <= 0;
    return Optional.of(
        ordered
            ? new AmbientEntry.LowHigh(date, first, second)
            : new AmbientEntry.LowHigh(date, second, first));
  }

  private LocalDate dateAt() {
    var advice = document.planned().advice();
    if (advice == null || index >= advice.stops().size()) {
      return LocalDate.of(2027, 1, 1);
    }
    var visit = advice.stops().get(index).stop().visit();
    return visit.leave().atZone(visit.zone()).toLocalDate();
  }

  private void air(Stop stop, Optional<? extends AmbientEntry.Figure> figure) {
    List<AmbientEntry> entries = new ArrayList<>();
    figure.ifPresent(
        f -> entries.add(new AmbientEntry(stop.id(), f, Provenance.TYPED, null, Remarks.NONE)));
    document.edit(RouteEdits.withAir(document.trip(), stop.id(), entries));
  }

  private void temperature(
      String name, String text, Consumer<Optional<Entered<Temperature>>> taker) {
    FigureField<Optional<Entered<Temperature>>> field =
        new FigureField<>(name, Forms.figure(QuantityKind.TEMPERATURE, document.units()), taker);
    field.show(text);
    add(name, field);
  }

  private void legFields(Leg leg) {
    Stop next = document.trip().route().stops().get(index + 1);
    heading("Leg to " + next.place());
    FigureField<Optional<Entered<Distance>>> distance =
        new FigureField<>(
            "Distance",
            Forms.figure(QuantityKind.DISTANCE, document.units()),
            value -> editLeg(l -> RouteEdits.withDistance(l, value.orElse(null))));
    distance.show(leg.distance() == null ? "" : leg.distance().text());
    add(RouteEdits.isGuessed(leg) ? "Distance, guessed" : "Distance", distance);
    speed("Average speed", leg.averageSpeed(), (l, v) -> Stops.average(l, v));
    speed("Top speed", leg.topSpeed(), (l, v) -> Stops.top(l, v));
  }

  private void speed(String name, @Nullable Entered<Speed> typed, SpeedChange change) {
    FigureField<Optional<Entered<Speed>>> field =
        new FigureField<>(
            name,
            Forms.figure(QuantityKind.SPEED, document.units()),
            value -> editLeg(l -> change.of(l, value.orElse(null))));
    field.show(typed == null ? "" : typed.text());
    add(name, field);
  }

  /** A leg with another speed. */
  private interface SpeedChange {
    Leg of(Leg leg, @Nullable Entered<Speed> speed);
  }

  /** The nearest stop with known coordinates before this one, else the first with any. */
  private @Nullable Coordinate near() {
    List<Stop> stops = document.trip().route().stops();
    for (int i = Math.min(index, stops.size()) - 1; i >= 0; i--) {
      if (stops.get(i).coordinate() != null) {
        return stops.get(i).coordinate();
      }
    }
    return stops.stream().map(Stop::coordinate).filter(Objects::nonNull).findFirst().orElse(null);
  }

  private ZoneId zoneOf(Stop stop) {
    if (stop.zone() != null) {
      return stop.zone();
    }
    var advice = document.planned().advice();
    return advice == null || index >= advice.stops().size()
        ? ZoneOffset.UTC
        : advice.stops().get(index).stop().visit().zone();
  }

  private void edit(UnaryOperator<Stop> change) {
    Trip trip = document.trip();
    document.edit(RouteEdits.withStop(trip, index, change.apply(trip.route().stops().get(index))));
  }

  private void editLeg(UnaryOperator<Leg> change) {
    Trip trip = document.trip();
    document.edit(RouteEdits.withLeg(trip, index, change.apply(trip.route().legs().get(index))));
  }

  private static Stop with(Stop stop, String place, Stop.Kind kind, Air air) {
    return new Stop(
        stop.id(),
        place,
        kind,
        stop.coordinate(),
        stop.elevation(),
        stop.zone(),
        stop.stay(),
        stop.arrive(),
        stop.leave(),
        air,
        stop.loadChanges(),
        stop.remarks());
  }

  private void heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("editor-heading");
    grid.add(label, 0, grid.getRowCount(), 2, 1);
  }

  private void note(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("lesser");
    label.setWrapText(true);
    grid.add(label, 0, grid.getRowCount(), 2, 1);
  }

  private void add(String name, Node field) {
    Label label = new Label(name);
    label.setLabelFor(field);
    GridPane.setHgrow(field, Priority.ALWAYS);
    grid.addRow(grid.getRowCount(), label, field);
  }

  private static StringConverter<Stop.Kind> words() {
    return new StringConverter<>() {
      @Override
      public String toString(Stop.@Nullable Kind kind) {
        return kind == null ? "" : kind.word();
      }

      @Override
      public Stop.Kind fromString(String text) {
        throw new UnsupportedOperationException("a choice is not typed");
      }
    };
  }
}
