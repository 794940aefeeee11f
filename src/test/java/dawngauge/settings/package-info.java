/** The settings and their defaults. */
@NullMarked
package dawngauge.settings;

import org.jspecify.annotations.NullMarked;
