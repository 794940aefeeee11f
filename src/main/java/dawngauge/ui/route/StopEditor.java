package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Place;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
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

  /** What is typed but not valid, by stop and field; it survives choosing another stop. */
  private final Map<String, String> drafts = new HashMap<>();

  private int index;
  private String shownStop = "";

  /** An editor of a document's stops. */
  public StopEditor(TripDocument document) {
    this.document = document;
    getStyleClass().add("editor");
    grid.getStyleClass().add("editor-grid");
    getChildren().add(grid);
    document.fileProperty().addListener(change -> drafts.clear());
  }

  /** Shows the fields of a stop. */
  public void show(int stopIndex) {
    Trip trip = document.trip();
    fields().forEach(field -> keep(draftKey(field), field.draft()));
    String focused = focusedField();
    index = stopIndex;
    grid.getChildren().clear();
    if (index >= trip.route().stops().size()) {
      shownStop = "";
      return;
    }
    Stop stop = trip.route().stops().get(index);
    boolean same = shownStop.equals(stop.id());
    shownStop = stop.id();
    stopFields(stop);
    airFields(trip, stop);
    if (index < trip.route().legs().size()) {
      legFields(stop, trip.route().legs().get(index));
    }
    fields().forEach(field -> field.restore(drafts.get(draftKey(field))));
    if (same && focused != null) {
      Platform.runLater(() -> focus(focused));
    }
  }

  private List<FigureField<?>> fields() {
    List<FigureField<?>> fields = new ArrayList<>();
    for (Node node : grid.getChildren()) {
      if (node instanceof FigureField<?> field) {
        fields.add(field);
      }
    }
    return fields;
  }

  private String draftKey(FigureField<?> field) {
    return shownStop + "\n" + field.name();
  }

  private void keep(String key, @Nullable String draft) {
    if (draft == null) {
      drafts.remove(key);
    } else {
      drafts.put(key, draft);
    }
  }

  /** The field that has the keyboard, so that it has it again when the fields are made anew. */
  private @Nullable String focusedField() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    for (FigureField<?> field : fields()) {
      if (field.field() == owner) {
        return field.name();
      }
    }
    return null;
  }

  private void focus(String name) {
    for (FigureField<?> field : fields()) {
      if (field.name().equals(name)) {
        field.field().requestFocus();
      }
    }
  }

  private void stopFields(Stop stop) {
    heading("Stop " + (index + 1));
    FigureField<String> name =
        new FigureField<>(
            "Place",
            typed ->
                typed.isEmpty()
                    ? Outcome.failed(Problem.of(ProblemCode.NOT_A_NAME, "", typed))
                    : Outcome.of(typed),
            value -> edit(stop, s -> s.withPlace(value)));
    name.show(stop.place());
    new PlaceOffers(
        name,
        document.units(),
        typed -> document.planner().places(typed, near(), 8),
        taken -> place(stop, taken));
    add("Place", name);
    ChoiceBox<Stop.Kind> kind =
        new ChoiceBox<>(FXCollections.observableArrayList(Stop.Kind.values()));
    kind.setConverter(words());
    kind.setValue(stop.kind());
    kind.setAccessibleText("Kind of stop");
    kind.setOnAction(event -> edit(stop, s -> s.withKind(kind.getValue())));
    add("Kind", kind);
    FigureField<Optional<Entered<Elevation>>> elevation =
        new FigureField<>(
            "Elevation",
            Forms.figure(QuantityKind.ELEVATION, document.units()),
            value -> edit(stop, s -> RouteEdits.withElevation(s, value.orElse(null))));
    elevation.show(stop.elevation() == null ? "" : stop.elevation().text());
    add(RouteEdits.isEstimated(stop) ? "Elevation, estimate" : "Elevation", elevation);
    FigureField<Optional<Coordinate>> place =
        new FigureField<>(
            "Latitude and longitude",
            Forms::coordinate,
            value -> edit(stop, s -> s.withCoordinate(value.orElse(null))));
    place.show(stop.coordinate() == null ? "" : Forms.text(stop.coordinate()));
    add("Lat, lon", place);
    FigureField<Optional<ZoneId>> zone =
        new FigureField<>(
            "Time zone", Forms::zone, value -> edit(stop, s -> s.withZone(value.orElse(null))));
    zone.show(stop.zone() == null ? "" : stop.zone().getId());
    add("Time zone", zone);
    FigureField<Optional<Duration>> stay =
        new FigureField<>(
            "Stay", Forms::span, value -> edit(stop, s -> s.withStay(value.orElse(null))));
    stay.show(stop.stay() == null ? "" : Forms.text(stop.stay()));
    add("Stay", stay);
    FigureField<Optional<TypedTime>> leave =
        new FigureField<>(
            "Leaving time",
            Forms.time(zoneOf(stop)),
            value -> edit(stop, s -> s.withTimes(s.arrive(), value.orElse(null))));
    leave.show(stop.leave() == null ? "" : Forms.text(stop.leave()));
    leave.field().setPromptText("2027-04-06 05:45");
    add(index == 0 ? "Departure" : "Leave, typed", leave);
    airChoice(stop);
  }

  private void airChoice(Stop stop) {
    FigureField<Air> air =
        new FigureField<>(
            "Air to be had", StopEditor::air, value -> edit(stop, s -> s.withAir(value)));
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
    temperature("Steady", steady, value -> steady(stop, value.map(AmbientEntry.Steady::new)));
    temperature(
        "Low", low, value -> day(stop, day, value.flatMap(t -> lowHigh(day, t, parsed(highText)))));
    temperature(
        "High",
        high,
        value -> day(stop, day, value.flatMap(t -> lowHigh(day, parsed(lowText), t))));
  }

  private static @Nullable Entered<Temperature> parsed(String text) {
    return text.isEmpty() ? null : Entered.of(QuantityKind.TEMPERATURE, text);
  }

  /** A day's pair; while only one is typed it stands for both. */
  private static Optional<AmbientEntry.LowHigh> lowHigh(
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

  private void steady(Stop stop, Optional<AmbientEntry.Steady> figure) {
    List<AmbientEntry> entries = new ArrayList<>();
    figure.ifPresent(steady -> entries.add(typed(stop, steady, null)));
    document.edit(RouteEdits.withAir(document.trip(), stop.id(), entries));
  }

  /** Puts a day's pair in the place of that day's; other days stay, what is not by days goes. */
  private void day(Stop stop, LocalDate date, Optional<AmbientEntry.LowHigh> figure) {
    List<AmbientEntry> entries = new ArrayList<>();
    AmbientEntry before = null;
    for (AmbientEntry entry : document.trip().ambient()) {
      if (entry.stop().equals(stop.id()) && entry.figure() instanceof AmbientEntry.LowHigh day) {
        if (day.date().equals(date)) {
          before = entry;
        } else {
          entries.add(entry);
        }
      }
    }
    AmbientEntry old = before;
    figure.ifPresent(day -> entries.add(0, typed(stop, day, old)));
    document.edit(RouteEdits.withAir(document.trip(), stop.id(), entries));
  }

  private static AmbientEntry typed(
      Stop stop, AmbientEntry.Figure figure, @Nullable AmbientEntry before) {
    return new AmbientEntry(
        stop.id(),
        figure,
        Provenance.TYPED,
        before == null ? null : before.uncertainty(),
        before == null ? Remarks.NONE : before.remarks());
  }

  private void temperature(
      String name, String text, Consumer<Optional<Entered<Temperature>>> taker) {
    FigureField<Optional<Entered<Temperature>>> field =
        new FigureField<>(name, Forms.figure(QuantityKind.TEMPERATURE, document.units()), taker);
    field.show(text);
    add(name, field);
  }

  private void legFields(Stop from, Leg leg) {
    Stop next = document.trip().route().stops().get(index + 1);
    heading("Leg to " + next.place());
    FigureField<Optional<Entered<Distance>>> distance =
        new FigureField<>(
            "Distance",
            length(leg),
            value -> editLeg(from, l -> RouteEdits.withDistance(l, value.orElse(null))));
    distance.show(leg.distance() == null ? "" : leg.distance().text());
    add(RouteEdits.isGuessed(leg) ? "Distance, guessed" : "Distance", distance);
    speed(from, "Average speed", leg.averageSpeed(), Leg::withAverageSpeed);
    speed(from, "Top speed", leg.topSpeed(), Leg::withTopSpeed);
  }

  /** Reads the length of a leg, which ends behind the last point of its profile. */
  private Function<String, Outcome<Optional<Entered<Distance>>>> length(Leg leg) {
    var parser = Forms.figure(QuantityKind.DISTANCE, document.units());
    return text -> {
      Outcome<Optional<Entered<Distance>>> outcome = parser.apply(text);
      Entered<Distance> length = outcome.value().flatMap(value -> value).orElse(null);
      for (ProfilePoint point : leg.profile()) {
        if (length != null && point.distance().value().compareTo(length.value()) > 0) {
          return Outcome.failed(
              Problem.of(
                  ProblemCode.PROFILE_BEYOND_LEG, "", point.distance().text(), length.text()));
        }
      }
      return outcome;
    };
  }

  private void speed(Stop from, String name, @Nullable Entered<Speed> typed, SpeedChange change) {
    FigureField<Optional<Entered<Speed>>> field =
        new FigureField<>(
            name,
            Forms.positive(QuantityKind.SPEED, document.units()),
            value -> editLeg(from, l -> change.of(l, value.orElse(null))));
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

  private void place(Stop stop, Place taken) {
    List<Stop> stops = document.trip().route().stops();
    for (int i = 0; i < stops.size(); i++) {
      if (stops.get(i).id().equals(stop.id())) {
        document.edit(RouteEdits.atPlace(document.trip(), i, taken));
        return;
      }
    }
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

  /** Changes the stop that a field was made for, which may no longer be the chosen one. */
  private void edit(Stop of, UnaryOperator<Stop> change) {
    Trip trip = document.trip();
    int at = indexOf(of);
    if (at >= 0) {
      document.edit(RouteEdits.withStop(trip, at, change.apply(trip.route().stops().get(at))));
    }
  }

  private void editLeg(Stop from, UnaryOperator<Leg> change) {
    Trip trip = document.trip();
    int at = indexOf(from);
    if (at >= 0 && at < trip.route().legs().size()) {
      document.edit(RouteEdits.withLeg(trip, at, change.apply(trip.route().legs().get(at))));
    }
  }

  private int indexOf(Stop stop) {
    List<Stop> stops = document.trip().route().stops();
    for (int i = 0; i < stops.size(); i++) {
      if (stops.get(i).id().equals(stop.id())) {
        return i;
      }
    }
    return -1;
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
