package dawngauge.ui.common;

import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Leg;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether two trips have the same rows and differ in values of the route alone, so that what is
 * shown of the one may stand for a moment where the other's will.
 */
final class SameRows {

  private SameRows() {}

  static boolean of(Trip one, Trip other) {
    return one.rig().equals(other.rig())
        && one.log().equals(other.log())
        && one.plan().equals(other.plan())
        && rows(one).equals(rows(other));
  }

  /** What of route and air has a row of its own. */
  private static List<Object> rows(Trip trip) {
    List<Object> rows = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      rows.add(stop.id());
      rows.add(stop.loadChanges().size());
    }
    for (Leg leg : trip.route().legs()) {
      rows.add(leg.profile().size());
      rows.add(leg.track().size());
    }
    for (AmbientEntry entry : trip.ambient()) {
      rows.add(entry.stop());
      rows.add(row(entry.figure()));
    }
    return rows;
  }

  private static Object row(AmbientEntry.Figure figure) {
    if (figure instanceof AmbientEntry.Hourly hourly) {
      return hourly.hours().size();
    }
    return figure instanceof AmbientEntry.LowHigh day ? day.date() : "steady";
  }
}
