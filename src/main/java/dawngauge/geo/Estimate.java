package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import java.time.ZoneId;

/**
 * What the places around a point let one expect of it; to be shown as an estimate and corrected.
 *
 * @param elevation of the ground, from the five nearest places: they lie in valleys, so a pass
 *     between them can be several hundred meters higher
 * @param zone that of the nearest place; near a border of zones it may be the other one
 * @param nearest the nearest place
 * @param away how far off it is: the farther, the rougher all of this
 */
public record Estimate(Elevation elevation, ZoneId zone, Place nearest, Distance away) {}
