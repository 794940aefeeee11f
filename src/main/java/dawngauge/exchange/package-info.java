/** Other people's files: routes and tracks. */
@NullMarked
package dawngauge.exchange;

import org.jspecify.annotations.NullMarked;
