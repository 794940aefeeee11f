package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import java.time.ZoneId;

/**
 * What the places around a point let one expect of it; to be shown as an estimate and corrected.
 *
 * @param elevation of the ground, from a coarse shape of the land and the known heights around; in
 *     mountains it can be a few hundred meters off
 * @param doubt by which a true height is seldom off that: of towns held out 1 in 600 in the west of
 *     the United States, 1 in 150 outside of them
 * @param zone that of the nearest place; near a border of zones it may be the other one
 * @param nearest the nearest place
 * @param away how far off it is: the farther, the rougher all of this
 */
public record Estimate(
    Elevation elevation, Elevation doubt, ZoneId zone, Place nearest, Distance away) {

  /** Whether a height cannot well be that of the ground here. */
  public boolean doubts(Elevation height) {
    return Math.abs(height.meters() - elevation.meters()) > doubt.meters();
  }
}
