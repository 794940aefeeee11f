package dawngauge.forecast;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * When the tires are to be gauged and set at each visit: when leaving; before the first start of a
 * day not later than half an hour after sunrise, before the sun warms them, unless they were read
 * or set later that morning.
 */
final class CheckTimes {

  /** After sunrise the sun soon reaches the tires; ours, no source. */
  private static final double AFTER_SUNRISE_SECONDS = 30 * 60.0;

  private CheckTimes() {}

  /** One time a visit, in epoch seconds. */
  static double[] of(Trip trip, Itinerary itinerary) {
    List<Itinerary.Visit> visits = itinerary.visits();
    double[] arrivals = visits.stream().mapToDouble(v -> Timeline.time(v.arrive())).toArray();
    double[] checks = visits.stream().mapToDouble(CheckTimes::bySun).toArray();
    for (LogEvent event : trip.log()) {
      // What is still to be set is set after a tire was last read or set during the stay.
      if (event instanceof LogEvent.Reading || event instanceof LogEvent.Adjustment) {
        double t = Timeline.time(event.time().instant());
        int found = Arrays.binarySearch(arrivals, t);
        int visit = found >= 0 ? found : -found - 2;
        if (visit >= 0 && t <= Timeline.time(visits.get(visit).leave())) {
          checks[visit] = Math.max(checks[visit], t);
        }
      }
    }
    return checks;
  }

  private static double bySun(Itinerary.Visit visit) {
    double leaving = Timeline.time(visit.leave());
    Coordinate place = visit.stop().coordinate();
    if (place == null || !visit.firstStartOfDay()) {
      return leaving;
    }
    LocalDate date = visit.leave().atZone(visit.zone()).toLocalDate();
    double arrival = Timeline.time(visit.arrive());
    double cold = visit.index() == 0 ? arrival : arrival + Timeline.COLD_SECONDS;
    return Daylight.on(date, visit.zone(), place)
        .map(sun -> Timeline.time(sun.sunrise()) + AFTER_SUNRISE_SECONDS)
        .filter(latest -> latest >= cold && latest < leaving)
        .orElse(leaving);
  }
}
