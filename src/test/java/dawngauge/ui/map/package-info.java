@NullMarked
package dawngauge.ui.map;

import org.jspecify.annotations.NullMarked;
