package dawngauge.ui.map;

import dawngauge.geo.Coordinate;
import dawngauge.planner.TileSource;
import java.util.Optional;

/** What is done on the map, told on the window's thread. Stops are counted from 0. */
public interface MapHands {

  /** A stop was pressed. */
  void chooseOnMap(int stop);

  /** A stop was dragged to another place. */
  void moveOnMap(int stop, Coordinate to);

  /** A new stop is wanted. */
  void addOnMap(Coordinate at);

  /** An online map is wanted; empty where the user does not agree or there is none. */
  Optional<TileSource> onlineMap();
}
