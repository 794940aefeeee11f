/**
 * Which air where and when: the question and the answer. Start at {@link
 * dawngauge.ambient.AmbientNeeds} and {@link dawngauge.ambient.Ambient}.
 */
@NullMarked
package dawngauge.ambient;

import org.jspecify.annotations.NullMarked;
