package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.trip.Air;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The figure a tire is set to at a stop: the aim, raised to what the coldest moment up to the next
 * hose asks of a tire that was set so.
 */
final class FigureRule {

  private final Forecaster forecaster;
  private final Lookahead lookahead;

  FigureRule(Forecaster forecaster, Lookahead lookahead) {
    this.forecaster = forecaster;
    this.lookahead = lookahead;
  }

  /**
   * The figure at a moment of a stay.
   *
   * @param moment the tire then
   * @param warm whether it counts as warm
   */
  SetFigure of(int visit, Track track, Moment moment, boolean warm) {
    TireAtStop at = track.stops().get(visit);
    double aim = at.limits().aim();
    double wanted = Double.isNaN(aim) ? moment.settled() : aim;
    Moment check = at.check();
    Moment set = check == null ? moment : check;
    List<TireAtStop> aimed = track.with(visit, new Setting(SetFigure.shown(set, wanted))).stops();
    double needed = lookahead.needed(lookahead.until(visit, aimed), wanted, set.airKelvins());
    return SetFigure.of(moment, Math.max(wanted, needed), warm, bounds(at, moment, needed));
  }

  /** What bounds a figure there. */
  SetFigure.Bounds bounds(TireAtStop at, Moment moment, double needed) {
    @Nullable Air air = Lookahead.airAt(forecaster, at.visit());
    return new SetFigure.Bounds(
        needed,
        at.limits().ceiling(),
        air == null ? Double.POSITIVE_INFINITY : Lookahead.reach(air),
        moment.origin().errors().step());
  }
}
