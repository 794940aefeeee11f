package dawngauge.tripfile;

import dawngauge.trip.Leg;
import dawngauge.trip.Remarks;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.HashMap;
import java.util.Map;

/**
 * Trips of format version 1, where an estimate was a plain figure and a field beside it, whose name
 * begins with "x-", said that it is one. From version 2 on an estimate is written as one, and what
 * begins with "x-" means nothing.
 */
final class VersionOne {
  private static final String ELEVATION = "x-elevation-estimated";
  private static final String ZONE = "x-zone-estimated";
  private static final String DISTANCE = "x-distance-guessed";

  private VersionOne() {}

  /** The trip with its estimates as such; the fields that told of them are gone. */
  static Trip upgraded(Trip trip) {
    Route route = trip.route();
    return trip.withRoute(
        new Route(
            route.stops().stream().map(VersionOne::upgraded).toList(),
            route.legs().stream().map(VersionOne::upgraded).toList()));
  }

  private static Stop upgraded(Stop stop) {
    Map<String, String> extras = stop.remarks().extras();
    return stop.withElevationEstimated(stop.elevationEstimated() || extras.containsKey(ELEVATION))
        .withZoneEstimated(stop.zoneEstimated() || extras.containsKey(ZONE))
        .withRemarks(without(stop.remarks(), ELEVATION, ZONE));
  }

  private static Leg upgraded(Leg leg) {
    boolean guessed = leg.remarks().extras().containsKey(DISTANCE);
    return leg.withDistanceEstimated(leg.distanceEstimated() || guessed)
        .withRemarks(without(leg.remarks(), DISTANCE));
  }

  private static Remarks without(Remarks remarks, String... names) {
    Map<String, String> rest = new HashMap<>(remarks.extras());
    for (String name : names) {
      rest.remove(name);
    }
    return new Remarks(remarks.note(), rest);
  }
}
