package dawngauge.ui.readings;

import dawngauge.advice.Mark;
import dawngauge.ledger.Comparison;
import dawngauge.planner.PlannedTrip;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The plan as it was this morning beside the plan now, stop by stop. */
final class MorningPane extends VBox {

  private final TripDocument document;
  private final Supplier<Optional<PlannedTrip>> morning;
  private final Label summary = new Label();
  private final GridPane table = new GridPane();

  MorningPane(TripDocument document, Supplier<Optional<PlannedTrip>> morning) {
    this.document = document;
    this.morning = morning;
    summary.setWrapText(true);
    table.getStyleClass().add("compared");
    setSpacing(6);
    getChildren().addAll(summary, table);
  }

  /** Shows both plans as they are now. */
  void refresh() {
    table.getChildren().clear();
    PlannedTrip before = morning.get().orElse(null);
    if (before == null || before.advice() == null || document.planned().advice() == null) {
      summary.setText("As soon as the times of the way are known, both plans stand here.");
      return;
    }
    Comparison comparison =
        Comparison.of(
            document.trip(), before.advice(), document.planned().advice(), document.units());
    summary.setText(comparison.summary().replace("would change", "changed"));
    String[] heads = {"stop", "air", "now", "mark", "now", "margin", "now"};
    for (int i = 0; i < heads.length; i++) {
      Label head = new Label(heads[i]);
      head.getStyleClass().add("table-head");
      head.setMinWidth(USE_PREF_SIZE);
      table.add(head, i, 0);
    }
    int row = 1;
    for (Comparison.Line line : comparison.stops()) {
      Label place = Texts.line(line.place(), "place");
      place.setMinWidth(70);
      table.addRow(
          row++,
          place,
          plain(line.baseAir()),
          plain(line.otherAir()),
          mark(line.base()),
          line.base() == line.other() ? plain("same") : mark(line.other()),
          plain(line.baseMargin()),
          plain(line.otherMargin()));
    }
  }

  private static Label plain(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }

  private static HBox mark(Mark mark) {
    Label word = new Label(mark.word());
    word.setMinWidth(USE_PREF_SIZE);
    return new HBox(5, new MarkShape(mark), word);
  }
}
