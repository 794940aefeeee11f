/**
 * A page as data, without a toolkit: headings, cards, tables, notes, plots. Text, paper and window
 * draw any page. Start at {@link dawngauge.page.Page}.
 */
@NullMarked
package dawngauge.page;

import org.jspecify.annotations.NullMarked;
