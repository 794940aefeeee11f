package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import java.time.ZoneId;

/**
 * Elevation and time zone of a point, estimated from the places around it; shown as an estimate
 * that can be corrected.
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

  /** Doubted beyond this, in meter, and half of the land's span there; ours. */
  private static final double DOUBT_METERS = 200;

  private static final double DOUBT_OF_SPAN = 0.5;

  static Elevation doubt(Coordinate at) {
    return new Elevation(DOUBT_METERS + DOUBT_OF_SPAN * Relief.load().span(at));
  }

  /**
   * Whether a height fits the coarse land, so that no more need be asked; far quicker at a start of
   * the program than an estimate, which needs all places.
   */
  public static boolean fits(Coordinate at, Elevation height) {
    return Math.abs(height.meters() - Relief.load().at(at)) <= doubt(at).meters();
  }

  /** Whether a height cannot well be that of the ground here. */
  public boolean doubts(Elevation height) {
    return Math.abs(height.meters() - elevation.meters()) > doubt.meters();
  }
}
