package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The weight worksheet: what the rig weighed empty, what is loaded where, and the ratings that are
 * on no certification label. Weights are expected from it; no forecast and no judgement is.
 *
 * @param empty scale tickets of the rig without a load
 * @param emptyHitch hitch load of the empty trailer
 * @param hitchToAxles from the hitch to the middle of the trailer's axles
 * @param wheelbase of the tow vehicle, front axle to the middle of the others
 * @param hitchRating most that the hitch may carry, the least of its parts
 * @param combinedRating most that tow vehicle and trailer may weigh together
 * @param loads what stands where when the rig leaves
 * @param remarks note and extras
 */
@RecordBuilder
public record Worksheet(
    List<ScaleTicket> empty,
    @Nullable Entered<Mass> emptyHitch,
    @Nullable Entered<Distance> hitchToAxles,
    @Nullable Entered<Distance> wheelbase,
    @Nullable Entered<Mass> hitchRating,
    @Nullable Entered<Mass> combinedRating,
    List<DeckLoad> loads,
    Remarks remarks)
    implements WorksheetBuilder.With {

  /** Nothing filled in. */
  public static final Worksheet BLANK =
      new Worksheet(List.of(), null, null, null, null, null, List.of(), Remarks.NONE);

  /** Copies the lists. */
  public Worksheet {
    empty = List.copyOf(empty);
    loads = List.copyOf(loads);
  }

  /** The same with one more ticket, without date, weighed hitched. */
  public Worksheet withNewTicket() {
    List<ScaleTicket> all = new ArrayList<>(empty);
    all.add(new ScaleTicket(null, true, null, List.of(), List.of(), Remarks.NONE));
    return withEmpty(all);
  }
}
