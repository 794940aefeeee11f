package dawngauge.ui.route;

import dawngauge.ledger.Wording;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AirEdits;
import dawngauge.trip.StopAir;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Low and high of each day of the stay, of other days that are given, and of days asked for. */
final class DayRows extends VBox {

  private final EditedStop stop;
  private List<LocalDate> dates = List.of();
  private EditorGrid grid = new EditorGrid();

  /** Days without figures that are to have a row: a night's air hangs on those around it too. */
  private final TreeSet<LocalDate> further = new TreeSet<>();

  private final HBox around =
      new HBox(
          6,
          adding("+ day before", "Low and high of the day before too", () -> dates.get(0), -1),
          adding(
              "+ day after",
              "Low and high of the day after too",
              () -> dates.get(dates.size() - 1),
              1));

  DayRows(EditedStop stop) {
    this.stop = stop;
    around.managedProperty().bind(around.visibleProperty());
    getChildren().addAll(grid, around);
  }

  private Button adding(String text, String spoken, Supplier<LocalDate> from, int days) {
    Button button = new Button(text);
    button.getStyleClass().add("small-button");
    button.setAccessibleText(spoken);
    button.setOnAction(
        event -> {
          further.add(from.get().plusDays(days));
          refresh();
        });
    return button;
  }

  /** Forgets which days were asked for: the stop is another one now. */
  void become() {
    further.clear();
  }

  void refresh() {
    TreeSet<LocalDate> wanted = new TreeSet<>(stop.clock().days());
    wanted.addAll(air().dates());
    wanted.addAll(further);
    if (!List.copyOf(wanted).equals(dates) || wanted.isEmpty()) {
      FigureFields.below(grid).forEach(FigureField::retire);
      dates = List.copyOf(wanted);
      grid = new EditorGrid();
      if (dates.isEmpty()) {
        grid.wideFindings(() -> List.of(Problem.of(ProblemCode.NO_DAY_FOR_FIGURES, "")));
      }
      dates.forEach(this::addDay);
      around.setVisible(!dates.isEmpty());
      getChildren().setAll(grid, around);
    }
    grid.refresh();
  }

  private StopAir air() {
    return StopAir.of(stop.trip(), stop.id());
  }

  private static String words(LocalDate date) {
    return Wording.shortDay(date.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
  }

  private void addDay(LocalDate date) {
    LowHighPair pair =
        new LowHighPair(
            dates.size() == 1 ? "" : " " + words(date),
            stop::units,
            (low, high, alone) ->
                changed(date, low, high == null ? air().highBeside(date, alone) : high),
            (high, low, alone) ->
                changed(date, low == null ? air().lowBeside(date, alone) : low, high),
            stop.document()::edit);
    String behind = ", " + words(date);
    grid.field(() -> "Low" + behind, pair.low(), () -> EditorGrid.text(air().low(date)));
    grid.field(() -> "High" + behind, pair.high(), () -> EditorGrid.text(air().high(date)));
    grid.note(
        () ->
            air().isOneForBoth(date)
                ? "One figure stands for low and high until the other is typed."
                : "");
  }

  private Outcome<Trip> changed(
      LocalDate date, @Nullable Entered<Temperature> low, @Nullable Entered<Temperature> high) {
    return AirEdits.withDay(stop.trip(), stop.id(), date, low, high);
  }
}
