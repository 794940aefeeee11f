package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ui.common.TaskLine;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Lines of text, some behind a mark. A line that says the same as before is left as it is. */
final class ToldLines extends VBox {

  /**
   * A line.
   *
   * @param mark the mark before it; null for a lesser line
   * @param text what it says
   */
  private record Told(@Nullable Mark mark, String text) {}

  private final List<Told> wanted = new ArrayList<>();
  private List<Told> shown = List.of();

  ToldLines(String style) {
    getStyleClass().add(style);
  }

  /** Adds a lesser line; seen after {@link #show()}. */
  void add(String text) {
    wanted.add(new Told(null, text));
  }

  /** Adds a line behind a mark; seen after {@link #show()}. */
  void add(Mark mark, String text) {
    wanted.add(new Told(mark, text));
  }

  /** Whether there is anything to show. */
  boolean any() {
    return !shown.isEmpty();
  }

  /** Shows what was added since it was called last. */
  void show() {
    if (!wanted.equals(shown)) {
      List<Node> nodes = new ArrayList<>();
      for (int i = 0; i < wanted.size(); i++) {
        nodes.add(node(i));
      }
      shown = List.copyOf(wanted);
      if (!getChildren().equals(nodes)) {
        getChildren().setAll(nodes);
      }
    }
    wanted.clear();
  }

  /** The node that stands at a place, with another text; else a new one. */
  private Node node(int i) {
    Told told = wanted.get(i);
    Node there = i < shown.size() ? getChildren().get(i) : null;
    Mark mark = told.mark();
    if (there != null && told.equals(shown.get(i))) {
      return there;
    } else if (mark != null) {
      return TaskLine.whole(mark, told.text());
    } else if (there instanceof Label label) {
      label.setText(told.text());
      return label;
    }
    Label label = new Label(told.text());
    label.getStyleClass().add("lesser");
    label.setWrapText(true);
    return label;
  }
}
