/**
 * The map of the route. Only this package knows Swing, which paints it: the rest of the window sees
 * {@link dawngauge.ui.map.MapSheet}. The painting component is touched on Swing's thread alone, all
 * else on the window's; what passes between them is immutable, and neither waits for the other.
 */
@NullMarked
package dawngauge.ui.map;

import org.jspecify.annotations.NullMarked;
