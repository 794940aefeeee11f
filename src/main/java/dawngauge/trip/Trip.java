package dawngauge.trip;

import java.util.List;

/**
 * A haul as one immutable value: rig, route, expected air, and what was noted on the way. It may be
 * incomplete; what is missing is reported as a problem by whoever needs it.
 *
 * @param name what the crew calls it
 * @param rig vehicles, tires, gauges
 * @param route stops and legs
 * @param ambient expected air temperatures
 * @param log readings, adjustments and other events, in time order
 * @param remarks note and extras
 */
public record Trip(
    String name,
    Rig rig,
    Route route,
    List<AmbientEntry> ambient,
    List<LogEvent> log,
    Remarks remarks) {

  /** Copies the lists. */
  public Trip {
    ambient = List.copyOf(ambient);
    log = List.copyOf(log);
  }

  /** The same trip with another route. Air on a leg goes where the leg leads elsewhere now. */
  public Trip withRoute(Route other) {
    List<AmbientEntry> air =
        ambient.stream()
            .filter(e -> e.isAtStop() || route.after(e.stop()).equals(other.after(e.stop())))
            .toList();
    return new Trip(name, rig, other, air, log, remarks);
  }

  /** The same trip with another rig. */
  public Trip withRig(Rig other) {
    return new Trip(name, other, route, ambient, log, remarks);
  }

  /** The same trip with other air. */
  public Trip withAmbient(List<AmbientEntry> other) {
    return new Trip(name, rig, route, other, log, remarks);
  }

  /** The same trip with another log. */
  public Trip withLog(List<LogEvent> other) {
    return new Trip(name, rig, route, ambient, other, remarks);
  }
}
