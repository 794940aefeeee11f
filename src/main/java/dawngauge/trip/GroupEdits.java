package dawngauge.trip;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Changes to several stops of a route at once, each giving a new trip. Stops are counted from 0;
 * numbers beyond the route are passed over.
 */
public final class GroupEdits {

  private GroupEdits() {}

  /** Changes each of some stops. */
  public static Trip withStops(Trip trip, Collection<Integer> rows, UnaryOperator<Stop> change) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    for (int row : within(rows, stops.size())) {
      stops.set(row, change.apply(stops.get(row)));
    }
    return trip.withRoute(new Route(stops, trip.route().legs()));
  }

  /** Changes the legs that leave some stops. */
  public static Trip withLegs(Trip trip, Collection<Integer> rows, UnaryOperator<Leg> change) {
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    for (int row : within(rows, legs.size())) {
      legs.set(row, change.apply(legs.get(row)));
    }
    return trip.withRoute(new Route(trip.route().stops(), legs));
  }

  /**
   * Moves stops so that they stand together in their order. Legs whose ends change are guessed
   * anew. The typed times of what was moved are dropped, for they belong to the old order. Where
   * another stop comes to be the first, it gets the departure by its own clock, and the one that
   * was first loses its times.
   *
   * @param before the stop, as counted before the move, in front of which they are to stand, or the
   *     number of stops for the end
   */
  public static Trip move(Trip trip, Collection<Integer> rows, int before) {
    List<Stop> old = trip.route().stops();
    NavigableSet<Integer> moved = within(rows, old.size());
    List<Stop> order = new ArrayList<>();
    for (int i = 0; i < old.size(); i++) {
      if (!moved.contains(i)) {
        order.add(old.get(i));
      }
    }
    int at = Math.max(0, Math.min(before, old.size()));
    order.addAll(at - moved.headSet(at).size(), moved.stream().map(old::get).toList());
    if (order.equals(old)) {
      return trip;
    }
    Stop first = old.get(0);
    for (int i = 0; i < order.size(); i++) {
      Stop stop = order.get(i);
      if (i == 0) {
        order.set(i, stop.id().equals(first.id()) ? stop : departing(stop, first));
      } else if (stop.id().equals(first.id()) || moved.contains(old.indexOf(stop))) {
        order.set(i, stop.withTimes(null, null));
      }
    }
    return trip.withRoute(new Route(order, LegMatcher.between(trip.route(), order)));
  }

  /** The stop with the departure of another one, the same time by its own clock. */
  static Stop departing(Stop stop, Stop first) {
    TypedTime departure = first.leave();
    return stop.withTimes(
        null,
        departure == null || stop.zone() == null
            ? departure
            : departure.in(Objects.requireNonNull(stop.zone())));
  }

  /** Removes stops, one by one; see {@link RouteEdits#remove}. */
  public static Trip remove(Trip trip, Collection<Integer> rows) {
    Trip rest = trip;
    for (int row : within(rows, trip.route().stops().size()).descendingSet()) {
      rest = RouteEdits.remove(rest, row);
    }
    return rest;
  }

  /**
   * Puts copies of stops, in their order, behind the last of them. Each has an id of its own, the
   * air and the leg of what it was copied from, and no typed times.
   */
  public static Trip duplicate(Trip trip, Collection<Integer> rows) {
    NavigableSet<Integer> copied = within(rows, trip.route().stops().size());
    if (copied.isEmpty()) {
      return trip;
    }
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    List<AmbientEntry> air = new ArrayList<>(trip.ambient());
    Map<String, String> originals = new HashMap<>();
    int at = copied.last() + 1;
    Trip grown = trip;
    for (int row : copied) {
      Stop original = trip.route().stops().get(row);
      Stop copy = original.withTimes(null, null).withId(RouteEdits.freeId(grown, original.id()));
      originals.put(copy.id(), original.id());
      stops.add(at++, copy);
      grown = trip.withRoute(new Route(stops, LegMatcher.between(trip.route(), stops, originals)));
      StopAir.of(trip, original.id()).entries().forEach(entry -> air.add(entry.at(copy.id())));
    }
    return grown.withAmbient(air);
  }

  /** All stops of a trip. */
  public static NavigableSet<Integer> all(Trip trip) {
    NavigableSet<Integer> rows = new TreeSet<>();
    IntStream.range(0, trip.route().stops().size()).forEach(rows::add);
    return rows;
  }

  static NavigableSet<Integer> within(Collection<Integer> rows, int size) {
    NavigableSet<Integer> known = new TreeSet<>(rows);
    known.removeIf(row -> row < 0 || row >= size);
    return known;
  }
}
