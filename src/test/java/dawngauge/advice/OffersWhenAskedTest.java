package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Remarks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Offers wait for whoever asks, and are judged once. */
class OffersWhenAskedTest {

  private static LoadChange offer(String what) {
    Entered<Mass> weight = Entered.of(QuantityKind.MASS, "200 lb");
    return new LoadChange(
        what, weight, LoadChange.Source.GUESSED, Map.of(), null, true, Remarks.NONE);
  }

  @Test
  void nothingIsJudgedBeforeItIsAskedForAndThenOnce() {
    List<LoadChange> offered = List.of(offer("rams"), offer("hay"));
    List<LoadChange> judged = new ArrayList<>();
    List<OfferAdvice> offers =
        new OffersWhenAsked(
            offered,
            change -> {
              judged.add(change);
              return new OfferAdvice(change, List.of(), null);
            });
    assertThat(offers).hasSize(offered.size());
    assertThat(judged).isEmpty();
    assertThat(offers.get(0)).isSameAs(offers.get(0));
    assertThat(judged).containsExactly(offered.get(0));
  }
}
