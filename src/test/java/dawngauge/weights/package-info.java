@NullMarked
package dawngauge.weights;

import org.jspecify.annotations.NullMarked;
