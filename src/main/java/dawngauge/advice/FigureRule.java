package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
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

  /** What a tire is to hold when it leaves a stop, whatever the minute at which it is set. */
  final class Wanted {
    private final TireAtStop at;
    private final TireSnapshot then;
    private final double settled;
    private final double needed;

    /**
     * Pressures at one moment of the stay.
     *
     * @param settled wanted, in pascal
     * @param needed the least of it
     */
    private Wanted(TireAtStop at, TireSnapshot then, double settled, double needed) {
      this.at = at;
      this.then = then;
      this.settled = settled;
      this.needed = needed;
    }

    /**
     * The figure at a moment of the stay.
     *
     * @param warm whether the tire counts as warm
     */
    SetFigure at(TireSnapshot moment, boolean warm) {
      return SetFigure.of(
          moment, asHere(settled, moment), warm, bounds(at, moment, asHere(needed, moment)));
    }

    /** What an amount of air that settles at a pressure then settles at in other air. */
    private double asHere(double pascals, TireSnapshot here) {
      return Double.isInfinite(pascals)
          ? pascals
          : (pascals + then.airPressure()) / then.airKelvins() * here.airKelvins()
              - here.airPressure();
    }
  }

  /** The figure at a moment of a stay. */
  SetFigure of(int visit, Track track, TireSnapshot moment, boolean warm) {
    return wanted(visit, track, moment).at(moment, warm);
  }

  /** What is wanted there; with no aim, that it stays as it is at a moment. */
  Wanted wanted(int visit, Track track, TireSnapshot moment) {
    TireAtStop at = track.stops().get(visit);
    double aim = at.limits().aim();
    double wanted = Double.isNaN(aim) ? moment.settled() : aim;
    TireSnapshot check = at.check();
    TireSnapshot set = check == null ? moment : check;
    double needed = needed(visit, track, set, wanted);
    // Asked again of a tire with that much air: what is unsure of it goes with its pressure.
    needed =
        needed > wanted && Double.isFinite(needed) ? needed(visit, track, set, needed) : needed;
    return new Wanted(at, set, Math.max(wanted, needed), needed);
  }

  /** What the way ahead asks of a tire that settles at a pressure when it is set. */
  private double needed(int visit, Track track, TireSnapshot set, double settled) {
    List<TireAtStop> so = track.with(visit, new Setting(SetFigure.shown(set, settled))).stops();
    return lookahead.needed(lookahead.until(visit, so), settled, set.airKelvins());
  }

  /** What a figure leaves in the tire that was chosen already. */
  private Wanted left(TireAtStop at, TireSnapshot check, SetFigure chosen) {
    return new Wanted(at, check, chosen.settled().pascals(), Double.NEGATIVE_INFINITY);
  }

  /** The figures by the minute of what is set at the planned one. */
  TimedFigures timed(int visit, Track track, TireSnapshot check, SetFigure set) {
    return timed(track.stops().get(visit), check, set, wanted(visit, track, check));
  }

  /**
   * The same of a figure that was chosen already.
   *
   * @param figure what the gauge is to show at the planned minute, in pascal
   */
  TimedFigures chosen(TireAtStop at, TireSnapshot check, double figure) {
    SetFigure set = chosenAt(at, check, figure);
    return timed(at, check, set, left(at, check, set));
  }

  /** What a figure that was chosen already leaves in the tire. */
  Wanted wantedBy(TireAtStop at, TireSnapshot check, double figure) {
    return left(at, check, chosenAt(at, check, figure));
  }

  private SetFigure chosenAt(TireAtStop at, TireSnapshot check, double figure) {
    double aim = at.limits().aim();
    double wanted = Double.isNaN(aim) ? check.settled() : aim;
    SetFigure.Bounds free = bounds(at, check, Double.NEGATIVE_INFINITY);
    return SetFigure.chosen(check, figure, wanted, !at.cold(), free);
  }

  private static TimedFigures timed(
      TireAtStop at, TireSnapshot check, SetFigure set, Wanted wanted) {
    TireSnapshot arrival = at.arrival();
    boolean known = arrival != null && !Double.isNaN(arrival.reading());
    SetFigure onArrival =
        arrival != null && known && set.adds() && set.warm() ? wanted.at(arrival, true) : null;
    return new TimedFigures(
        // On arrival air is only added: less than half a step is no figure.
        onArrival != null && onArrival.adds() ? onArrival : null,
        set,
        check.seconds(),
        wanted.at(check.cooled(), false));
  }

  /** What bounds a figure there. */
  SetFigure.Bounds bounds(TireAtStop at, TireSnapshot moment, double needed) {
    @Nullable Air air = Lookahead.airAt(forecaster, at.visit());
    return new SetFigure.Bounds(
        needed,
        at.limits().ceiling(),
        air == null ? Double.POSITIVE_INFINITY : Lookahead.reach(air),
        moment.origin().errors().step());
  }
}
