package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.Place;
import dawngauge.geo.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Changes to a route, each giving a new trip. Air and log stay with the stops they name. */
public final class RouteEdits {

  /** Ids stand in the file beside each figure of their stop. */
  private static final int LONGEST_WISH = 40;

  /** A stop that moves farther has other air; ours. */
  private static final double OTHER_AIR_METERS = 10_000;

  private RouteEdits() {}

  /** Puts another stop in the place of one. */
  public static Trip withStop(Trip trip, int index, Stop stop) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    stops.set(index, stop);
    return trip.withRoute(new Route(stops, trip.route().legs()));
  }

  /** Puts another leg in the place of one. */
  public static Trip withLeg(Trip trip, int index, Leg leg) {
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    legs.set(index, leg);
    return trip.withRoute(new Route(trip.route().stops(), legs));
  }

  /**
   * Inserts a stop.
   *
   * @param index where it is to stand, 0 to the number of stops
   */
  public static Trip insert(Trip trip, int index, Stop stop) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    stops.add(index, stop);
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    if (index > 0 && index < stops.size() - 1) {
      legs.remove(index - 1);
    }
    if (index > 0) {
      legs.add(index - 1, guessed(stops.get(index - 1), stop));
    }
    if (index < stops.size() - 1) {
      legs.add(index, guessed(stop, stops.get(index + 1)));
    }
    return trip.withRoute(new Route(stops, legs));
  }

  /**
   * Removes a stop with its air and with its arrival and departure in the log; the legs beside it
   * become one. Where it was the first, the next one gets its departure unless it has one.
   */
  public static Trip remove(Trip trip, int index) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    Stop gone = stops.remove(index);
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    if (!legs.isEmpty()) {
      if (index == 0) {
        legs.remove(0);
        if (stops.get(0).leave() == null) {
          stops.set(0, GroupEdits.departing(stops.get(0), gone));
        }
      } else if (index == stops.size()) {
        legs.remove(index - 1);
      } else {
        Leg before = legs.remove(index - 1);
        Leg after = legs.remove(index - 1);
        legs.add(
            index - 1, LegMatcher.joined(before, after, stops.get(index - 1), stops.get(index)));
      }
    }
    List<AmbientEntry> air =
        trip.ambient().stream().filter(entry -> !entry.stop().equals(gone.id())).toList();
    List<LogEvent> log =
        trip.log().stream().filter(event -> !gone.id().equals(stopOf(event))).toList();
    return trip.withRoute(new Route(stops, legs)).withAmbient(air).withLog(log);
  }

  private static @Nullable String stopOf(LogEvent event) {
    if (event instanceof LogEvent.Arrived arrived) {
      return arrived.stop();
    }
    return event instanceof LogEvent.Left left ? left.stop() : null;
  }

  /** Moves a stop to another place in the order; see {@link GroupEdits#move}. */
  public static Trip move(Trip trip, int from, int to) {
    return GroupEdits.move(trip, Set.of(from), to > from ? to + 1 : to);
  }

  /**
   * Turns the way round: the start becomes the end. Typed times are dropped, for they would run
   * backwards, so there is no forecast until a departure is typed.
   */
  public static Trip reverse(Trip trip) {
    List<Stop> stops = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      stops.add(turned(stop.withTimes(null, null)));
    }
    Collections.reverse(stops);
    return trip.withRoute(new Route(stops, LegMatcher.between(trip.route(), stops)));
  }

  /** Inserts a copy of a stop behind it; see {@link GroupEdits#duplicate}. */
  public static Trip duplicate(Trip trip, int index) {
    return GroupEdits.duplicate(trip, Set.of(index));
  }

  /** An id that no stop has, made from a wish. */
  public static String freeId(Trip trip, String wish) {
    String base =
        wish.substring(0, Math.min(wish.length(), LONGEST_WISH))
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    Set<String> taken = new HashSet<>();
    trip.route().stops().forEach(stop -> taken.add(stop.id()));
    String first = base.isEmpty() ? "stop" : base;
    String id = first;
    for (int i = 2; taken.contains(id); i++) {
      id = first + "-" + i;
    }
    return id;
  }

  /** Puts other air in the place of all entries of a stop; those on its leg stay. */
  public static Trip withAir(Trip trip, String stopId, List<AmbientEntry> entries) {
    List<AmbientEntry> air =
        new ArrayList<>(
            trip.ambient().stream()
                .filter(entry -> !entry.isAtStop() || !entry.stop().equals(stopId))
                .toList());
    air.addAll(entries);
    return trip.withAmbient(air);
  }

  /** Puts a stop at a known place; see {@link #at}. */
  public static Trip atPlace(Trip trip, int index, Place place) {
    return at(trip, index, StopEdits.at(trip.route().stops().get(index), Spot.of(place)));
  }

  /**
   * Puts a stop elsewhere. Legs beside it whose distance is not typed are guessed anew, without
   * their points, which lay on another way. Air that a service or the season told for the old place
   * is dropped where the new one is more than 10 km off; typed air stays.
   *
   * @param moved the stop with its new coordinates
   */
  public static Trip at(Trip trip, int index, Stop moved) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    Coordinate before = stops.set(index, moved).coordinate();
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    for (int leg = Math.max(0, index - 1); leg < Math.min(legs.size(), index + 1); leg++) {
      Leg old = legs.get(leg);
      boolean typed = old.distance() != null && !LegEdits.isGuessed(old);
      if (!typed && !Objects.equals(before, moved.coordinate())) {
        legs.set(leg, LegGuess.anew(old, stops.get(leg), stops.get(leg + 1)));
      }
    }
    Trip there = trip.withRoute(new Route(stops, legs));
    Coordinate now = moved.coordinate();
    boolean far =
        before != null
            && now != null
            && GreatCircle.between(before, now).meters() > OTHER_AIR_METERS;
    return far ? withoutForeignAir(there, index) : there;
  }

  /** Drops the air of a stop and of the legs beside it that nobody typed. */
  private static Trip withoutForeignAir(Trip trip, int index) {
    String id = trip.route().stops().get(index).id();
    String before = index == 0 ? "" : trip.route().stops().get(index - 1).id();
    return trip.withAmbient(
        trip.ambient().stream()
            .filter(
                entry ->
                    entry.provenance().byHand()
                        || !(entry.stop().equals(id)
                            || (entry.stop().equals(before) && !entry.isAtStop())))
            .toList());
  }

  /** A leg between two stops as far as it can be guessed from their coordinates. */
  public static Leg guessed(Stop from, Stop to) {
    return LegGuess.between(from, to);
  }

  private static Stop turned(Stop stop) {
    return switch (stop.kind()) {
      case START -> stop.withKind(Stop.Kind.END);
      case END -> stop.withKind(Stop.Kind.START);
      default -> stop;
    };
  }
}
