/**
 * What a tire may carry at which pressure, and what its sidewall says. Start at {@link
 * dawngauge.tire.TireSpec} and {@link dawngauge.tire.Capacity}.
 */
@NullMarked
package dawngauge.tire;

import org.jspecify.annotations.NullMarked;
