package dawngauge.geo;

import dawngauge.quantity.Elevation;
import org.jspecify.annotations.Nullable;

/**
 * A point of a line on the earth.
 *
 * @param at where it is
 * @param elevation height of the ground, or null
 * @param name what it is called; empty where it has no name
 */
public record TrackPoint(Coordinate at, @Nullable Elevation elevation, String name) {}
