/** The ledger as text, and for other programs. Start at {@link dawngauge.report.PageText}. */
@NullMarked
package dawngauge.report;

import org.jspecify.annotations.NullMarked;
