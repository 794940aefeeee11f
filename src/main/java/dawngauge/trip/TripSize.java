package dawngauge.trip;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.ArrayList;
import java.util.List;

/**
 * How large a trip may be; ours. Forecast, plan, sheet and review of the largest are tried with 256
 * MB. How long it may be stands in {@link Itinerary}.
 */
public final class TripSize {

  /** Most stops. */
  public static final int MOST_STOPS = 200;

  /** Most tires, spares among them. */
  public static final int MOST_TIRES = 40;

  private TripSize() {}

  /** What a trip has too much of, with the way out; empty where it has not. */
  public static List<Problem> over(Trip trip) {
    List<Problem> problems = new ArrayList<>();
    int stops = trip.route().stops().size();
    if (stops > MOST_STOPS) {
      problems.add(
          Problem.of(ProblemCode.TOO_MANY_STOPS, "/route/stops", "" + stops, "" + MOST_STOPS));
    }
    int tires = trip.rig().tires().size();
    if (tires > MOST_TIRES) {
      problems.add(
          Problem.of(ProblemCode.TOO_MANY_TIRES, "/rig/tires", "" + tires, "" + MOST_TIRES));
    }
    return problems;
  }
}
