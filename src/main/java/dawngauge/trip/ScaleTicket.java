package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A visit to a scale. It speaks for the rig as loaded at the start of the trip.
 *
 * @param date when
 * @param hitched whether the trailer was hitched: its axles then exclude the hitch load and the tow
 *     vehicle's include it
 * @param aboard what was aboard, in words
 * @param platforms weights by platform: one axle, or a group weighed together
 * @param wheels weights of single wheel positions (a dual pair is one, named by either tire)
 * @param remarks note and extras
 */
@RecordBuilder
public record ScaleTicket(
    @Nullable LocalDate date,
    boolean hitched,
    @Nullable String aboard,
    List<Platform> platforms,
    List<WheelWeight> wheels,
    Remarks remarks)
    implements ScaleTicketBuilder.With {

  /**
   * What one platform of the scale showed.
   *
   * @param axles the axles on it
   * @param weight their weight together
   */
  public record Platform(List<AxleRef> axles, Entered<Mass> weight) {
    /** Copies the list. */
    public Platform {
      axles = List.copyOf(axles);
    }
  }

  /**
   * What a wheel scale showed under one side of an axle.
   *
   * @param axle the axle
   * @param left whether the left side
   * @param weight weight under that side, both tires of a dual pair together
   */
  public record WheelWeight(AxleRef axle, boolean left, Entered<Mass> weight) {}

  /** Copies the lists. */
  public ScaleTicket {
    platforms = List.copyOf(platforms);
    wheels = List.copyOf(wheels);
  }
}
