package dawngauge.ui.common;

import dawngauge.advice.Mark;
import dawngauge.ledger.Card;
import dawngauge.ledger.StopLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** One thing to do at a stop: the shape of its mark, and beside it what, or also why. */
public final class TaskLine extends HBox {

  /** Anything behind the shape of a mark, in its style. */
  public TaskLine(Mark mark, Node text) {
    super(6, new MarkShape(mark), text);
    HBox.setHgrow(text, Priority.ALWAYS);
    getStyleClass().addAll("task", "task-" + mark.name().toLowerCase(Locale.ROOT));
  }

  /** What to do, in two lines at the most; the whole text is shown on pointing at it. */
  public static TaskLine brief(Card.Line line) {
    return new TaskLine(line.mark(), Texts.twoLines(line.text()));
  }

  /** What to do, in full. */
  public static TaskLine whole(Mark mark, String text) {
    return new TaskLine(mark, wrapped(text));
  }

  /** What to do and why, in full. */
  public static TaskLine whole(StopLine.Task task) {
    return whole(task.mark(), task.told());
  }

  /** The first few lines of a card, and how many more there are. */
  public static List<Node> few(Card card) {
    List<Node> lines = new ArrayList<>();
    card.first().forEach(line -> lines.add(brief(line)));
    if (card.more() > 0) {
      Label more = new Label("and " + card.more() + " more");
      more.getStyleClass().add("lesser");
      lines.add(more);
    }
    return lines;
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
