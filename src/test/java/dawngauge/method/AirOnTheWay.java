package dawngauge.method;

import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/** Section 3: the air along the way, between neighbouring places. */
final class AirOnTheWay {
  private record Place(
      double way, double height, Air.@Nullable Course course, DoublePredicate dawn) {}

  private final List<Place> places = new ArrayList<>();
  private final List<Double> bends = new ArrayList<>();
  private final @Nullable AirOfAStop[] own;

  AirOnTheWay(Trip trip, Times times, Heights heights) {
    own = new AirOfAStop[times.way.length];
    for (int i = 0; i < own.length; i++) {
      AirOfAStop found = AirOfAStop.of(trip, times, i);
      own[i] = found;
      if (found != null || !times.passes(i)) {
        places.add(
            new Place(
                times.way[i],
                heights.at(times.way[i]),
                found,
                t -> found != null && found.dawn(t)));
      }
      if (found != null) {
        bends.addAll(found.bends(times.arrive[i], times.leave[i]));
      }
      if (i < own.length - 1) {
        for (ProfilePoint point : trip.route().legs().get(i).profile()) {
          if (point.ambient() != null) {
            double typed = point.ambient().value().kelvins();
            double way = times.way[i] + point.distance().value().meters();
            ZoneId zone = times.zone[i];
            DoublePredicate dawn = t -> t - Times.midnight(Times.date(t, zone), zone) <= 8 * 3600;
            Air.Course course =
                t ->
                    new Air(
                        typed,
                        AirOfAStop.byLead(
                            (long) Math.max(0, Math.floor((t - times.arrive[0]) / 86_400)),
                            dawn.test(t)),
                        dawn.test(t) ? 5.0 / 9 : 0,
                        false);
            places.add(new Place(way, point.elevation().value().meters(), course, dawn));
          }
        }
      }
    }
  }

  List<Double> bends() {
    return bends;
  }

  boolean given(int stop) {
    return own[stop] != null;
  }

  Air atStop(int stop, double way, double height, double t) {
    AirOfAStop given = own[stop];
    return given == null ? at(way, height, t) : given.at(t);
  }

  Air at(double way, double height, double t) {
    Place before = null;
    Place after = null;
    boolean bridged = false;
    for (Place place : places) {
      if (place.way <= way) {
        bridged = place.course == null;
        before = place.course == null ? before : place;
      } else if (after == null) {
        bridged |= place.course == null;
        after = place.course == null ? null : place;
      }
    }
    if (before == null || after == null || before.course == null || after.course == null) {
      throw new IllegalStateException("the demos have figures at both ends");
    }
    double part = (way - before.way) / (after.way - before.way);
    Air between = before.course.at(t).towards(after.course.at(t), part);
    double line = before.height + part * (after.height - before.height);
    double sigma = bridged ? Math.hypot(between.sigma(), 5) : between.sigma();
    double lower = Math.min(before.height, after.height);
    boolean dawn = (part < 0.5 ? before : after).dawn.test(t);
    double counted = dawn && height < lower ? lower : height;
    double kelvins = between.kelvins() - 0.0065 * (counted - line);
    return new Air(kelvins, sigma, between.coldSide(), bridged);
  }
}
