package dawngauge.ambient;

import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a stop's air changed between two answers of a weather service, when the rig leaves.
 *
 * @param stop index of the stop
 * @param place its name
 * @param time when it leaves
 * @param beforeKelvins what had been expected
 * @param nowKelvins what is expected now
 */
public record AirChange(
    int stop, String place, Instant time, double beforeKelvins, double nowKelvins) {

  /** How much warmer it is now, in kelvin. */
  public double warmer() {
    return nowKelvins - beforeKelvins;
  }

  /**
   * The stops whose air changed by more than so much since the service was asked before.
   *
   * @param kelvins changes below this are no news
   */
  public static List<AirChange> since(Trip trip, Itinerary itinerary, double kelvins) {
    Ambient now = ambient(trip, itinerary);
    Ambient before = ambient(trip.withAmbient(earlier(trip)), itinerary);
    List<AirChange> changes = new ArrayList<>();
    for (Itinerary.Visit visit : itinerary.visits()) {
      boolean asked =
          trip.earlierAmbient().stream()
              .anyMatch(e -> e.isAtStop() && e.stop().equals(visit.stop().id()));
      double at = visit.leave().toEpochMilli() / 1000.0;
      Air was = before.atStop(visit.index(), at);
      Air is = now.atStop(visit.index(), at);
      if (asked && Math.abs(is.kelvins() - was.kelvins()) >= kelvins) {
        changes.add(
            new AirChange(
                visit.index(), visit.stop().place(), visit.leave(), was.kelvins(), is.kelvins()));
      }
    }
    return changes;
  }

  /** What was known before: earlier answers, and present ones where there is no earlier. */
  private static List<AmbientEntry> earlier(Trip trip) {
    Map<String, List<AmbientEntry>> byStop = new LinkedHashMap<>();
    trip.earlierAmbient()
        .forEach(e -> byStop.computeIfAbsent(e.stop(), key -> new ArrayList<>()).add(e));
    List<AmbientEntry> all = new ArrayList<>();
    byStop.values().forEach(all::addAll);
    trip.ambient().stream().filter(e -> !byStop.containsKey(e.stop())).forEach(all::add);
    return all;
  }

  private static Ambient ambient(Trip trip, Itinerary itinerary) {
    return Ambient.of(AmbientNeeds.of(trip, itinerary), List.of(new TypedAmbient(trip))).get();
  }
}
