/** How a number came about, and on whose word. Start at {@link dawngauge.explain.Step}. */
@NullMarked
package dawngauge.explain;

import org.jspecify.annotations.NullMarked;
