package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import java.time.Instant;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The next trip of a rig: the rig as it came home with its gauges, heat factors and known leaks,
 * and its last stop as the start. Nothing of the log goes along: every tire is read anew.
 */
public final class NextTrip {

  private NextTrip() {}

  /**
   * Begins it.
   *
   * @param leaks leaks that the readings told of, by the tire's id: pressure lost a day
   * @param heat how warm the tires ran, by the tire's id; those that are not in it keep what they
   *     have
   */
  public static Trip after(
      Trip trip, Map<String, Entered<GaugePressure>> leaks, Map<String, HeatRecord> heat) {
    Trip next = trip;
    Map<WheelPosition, Tire> fitted = LogEdits.fittedAt(trip, Instant.MAX);
    Map<AxleRef, Map<WheelSlot, String>> byAxle = new LinkedHashMap<>();
    fitted.forEach(
        (position, tire) ->
            byAxle
                .computeIfAbsent(position.axle(), key -> new EnumMap<>(WheelSlot.class))
                .put(position.slot(), tire.id()));
    for (Map.Entry<AxleRef, Map<WheelSlot, String>> entry : byAxle.entrySet()) {
      Axle axle = next.rig().axle(entry.getKey()).orElseThrow();
      next = RigEdits.withAxle(next, entry.getKey(), axle.withFitted(entry.getValue()));
    }
    for (Map.Entry<String, Entered<GaugePressure>> leak : leaks.entrySet()) {
      Tire tire = next.rig().tire(leak.getKey()).orElseThrow();
      next = RigEdits.withTire(next, tire.withLossPerDay(leak.getValue()));
    }
    for (Map.Entry<String, HeatRecord> ran : heat.entrySet()) {
      Tire tire = next.rig().tire(ran.getKey()).orElseThrow();
      next =
          RigEdits.withTire(
              next, tire.withHeatFactor(ran.getValue().factor()).withHeatRecord(ran.getValue()));
    }
    List<Stop> stops = trip.route().stops();
    List<Stop> start =
        stops.isEmpty()
            ? List.of()
            : List.of(
                stops
                    .get(stops.size() - 1)
                    .withTimes(null, null)
                    .withStay(null)
                    .withKind(Stop.Kind.START)
                    .withLoadChanges(List.of()));
    return new Trip(
        trip.name() + ", next",
        withoutSpares(next.rig(), fitted),
        new Route(start, List.of()),
        List.of(),
        List.of(),
        Remarks.NONE);
  }

  /** A spare that was fitted on the road is none any more. */
  private static Rig withoutSpares(Rig rig, Map<WheelPosition, Tire> fitted) {
    List<String> ids = fitted.values().stream().map(Tire::id).toList();
    return rig.withSpares(
        rig.spares().stream().filter(spare -> !ids.contains(spare.tire())).toList());
  }
}
