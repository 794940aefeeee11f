/**
 * The rig as a plain form with what is found about it. Start at {@link dawngauge.ui.rig.RigView}.
 */
@NullMarked
package dawngauge.ui.rig;

import org.jspecify.annotations.NullMarked;
