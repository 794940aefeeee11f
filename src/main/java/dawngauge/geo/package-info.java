/**
 * Where things are, what they are called, and when the sun rises there. Start at {@link
 * dawngauge.geo.Coordinate} and {@link dawngauge.geo.Gazetteer}.
 */
@NullMarked
package dawngauge.geo;

import org.jspecify.annotations.NullMarked;
