/** How things are worded. */
@NullMarked
package dawngauge.ledger;

import org.jspecify.annotations.NullMarked;
