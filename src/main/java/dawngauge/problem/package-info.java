/** What went wrong or is missing, as a value. Start at {@link dawngauge.problem.Problem}. */
@NullMarked
package dawngauge.problem;

import org.jspecify.annotations.NullMarked;
