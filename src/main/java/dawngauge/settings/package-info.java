/** The user's choices, with their defaults. Start at {@link dawngauge.settings.Settings}. */
@NullMarked
package dawngauge.settings;

import org.jspecify.annotations.NullMarked;
