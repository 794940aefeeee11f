@NullMarked
package dawngauge.planner;

import org.jspecify.annotations.NullMarked;
