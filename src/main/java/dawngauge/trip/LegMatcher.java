package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The legs of a route whose stops stand in another order than before. */
final class LegMatcher {

  private LegMatcher() {}

  /** Legs between stops: known ones, also turned round, else guessed ones. */
  static List<Leg> between(Route old, List<Stop> stops) {
    return between(old, stops, Map.of());
  }

  /**
   * The same where some stops are copies: they lie where their originals do.
   *
   * @param originals ids of originals by those of their copies
   */
  static List<Leg> between(Route old, List<Stop> stops, Map<String, String> originals) {
    Map<String, Leg> known = new HashMap<>();
    for (int i = 0; i < old.legs().size(); i++) {
      known.put(old.stops().get(i).id() + "\n" + old.stops().get(i + 1).id(), old.legs().get(i));
    }
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i + 1 < stops.size(); i++) {
      Stop from = stops.get(i);
      Stop to = stops.get(i + 1);
      String start = originals.getOrDefault(from.id(), from.id());
      String end = originals.getOrDefault(to.id(), to.id());
      Leg same = known.get(start + "\n" + end);
      Leg other = known.get(end + "\n" + start);
      legs.add(same != null ? same : other != null ? turned(other) : LegGuess.between(from, to));
    }
    return legs;
  }

  private static Leg turned(Leg leg) {
    Entered<Distance> length = leg.distance();
    List<ProfilePoint> profile = new ArrayList<>();
    if (length != null) {
      for (ProfilePoint point : leg.profile()) {
        double rest = length.value().meters() - point.distance().value().meters();
        profile.add(0, moved(point, Math.max(0, rest), length));
      }
    }
    List<TrackMark> track = new ArrayList<>(leg.track());
    Collections.reverse(track);
    return leg.withProfile(rising(profile)).withTrack(track);
  }

  /** Of two points that rounding has put at one distance only the higher one. */
  private static List<ProfilePoint> rising(List<ProfilePoint> points) {
    List<ProfilePoint> kept = new ArrayList<>();
    for (ProfilePoint point : points) {
      ProfilePoint last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      if (last == null || point.distance().value().compareTo(last.distance().value()) > 0) {
        kept.add(point);
      } else if (point.elevation().value().compareTo(last.elevation().value()) > 0) {
        kept.set(kept.size() - 1, point);
      }
    }
    return kept;
  }

  /** The point at another distance, not beyond the leg's end. */
  private static ProfilePoint moved(ProfilePoint point, double meters, Entered<Distance> length) {
    Entered<Distance> along = LegGuess.typed(new Distance(meters), Unit.MILE);
    return point.withDistance(along.value().compareTo(length.value()) > 0 ? length : along);
  }

  /** One leg in the place of two. */
  static Leg joined(Leg before, Leg after, Stop from, Stop to) {
    Entered<Distance> a = before.distance();
    Entered<Distance> b = after.distance();
    if (a == null || b == null) {
      return LegGuess.between(from, to);
    }
    Entered<Distance> sum =
        LegGuess.typed(new Distance(a.value().meters() + b.value().meters()), Unit.MILE);
    List<ProfilePoint> profile = new ArrayList<>(before.profile());
    for (ProfilePoint point : after.profile()) {
      profile.add(moved(point, a.value().meters() + point.distance().value().meters(), sum));
    }
    boolean steady =
        before.duration() == null
            && after.duration() == null
            && Objects.equals(before.averageSpeed(), after.averageSpeed());
    return new Leg(
        sum,
        steady ? before.averageSpeed() : null,
        steady ? null : sum(drivingTime(before), drivingTime(after)),
        higher(before.topSpeed(), after.topSpeed()),
        rising(profile),
        before.track().isEmpty() || after.track().isEmpty()
            ? List.of()
            : Stream.concat(before.track().stream(), after.track().stream()).toList(),
        LegEdits.isGuessed(before) || LegEdits.isGuessed(after),
        Remarks.NONE);
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
    return one != null && one.value().si() > Itinerary.LEAST_ASSUMED_TOP.si() ? one : null;
  }
}
