package dawngauge.ui.route;

import dawngauge.explain.Step;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** How a figure came about, step by step, each with its source. */
final class StepsPane extends VBox {

  private static final String HINT =
      "Press a figure, or a place on the trace, to see how it came about, step by step, with its"
          + " source.";

  private UnitSystem units = UnitSystem.US;

  StepsPane() {
    getStyleClass().add("steps");
  }

  /** Says what can be asked. */
  void clear(UnitSystem shown) {
    units = shown;
    Label hint = new Label(HINT);
    hint.getStyleClass().add("lesser");
    hint.setWrapText(true);
    getChildren().setAll(hint);
  }

  /** Tells the steps of a figure. */
  void explain(String heading, List<Step> list) {
    Label head = new Label(heading);
    head.getStyleClass().add("steps-heading");
    head.setWrapText(true);
    GridPane lines = new GridPane();
    lines.getStyleClass().add("steps-grid");
    each(
        list,
        (figure, what) -> {
          Label number = new Label(figure);
          number.getStyleClass().add("step-figure");
          number.setMinWidth(USE_PREF_SIZE);
          Label words = new Label(what);
          words.setWrapText(true);
          lines.addRow(lines.getRowCount(), number, words);
        });
    getChildren().setAll(head, lines);
  }

  /** The same as one text. */
  String written(List<Step> list) {
    StringBuilder text = new StringBuilder();
    each(list, (figure, what) -> text.append(figure).append("   ").append(what).append('\n'));
    return text.toString().strip();
  }

  private void each(List<Step> list, BiConsumer<String, String> taker) {
    for (Step step : list) {
      String figure =
          step.result().kind() == QuantityKind.RATIO
              ? units.format(step.result(), 1)
              : units.format(step.result());
      taker.accept(figure, step.what().in(units) + " [" + step.authority().text() + "]");
    }
  }
}
