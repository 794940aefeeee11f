package dawngauge.ui.route;

import dawngauge.ledger.Wording;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AirEdits;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.StopAir;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.Forms;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Low and high of each day of the stay, and of other days that are given. */
final class DayRows extends VBox {

  private final EditedStop stop;
  private List<LocalDate> dates = List.of();
  private EditorGrid grid = new EditorGrid();

  DayRows(EditedStop stop) {
    this.stop = stop;
    getChildren().add(grid);
  }

  void refresh() {
    TreeSet<LocalDate> wanted = new TreeSet<>(stop.clock().days());
    wanted.addAll(air().dates());
    if (!List.copyOf(wanted).equals(dates) || wanted.isEmpty()) {
      FigureFields.below(grid).forEach(FigureField::retire);
      dates = List.copyOf(wanted);
      grid = new EditorGrid();
      if (dates.isEmpty()) {
        grid.wideFindings(() -> List.of(Problem.of(ProblemCode.NO_DAY_FOR_FIGURES, "")));
      }
      dates.forEach(date -> new Day(date).addTo(grid));
      getChildren().setAll(grid);
    }
    grid.refresh();
  }

  private StopAir air() {
    return StopAir.of(stop.trip(), stop.id());
  }

  private static String words(LocalDate date) {
    return Wording.shortDay(date.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
  }

  /** Two fields that must agree: the low is not above the high. */
  private final class Day {
    private final LocalDate date;
    private final FigureField<Trip> low;
    private final FigureField<Trip> high;

    Day(LocalDate date) {
      this.date = date;
      String behind = dates.size() == 1 ? "" : " " + words(date);
      low = new FigureField<>("Low" + behind, this::lowered, trip -> take(trip, false));
      high = new FigureField<>("High" + behind, this::raised, trip -> take(trip, true));
    }

    void addTo(EditorGrid grid) {
      String behind = ", " + words(date);
      grid.field(() -> "Low" + behind, low, () -> EditorGrid.text(given(false)));
      grid.field(() -> "High" + behind, high, () -> EditorGrid.text(given(true)));
      grid.note(
          () ->
              isOneForBoth() ? "One figure stands for low and high until the other is typed." : "");
    }

    private @Nullable Entered<Temperature> given(boolean ofHigh) {
      AmbientEntry entry = air().day(date);
      return entry != null && entry.figure() instanceof AmbientEntry.LowHigh day
          ? ofHigh ? day.high() : day.low()
          : null;
    }

    private boolean isOneForBoth() {
      Entered<Temperature> one = given(false);
      return one != null && one.equals(given(true));
    }

    private Outcome<Optional<Entered<Temperature>>> read(String text) {
      return Forms.figure(QuantityKind.TEMPERATURE, stop.units()).apply(text);
    }

    private Outcome<Trip> lowered(String text) {
      return EditedStop.then(
          read(text), typed -> changed(typed.orElse(null), beside(high, given(true))));
    }

    private Outcome<Trip> raised(String text) {
      return EditedStop.then(
          read(text), typed -> changed(beside(low, given(false)), typed.orElse(null)));
    }

    /** The figure beside: one that waits in its field, else the given one unless that was both. */
    private @Nullable Entered<Temperature> beside(
        FigureField<Trip> field, @Nullable Entered<Temperature> given) {
      if (field.draft() != null) {
        Optional<Entered<Temperature>> waits = read(field.typed()).value().flatMap(t -> t);
        if (waits.isPresent()) {
          return waits.get();
        }
      }
      return isOneForBoth() ? null : given;
    }

    private Outcome<Trip> changed(
        @Nullable Entered<Temperature> lowest, @Nullable Entered<Temperature> highest) {
      return AirEdits.withDay(stop.trip(), stop.id(), date, lowest, highest);
    }

    private void take(Trip trip, boolean ofHigh) {
      FigureField<Trip> other = ofHigh ? low : high;
      boolean waited = other.draft() != null && read(other.typed()).hasValue();
      stop.document().edit(trip);
      if (waited) {
        other.put(EditorGrid.text(given(!ofHigh)));
      }
    }
  }
}
