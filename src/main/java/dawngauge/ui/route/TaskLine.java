package dawngauge.ui.route;

import dawngauge.ledger.StopLine;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.Texts;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** One thing to do at a stop: the shape of its mark, the tires, what and why. */
final class TaskLine extends HBox {

  private TaskLine(StopLine.Task task, Label text) {
    super(6, new MarkShape(task.mark()), text);
    HBox.setHgrow(text, Priority.ALWAYS);
    getStyleClass().addAll("task", "task-" + task.mark().name().toLowerCase(Locale.ROOT));
  }

  /** In two lines at the most; the whole text is shown on pointing at it. */
  static TaskLine brief(StopLine.Task task) {
    return new TaskLine(task, Texts.twoLines(text(task)));
  }

  /** In full. */
  static TaskLine whole(StopLine.Task task) {
    Label text = new Label(text(task));
    text.setWrapText(true);
    text.setMinHeight(USE_PREF_SIZE);
    return new TaskLine(task, text);
  }

  private static String text(StopLine.Task task) {
    return task.tires() + ": " + task.text();
  }
}
