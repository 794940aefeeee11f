/** Our trip file: read whole, written safely. Start at {@link dawngauge.tripfile.TripFile}. */
@NullMarked
package dawngauge.tripfile;

import org.jspecify.annotations.NullMarked;
