package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.Trace;
import dawngauge.planner.PlannedTrip;
import dawngauge.trip.Air;
import dawngauge.trip.Remarks;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.Palette;
import dawngauge.ui.common.TripDocument;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The route: ledger and trace, and beside them the chosen stop with its tires and fields. */
public final class RouteView extends BorderPane {

  private final TripDocument document;
  private final BooleanProperty dark;
  private final LedgerPane ledger;
  private final TracePane trace = new TracePane();
  private final TireTable tires = new TireTable();
  private final StopEditor editor;
  private final Label summary = new Label();
  private final TitledPane missing = new TitledPane();
  private final Label missingText = new Label();
  private final Label chosenStop = new Label();
  private final ComboBox<String> traced = new ComboBox<>();
  private @Nullable WheelPosition position;
  private int chosen;
  private boolean filling;

  /** The route of a document. */
  public RouteView(TripDocument document, BooleanProperty dark) {
    this.document = document;
    this.dark = dark;
    this.ledger = new LedgerPane(this::choose, this::insertAfter);
    this.editor = new StopEditor(document);
    summary.getStyleClass().add("summary");
    summary.setWrapText(true);
    missing.getStyleClass().add("missing");
    missing.managedProperty().bind(missing.visibleProperty());
    missing.setCollapsible(true);
    missing.setExpanded(false);
    missing.setAnimated(false);
    missingText.setWrapText(true);
    missing.setContent(missingText);
    setTop(new VBox(summary, missing));
    HBox page = new HBox(ledger, trace);
    HBox.setHgrow(ledger, Priority.ALWAYS);
    ledger.setMinWidth(468);
    page.getStyleClass().add("page");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    BorderPane left = new BorderPane(scroll);
    left.setTop(traceBar());
    VBox side = new VBox(stopBar(), tires, editor);
    side.getStyleClass().add("side");
    ScrollPane sideScroll = new ScrollPane(side);
    sideScroll.setFitToWidth(true);
    SplitPane split = new SplitPane(left, sideScroll);
    split.setOrientation(Orientation.HORIZONTAL);
    split.setDividerPositions(0.64);
    setCenter(split);
    ledger.layoutBoundsProperty().addListener(change -> Platform.runLater(trace::draw));
    document.plannedProperty().addListener(change -> refresh());
    document.unitsProperty().addListener(change -> refresh());
    dark.addListener(change -> refresh());
    refresh();
  }

  private HBox traceBar() {
    Label label = new Label("Trace of");
    traced.setAccessibleText("Tire whose trace is shown");
    traced.setOnAction(
        event -> {
          int index = traced.getSelectionModel().getSelectedIndex();
          if (!filling && index >= 0) {
            position = document.trip().rig().positions().get(index);
            refresh();
          }
        });
    Label key =
        new Label(
            "dark line settled, light line as the gauge reads, with its range; hatched floor,"
                + " bracket limit at a cold start, shaded night");
    key.getStyleClass().add("lesser");
    key.setWrapText(true);
    HBox.setHgrow(key, Priority.ALWAYS);
    label.setMinWidth(USE_PREF_SIZE);
    traced.setMinWidth(190);
    HBox bar = new HBox(8, key, label, traced);
    bar.getStyleClass().add("bar");
    return bar;
  }

  private HBox stopBar() {
    chosenStop.getStyleClass().add("chosen-stop");
    chosenStop.setMinWidth(60);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox bar =
        new HBox(
            6,
            chosenStop,
            gap,
            button("Up", "Move the chosen stop up", () -> move(-1)),
            button("Down", "Move the chosen stop down", () -> move(1)),
            button("Duplicate", "Duplicate the chosen stop", this::duplicate),
            button("Remove", "Remove the chosen stop", this::remove));
    bar.getStyleClass().add("bar");
    return bar;
  }

  private static Button button(String text, String spoken, Runnable action) {
    Button button = new Button(text);
    button.setMinWidth(USE_PREF_SIZE);
    button.setAccessibleText(spoken);
    button.setOnAction(event -> action.run());
    return button;
  }

  private void choose(int index) {
    chosen = index;
    showSide();
  }

  private void insertAfter(int index) {
    Trip trip = document.trip();
    String place = "New stop";
    Stop stop =
        new Stop(
            RouteEdits.freeId(trip, place.toLowerCase(Locale.ROOT)),
            place,
            Stop.Kind.REST,
            null,
            null,
            null,
            Duration.ofMinutes(20),
            null,
            null,
            Air.NONE,
            List.of(),
            Remarks.NONE);
    chosen = index + 1;
    document.edit(RouteEdits.insert(trip, index + 1, stop));
  }

  /** Adds a stop behind the last one. */
  public void append() {
    insertAfter(document.trip().route().stops().size() - 1);
  }

  private void move(int by) {
    int to = chosen + by;
    if (to >= 0 && to < document.trip().route().stops().size()) {
      int from = chosen;
      chosen = to;
      document.edit(RouteEdits.move(document.trip(), from, to));
    }
  }

  private void duplicate() {
    if (!document.trip().route().stops().isEmpty()) {
      int from = chosen;
      chosen = from + 1;
      document.edit(RouteEdits.duplicate(document.trip(), from));
    }
  }

  private void remove() {
    if (chosen < document.trip().route().stops().size()) {
      int gone = chosen;
      chosen = Math.max(0, Math.min(gone, document.trip().route().stops().size() - 2));
      document.edit(RouteEdits.remove(document.trip(), gone));
    }
  }

  private void refresh() {
    PlannedTrip planned = document.planned();
    Trip trip = planned.trip();
    Advice advice = planned.advice();
    Ledger shown = Ledger.of(trip, advice, planned.problems(), document.units(), null);
    summary.setText(shown.summary());
    missing.setText(shown.problems().size() + " missing or assumed");
    missingText.setText(String.join("\n", shown.problems()));
    missing.setVisible(!shown.problems().isEmpty());
    chosen = Math.max(0, Math.min(chosen, shown.stops().size() - 1));
    ledger.show(shown, chosen);
    List<WheelPosition> positions = trip.rig().positions();
    if (advice == null || advice.tracks().isEmpty()) {
      trace.setVisible(false);
    } else {
      WheelPosition wanted =
          position != null && advice.tracks().containsKey(position)
              ? position
              : Trace.tightest(advice);
      filling = true;
      traced.getItems().setAll(positions.stream().map(WheelPosition::words).toList());
      traced.getSelectionModel().select(positions.indexOf(wanted));
      filling = false;
      trace.setVisible(true);
      trace.show(
          Trace.of(advice, wanted, document.units()),
          advice,
          document.units(),
          dark.get() ? Palette.DARK : Palette.LIGHT,
          ledger.stopRows());
      Platform.runLater(trace::draw);
    }
    showSide();
  }

  private void showSide() {
    Advice advice = document.planned().advice();
    Trip trip = document.trip();
    boolean any = chosen < trip.route().stops().size();
    chosenStop.setText(any ? trip.route().stops().get(chosen).place() : "No stop");
    if (advice != null && chosen < advice.stops().size()) {
      tires.show(trip, advice.stops().get(chosen), document.units());
    } else {
      tires.clear();
    }
    editor.show(chosen);
  }
}
