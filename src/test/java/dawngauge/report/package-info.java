/** What is printed. */
@NullMarked
package dawngauge.report;

import org.jspecify.annotations.NullMarked;
