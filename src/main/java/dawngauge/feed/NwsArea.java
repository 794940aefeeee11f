package dawngauge.feed;

import dawngauge.geo.Coordinate;
import java.util.List;

/**
 * Roughly where the U.S. National Weather Service forecasts: boxes around the states and
 * territories. They reach over the borders; there the service says that it has nothing.
 */
final class NwsArea {
  private static final List<Box> BOXES =
      List.of(
          new Box(24.3, 49.5, -125, -66.5), // the 48 states
          new Box(51, 72, -180, -129.5), // Alaska
          new Box(51, 54, 172, 180), // western Aleutians
          new Box(18.5, 22.5, -161, -154.5), // Hawaii
          new Box(17.5, 18.8, -67.6, -64.3), // Puerto Rico, Virgin Islands
          new Box(13, 20.8, 144.4, 146.3), // Guam, Northern Marianas
          new Box(-14.8, -11, -171.3, -168)); // American Samoa

  private NwsArea() {}

  /** Whether a place may lie in its area. */
  static boolean mayHold(Coordinate place) {
    return BOXES.stream().anyMatch(box -> box.holds(place));
  }

  private record Box(double south, double north, double west, double east) {
    boolean holds(Coordinate place) {
      return place.latitude() >= south
          && place.latitude() <= north
          && place.longitude() >= west
          && place.longitude() <= east;
    }
  }
}
