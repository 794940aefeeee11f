package dawngauge.tripfile;

import dawngauge.field.TimeCodecs;
import dawngauge.field.TripCodecs;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Leg;
import dawngauge.trip.LoadChange;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Holds the parts of a route against each other. */
final class RouteCheck {
  private RouteCheck() {}

  static void check(Route route, DeclaredNames names, FileProblems problems) {
    List<Stop> stops = route.stops();
    if (stops.size() < 2) {
      problems.add(Problem.of(ProblemCode.TOO_FEW_STOPS, "/route/stops", "" + stops.size()));
    }
    if (!stops.isEmpty()
        && stops.get(0).leave() == null
        && !problems.isToldAt("/route/stops/0/leave")) {
      problems.add(
          Problem.of(
              ProblemCode.NO_DEPARTURE,
              "/route/stops/0",
              stops.get(0).place(),
              TimeCodecs.TIME.example()));
    }
    TimeOrder order = new TimeOrder(problems);
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      String place = "/route/stops/" + i;
      order.next(stop.arrive(), place + "/arrive");
      order.next(stop.leave(), place + "/leave");
      loadChanges(stop.loadChanges(), place + "/loadChanges/", names);
      if (i < route.legs().size()) {
        profile(route.legs().get(i), place + "/leg/profile/", problems);
      }
    }
  }

  private static void loadChanges(List<LoadChange> changes, String place, DeclaredNames names) {
    for (int i = 0; i < changes.size(); i++) {
      String axles = place + i + "/axles";
      changes.get(i).axles().keySet().stream()
          .sorted(Comparator.comparing(AxleRef::words))
          .forEach(
              ref ->
                  names.requireAxle(
                      ref, ValueReader.under(axles, TripCodecs.AXLE.text().apply(ref))));
    }
  }

  private static void profile(Leg leg, String place, FileProblems problems) {
    Entered<Distance> length = leg.distance();
    Entered<Distance> before = null;
    for (int i = 0; i < leg.profile().size(); i++) {
      ProfilePoint point = leg.profile().get(i);
      Entered<Distance> distance = point.distance();
      String where = place + i + "/distance";
      if (distance.text().isEmpty()) {
        continue;
      }
      if (isNotBeyond(distance, before)) {
        problems.add(
            Problem.of(ProblemCode.PROFILE_OUT_OF_ORDER, where, distance.text(), textOf(before)));
      }
      if (length != null && distance.value().compareTo(length.value()) > 0) {
        problems.add(
            Problem.of(ProblemCode.PROFILE_BEYOND_LEG, where, distance.text(), length.text()));
      }
      before = distance;
    }
  }

  private static boolean isNotBeyond(
      Entered<Distance> distance, @Nullable Entered<Distance> before) {
    return before != null && distance.value().compareTo(before.value()) <= 0;
  }

  private static String textOf(@Nullable Entered<Distance> distance) {
    return distance == null ? "" : distance.text();
  }
}
