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
 * @param earlierAmbient what a weather service had said before it was asked last, kept to show what
 *     changed; nothing is forecast from it
 * @param log readings, adjustments and other events, in time order
 * @param plan what the crew wants of the adjustment plan
 * @param remarks note and extras
 */
public record Trip(
    String name,
    Rig rig,
    Route route,
    List<AmbientEntry> ambient,
    List<AmbientEntry> earlierAmbient,
    List<LogEvent> log,
    PlanChoices plan,
    Remarks remarks) {

  /** Copies the lists. */
  public Trip {
    ambient = List.copyOf(ambient);
    earlierAmbient = List.copyOf(earlierAmbient);
    log = List.copyOf(log);
  }

  /** A trip for which a weather service was asked once at the most, and no plan is chosen. */
  public Trip(
      String name,
      Rig rig,
      Route route,
      List<AmbientEntry> ambient,
      List<LogEvent> log,
      Remarks remarks) {
    this(name, rig, route, ambient, List.of(), log, PlanChoices.NONE, remarks);
  }

  /** The same trip by another name. */
  public Trip withName(String other) {
    return new Trip(other, rig, route, ambient, earlierAmbient, log, plan, remarks);
  }

  /** The same trip with another route. Air on a leg goes where the leg leads elsewhere now. */
  public Trip withRoute(Route other) {
    return new Trip(
        name,
        rig,
        other,
        ambient.stream().filter(e -> e.isAtStop() || leadsOn(e, other)).toList(),
        earlierAmbient.stream()
            .filter(e -> other.stop(e.stop()).isPresent() && (e.isAtStop() || leadsOn(e, other)))
            .toList(),
        log,
        plan.on(other),
        remarks);
  }

  /** Whether the leg of a stop leads to the same stop in another route. */
  private boolean leadsOn(AmbientEntry entry, Route other) {
    return route.after(entry.stop()).equals(other.after(entry.stop()));
  }

  /** The same trip with another rig. */
  public Trip withRig(Rig other) {
    return new Trip(name, other, route, ambient, earlierAmbient, log, plan.on(other), remarks);
  }

  /** The same trip with other air. */
  public Trip withAmbient(List<AmbientEntry> other) {
    return new Trip(name, rig, route, other, earlierAmbient, log, plan, remarks);
  }

  /** The same trip with other air that was expected before. */
  public Trip withEarlierAmbient(List<AmbientEntry> other) {
    return new Trip(name, rig, route, ambient, other, log, plan, remarks);
  }

  /** The same trip with another log. */
  public Trip withLog(List<LogEvent> other) {
    return new Trip(name, rig, route, ambient, earlierAmbient, other, plan, remarks);
  }

  /** The same trip with other choices about the plan. */
  public Trip withPlan(PlanChoices other) {
    return new Trip(name, rig, route, ambient, earlierAmbient, log, other, remarks);
  }
}
