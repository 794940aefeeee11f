package dawngauge.weights;

import dawngauge.rules.Loads;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one more weighing would settle. The load in most doubt is the one whose rating is the fewest
 * standard deviations away; of the single tickets that the loaded rig can get, the one that leaves
 * that load the smallest standard deviation is named.
 *
 * @param weigh what to put on the scale
 * @param settles the load in most doubt
 * @param sigmaNow its standard deviation, in kilogram
 * @param sigmaThen the same once that was weighed
 */
public record NextWeighing(String weigh, RatedLoad settles, double sigmaNow, double sigmaThen) {

  /** Tickets that leave as much within this part count as alike: the earlier one is taken. */
  private static final double ALIKE = 0.02;

  /**
   * What can be weighed.
   *
   * @param what in words
   * @param load what the scale is expected to show
   */
  record Candidate(String what, SummedLoad load) {}

  static Optional<NextWeighing> of(List<RatedLoad> loads, List<Candidate> candidates) {
    return loads.stream()
        .filter(load -> load.away() < Double.POSITIVE_INFINITY)
        .min(Comparator.comparingDouble(RatedLoad::away))
        .flatMap(load -> best(load, candidates));
  }

  private static Optional<NextWeighing> best(RatedLoad load, List<Candidate> candidates) {
    SummedLoad doubted = load.expected().orElseThrow();
    NextWeighing best = null;
    for (Candidate candidate : candidates) {
      double then = sigmaAfter(doubted, candidate.load());
      if (best == null || then < best.sigmaThen * (1 - ALIKE)) {
        best = new NextWeighing(candidate.what(), load, doubted.sigma(), then);
      }
    }
    return Optional.ofNullable(best);
  }

  /** Standard deviation of a load once another one was weighed: that of the normal given it. */
  static double sigmaAfter(SummedLoad load, SummedLoad weighed) {
    double scale = Loads.SCALE_SIGMA * weighed.kilograms();
    double shown = weighed.covariance(weighed) + scale * scale;
    double common = load.covariance(weighed);
    double left = load.covariance(load) - (shown > 0 ? common * common / shown : 0);
    return Math.sqrt(Math.max(0, left));
  }
}
