package dawngauge.ui.map;

import dawngauge.planner.TileSource;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;

/** The map itself, asked on the window's thread alone. */
interface RouteMap {

  /** Where it is shown. */
  Node node();

  /** Shows something else; what part of the earth is seen stays. */
  void show(MapPicture picture);

  /** Shows all stops, or North America where there are none. */
  void fit();

  /** Brings the chosen stop into the middle. */
  void center();

  /** Comes nearer by powers of two; below zero goes away. */
  void zoom(int steps);

  /** Goes by parts of the width and the height. */
  void pan(double right, double down);

  /** Whether a press beside the stops wants a new one. */
  void adding(boolean on);

  /** Shows an online map instead of its own, or its own again. */
  void online(Optional<TileSource> tiles);

  /** The stops as they were painted last, by index, in the node's coordinates; empty before. */
  Optional<Map<Integer, Point2D>> painted();

  /** Ends it for good. */
  void close();
}
