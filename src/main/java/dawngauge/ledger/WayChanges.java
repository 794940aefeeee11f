package dawngauge.ledger;

import dawngauge.field.RouteFields;
import dawngauge.trip.Leg;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What differs between the stops and legs that two trips have in common, by the field catalogue.
 * Those are known by the names of their places, on a way out and back in order.
 */
final class WayChanges {

  private WayChanges() {}

  /** Tells what differs; stops and legs of only one of the trips are no figures. */
  static void of(Route was, Route is, PartChanges changes) {
    Map<String, Stop> stops = stops(was);
    stops(is)
        .forEach(
            (name, now) -> {
              Stop then = stops.get(name);
              if (then != null) {
                changes.figures("stop " + name, RouteFields.STOP, then, now);
                changes.list("stop " + name, RouteFields.STOP_LOADS, then, now);
              }
            });
    Map<String, Leg> legs = legs(was);
    legs(is)
        .forEach(
            (name, now) -> {
              Leg then = legs.get(name);
              if (then != null) {
                changes.figures("leg " + name, RouteFields.LEG, then, now);
                changes.list("leg " + name, RouteFields.LEG_PROFILE, then, now);
              }
            });
  }

  private static Map<String, Stop> stops(Route route) {
    Map<String, Stop> named = new LinkedHashMap<>();
    route.stops().forEach(stop -> put(named, stop.place(), stop));
    return named;
  }

  private static Map<String, Leg> legs(Route route) {
    List<Stop> stops = route.stops();
    Map<String, Leg> named = new LinkedHashMap<>();
    for (int i = 0; i < route.legs().size(); i++) {
      put(named, stops.get(i).place() + " to " + stops.get(i + 1).place(), route.legs().get(i));
    }
    return named;
  }

  private static <T> void put(Map<String, T> named, String name, T value) {
    String free = name;
    for (int time = 2; named.containsKey(free); time++) {
      free = name + " (" + time + ")";
    }
    named.put(free, value);
  }
}
