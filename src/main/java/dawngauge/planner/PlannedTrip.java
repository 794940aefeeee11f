package dawngauge.planner;

import dawngauge.advice.Advice;
import dawngauge.fitness.Defect;
import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trip with all that was computed of it.
 *
 * @param trip the trip
 * @param advice forecast and what to do, or null where no time on the way is known
 * @param problems everything missing or assumed, each once
 * @param fitness whether the rig may go: what is wrong with it, worst first
 */
public record PlannedTrip(
    Trip trip, @Nullable Advice advice, List<Problem> problems, List<Defect> fitness) {

  /** Copies the lists. */
  public PlannedTrip {
    fitness = List.copyOf(fitness);
    problems = List.copyOf(problems);
  }
}
