package dawngauge.planner;

import dawngauge.ambient.AmbientSource;
import dawngauge.ambient.WhatIf;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.Settings;
import dawngauge.trip.Trip;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What the window and the command line ask for; the door to the use cases. */
public final class Planner {

  private final PlanRules rules;
  private final TripStore store = new TripStore();
  private final Places places = new Places();
  private final Temperatures temperatures = new Temperatures();

  /**
   * A planner.
   *
   * @param settings the user's choices
   * @param further where air is asked for beyond what stands in the trip, in order
   */
  public Planner(Settings settings, List<AmbientSource> further) {
    rules = PlanRules.of(settings, further);
  }

  /** All that follows from a trip; nothing is computed before it is asked for. */
  public Plan plan(Trip trip) {
    return plan(trip, WhatIf.NOTHING);
  }

  /** The same under another weather or with another start. */
  public Plan plan(Trip trip, WhatIf whatIf) {
    return new Plan(trip, whatIf, rules);
  }

  /**
   * A trip of which nothing could be computed: it has no forecast, and says so.
   *
   * @param why a sentence
   */
  public Plan unplanned(Trip trip, String why) {
    return Plan.none(trip, rules, Problem.of(ProblemCode.NO_FORECAST, "", why));
  }

  /**
   * A first haul as a trip, with typical temperatures where none were entered; empty until both
   * places are known.
   */
  public Optional<Trip> first(FirstHaul haul, LocalDate today) {
    return haul.trip(today).map(temperatures::withoutGaps);
  }

  /** Opens and saves. */
  public TripStore store() {
    return store;
  }

  /** Places for stops. */
  public Places places() {
    return places;
  }

  /** Temperatures along a trip. */
  public Temperatures temperatures() {
    return temperatures;
  }
}
