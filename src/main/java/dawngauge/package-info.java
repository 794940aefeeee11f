/** Wires clock and folders together and starts a command. Start at {@link dawngauge.Main}. */
@NullMarked
package dawngauge;

import org.jspecify.annotations.NullMarked;
