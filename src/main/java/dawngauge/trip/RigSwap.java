package dawngauge.trip;

import java.util.ArrayList;
import java.util.List;

/** Puts another rig under a trip. What names parts that the other rig does not have goes. */
public final class RigSwap {

  private RigSwap() {}

  /**
   * A trip with another rig.
   *
   * @param trip the trip
   * @param lost what went, each in words
   */
  public record Swapped(Trip trip, List<String> lost) {

    /** Copies the list. */
    public Swapped {
      lost = List.copyOf(lost);
    }
  }

  /** Swaps. */
  public static Swapped to(Trip trip, Rig rig) {
    List<LogEvent> log = trip.log().stream().filter(event -> fits(event, rig)).toList();
    int changes = 0;
    List<Stop> stops = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      List<LoadChange> kept =
          stop.loadChanges().stream().filter(change -> fits(change, rig)).toList();
      changes += stop.loadChanges().size() - kept.size();
      stops.add(kept.size() == stop.loadChanges().size() ? stop : stop.withLoadChanges(kept));
    }
    List<String> lost = new ArrayList<>();
    int events = trip.log().size() - log.size();
    if (events > 0) {
      lost.add(events + (events == 1 ? " entry" : " entries") + " of the log, of tires or gauges");
    }
    if (changes > 0) {
      lost.add(changes + (changes == 1 ? " load" : " loads") + " taken on or set down, of axles");
    }
    Route route = new Route(stops, trip.route().legs());
    return new Swapped(trip.withRoute(route).withRig(rig).withLog(log), lost);
  }

  private static boolean fits(LogEvent event, Rig rig) {
    if (event instanceof LogEvent.Reading reading) {
      return rig.tire(reading.tire()).isPresent() && rig.gauge(reading.gauge()).isPresent();
    } else if (event instanceof LogEvent.Adjustment adjustment) {
      return rig.tire(adjustment.tire()).isPresent() && rig.gauge(adjustment.gauge()).isPresent();
    } else if (event instanceof LogEvent.TireChange change) {
      return rig.tire(change.off()).isPresent()
          && rig.tire(change.on()).isPresent()
          && rig.positions().contains(change.position());
    }
    return true;
  }

  private static boolean fits(LoadChange change, Rig rig) {
    return change.axles().keySet().stream().allMatch(axle -> rig.axle(axle).isPresent());
  }
}
