package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AirEdits;
import dawngauge.trip.AmbientEntry.Hourly.At;
import dawngauge.trip.StopAir;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The air by the hour: a row a time, and one more to add the next. */
final class HourRows extends VBox {

  private static final double TIMES = 148;

  /** An edit of a row: what it shows then, and the trip with it. */
  private record Change(At hour, Trip trip) {}

  private final EditedStop stop;
  private final EditedRows<At> rows = new EditedRows<>(HourRow::new);
  private final FigureField<Trip> newTime =
      new FigureField<>("Time of a further temperature", text -> added(), this::add);
  private final FigureField<Trip> newFigure =
      new FigureField<>("Further temperature", text -> added(), this::add);

  HourRows(EditedStop stop) {
    this.stop = stop;
    Button add = new Button("Add");
    add.getStyleClass().add("small-button");
    add.setMinWidth(USE_PREF_SIZE);
    add.setAccessibleText("Add the temperature at this time");
    add.setOnAction(event -> newFigure.field().requestFocus());
    newFigure.field().setPromptText("temperature");
    getStyleClass().add("edited-rows");
    getChildren().addAll(rows, line(newTime, newFigure, add), messages(newTime, newFigure));
  }

  private static HBox line(FigureField<?> time, FigureField<?> figure, Button button) {
    time.setMinWidth(TIMES);
    time.setMaxWidth(TIMES);
    HBox.setHgrow(figure, Priority.ALWAYS);
    return new HBox(6, time, figure, button);
  }

  private static VBox messages(FigureField<?> time, FigureField<?> figure) {
    return new VBox(time.message(), figure.message());
  }

  void refresh() {
    rows.show(hours());
    TypedTime next = next();
    newTime.field().setPromptText(next == null ? "2027-04-06 05:45" : Forms.text(next));
  }

  private List<At> hours() {
    return StopAir.of(stop.trip(), stop.id()).hours();
  }

  /** The time that a further row is of unless another is typed: an hour after the last. */
  private @Nullable TypedTime next() {
    List<At> hours = hours();
    ZonedDateTime arrives = stop.clock().arrives();
    if (!hours.isEmpty()) {
      ZonedDateTime last = hours.get(hours.size() - 1).time().time().plusHours(1);
      return TypedTime.of(last.toLocalDateTime(), last.getZone());
    } else if (arrives == null) {
      return null;
    }
    ZonedDateTime hour = arrives.withZoneSameInstant(stop.clock().zone());
    return TypedTime.of(
        hour.toLocalDateTime().withMinute(0).withSecond(0).withNano(0), hour.getZone());
  }

  private Outcome<Optional<TypedTime>> time(String text, @Nullable LocalDate day) {
    return Forms.time(stop.clock().zone(), day).apply(text);
  }

  private Outcome<Optional<Entered<Temperature>>> figure(String text) {
    return Forms.figure(QuantityKind.TEMPERATURE, stop.units()).apply(text);
  }

  private Outcome<Trip> added() {
    TypedTime next = next();
    LocalDate day = next == null ? null : next.time().toLocalDate();
    return EditedStop.then(
        time(newTime.typed(), day),
        typed -> {
          TypedTime time = typed.orElse(next);
          return time == null
              ? Outcome.failed(Problem.of(ProblemCode.HOUR_INCOMPLETE, "", "time"))
              : EditedStop.then(figure(newFigure.typed()), figure -> added(time, figure));
        });
  }

  private Outcome<Trip> added(TypedTime time, Optional<Entered<Temperature>> figure) {
    return figure
        .map(value -> AirEdits.withHour(stop.trip(), stop.id(), null, new At(time, value)))
        .orElseGet(
            () -> Outcome.failed(Problem.of(ProblemCode.HOUR_INCOMPLETE, "", "temperature")));
  }

  private void add(Trip trip) {
    newTime.put("");
    newFigure.put("");
    stop.document().edit(trip);
  }

  /** A time and its temperature. */
  private final class HourRow extends EditedRows.Row<At> {
    private final FigureField<Change> time = new FigureField<>("Time", this::timed, this::take);
    private final FigureField<Change> figure =
        new FigureField<>("Temperature", this::figured, this::take);
    private final Button remove = new Button("✕");

    HourRow(At hour) {
      super(hour);
      remove.getStyleClass().add("small-button");
      remove.setMinWidth(USE_PREF_SIZE);
      remove.setOnAction(
          event -> stop.document().edit(AirEdits.withoutHour(stop.trip(), stop.id(), item())));
      getChildren().addAll(line(time, figure, remove), messages(time, figure));
    }

    private Outcome<Change> timed(String text) {
      LocalDate day = item().time().time().toLocalDate();
      return EditedStop.then(
          time(text, day),
          typed ->
              typed
                  .map(value -> changed(new At(value, item().temperature())))
                  .orElseGet(() -> incomplete("time")));
    }

    private Outcome<Change> figured(String text) {
      return EditedStop.then(
          figure(text),
          typed ->
              typed
                  .map(value -> changed(new At(item().time(), value)))
                  .orElseGet(() -> incomplete("temperature, or remove the row")));
    }

    private Outcome<Change> incomplete(String what) {
      return Outcome.failed(Problem.of(ProblemCode.HOUR_INCOMPLETE, "", what));
    }

    private Outcome<Change> changed(At hour) {
      return AirEdits.withHour(stop.trip(), stop.id(), item(), hour)
          .map(trip -> new Change(hour, trip));
    }

    private void take(Change change) {
      becomes(change.hour());
      stop.document().edit(change.trip());
    }

    @Override
    void refresh() {
      String when = Forms.text(item().time());
      time.named("Time " + when);
      figure.named("Temperature at " + when);
      remove.setAccessibleText("Remove " + when);
      time.show(when);
      figure.show(item().temperature().text());
    }
  }
}
