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
    return SetFigure.of(
        moment,
        asHere(Math.max(wanted, needed), set, moment),
        warm,
        bounds(at, moment, asHere(needed, set, moment)));
  }

  /** What an amount of air that settles at a pressure at one moment settles at in other air. */
  private static double asHere(double settled, Moment then, Moment here) {
    return Double.isInfinite(settled)
        ? settled
        : (settled + then.airPressure()) / then.airKelvins() * here.airKelvins()
            - here.airPressure();
  }

  /** The figures by the minute of what is set at the planned one. */
  TimedFigures timed(int visit, Track track, Moment check, SetFigure set, boolean chosen) {
    TireAtStop at = track.stops().get(visit);
    Moment arrival = at.arrival();
    boolean onArrival =
        set.adds() && set.warm() && arrival != null && !Double.isNaN(arrival.reading());
    if (!chosen) {
      return new TimedFigures(
          onArrival && arrival != null ? adding(of(visit, track, arrival, true)) : null,
          set,
          check.seconds(),
          of(visit, track, check.cooled(), false));
    }
    double settled = set.settled().pascals();
    SetFigure.Bounds free = bounds(at, check, Double.NEGATIVE_INFINITY);
    return new TimedFigures(
        onArrival && arrival != null
            ? adding(SetFigure.of(arrival, asHere(settled, check, arrival), true, free))
            : null,
        set,
        check.seconds(),
        SetFigure.of(check.cooled(), settled, false, free));
  }

  /** On arrival air is only added: less than half a step is no figure. */
  private static @Nullable SetFigure adding(SetFigure figure) {
    return figure.adds() ? figure : null;
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
