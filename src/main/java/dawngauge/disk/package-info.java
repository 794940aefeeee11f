/** Files that are whole at every moment. Start at {@link dawngauge.disk.AsideFile}. */
@NullMarked
package dawngauge.disk;

import org.jspecify.annotations.NullMarked;
