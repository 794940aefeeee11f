package dawngauge.ledger;

import dawngauge.advice.SetFigure;
import dawngauge.advice.TimedFigures;
import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import java.time.Instant;
import java.time.ZoneId;

/**
 * How it is told what a tire is set to, wherever that is told.
 *
 * @param units the units shown
 */
record SetWords(UnitSystem units) {

  /** What is set without a condition begins so. */
  static final String ADD = "Add: ";

  static final String LET_OUT = "Let out, only cold: ";

  /** Which of both it is. */
  static String verb(SetFigure set) {
    return set.adds() ? ADD : LET_OUT;
  }

  /** "85 psi on arrival (82 at 13:14, 80 cold)". */
  Phrase figures(TimedFigures timed, ZoneId zone) {
    SetFigure set = timed.at();
    SetFigure onArrival = timed.onArrival();
    String minute = Wording.clock(Instant.ofEpochSecond(Math.round(timed.seconds())), zone);
    if (!set.adds()) {
      return Phrase.of("{0}", Wording.figure(set.figure()));
    } else if (!set.warm()) {
      return Phrase.of("{0}, cold", Wording.figure(set.figure()));
    } else if (onArrival != null) {
      return Phrase.of(
          "{0} on arrival ({1}, {2} cold)",
          Wording.figure(onArrival.figure()), number(set) + " at " + minute, number(timed.cold()));
    }
    return Phrase.of(
        "{0} at {1} ({2} cold)", Wording.figure(set.figure()), minute, number(timed.cold()));
  }

  /** What else has to be known at the hose; empty where nothing is. */
  static String beware(SetFigure set, double ceiling) {
    return (set.cutByHose() ? ", all that the hose gives" : "")
        + (Double.isNaN(ceiling) ? "; read sidewall and wheel limit first" : "");
  }

  /** Without its unit: one stands beside it. */
  private String number(SetFigure set) {
    return Wording.figureNumber(set.figure().pascals(), units);
  }
}
