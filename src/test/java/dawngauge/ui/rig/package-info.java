/** Tests of the rig's form, as far as they need no toolkit. */
@NullMarked
package dawngauge.ui.rig;

import org.jspecify.annotations.NullMarked;
