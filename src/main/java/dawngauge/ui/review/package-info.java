/** After the trip: why the tires read as they did. */
@NullMarked
package dawngauge.ui.review;

import org.jspecify.annotations.NullMarked;
