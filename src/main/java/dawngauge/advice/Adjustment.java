package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A plan of adjustments beside other habits, all from the same readings on.
 *
 * @param itinerary times of the stops
 * @param plan the plan
 * @param outcome what it comes to
 * @param eachMorning every tire set to its aim before each day's first start, where air and warmth
 *     allow it
 * @param once the same at the first chance only
 * @param never nothing set at all
 */
public record Adjustment(
    Itinerary itinerary,
    AdjustmentPlan plan,
    PlanOutcome outcome,
    PlanOutcome eachMorning,
    PlanOutcome once,
    PlanOutcome never) {

  /** Plans and compares. */
  public static Adjustment of(Forecaster forecaster, Thresholds thresholds, PlanWishes wishes) {
    AdjustmentPlan plan = new AdjustmentPlanner(forecaster, thresholds, wishes).plan();
    Lookahead lookahead = new Lookahead(forecaster);
    Map<WheelPosition, Track> asIs = new LinkedHashMap<>();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      boolean out = plan.leftOut().stream().anyMatch(left -> left.position().equals(position));
      if (!out) {
        forecaster.track(position).ifPresent(track -> asIs.put(position, track));
      }
    }
    Map<WheelPosition, Track> planned = new LinkedHashMap<>(asIs);
    for (AdjustmentPlan.Planned stop : plan.stops()) {
      stop.settings()
          .forEach(
              (position, set) ->
                  planned.computeIfPresent(
                      position,
                      (key, track) ->
                          track.with(stop.visit(), new Setting(set.set().figure().pascals()))));
    }
    int from = plan.from();
    Habit mornings = Habit.of(forecaster, lookahead, asIs, from, Integer.MAX_VALUE);
    Habit first = Habit.of(forecaster, lookahead, asIs, from, 1);
    return new Adjustment(
        forecaster.itinerary(),
        plan,
        PlanOutcome.of(plan.stops().size(), from, planned.values(), lookahead),
        PlanOutcome.of(mornings.stops(), from, mornings.tracks(), lookahead),
        PlanOutcome.of(first.stops(), from, first.tracks(), lookahead),
        PlanOutcome.of(0, from, asIs.values(), lookahead));
  }

  /**
   * Tires set to their aim in the morning.
   *
   * @param stops at how many stops
   * @param tracks the tires
   */
  record Habit(int stops, List<Track> tracks) {

    static Habit of(
        Forecaster forecaster,
        Lookahead lookahead,
        Map<WheelPosition, Track> asIs,
        int from,
        int mostStops) {
      List<Track> tracks = new ArrayList<>(asIs.values());
      TreeSet<Integer> used = new TreeSet<>();
      int count = forecaster.itinerary().visits().size();
      for (int visit = from; visit < count - 1 && used.size() < mostStops; visit++) {
        if (!lookahead.firstStart(visit)) {
          continue;
        }
        for (int i = 0; i < tracks.size(); i++) {
          SetFigure set = toAim(forecaster, tracks.get(i).stops().get(visit));
          if (set != null) {
            tracks.set(i, tracks.get(i).with(visit, new Setting(set.figure().pascals())));
            used.add(visit);
          }
        }
      }
      return new Habit(used.size(), tracks);
    }

    private static @Nullable SetFigure toAim(Forecaster forecaster, TireAtStop at) {
      TireSnapshot check = at.check();
      double aim = at.limits().aim();
      if (check == null || Double.isNaN(aim)) {
        return null;
      }
      Air air = Lookahead.airAt(forecaster, at.visit());
      boolean warm = !at.cold();
      double hose = air == null ? Double.POSITIVE_INFINITY : Lookahead.reach(air);
      SetFigure set =
          SetFigure.of(
              check,
              aim,
              warm,
              new SetFigure.Bounds(
                  Double.NEGATIVE_INFINITY,
                  at.limits().ceiling(),
                  hose,
                  check.origin().errors().step()));
      boolean changes =
          Math.abs(set.figure().pascals() - SetFigure.now(check))
              > check.origin().errors().step() / 2;
      boolean adds = aim > check.settled(); // a hose that does not reach is no reason to let out
      boolean may = adds ? set.adds() && air != null && !Double.isNaN(check.reading()) : !warm;
      return changes && may ? set : null;
    }
  }
}
