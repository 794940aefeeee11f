package dawngauge.explain;

import dawngauge.quantity.Quantity;

/**
 * One step on the way to a number.
 *
 * @param what what is done or looked up here, in words
 * @param result the figure after this step
 * @param authority on whose word
 */
public record Step(Phrase what, Quantity result, Authority authority) {}
