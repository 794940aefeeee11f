package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * A line of the weight worksheet: what stands where on a vehicle.
 *
 * @param what animals, hay, water, tack, in words
 * @param head how many of it, or null for one
 * @param weight of each
 * @param source how that weight is known
 * @param vehicle name of the vehicle
 * @param place from the hitch to its middle: back on a trailer, forward on a tow vehicle
 * @param remarks note and extras
 */
@RecordBuilder
public record DeckLoad(
    String what,
    @Nullable Integer head,
    Entered<Mass> weight,
    LoadChange.Source source,
    String vehicle,
    Entered<Distance> place,
    Remarks remarks)
    implements DeckLoadBuilder.With {

  /** All of it together, in kilogram. */
  public double kilograms() {
    return weight.value().kilograms() * (head == null ? 1 : head);
  }
}
