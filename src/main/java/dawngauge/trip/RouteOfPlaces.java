package dawngauge.trip;

import dawngauge.geo.Spot;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Stops made of a list of places; legs between them are guessed and marked. */
public final class RouteOfPlaces {

  /** A stop between start and end of which nothing is said; ours, no source. */
  public static final Duration USUAL_STAY = Duration.ofMinutes(20);

  /**
   * A place to stop at.
   *
   * @param spot where
   * @param stay how long, or null where that is not said
   */
  public record Wanted(Spot spot, @Nullable Duration stay) {}

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
    return grown;
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
        : RouteEdits.withStop(
            made, 0, GroupEdits.departing(made.route().stops().get(0), old.get(0)));
  }

  private static Stop stop(Trip trip, Wanted place, Stop.Kind kind) {
    Stop bare =
        Stop.named(RouteEdits.freeId(trip, place.spot().name()), place.spot().name(), kind)
            .withStay(place.stay() == null && kind == Stop.Kind.REST ? USUAL_STAY : place.stay());
    return StopEdits.at(bare, place.spot());
  }
}
