package dawngauge.ui.readings;

import dawngauge.ledger.LogLine;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Remarks;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** What was noted on the way: a wheel changed, a note, and the whole log, the newest first. */
final class LogPane extends VBox {

  /** Longer logs, as of a recorder, are shown by their end. */
  private static final int MOST_LINES = 200;

  private final TripDocument document;
  private final Supplier<Optional<TypedTime>> time;
  private final ChoiceBox<String> position = new ChoiceBox<>();
  private final ChoiceBox<String> on = new ChoiceBox<>();
  private final Button change = new Button("Wheel changed");
  private final TextField note = new TextField();
  private final GridPane grid = new GridPane();
  private final Label older = new Label();

  /**
   * A log.
   *
   * @param time when what is noted here happened: the round's time
   */
  LogPane(TripDocument document, Supplier<Optional<TypedTime>> time) {
    this.document = document;
    this.time = time;
    position.setAccessibleText("Where a wheel was changed");
    on.setAccessibleText("Tire that went on");
    change.getStyleClass().add("small-button");
    change.setOnAction(event -> changed());
    FlowPane wheel =
        new FlowPane(8, 6, new Label("at"), position, new Label("went on"), on, change);
    wheel.setAlignment(Pos.CENTER_LEFT);
    note.setAccessibleText("Note");
    note.setPromptText("A note, and Enter");
    note.setPrefColumnCount(40);
    note.setOnAction(event -> noted());
    grid.getStyleClass().add("log");
    older.getStyleClass().add("lesser");
    older.managedProperty().bind(older.visibleProperty());
    setSpacing(8);
    getChildren().addAll(wheel, note, grid, older);
  }

  /** Shows the trip as it is now. */
  void refresh() {
    Trip trip = document.trip();
    List<String> places = trip.rig().positions().stream().map(WheelPosition::words).toList();
    fill(position, places);
    List<String> loose =
        time.get()
            .map(at -> LogEdits.looseAt(trip, at.instant()).stream().map(Tire::id).toList())
            .orElse(List.of());
    fill(on, loose);
    change.setDisable(places.isEmpty() || loose.isEmpty());
    List<LogLine> lines = LogLine.of(trip);
    grid.getChildren().clear();
    int row = 0;
    int least = Math.max(0, lines.size() - MOST_LINES);
    for (int i = lines.size() - 1; i >= least; i--) {
      LogLine line = lines.get(i);
      Label clock = new Label(line.time());
      clock.setMinWidth(USE_PREF_SIZE);
      clock.getStyleClass().add("lesser");
      Label what = Texts.line(line.what(), "log-line");
      Button remove = new Button("Remove");
      remove.getStyleClass().add("small-button");
      remove.setMinWidth(USE_PREF_SIZE);
      remove.setAccessibleText("Remove from the log: " + line.time() + ", " + line.what());
      remove.setOnAction(event -> document.edit(LogEdits.without(document.trip(), line.index())));
      grid.addRow(row++, clock, what, remove);
      if (!line.day().isEmpty()) {
        Label day = new Label(line.day());
        day.getStyleClass().add("log-day");
        grid.add(day, 0, row++, 3, 1);
      }
    }
    older.setVisible(least > 0);
    older.setText("and " + least + " older");
  }

  private static void fill(ChoiceBox<String> box, List<String> items) {
    if (!box.getItems().equals(items)) {
      String before = box.getValue();
      box.getItems().setAll(items);
      if (!items.isEmpty()) {
        box.setValue(items.contains(before) ? before : items.get(0));
      }
    }
  }

  private void changed() {
    Trip trip = document.trip();
    TypedTime at = time.get().orElse(null);
    int index = position.getSelectionModel().getSelectedIndex();
    String tire = on.getValue();
    if (at == null || index < 0 || tire == null) {
      return;
    }
    WheelPosition place = trip.rig().positions().get(index);
    Map<WheelPosition, Tire> fitted = LogEdits.fittedAt(trip, at.instant());
    Tire off = fitted.get(place);
    if (off != null) {
      document.edit(
          LogEdits.with(trip, new LogEvent.TireChange(at, place, off.id(), tire, Remarks.NONE)));
    }
  }

  private void noted() {
    String text = note.getText().strip();
    TypedTime at = time.get().orElse(null);
    if (at != null && !text.isEmpty()) {
      note.clear();
      document.edit(
          LogEdits.withAll(
              document.trip(),
              new ArrayList<>(List.of(new LogEvent.Note(at, text, Remarks.NONE)))));
    }
  }
}
