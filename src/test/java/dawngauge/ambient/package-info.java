/** Holds the expected air to what was typed and to its published error. */
@NullMarked
package dawngauge.ambient;

import org.jspecify.annotations.NullMarked;
