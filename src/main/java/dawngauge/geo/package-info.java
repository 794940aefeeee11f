/** Where things are, and when the sun rises there. Start at {@link dawngauge.geo.Coordinate}. */
@NullMarked
package dawngauge.geo;

import org.jspecify.annotations.NullMarked;
