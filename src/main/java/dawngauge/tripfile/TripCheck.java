package dawngauge.tripfile;

import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** What only shows when the parts of a trip are held against each other. */
final class TripCheck {
  private TripCheck() {}

  /** All problems of a trip as read, in the order of the file. */
  static List<Problem> problems(Trip trip) {
    List<Problem> problems = new ArrayList<>();
    Names names = Names.of(trip, problems);
    RigCheck.check(trip.rig(), names, problems);
    RouteCheck.check(trip.route(), names, problems);
    LogCheck.check(trip, names, problems);
    return problems;
  }
}
