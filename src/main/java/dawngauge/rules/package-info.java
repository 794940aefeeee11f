/**
 * What each rule means, once: which load a tire has, what it may carry, between which pressures it
 * belongs, what is cold, what ran low. Start at {@link dawngauge.rules.Limits}.
 */
@NullMarked
package dawngauge.rules;

import org.jspecify.annotations.NullMarked;
