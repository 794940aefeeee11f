package dawngauge.ui.route;

import dawngauge.explain.Step;
import dawngauge.ledger.ExplainPage;
import dawngauge.page.Block;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.PageView;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** How a figure came about, step by step, each with its source. */
final class StepsPane extends VBox {

  private static final String HINT =
      "Press a figure, or a place on the trace, to see how it came about, step by step, with its"
          + " source.";

  private final Label head = new Label();
  private final PageView steps = new PageView("How a figure came about");
  private UnitSystem units = UnitSystem.US;
  private boolean explains;

  StepsPane() {
    getStyleClass().add("steps");
    head.getStyleClass().add("steps-heading");
    head.setWrapText(true);
  }

  /** Says what can be asked. */
  void clear(UnitSystem shown) {
    units = shown;
    if (explains || getChildren().isEmpty()) {
      explains = false;
      steps.show(List.of(new Block.Note(Block.Weight.LESSER, HINT)));
      getChildren().setAll(steps);
    }
  }

  /** Tells the steps of a figure. */
  void explain(String heading, List<Step> list) {
    explains = true;
    head.setText(heading);
    steps.show(List.of(ExplainPage.steps(heading, list, units)));
    getChildren().setAll(head, steps);
  }

  /** The same as one text. */
  String written(List<Step> list) {
    return ExplainPage.steps("", list, units).rows().stream()
        .map(row -> String.join("   ", row))
        .collect(Collectors.joining("\n"));
  }
}
