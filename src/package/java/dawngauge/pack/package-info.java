/**
 * Makes what is installed: a folder with a runtime of its own, and the package of the system that
 * builds. Start at {@link dawngauge.pack.MakePackages}.
 */
@NullMarked
package dawngauge.pack;

import org.jspecify.annotations.NullMarked;
