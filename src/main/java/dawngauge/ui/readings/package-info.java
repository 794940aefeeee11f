/** On the road: readings, actual times, what was done on the way. */
@NullMarked
package dawngauge.ui.readings;

import org.jspecify.annotations.NullMarked;
