package dawngauge.ui.map;

import dawngauge.advice.Mark;
import dawngauge.geo.Coordinate;

/**
 * A stop on the map.
 *
 * @param index its place among all stops, 0 first
 * @param name its name, shortened
 * @param at where it is
 * @param mark the strongest of its tires
 */
public record MapStop(int index, String name, Coordinate at, Mark mark) {

  /** What stands beside it. */
  String label() {
    return (index + 1) + " " + name + ", " + mark.word();
  }
}
