/**
 * What all parts of the window share: the document with undo, marks, fields. Start at {@link
 * dawngauge.ui.common.TripDocument}.
 */
@NullMarked
package dawngauge.ui.common;

import org.jspecify.annotations.NullMarked;
