package dawngauge.advice;

import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.Limits;
import dawngauge.rules.SettingBand;
import java.util.Collection;
import java.util.List;

/**
 * What a way of setting tires comes to on the rest of a trip.
 *
 * @param stops at how many stops gauge and hose come out
 * @param worstMargin lowest load margin of any tire; NaN where not known
 * @param worstChance highest chance of a tire to be under the floor at a judged moment; NaN
 *     likewise
 * @param secondsUnderFloor time that the rig rolls with some tire expected under its floor
 * @param startsOverLimit how many days start with some cold tire over its limit
 * @param startsUnderAim how many days start with some tire low for its aim
 */
public record PlanOutcome(
    int stops,
    double worstMargin,
    double worstChance,
    double secondsUnderFloor,
    int startsOverLimit,
    int startsUnderAim) {

  /** Forgives rounding, in pascal. */
  private static final double ROUNDING = 1;

  /**
   * What follows from settings.
   *
   * @param stops at how many stops something is set
   * @param from index of the first stop that counts
   * @param tracks the tires with what is set
   * @param lookahead of the forecast
   */
  static PlanOutcome of(int stops, int from, Collection<Track> tracks, Lookahead lookahead) {
    int count = tracks.isEmpty() ? 0 : tracks.iterator().next().stops().size();
    double margin = Double.NaN;
    double chance = Double.NaN;
    double under = 0;
    int over = 0;
    int below = 0;
    for (int visit = from; visit < count - 1; visit++) {
      boolean someOver = false;
      boolean someBelow = false;
      double longest = 0;
      for (Track track : tracks) {
        TireAtStop at = track.stops().get(visit);
        margin = lower(margin, at.worstMargin());
        for (Lookahead.Judged judged : lookahead.judgedAt(visit, at)) {
          double here = judged.chance().asCertified() ? 0 : judged.chance().underFloor();
          chance = Double.isNaN(chance) ? here : Math.max(chance, here);
        }
        longest = Math.max(longest, secondsUnder(track.stops(), visit));
        TireSnapshot check = at.check();
        if (lookahead.firstStart(visit) && check != null) {
          double settled = after(at, check);
          GaugeErrors errors = check.origin().errors();
          double most = SettingBand.letOutAbove(at.limits(), at.fitted(), errors);
          someOver |= at.cold() && settled > most + ROUNDING;
          someBelow |= settled < SettingBand.lowUnder(at.limits(), errors) - ROUNDING;
        }
      }
      under += longest;
      over += someOver ? 1 : 0;
      below += someBelow ? 1 : 0;
    }
    return new PlanOutcome(stops, margin, chance, under, over, below);
  }

  /** Settled pressure at the check, what was set there included. */
  private static double after(TireAtStop at, TireSnapshot check) {
    return at.setting() == null
        ? check.settled()
        : (at.setting().gaugePascals() + check.airPressure())
                / SetFigure.kelvins(check)
                * check.airKelvins()
            - check.airPressure();
  }

  private static double lower(double a, double b) {
    return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
  }

  /** Time on a leg under the floor, as if pressure changed evenly to its lowest point and back. */
  private static double secondsUnder(List<TireAtStop> track, int visit) {
    TireAtStop at = track.get(visit);
    Limits limits = at.limits();
    TireSnapshot leaving = at.leaving();
    TireSnapshot arriving = track.get(visit + 1).arrival();
    TireSnapshot low = at.low() == null ? null : at.low().moment();
    if (leaving == null || low == null || arriving == null || Double.isNaN(limits.floor())) {
      return 0;
    }
    return under(leaving, low, limits.floor()) + under(low, arriving, limits.floor());
  }

  private static double under(TireSnapshot from, TireSnapshot to, double floor) {
    double span = to.seconds() - from.seconds();
    double a = from.judged() - floor;
    double b = to.judged() - floor;
    if (a >= 0 && b >= 0) {
      return 0;
    } else if (a < 0 && b < 0) {
      return span;
    }
    return span * Math.min(a, b) / (Math.min(a, b) - Math.max(a, b));
  }
}
