/**
 * What axles and hitch can be expected to carry by the weight worksheet, before the loaded rig was
 * on a scale. Start at {@link dawngauge.weights.ExpectedWeights}. Nothing is judged by it.
 */
@NullMarked
package dawngauge.weights;

import org.jspecify.annotations.NullMarked;
