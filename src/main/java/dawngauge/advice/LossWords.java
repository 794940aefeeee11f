package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireLoss;
import dawngauge.forecast.Track;
import dawngauge.trip.Itinerary;
import java.util.List;

/**
 * What to do about a tire that is going down, while it still carries its load. Judged as a steady
 * leak at the fast edge of what the readings allow: whether it is one, more readings tell, but
 * safety does not wait for them.
 */
final class LossWords {

  /** Two-sided 90 %. */
  private static final double NINETY = 1.6449;

  private static final double DAY = 86400;

  private LossWords() {}

  /** The reason at the stop of the last round. */
  static Reason of(Forecaster forecaster, TireLoss loss, Track track) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    List<TireAtStop> stops = track.stops();
    Moment known = stops.get(loss.to()).check();
    Phrase lost =
        Phrase.of(
            "going down: lost {0} (± {1}) since {2}{3}",
            Shown.pressure(loss.pascals()),
            Shown.pressure(NINETY * loss.sigma()),
            visits.get(loss.from()).stop().place(),
            loss.compared() > 0 ? ", the other tires have not" : "");
    Phrase find =
        Phrase.of("look at valve core and stem, bead, tread and wheel; gauge it at every stop");
    if (known == null) {
      return new Reason(Mark.RECHECK, Phrase.of("{0}: {1}", lost, find), 0);
    }
    for (int visit = loss.to(); visit < stops.size(); visit++) {
      boolean air = visit > loss.to() && Chances.airAt(forecaster, visit) != null;
      TireAtStop at = stops.get(visit);
      Moment here = at.leaving();
      if (here != null && !Double.isNaN(at.limits().floor())) {
        double gone = loss.fastPerDay() * Math.max(0, here.seconds() - known.seconds()) / DAY;
        if (here.judged() - gone < at.limits().floor()) {
          return new Reason(
              air ? Mark.RECHECK : Mark.HOLD,
              Phrase.of(
                  air
                      ? "{0}; as early as {1} it may be under the {2} its load needs, air is to be"
                          + " had there: {3}"
                      : "{0}; as early as {1} it may be under the {2} its load needs, before the next"
                          + " air: do not roll on it so; mend the leak or fit the spare, or take air"
                          + " along and gauge it on the way; {3}",
                  lost,
                  visits.get(visit).stop().place(),
                  Shown.beside(at.limits().floor(), here.judged() - gone),
                  find),
              0);
        }
      }
      if (air) {
        break;
      }
    }
    return new Reason(
        Mark.RECHECK,
        Phrase.of("{0}; its load is carried up to the next air at that rate: {1}", lost, find),
        0);
  }
}
