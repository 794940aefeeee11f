package dawngauge.ui.common;

import dawngauge.advice.Mark;
import java.util.Locale;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;

/**
 * The shape of a mark, told apart without colour: open ring for clear, ring with a dot for
 * re-check, solid lozenge for adjust, barred square for hold, dash where nothing is known.
 */
public final class MarkShape extends StackPane {

  private static final double SIZE = 14;

  /** The shape of a mark. Its meaning is always written beside it. */
  public MarkShape(Mark mark) {
    getStyleClass().addAll("mark-shape", "mark-" + mark.name().toLowerCase(Locale.ROOT));
    setMinSize(SIZE, SIZE);
    setPrefSize(SIZE, SIZE);
    setMaxSize(SIZE, SIZE);
    getChildren().add(shape(mark));
  }

  private static Node shape(Mark mark) {
    double middle = SIZE / 2;
    return switch (mark) {
      case CLEAR -> ring();
      case RECHECK -> new Group(ring(), styled(new Circle(0, 0, 2.2), "mark-solid"));
      case ADJUST ->
          styled(new Polygon(0, -middle, middle, 0, 0, middle, -middle, 0), "mark-solid");
      case HOLD -> {
        Rectangle square = new Rectangle(-middle + 1, -middle + 1, SIZE - 2, SIZE - 2);
        Line bar = new Line(-middle + 1, middle - 1, middle - 1, -middle + 1);
        yield new Group(styled(square, "mark-line"), styled(bar, "mark-line"));
      }
      case UNKNOWN -> styled(new Line(-4, 0, 4, 0), "mark-line");
    };
  }

  private static Node ring() {
    return styled(new Circle(0, 0, SIZE / 2 - 1), "mark-line");
  }

  private static Node styled(Node node, String style) {
    node.getStyleClass().add(style);
    return node;
  }
}
