/** One judgement of a tire at a stop, whatever page speaks of it. */
@NullMarked
package dawngauge.contract;

import org.jspecify.annotations.NullMarked;
