/**
 * Laws of air, heat and weather, each with its source; numbers in SI units in, numbers out. Start
 * at {@link dawngauge.physics.GasLaw} and {@link dawngauge.physics.WarmUp}.
 */
@NullMarked
package dawngauge.physics;

import org.jspecify.annotations.NullMarked;
