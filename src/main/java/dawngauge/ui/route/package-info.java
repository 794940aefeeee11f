/**
 * The stop ledger with its trace, and the editing of stops, legs and air. Start at {@link
 * dawngauge.ui.route.RouteView}.
 */
@NullMarked
package dawngauge.ui.route;

import org.jspecify.annotations.NullMarked;
