/**
 * The use cases, in order: one door for the window and the command line. Start at {@link
 * dawngauge.planner.Planner}.
 */
@NullMarked
package dawngauge.planner;

import org.jspecify.annotations.NullMarked;
