package dawngauge.trip;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Where the crew is by its log.
 *
 * @param visit index of the stop where it stands, or that it left last
 * @param there whether it still stands there
 * @param since since when
 * @param noted whether the log tells so; without arrival or departure it stands at the first stop
 */
public record CrewPlace(int visit, boolean there, Instant since, boolean noted) {

  /** Further from the trip than this a press of a key is no arrival of it; ours. */
  private static final Duration FAR = Duration.ofDays(3);

  /** Where the crew is. */
  public static CrewPlace of(Trip trip, Itinerary itinerary) {
    return of(trip, itinerary.visits());
  }

  private static CrewPlace of(Trip trip, List<Itinerary.Visit> visits) {
    CrewPlace place = new CrewPlace(0, true, visits.get(0).arrive(), false);
    for (LogEvent event : trip.log()) {
      String stop =
          event instanceof LogEvent.Arrived arrived
              ? arrived.stop()
              : event instanceof LogEvent.Left left ? left.stop() : "";
      for (Itinerary.Visit visit : visits) {
        if (visit.stop().id().equals(stop)) {
          boolean there = event instanceof LogEvent.Arrived;
          place = new CrewPlace(visit.index(), there, event.time().instant(), true);
        }
      }
    }
    return place;
  }

  /** Whether the rig has left a stop by the log, noted there or further on. */
  private boolean hasLeft(int index) {
    return noted && (index < visit || (index == visit && !there));
  }

  /**
   * How many stops the rig has left by its log: what was to be done there is over, done or not. It
   * has left those that it noted, and those before a stop at whose arrival, or later, anything was
   * noted. What is noted between leaving as planned and the next arrival leaves a stop open: a crew
   * that is late gauges again and still has to set its tires there.
   */
  public static int left(Trip trip, List<Itinerary.Visit> visits) {
    Instant last = Instant.MIN;
    for (LogEvent event : trip.log()) {
      Instant time = event.time().instant();
      last = time.isAfter(last) ? time : last;
    }
    CrewPlace crew = of(trip, visits);
    int left = 0;
    while (left < visits.size()
        && (crew.hasLeft(left)
            || (left + 1 < visits.size() && !visits.get(left + 1).arrive().isAfter(last)))) {
      left++;
    }
    return left;
  }

  /** Index of the first stop that the rig has not left; the last stop where it has left all. */
  public static int open(Trip trip, List<Itinerary.Visit> visits) {
    return Math.min(left(trip, visits), visits.size() - 1);
  }

  /**
   * Index of the stop that comes next: places that are only passed are not stopped at. The last
   * stop has none, and gives itself.
   */
  public int next(List<Itinerary.Visit> visits) {
    int last = visits.size() - 1;
    int next = visit + 1;
    while (next < last && visits.get(next).passes()) {
      next++;
    }
    return Math.min(next, last);
  }

  /** Whether a moment may be one of the trip: not days before its start or after its end. */
  public static boolean mayBe(Itinerary itinerary, Instant now) {
    Instant start = itinerary.visits().get(0).leave();
    Instant end = itinerary.visits().get(itinerary.visits().size() - 1).leave();
    return now.isAfter(start.minus(FAR)) && now.isBefore(end.plus(FAR));
  }
}
