/** From an empty page to a first forecast. Start at {@link dawngauge.ui.start.FirstStartView}. */
@NullMarked
package dawngauge.ui.start;

import org.jspecify.annotations.NullMarked;
