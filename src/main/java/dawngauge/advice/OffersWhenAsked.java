package dawngauge.advice;

import dawngauge.trip.LoadChange;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Offers that are judged when they are first asked for: to find how much could be taken on, the
 * rest of the trip is forecast a dozen times, which takes far longer than all else at its stop. Two
 * threads that ask at once judge twice, which does no harm.
 */
final class OffersWhenAsked extends AbstractList<OfferAdvice> implements RandomAccess {

  private final List<LoadChange> offered;
  private final Function<LoadChange, OfferAdvice> judge;
  private final @Nullable OfferAdvice[] judged;

  OffersWhenAsked(List<LoadChange> offered, Function<LoadChange, OfferAdvice> judge) {
    this.offered = List.copyOf(offered);
    this.judge = judge;
    this.judged = new OfferAdvice[offered.size()];
  }

  @Override
  public OfferAdvice get(int index) {
    OfferAdvice known = judged[index];
    if (known == null) {
      known = judge.apply(offered.get(index));
      judged[index] = known;
    }
    return known;
  }

  @Override
  public int size() {
    return judged.length;
  }
}
