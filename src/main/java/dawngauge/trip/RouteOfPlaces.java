package dawngauge.trip;

import dawngauge.geo.PlaceStay;
import dawngauge.geo.Spot;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.IntStream;

/** Stops made of a list of places; legs between them are guessed and marked. */
public final class RouteOfPlaces {

  /** A stop between start and end of which nothing is said; ours, no source. */
  public static final Duration USUAL_STAY = Duration.ofMinutes(20);

  /**
   * A place to stop at.
   *
   * @param spot where
   * @param stay what is said of standing there
   */
  public record Wanted(Spot spot, PlaceStay stay) {}

  private RouteOfPlaces() {}

  /**
   * Puts stops at places into a route.
   *
   * @param index where the first of them is to stand, 0 to the number of stops
   */
  public static Trip insert(Trip trip, int index, List<Wanted> places) {
    Trip grown = trip;
    for (int i = 0; i < places.size(); i++) {
      Stop stop = stop(grown, places.get(i), Stop.Kind.REST);
      grown = RouteEdits.insert(grown, index + i, stop);
    }
    return afterNights(grown, index, places);
  }

  /**
   * Makes the places the route, from start to end. The departure stays what the clock at the start
   * shows; the old stops go with their air and their arrivals and departures in the log.
   */
  public static Trip replace(Trip trip, List<Wanted> places) {
    List<Stop> old = trip.route().stops();
    Trip made = GroupEdits.remove(trip, GroupEdits.all(trip));
    for (int i = 0; i < places.size(); i++) {
      boolean last = i == places.size() - 1;
      Stop.Kind kind = i == 0 ? Stop.Kind.START : last ? Stop.Kind.END : Stop.Kind.REST;
      made = RouteEdits.insert(made, i, stop(made, places.get(i), kind));
    }
    return old.isEmpty() || places.isEmpty()
        ? made
        : afterNights(
            RouteEdits.withStop(
                made, 0, GroupEdits.departing(made.route().stops().get(0), old.get(0))),
            0,
            places);
  }

  /**
   * Whether each night of which it is said when it ends has got that time; not where it is not
   * known when the rig comes.
   *
   * @param index where the first of the places stands
   */
  public static boolean nightsEnd(Trip made, int index, List<Wanted> places) {
    return IntStream.range(0, places.size())
        .filter(i -> index + i > 0 && places.get(i).stay().leaves() != null)
        .allMatch(i -> made.route().stops().get(index + i).leave() != null);
  }

  /** One after the other, for when the rig comes hangs on the nights before; a start departs. */
  private static Trip afterNights(Trip trip, int index, List<Wanted> places) {
    Trip timed = trip;
    for (int i = 0; i < places.size(); i++) {
      LocalTime leaves = places.get(i).stay().leaves();
      int row = index + i;
      if (leaves != null && row > 0) {
        ZonedDateTime arrives = new StopClock(timed, row).arrives();
        Stop stop = timed.route().stops().get(row);
        TypedTime time = arrives == null ? null : LeaveDay.afterNight(arrives, leaves);
        timed = RouteEdits.withStop(timed, row, stop.withTimes(stop.arrive(), time));
      }
    }
    return timed;
  }

  private static Stop stop(Trip trip, Wanted place, Stop.Kind kind) {
    PlaceStay said = place.stay();
    boolean rest = kind == Stop.Kind.REST;
    Stop bare =
        Stop.named(
                RouteEdits.freeId(trip, place.spot().name()),
                place.spot().name(),
                rest && said.overnight() ? Stop.Kind.OVERNIGHT : kind)
            .withStay(
                rest && said.stay() == null && said.leaves() == null ? USUAL_STAY : said.stay());
    return StopEdits.at(said.hose() ? bare.withAir(Air.YES) : bare, place.spot());
  }
}
