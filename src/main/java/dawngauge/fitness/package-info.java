/** Whether a rig is fit to go, before the trip. Start at {@link dawngauge.fitness.FitnessCheck}. */
@NullMarked
package dawngauge.fitness;

import org.jspecify.annotations.NullMarked;
