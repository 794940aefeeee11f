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
    CrewPlace place = new CrewPlace(0, true, itinerary.visits().get(0).arrive(), false);
    for (LogEvent event : trip.log()) {
      String stop =
          event instanceof LogEvent.Arrived arrived
              ? arrived.stop()
              : event instanceof LogEvent.Left left ? left.stop() : "";
      for (Itinerary.Visit visit : itinerary.visits()) {
        if (visit.stop().id().equals(stop)) {
          boolean there = event instanceof LogEvent.Arrived;
          place = new CrewPlace(visit.index(), there, event.time().instant(), true);
        }
      }
    }
    return place;
  }

  /** Whether the rig has left a stop by the log, noted there or further on. */
  public boolean hasLeft(int index) {
    return noted && (index < visit || (index == visit && !there));
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
