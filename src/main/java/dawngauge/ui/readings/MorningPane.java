package dawngauge.ui.readings;

import dawngauge.ledger.Comparison;
import dawngauge.planner.Plan;
import dawngauge.ui.common.ComparedTable;
import dawngauge.ui.common.TripDocument;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The plan as it was this morning beside the plan now, stop by stop. */
final class MorningPane extends VBox {

  private final TripDocument document;
  private final Supplier<Optional<Plan>> morning;
  private final Label summary = new Label();
  private final ComparedTable table = new ComparedTable("now", task -> Optional.empty());

  MorningPane(TripDocument document, Supplier<Optional<Plan>> morning) {
    this.document = document;
    this.morning = morning;
    summary.setWrapText(true);
    setSpacing(6);
    getChildren().addAll(summary, table);
  }

  /** Shows both plans as they are now. */
  void refresh() {
    table.getChildren().clear();
    Plan before = morning.get().orElse(null);
    if (before == null || before.advice() == null || document.planned().advice() == null) {
      summary.setText("As soon as the times of the way are known, both plans stand here.");
      return;
    }
    Comparison comparison =
        Comparison.of(
            document.trip(), before.advice(), document.planned().advice(), document.units());
    summary.setText(comparison.summary().replace("would change", "changed"));
    table.show(comparison);
  }
}
