package dawngauge.ui.common;

import dawngauge.advice.Mark;
import dawngauge.ledger.Comparison;
import dawngauge.ledger.StopLine;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;

/** Two plans of one route beside each other, a line a stop: air, mark, margin. */
public final class ComparedTable extends GridPane {

  private static final int COLUMNS = 7;

  private final String other;
  private final Function<StopLine.Task, Optional<Node>> todo;

  /**
   * An empty table.
   *
   * @param other what the columns of the other plan are headed with
   * @param todo how something is shown that only the other plan asks for; empty where it is not
   */
  public ComparedTable(String other, Function<StopLine.Task, Optional<Node>> todo) {
    this.other = other;
    this.todo = todo;
    getStyleClass().add("compared");
  }

  /** Shows a comparison. */
  public void show(Comparison comparison) {
    getChildren().clear();
    String[] heads = {"stop", "air", other, "mark", other, "margin", other};
    for (int i = 0; i < heads.length; i++) {
      Label head = new Label(heads[i]);
      head.getStyleClass().add("table-head");
      head.setMinWidth(USE_PREF_SIZE);
      add(head, i, 0);
    }
    int row = 1;
    for (Comparison.Line line : comparison.stops()) {
      Label place = Texts.line(line.place(), "place");
      place.setMinWidth(70);
      addRow(
          row++,
          place,
          plain(line.baseAir()),
          plain(line.otherAir()),
          mark(line.base()),
          line.base() == line.other() ? plain("same") : mark(line.other()),
          plain(line.baseMargin()),
          plain(line.otherMargin()));
      for (StopLine.Task task : line.todo()) {
        Node shown = todo.apply(task).orElse(null);
        if (shown != null) {
          add(shown, 0, row++, COLUMNS, 1);
        }
      }
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
