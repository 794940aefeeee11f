/** The plan of a haul and what was noted on the way. Start at {@link dawngauge.trip.Trip}. */
@NullMarked
package dawngauge.trip;

import org.jspecify.annotations.NullMarked;
