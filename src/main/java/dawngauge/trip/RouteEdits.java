package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.Place;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Changes to a route, each giving a new trip. Air and log stay with the stops they name. */
public final class RouteEdits {

  /** Field of a leg's remarks that marks a guessed distance. */
  public static final String GUESSED = "x-distance-guessed";

  /** Field of a stop's remarks that marks height and zone as estimates. */
  public static final String ESTIMATED = "x-elevation-estimated";

  /** Roads are longer than the great circle; about 1.2 times in the U.S. (Ballou 2002). */
  private static final double DETOUR = 1.2;

  /** The same on short ways. */
  private static final double SHORT_DETOUR = 1.3;

  private static final double SHORT_WAY_METERS = 100 * 1609.344;

  private static final String USUAL_SPEED = "55 mph";

  /** Where no top speed is typed, at least this is assumed: see {@link Itinerary}. */
  private static final double LEAST_ASSUMED_TOP = Speed.of(65, Unit.MILE_PER_HOUR).si();

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
   * become one.
   */
  public static Trip remove(Trip trip, int index) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    Stop gone = stops.remove(index);
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    if (!legs.isEmpty()) {
      if (index == 0) {
        legs.remove(0);
      } else if (index == stops.size()) {
        legs.remove(index - 1);
      } else {
        Leg before = legs.remove(index - 1);
        Leg after = legs.remove(index - 1);
        legs.add(index - 1, joined(before, after, stops.get(index - 1), stops.get(index)));
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

  /**
   * Moves a stop to another place in the order; legs whose ends change are guessed anew. Its typed
   * times are dropped, for they belong to the old order. Where another stop comes to be the first,
   * it gets the departure, and the one that was first loses its times.
   */
  public static Trip move(Trip trip, int from, int to) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    if (from == to) {
      return trip;
    }
    TypedTime departure = stops.get(0).leave();
    stops.add(to, withoutTimes(stops.remove(from)));
    if (from == 0 || to == 0) {
      stops.set(1, to == 0 ? withoutTimes(stops.get(1)) : stops.get(1));
      stops.set(0, stops.get(0).withTimes(null, departure));
    }
    return trip.withRoute(new Route(stops, legsFor(trip.route(), stops)));
  }

  /**
   * Turns the way round: the start becomes the end. Typed times are dropped, for they would run
   * backwards, so there is no forecast until a departure is typed.
   */
  public static Trip reverse(Trip trip) {
    List<Stop> stops = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      stops.add(turned(withoutTimes(stop)));
    }
    Collections.reverse(stops);
    return trip.withRoute(new Route(stops, legsFor(trip.route(), stops)));
  }

  /** Inserts a copy of a stop behind it, with an id of its own and without typed times. */
  public static Trip duplicate(Trip trip, int index) {
    Stop stop = trip.route().stops().get(index);
    Stop copy = withoutTimes(stop).withId(freeId(trip, stop.id()));
    return insert(trip, index + 1, copy);
  }

  /** An id that no stop has, made from a wish. */
  public static String freeId(Trip trip, String wish) {
    String base = wish.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").strip();
    base = base.replaceAll("^-|-$", "");
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

  /**
   * Puts a stop at a known place: its name, coordinates, height and zone, the latter two marked as
   * estimates. Legs beside it whose distance is not typed are guessed anew.
   */
  public static Trip atPlace(Trip trip, int index, Place place) {
    Stop stop = trip.route().stops().get(index);
    Map<String, String> extras = new HashMap<>(stop.remarks().extras());
    extras.put(ESTIMATED, "true");
    Stop placed =
        stop.withPlace(place.label())
            .withCoordinate(place.coordinate())
            .withElevation(typed(place.elevation(), Unit.FOOT))
            .withZone(place.zone())
            .withRemarks(new Remarks(stop.remarks().note(), extras));
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    stops.set(index, placed);
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    for (int leg = Math.max(0, index - 1); leg < Math.min(legs.size(), index + 1); leg++) {
      if (legs.get(leg).distance() == null || isGuessed(legs.get(leg))) {
        Leg guess = guessed(stops.get(leg), stops.get(leg + 1));
        Leg old = legs.get(leg);
        legs.set(
            leg,
            new Leg(
                guess.distance(),
                old.averageSpeed() == null ? guess.averageSpeed() : old.averageSpeed(),
                old.duration(),
                old.topSpeed(),
                List.of(),
                guess.remarks()));
      }
    }
    return trip.withRoute(new Route(stops, legs));
  }

  /** Whether a stop's height and zone are estimates of its place. */
  public static boolean isEstimated(Stop stop) {
    return stop.remarks().extras().containsKey(ESTIMATED);
  }

  /** A stop with a typed height, no longer an estimate. */
  public static Stop withElevation(Stop stop, @Nullable Entered<Elevation> elevation) {
    Map<String, String> extras = new HashMap<>(stop.remarks().extras());
    extras.remove(ESTIMATED);
    return stop.withElevation(elevation).withRemarks(new Remarks(stop.remarks().note(), extras));
  }

  /** Whether a leg's distance was guessed. */
  public static boolean isGuessed(Leg leg) {
    return leg.remarks().extras().containsKey(GUESSED);
  }

  /** A leg with a typed distance, no longer guessed. */
  public static Leg withDistance(Leg leg, @Nullable Entered<Distance> distance) {
    Map<String, String> extras = new HashMap<>(leg.remarks().extras());
    extras.remove(GUESSED);
    return leg.withDistance(distance).withRemarks(new Remarks(leg.remarks().note(), extras));
  }

  private static List<Leg> legsFor(Route old, List<Stop> stops) {
    Map<String, Leg> known = new HashMap<>();
    for (int i = 0; i < old.legs().size(); i++) {
      known.put(old.stops().get(i).id() + "\n" + old.stops().get(i + 1).id(), old.legs().get(i));
    }
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i + 1 < stops.size(); i++) {
      Stop from = stops.get(i);
      Stop to = stops.get(i + 1);
      Leg same = known.get(from.id() + "\n" + to.id());
      Leg other = known.get(to.id() + "\n" + from.id());
      legs.add(same != null ? same : other != null ? turned(other) : guessed(from, to));
    }
    return legs;
  }

  private static Leg turned(Leg leg) {
    Entered<Distance> length = leg.distance();
    List<ProfilePoint> profile = new ArrayList<>();
    if (length != null) {
      for (ProfilePoint point : leg.profile()) {
        double rest = length.value().meters() - point.distance().value().meters();
        Entered<Distance> along = typed(new Distance(rest), Unit.MILE);
        profile.add(
            0,
            new ProfilePoint(
                point.name(),
                along.value().compareTo(length.value()) > 0 ? length : along,
                point.elevation(),
                point.ambient(),
                point.remarks()));
      }
    }
    return new Leg(
        length, leg.averageSpeed(), leg.duration(), leg.topSpeed(), profile, leg.remarks());
  }

  /** A leg between two stops as far as it can be guessed from their coordinates. */
  public static Leg guessed(Stop from, Stop to) {
    Coordinate start = from.coordinate();
    Coordinate end = to.coordinate();
    Entered<Distance> distance = null;
    Map<String, String> extras = Map.of();
    if (start != null && end != null) {
      double line = GreatCircle.between(start, end).meters();
      double road = line * (line < SHORT_WAY_METERS ? SHORT_DETOUR : DETOUR);
      distance = typed(new Distance(Math.max(road, 1609.344)), Unit.MILE);
      extras = Map.of(GUESSED, "true");
    }
    return new Leg(
        distance,
        Entered.of(QuantityKind.SPEED, USUAL_SPEED),
        null,
        null,
        List.of(),
        new Remarks(null, extras));
  }

  private static Leg joined(Leg before, Leg after, Stop from, Stop to) {
    Entered<Distance> a = before.distance();
    Entered<Distance> b = after.distance();
    if (a == null || b == null) {
      return guessed(from, to);
    }
    Entered<Distance> sum = typed(new Distance(a.value().meters() + b.value().meters()), Unit.MILE);
    List<ProfilePoint> profile = new ArrayList<>(before.profile());
    for (ProfilePoint point : after.profile()) {
      Entered<Distance> along =
          typed(new Distance(a.value().meters() + point.distance().value().meters()), Unit.MILE);
      profile.add(
          new ProfilePoint(
              point.name(),
              along.value().compareTo(sum.value()) > 0 ? sum : along,
              point.elevation(),
              point.ambient(),
              point.remarks()));
    }
    Map<String, String> extras =
        isGuessed(before) || isGuessed(after) ? Map.of(GUESSED, "true") : Map.of();
    boolean steady =
        before.duration() == null
            && after.duration() == null
            && Objects.equals(before.averageSpeed(), after.averageSpeed());
    return new Leg(
        sum,
        steady ? before.averageSpeed() : null,
        steady ? null : sum(drivingTime(before), drivingTime(after)),
        higher(before.topSpeed(), after.topSpeed()),
        profile,
        new Remarks(null, extras));
  }

  private static @Nullable Duration sum(@Nullable Duration a, @Nullable Duration b) {
    return a == null || b == null ? null : a.plus(b);
  }

  /** Driving time in whole seconds, or null where it is not known. */
  private static @Nullable Duration drivingTime(Leg leg) {
    Entered<Distance> distance = leg.distance();
    Entered<Speed> average = leg.averageSpeed();
    if (leg.duration() != null) {
      return leg.duration();
    } else if (distance == null || average == null || !(average.value().si() > 0)) {
      return null;
    }
    return Duration.ofSeconds(Math.round(distance.value().si() / average.value().si()));
  }

  /** The higher top speed; where one is assumed, the typed one only above what is assumed. */
  private static @Nullable Entered<Speed> higher(
      @Nullable Entered<Speed> a, @Nullable Entered<Speed> b) {
    if (a != null && b != null) {
      return a.value().compareTo(b.value()) >= 0 ? a : b;
    }
    Entered<Speed> one = a != null ? a : b;
    return one != null && one.value().si() > LEAST_ASSUMED_TOP ? one : null;
  }

  private static <Q extends Quantity> Entered<Q> typed(Q value, Unit unit) {
    long rounded = Math.round(value.in(unit) * 10);
    String number =
        rounded % 10 == 0 ? String.valueOf(rounded / 10) : rounded / 10 + "." + rounded % 10;
    @SuppressWarnings("unchecked") // a quantity's kind makes quantities of its own type
    QuantityKind<Q> kind = (QuantityKind<Q>) value.kind();
    return Entered.of(kind, number + " " + unit.symbol());
  }

  private static Stop withoutTimes(Stop stop) {
    return stop.withTimes(null, null);
  }

  private static Stop turned(Stop stop) {
    return switch (stop.kind()) {
      case START -> stop.withKind(Stop.Kind.END);
      case END -> stop.withKind(Stop.Kind.START);
      default -> stop;
    };
  }
}
