/**
 * Numbers only: what each tire reads and carries at each stop. Start at {@link
 * dawngauge.forecast.Forecaster}.
 */
@NullMarked
package dawngauge.forecast;

import org.jspecify.annotations.NullMarked;
