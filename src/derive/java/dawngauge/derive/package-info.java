/**
 * Writes the data that comes with the program from published packages; run by hand. Start at {@link
 * dawngauge.derive.DerivePlaces} and {@link dawngauge.derive.DeriveBaseMap}.
 */
@NullMarked
package dawngauge.derive;

import org.jspecify.annotations.NullMarked;
