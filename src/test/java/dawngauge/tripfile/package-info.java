/** Holds the trip file to its description. */
@NullMarked
package dawngauge.tripfile;

import org.jspecify.annotations.NullMarked;
