package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.rules.Loads;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a tire may roll on with its load, once all is set that can be set at a stop. What air
 * further on cures is no reason to hold; what it cures too late is.
 */
final class LoadRules {

  private final Forecaster forecaster;
  private final Lookahead lookahead;
  private final AirWords words;

  LoadRules(Forecaster forecaster, Lookahead lookahead) {
    this.forecaster = forecaster;
    this.lookahead = lookahead;
    this.words = new AirWords(forecaster);
  }

  /**
   * What is to be said at a stop, after what is set there.
   *
   * @param over whether the rig has left the stop, so that nothing can be found before it any more
   */
  List<Reason> at(int visit, List<TireAtStop> stops, @Nullable SetFigure set, boolean over) {
    TireAtStop at = stops.get(visit);
    List<Reason> reasons = new ArrayList<>();
    if (visit == stops.size() - 1) {
      atTheEnd(visit, at, reasons);
      return reasons;
    }
    reasons.addAll(HoldRules.overloadOnly(at));
    if (at.limits().overloaded()) {
      return reasons; // air is no cure
    }
    List<Lookahead.Judged> ahead = lookahead.until(visit, stops);
    Lookahead.Judged bad = lookahead.firstBad(ahead);
    boolean leaks = at.fitted().tire().lossPerDay() != null;
    if (bad != null && (bad.visit() == visit || leaks)) {
      String release = release(visit, stops);
      Phrase todo = Phrase.of("do not roll until {0}", release);
      reasons.add(new Reason(Mark.HOLD, todo, hold(at, bad, set, release), 1));
    } else if (bad != null && !over) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("find air before {0}", place(bad.visit())),
              Phrase.of(
                  "find air before {0}: {1}, {2}; no hose reaches it before: add a stop, carry a"
                      + " compressor or ask for a call-out",
                  place(bad.visit()), words.where(bad), words.state(bad)),
              0));
    } else if (bad == null) {
      Lookahead.Judged notShown = lookahead.firstNotShown(lookahead.judgedAt(visit, at));
      if (notShown != null) {
        Phrase todo =
            Phrase.of(
                "cannot tell if it carries its load: {0}", shownBy(at, "maker's rows", "weigh"));
        reasons.add(new Reason(Mark.RECHECK, todo, notShown(at, notShown), 2));
      }
    }
    return reasons;
  }

  /** At the last stop nothing rolls on, yet what is wrong is to be told before the next trip. */
  private void atTheEnd(int visit, TireAtStop at, List<Reason> reasons) {
    Lookahead.Judged here = lookahead.firstBad(lookahead.judgedAt(visit, at));
    if (at.limits().overloaded()) {
      for (Reason reason : HoldRules.overloadOnly(at)) {
        reasons.add(
            new Reason(
                Mark.RECHECK,
                Phrase.of("before it rolls again: {0}", reason.todo()),
                Phrase.of("before it rolls again: {0}", reason.text()),
                1));
      }
    } else if (here != null) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("see to its air before it rolls again"),
              Phrase.of("before it rolls again see to its air: {0}", words.state(here)),
              1));
    }
  }

  private Phrase hold(
      TireAtStop at, Lookahead.Judged bad, @Nullable SetFigure set, String release) {
    Phrase what =
        set == null
            ? Phrase.of("{0} {1}, and no air here that helps", words.where(bad), words.state(bad))
            : Phrase.of(
                "even set to what can be set here, {0} {1}", words.where(bad), words.state(bad));
    boolean spare = Spares.fit(forecaster, at);
    return Phrase.of(
        "{0}: do not roll until {1}{2}{3}; animals to shade and water first, stand clear of the"
            + " tire",
        what,
        release,
        spare ? ", on the spare" : "",
        assumed(at) ? ", lighter, or weighed by wheel" : ", or lighter");
  }

  /** What has to be done to the tire itself before it rolls. */
  private static String release(int visit, List<TireAtStop> stops) {
    if (HoldRules.foundLowByNow(visit, stops)) {
      return "found sound inside by a qualified technician and aired";
    }
    return stops.get(visit).fitted().tire().lossPerDay() == null ? "aired" : "its leak is mended";
  }

  private static boolean assumed(TireAtStop at) {
    return at.limits().load().axle().basis() == Loads.Basis.NOT_WEIGHED;
  }

  private Phrase notShown(TireAtStop at, Lookahead.Judged judged) {
    return Phrase.of(
        "at {0} {1} it cannot be shown to carry its load: {2}",
        PressureText.pressure(judged.moment().judged()),
        words.where(judged),
        shownBy(at, "the maker's load rows", "weigh it by wheel"));
  }

  /** What would show that a tire carries its load. */
  private static String shownBy(TireAtStop at, String ofMaker, String weigh) {
    boolean rows = at.fitted().capacity() != null && at.fitted().capacity().fromRows();
    boolean wheel = at.limits().load().axle().basis() == Loads.Basis.WHEEL;
    String typed = rows ? "" : "type " + ofMaker;
    String weighed = wheel ? (rows ? "lighten it or add air" : "") : weigh;
    return typed + (rows || wheel ? "" : ", or ") + weighed;
  }

  private String place(int visit) {
    return forecaster.itinerary().visits().get(visit).stop().place();
  }
}
