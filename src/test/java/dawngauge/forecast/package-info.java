/** Holds the forecast to published figures, to its own equations, and to what must not matter. */
@NullMarked
package dawngauge.forecast;

import org.jspecify.annotations.NullMarked;
