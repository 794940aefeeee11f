/**
 * A second simulator of tires on a haul, of another make than the product and sharing no class with
 * it, and how the product's ranges and chances fare against it. Start at {@link
 * dawngauge.simulated.SimulatedHaul}; what its crew would type is written by {@link
 * dawngauge.simulated.CrewNotes} with the trip builders.
 *
 * <p>SI inside: kelvin, pascal (gauge pressure where a gauge is meant), newton, watt, meter,
 * second. Times are seconds since the local midnight that begins the first day. Each constant is
 * published, computed from a published one, or inferred, as it says. All were fixed before the
 * ranges were first looked at.
 */
@NullMarked
package dawngauge.simulated;

import org.jspecify.annotations.NullMarked;
