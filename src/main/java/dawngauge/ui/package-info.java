/** The planner window. Start at {@link dawngauge.ui.PlannerWindow}. */
@NullMarked
package dawngauge.ui;

import org.jspecify.annotations.NullMarked;
