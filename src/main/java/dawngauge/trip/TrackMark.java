package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import org.jspecify.annotations.Nullable;

/**
 * A point of the track that a leg was taken from.
 *
 * @param at where it is
 * @param elevation height of the ground by the track, or null
 */
public record TrackMark(Coordinate at, @Nullable Entered<Elevation> elevation) {}
