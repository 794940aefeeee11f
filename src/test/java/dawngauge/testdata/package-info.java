/**
 * Invented rigs and hauls for tests, in a few words each. Start at {@link
 * dawngauge.testdata.Trips}.
 */
@NullMarked
package dawngauge.testdata;

import org.jspecify.annotations.NullMarked;
