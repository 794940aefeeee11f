/**
 * Physical quantities as types, SI inside, units by name at the door. Start at {@link
 * dawngauge.quantity.Quantity} and {@link dawngauge.quantity.QuantityKind}.
 */
@NullMarked
package dawngauge.quantity;

import org.jspecify.annotations.NullMarked;
