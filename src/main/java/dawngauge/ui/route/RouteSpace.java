package dawngauge.ui.route;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/**
 * Room for the grid and what stands beside it: the chosen stop, or the map in its place. In a
 * narrow window the stop lies over the grid's right part while it is asked for.
 */
final class RouteSpace extends StackPane {

  /** Narrower than this the stop does not stand beside the grid. */
  private static final double ROOM_FOR_SIDE = 1120;

  /** Narrower than this only one of grid and map is seen. */
  private static final double ROOM_FOR_MAP = 780;

  private static final double SIDE = 400;
  private static final double LEFT_FREE = 40;

  private final SplitPane split = new SplitPane();
  private final BorderPane left;
  private final StopDetails side;
  private final Region map;
  private boolean narrow;
  private boolean divided;

  RouteSpace(BorderPane left, StopDetails side, Region map) {
    this.left = left;
    this.side = side;
    this.map = map;
    SplitPane.setResizableWithParent(side, false);
    getChildren().add(split);
    setAlignment(side, Pos.CENTER_RIGHT);
    split.getItems().addAll(left, side);
  }

  /** Whether the stop is shown only while it is asked for. */
  boolean narrow() {
    return narrow;
  }

  /**
   * Shows what is wanted as there is room.
   *
   * @param width what there is; none while it is not known
   * @param stop whether the stop is asked for
   * @param mapped whether the map is shown
   * @param wide whether the map has the whole page
   */
  void arrange(double width, boolean stop, boolean mapped, boolean wide) {
    narrow = width > 0 && width < ROOM_FOR_SIDE;
    List<Node> wanted = new ArrayList<>();
    boolean onlyMap = mapped && (wide || (width > 0 && width < ROOM_FOR_MAP));
    if (!onlyMap) {
      wanted.add(left);
    }
    boolean drawer = narrow && stop && !mapped;
    if (mapped) {
      wanted.add(map);
    } else if (!narrow) {
      wanted.add(side);
    }
    if (!drawer) {
      getChildren().remove(side);
    }
    side.getStyleClass().remove("drawer");
    fill(wanted, width);
    if (drawer) {
      double most = Math.min(SIDE, width - LEFT_FREE);
      side.setMinWidth(Math.min(300, most));
      side.setPrefWidth(most);
      side.setMaxWidth(most);
      side.getStyleClass().add("drawer");
      if (!getChildren().contains(side)) {
        getChildren().add(side);
      }
    } else {
      side.setMinWidth(300);
      side.setPrefWidth(SIDE);
      side.setMaxWidth(Double.MAX_VALUE);
    }
  }

  /** Puts in what is wanted; what is there already is not touched. */
  private void fill(List<Node> wanted, double width) {
    if (!split.getItems().equals(wanted) || (!divided && width > 0)) {
      divided = width > 0;
      split.getItems().retainAll(wanted);
      for (int i = 0; i < wanted.size(); i++) {
        if (!split.getItems().contains(wanted.get(i))) {
          split.getItems().add(i, wanted.get(i));
        }
      }
      // Laid out anew, it would go by what its contents would like to have.
      divide(wanted, width);
      Platform.runLater(() -> divide(split.getItems(), getWidth()));
    }
  }

  private void divide(List<Node> shown, double width) {
    if (shown.size() == 2 && width > 0) {
      split.setDividerPositions(shown.get(1) == side ? 1 - SIDE / width : 0.5);
    }
  }
}
