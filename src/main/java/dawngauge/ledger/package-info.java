/**
 * What is shown, without a toolkit: lines and sentences in the chosen units. Start at {@link
 * dawngauge.ledger.Ledger}.
 */
@NullMarked
package dawngauge.ledger;

import org.jspecify.annotations.NullMarked;
