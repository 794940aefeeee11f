/** Holds the trip file to its description. */
@NullMarked
package dawngauge.field;

import org.jspecify.annotations.NullMarked;
