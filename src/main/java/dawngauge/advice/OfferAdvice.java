package dawngauge.advice;

import dawngauge.quantity.Mass;
import dawngauge.trip.LoadChange;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a load that is only offered could be taken on.
 *
 * @param offer the load
 * @param reasons what stands against it; empty where it could be taken
 * @param most the most of it that could be taken, or null where all of it could
 */
public record OfferAdvice(LoadChange offer, List<Reason> reasons, @Nullable Mass most) {

  /** Copies the list. */
  public OfferAdvice {
    reasons = List.copyOf(reasons);
  }

  /** Hold if taken, or clear. */
  public Mark mark() {
    return reasons.isEmpty() ? Mark.CLEAR : Mark.HOLD;
  }
}
