package dawngauge.ui.readings;

import dawngauge.ledger.BreakdownPage;
import dawngauge.page.Block;
import dawngauge.planner.Plan;
import dawngauge.trip.Stop;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.PageView;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.function.IntSupplier;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Which tire is flat, and what to do about it. */
final class BreakdownPane extends VBox {

  private static final String NOTHING = "No tire stands there in the file: name one under Rig.";

  private final TripDocument document;
  private final IntSupplier here;
  private final ComboBox<String> tire = new ComboBox<>();
  private final ComboBox<String> stop = new ComboBox<>();
  private final PageView lines = new PageView("What to do about a flat tire");
  private boolean filling;

  /**
   * Nothing chosen yet.
   *
   * @param here the stop whose round is shown, counted from 0; below 0 where there is none
   */
  BreakdownPane(TripDocument document, IntSupplier here) {
    this.document = document;
    this.here = here;
    tire.setAccessibleText("Tire that is flat");
    stop.setAccessibleText("Stop where it is flat, or that was left last");
    tire.setOnAction(event -> tell());
    stop.setOnAction(event -> tell());
    FlowPane asked = new FlowPane(8, 6, tire, new Label("is flat at, or after,"), stop);
    asked.setAlignment(Pos.CENTER_LEFT);
    asked.getStyleClass().add("asked");
    getChildren().addAll(asked, lines);
  }

  /** Shows the trip as it is now, at the stop of the round where none was chosen. */
  void refresh() {
    filling = true;
    fill(tire, document.trip().rig().positions().stream().map(WheelPosition::words).toList(), 0);
    List<Stop> stops = document.trip().route().stops();
    fill(
        stop,
        IntStream.range(0, stops.size())
            .mapToObj(i -> (i + 1) + ". " + stops.get(i).place())
            .toList(),
        here.getAsInt());
    filling = false;
    tell();
  }

  /** Gives the choice of the tire the keyboard. */
  void choose() {
    tire.requestFocus();
  }

  private static void fill(ComboBox<String> box, List<String> items, int first) {
    if (!box.getItems().equals(items)) {
      int before = box.getSelectionModel().getSelectedIndex();
      box.getItems().setAll(items);
      int wanted = before < 0 ? first : before;
      box.getSelectionModel().select(Math.max(0, Math.min(wanted, items.size() - 1)));
    }
  }

  private void tell() {
    List<WheelPosition> positions = document.trip().rig().positions();
    int index = tire.getSelectionModel().getSelectedIndex();
    if (filling || index < 0 || index >= positions.size()) {
      lines.show(List.of());
      return;
    }
    Plan plan = document.planned();
    lines.show(
        plan.breakdown(
                Math.max(0, stop.getSelectionModel().getSelectedIndex()), positions.get(index))
            .map(
                found ->
                    BreakdownPage.beside(plan.trip(), found, plan.tireNeeds(), document.units()))
            .orElse(List.of(new Block.Note(Block.Weight.PLAIN, NOTHING))));
  }
}
