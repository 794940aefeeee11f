package dawngauge.tripfile;

import dawngauge.trip.Trip;
import dawngauge.trip.TripSize;

/** What only shows when the parts of a trip are held against each other. */
final class TripCheck {
  private TripCheck() {}

  /** Adds all problems of a trip as read. */
  static void check(Trip trip, FileProblems problems) {
    TripSize.over(trip).forEach(problems::add);
    DeclaredNames names = DeclaredNames.of(trip, problems);
    RigCheck.check(trip.rig(), names, problems);
    RouteCheck.check(trip.route(), names, problems);
    LogCheck.check(trip, names, problems);
  }
}
