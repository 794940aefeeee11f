/** Damaged input for every reader, found by a search. Start at {@link dawngauge.fuzz.Reader}. */
@NullMarked
package dawngauge.fuzz;

import org.jspecify.annotations.NullMarked;
