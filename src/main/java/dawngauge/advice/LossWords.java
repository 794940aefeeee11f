package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireLoss;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.rules.Carrying;
import dawngauge.rules.Limits;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.Itinerary;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to do about a tire that is going down, while it still carries its load. Judged as a steady
 * leak at the fast edge of what the readings allow: whether it is one, more readings tell, but
 * safety does not wait for them.
 */
final class LossWords {

  private static final double DAY = 86400;

  private LossWords() {}

  /** The reason at the stop of the last round. */
  static Reason of(Forecaster forecaster, TireLoss loss, Track track) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    List<TireAtStop> stops = track.stops();
    TireSnapshot known = stops.get(loss.to()).check();
    Phrase lost =
        Phrase.of(
            "going down: lost {0} (± {1}) since {2}{3}",
            PressureText.pressure(loss.pascals()),
            PressureText.pressure(Quantile.NINETY_WITHIN * loss.sigma()),
            visits.get(loss.from()).stop().place(),
            loss.compared() > 0 ? ", the other tires have not" : "");
    Phrase find =
        Phrase.of("look at valve core and stem, bead, tread and wheel; gauge it at every stop");
    if (known == null) {
      return new Reason(Mark.RECHECK, todo(), Phrase.of("{0}: {1}", lost, find), 0);
    }
    Lookahead lookahead = new Lookahead(forecaster);
    int air = lookahead.nextWithAir(loss.to(), stops);
    for (int visit = loss.to(); visit < stops.size() && visit <= air; visit++) {
      TireAtStop at = stops.get(visit);
      boolean onTheWay =
          visit > loss.to()
              && tooLowOnLeg(stops.get(visit - 1), at.arrival(), loss, known, lookahead);
      if (onTheWay || tooLow(at.limits(), at.leaving(), loss, known, lookahead)) {
        boolean lasts = visit == air && !onTheWay;
        return new Reason(
            lasts ? Mark.RECHECK : Mark.HOLD,
            lasts ? todo() : Phrase.of("do not roll before its leak is mended"),
            Phrase.of(
                lasts
                    ? "{0}; as early as {1} it may have too little for its load, air is to be had"
                        + " there: {2}"
                    : "{0}; as early as {1} it may have too little for its load, before the next air:"
                        + " do not roll on it so; mend the leak{3}, or take air along and gauge it on"
                        + " the way; {2}",
                lost,
                visits.get(visit).stop().place(),
                find,
                Spares.fit(forecaster, at) ? " or fit the spare" : ""),
            0);
      }
    }
    return new Reason(
        Mark.RECHECK,
        todo(),
        Phrase.of("{0}; at that rate it lasts to the next air: {1}", lost, find),
        0);
  }

  private static Phrase todo() {
    return Phrase.of("find its leak");
  }

  /** The same on the leg that leaves a stop. */
  private static boolean tooLowOnLeg(
      TireAtStop from,
      @Nullable TireSnapshot arrival,
      TireLoss loss,
      TireSnapshot known,
      Lookahead lookahead) {
    TireSnapshot low = from.low() == null ? null : from.low().moment();
    return tooLow(from.limits(), low, loss, known, lookahead)
        || tooLow(from.limits(), arrival, loss, known, lookahead);
  }

  /**
   * Whether it may carry too little at a moment, at the fastest it may be losing. A label certifies
   * no tire that loses air.
   */
  private static boolean tooLow(
      Limits limits,
      @Nullable TireSnapshot then,
      TireLoss loss,
      TireSnapshot known,
      Lookahead lookahead) {
    if (then == null) {
      return false;
    }
    double days = Math.max(0, then.seconds() - known.seconds()) / DAY;
    double left = then.low() - loss.fastPerDay() * days;
    Carrying carrying = limits.carrying();
    return left <= RanLow.line(limits.reference())
        || (carrying != null && carrying.underFloor(left, then.limitSigma()) > lookahead.allowed());
  }
}
