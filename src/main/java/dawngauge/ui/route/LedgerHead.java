package dawngauge.ui.route;

import dawngauge.explain.Terms;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.Palette;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What stands above ledger and trace and does not scroll: which of trace and stop is shown, whose
 * trace it is, and the names of the ledger's columns.
 */
final class LedgerHead extends VBox {

  private static final String KEY =
      "Line alone: "
          + Terms.COLD_HERE
          + ". Line in a band: as the gauge reads, 9 of 10 readings within the band. Hatched: "
          + Terms.LOWEST_SAFE
          + ", on a leg. Bracket: "
          + Terms.NEVER_OVER
          + ", at a cold start. Shaded: night.";

  private final ToggleButton traceShown = new ToggleButton("Trace");
  private final ToggleButton stopShown = new ToggleButton("Stop");
  private final ToggleButton mapShown = new ToggleButton("Map");
  private final ComboBox<String> traced = new ComboBox<>();
  private final Label of = new Label("of");
  private final GridPane columns = new GridPane();
  private final HBox bar = new HBox(6);
  private final TraceKey key = new TraceKey();
  private List<WheelPosition> positions = List.of();
  private List<ToggleButton> gaveWay = List.of();
  private boolean filling;

  LedgerHead() {
    getStyleClass().add("ledger-head");
    StopRow.columns(columns);
    columns.getStyleClass().add("column-heads");
    int at = 0;
    for (StopRow.Column column : StopRow.Column.values()) {
      Label label = new Label(column.heading());
      label.getStyleClass().add("lesser");
      label.setMinWidth(USE_PREF_SIZE);
      columns.add(label, at++, 0);
      if (column == StopRow.Column.READS) {
        GridPane.setHalignment(label, HPos.RIGHT);
      }
    }
    traced.setAccessibleText("Tire whose trace is shown");
    traced.setTooltip(wrapped(KEY));
    traced.setMinWidth(186);
    traced.setPrefWidth(186);
    traceShown.setSelected(true);
    stopShown.setSelected(true);
    for (ToggleButton button : List.of(traceShown, stopShown, mapShown)) {
      button.setMinWidth(USE_PREF_SIZE);
      button.getStyleClass().add("small-toggle");
    }
    traceShown.setTooltip(wrapped("Show or fold away the trace. " + KEY));
    stopShown.setTooltip(wrapped("Show or fold away the chosen stop"));
    mapShown.setTooltip(wrapped("Show or fold away the map"));
    of.setMinWidth(USE_PREF_SIZE);
    key.setMinWidth(0);
    key.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(key, Priority.ALWAYS);
    key.visibleProperty().bind(traceShown.selectedProperty());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.SOMETIMES);
    key.managedProperty().bind(key.visibleProperty());
    bar.getChildren().addAll(key, gap, traceShown, of, traced, stopShown, mapShown);
    bar.setAlignment(Pos.CENTER_LEFT);
    bar.getStyleClass().add("bar");
    getChildren().addAll(bar, columns);
  }

  private static Tooltip wrapped(String text) {
    Tooltip tip = new Tooltip(text);
    tip.setWrapText(true);
    tip.setMaxWidth(360);
    return tip;
  }

  /** Draws the trace's key in the colours of the trace. */
  void color(Palette palette) {
    key.color(palette);
  }

  /** Keeps the heads of the columns above them. */
  void follow(Region ledger, Region trace) {
    columns.prefWidthProperty().bind(ledger.widthProperty());
    columns.maxWidthProperty().bind(ledger.widthProperty());
  }

  /** The buttons, wherever they are. */
  HBox buttons() {
    return bar;
  }

  /** Gives the buttons away, for the place above all else, or takes them back. */
  HBox lend(boolean away) {
    getChildren().remove(bar);
    if (!away) {
      getChildren().add(0, bar);
    }
    return bar;
  }

  BooleanProperty traceShown() {
    return traceShown.selectedProperty();
  }

  BooleanProperty stopShown() {
    return stopShown.selectedProperty();
  }

  BooleanProperty mapShown() {
    return mapShown.selectedProperty();
  }

  /** Lets only trace or stop and map be shown, or again all where some had to give way. */
  void room(boolean forAll, boolean traceFirst) {
    List<ToggleButton> others =
        List.of(stopShown, mapShown).stream().filter(ToggleButton::isSelected).toList();
    if (forAll && !gaveWay.isEmpty()) {
      List<ToggleButton> back = gaveWay;
      gaveWay = List.of();
      back.forEach(button -> button.setSelected(true));
    } else if (!forAll && traceShown.isSelected() && !others.isEmpty()) {
      gaveWay = traceFirst ? others : List.of(traceShown);
      gaveWay.forEach(button -> button.setSelected(false));
    }
  }

  /** Told the position whose trace is wanted. */
  void onPosition(Consumer<WheelPosition> wanted) {
    traced.setOnAction(
        event -> {
          int index = traced.getSelectionModel().getSelectedIndex();
          if (!filling && index >= 0) {
            wanted.accept(positions.get(index));
          }
        });
  }

  /** Whether there is a trace at all. */
  void known(boolean any) {
    traced.setDisable(!any);
  }

  /** Offers positions, one of them shown. */
  void positions(List<WheelPosition> offered, WheelPosition shown) {
    filling = true;
    positions = List.copyOf(offered);
    traced.getItems().setAll(positions.stream().map(WheelPosition::words).toList());
    traced.getSelectionModel().select(positions.indexOf(shown));
    filling = false;
  }
}
