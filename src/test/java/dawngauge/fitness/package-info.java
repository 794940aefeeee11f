/** Holds the check of a rig to its sources, one fault at a time. */
@NullMarked
package dawngauge.fitness;

import org.jspecify.annotations.NullMarked;
