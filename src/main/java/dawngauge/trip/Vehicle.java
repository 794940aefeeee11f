package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One vehicle with the figures of its certification label.
 *
 * @param name what positions are named after, such as "trailer"
 * @param letter the letter that short forms begin with
 * @param kind what sort of vehicle
 * @param gvwr gross vehicle weight rating from the label
 * @param axles front to rear
 * @param remarks note and extras
 */
@RecordBuilder
public record Vehicle(
    String name,
    String letter,
    Kind kind,
    @Nullable Entered<Mass> gvwr,
    List<Axle> axles,
    Remarks remarks)
    implements VehicleBuilder.With {

  /** Sorts of vehicle, as far as the tire rules tell them apart. */
  public enum Kind {
    /** Passenger car. */
    CAR("car"),
    /** Pickup, van, truck, bus or multipurpose vehicle. */
    TRUCK("truck"),
    /** Trailer. */
    TRAILER("trailer");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name in files. */
    public String word() {
      return word;
    }
  }

  /** Copies the list. */
  public Vehicle {
    axles = List.copyOf(axles);
  }
}
