package dawngauge.advice;

import java.util.Map;
import java.util.Optional;

/**
 * What an accepted plan says of one tire.
 *
 * @param from index of the first stop that it plans
 * @param figures what the gauge is to show, in pascal, by index of the stop
 */
record TirePlan(int from, Map<Integer, Double> figures) {

  /** Whether it speaks of a stop. */
  boolean speaksOf(int visit) {
    return visit >= from;
  }

  /** The figure to set at a stop. */
  Optional<Double> at(int visit) {
    return Optional.ofNullable(figures.get(visit));
  }

  /** The next stop after one where it sets the tire; −1 where there is none. */
  int nextAfter(int visit) {
    return figures.keySet().stream().filter(at -> at > visit).min(Integer::compare).orElse(-1);
  }
}
