package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Limits;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ReadingState;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Judges the tire at one position, stop after stop. Remembers what was left open: a tire below its
 * aim where there was no air, a start or a setting that wants a look at the next stop.
 */
final class TireJudge {

  /** Where no gauge is listed. */
  private static final double DEFAULT_STEP = GaugePressure.of(1, Unit.PSI).pascals();

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Chances chances;
  private final HoldRules holds;
  private final Rechecks rechecks;
  private boolean belowAimSinceStart;

  TireJudge(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.chances = new Chances(forecaster);
    this.holds = new HoldRules(forecaster);
    this.rechecks = new Rechecks(forecaster, thresholds);
  }

  /** Judges the tire at a stop. */
  TireAdvice judge(int visit, List<TireAtStop> track, List<TireAtStop> mate) {
    TireAtStop at = track.get(visit);
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    if (stop.passes()) {
      return new TireAdvice(at, List.of(), null, false);
    }
    List<Reason> reasons = new ArrayList<>(holds.at(visit, at, mate));
    boolean last = visit == track.size() - 1;
    Moment leaving = at.leaving();
    SetFigure set = null;
    if (leaving != null && !last) {
      set = adjust(visit, track, mate, leaving, reasons);
    }
    reasons.addAll(rechecks.at(visit, track));
    rechecks.remember(visit, at, set != null, reasons);
    return new TireAdvice(at, reasons, set, takenCold(at));
  }

  /** After the setting was taken as done: is its floor safe now until the next air? */
  TireAdvice afterSetting(int visit, List<TireAtStop> track, TireAdvice before) {
    List<Reason> reasons = new ArrayList<>(before.reasons());
    for (Chances.Judged judged : chances.until(visit, track)) {
      if (judged.under()) {
        reasons.add(
            new Reason(
                Mark.HOLD,
                Phrase.of(
                    "even set to what is allowed here it falls to {0} {1}, under the {2} that its"
                        + " load needs, before the next air: lighten the load or find air on the"
                        + " way",
                    Shown.pressure(judged.moment().judged()),
                    where(judged),
                    Shown.pressure(judged.floor())),
                1));
        break;
      }
    }
    return new TireAdvice(track.get(visit), reasons, before.set(), before.readingTaken());
  }

  private static boolean takenCold(TireAtStop at) {
    return at.readings().stream()
        .map(ReadingCheck::reading)
        .anyMatch(reading -> reading.state() == ReadingState.COLD);
  }

  private @Nullable SetFigure adjust(
      int visit,
      List<TireAtStop> track,
      List<TireAtStop> mate,
      Moment leaving,
      List<Reason> reasons) {
    TireAtStop at = track.get(visit);
    Limits limits = at.limits();
    double step = step(leaving);
    boolean start = forecaster.firstStartOfDay(visit);
    boolean dualsApart = start && at.cold() && dualsApart(visit, leaving, mate);
    double aim = limits.aim();
    boolean below =
        !Double.isNaN(aim) && leaving.settled() < aim - step && (start || belowAimSinceStart);
    boolean belowMate = dualsApart && leaving.settled() < aim - step / 2;
    boolean above =
        start
            && at.cold()
            && !Double.isNaN(limits.ceiling())
            && leaving.settled() > limits.ceiling() + step / 2;
    Chances.@Nullable Judged worst = worst(visit, track);
    double needed = worst == null ? Double.NEGATIVE_INFINITY : needed(visit, track, leaving);
    boolean floorAtRisk = worst != null && chances.tooLikely(worst.chance());
    double wanted = Double.isNaN(aim) ? needed : Math.max(aim, needed);

    if (above) {
      belowAimSinceStart = false;
      return letOut(leaving, limits, Math.max(aim, needed), step, reasons);
    }
    if (!below && !belowMate && !floorAtRisk) {
      if (start || leaving.settled() >= aim - step) {
        belowAimSinceStart = false;
      }
      overAim(at, leaving, start, reasons);
      return null;
    }
    Phrase why = why(at, leaving, worst, floorAtRisk, below, dualsApart);
    SetFigure set = SetFigure.of(leaving, wanted, limits.ceiling(), !at.cold(), step);
    Air air = Chances.airAt(forecaster, visit);
    if (air != null && reaches(air, set, leaving) && set.adds()) {
      belowAimSinceStart = false;
      reasons.add(new Reason(Mark.ADJUST, added(set, limits, why), floorAtRisk ? 0 : 1));
      return set;
    }
    belowAimSinceStart = belowAimSinceStart || below || belowMate;
    withoutAir(visit, track, worst, why, air, set, leaving, reasons);
    return null;
  }

  private static boolean reaches(Air air, SetFigure set, Moment leaving) {
    return air.upTo() == null
        || air.upTo().value().pascals() >= set.figure().pascals() - 1
        || air.upTo().value().pascals() > SetFigure.now(leaving) + 1;
  }

  private SetFigure letOut(
      Moment leaving, Limits limits, double wanted, double step, List<Reason> reasons) {
    SetFigure set =
        SetFigure.of(leaving, Math.min(wanted, limits.ceiling()), limits.ceiling(), false, step);
    reasons.add(
        new Reason(
            Mark.ADJUST,
            Phrase.of(
                "let out to {0}, cold only, before sun or road warm it: {1} cold is over its limit"
                    + " of {2}",
                Shown.figure(set.figure()),
                Shown.pressure(leaving.settled()),
                Shown.pressure(limits.ceiling())),
            1));
    return set;
  }

  private static Phrase added(SetFigure set, Limits limits, Phrase why) {
    Phrase cut =
        set.cutByCeiling()
            ? Phrase.of("; {0} would be wanted, its limit cuts it", set.wanted())
            : Phrase.of("");
    if (set.warm()) {
      return Phrase.of(
          "add to {0} warm, settles at {1}; never let air out of a warm tire, not above {2} cold:"
              + " {3}{4}",
          Shown.figure(set.figure()), set.settled(), Shown.pressure(limits.ceiling()), why, cut);
    }
    return Phrase.of(
        "add to {0} cold, not above {1}: {2}{3}",
        Shown.figure(set.figure()), Shown.pressure(limits.ceiling()), why, cut);
  }

  private Phrase why(
      TireAtStop at,
      Moment leaving,
      Chances.@Nullable Judged worst,
      boolean floorAtRisk,
      boolean below,
      boolean dualsApart) {
    Limits limits = at.limits();
    if (floorAtRisk && worst != null) {
      return Phrase.of(
          "{0} it falls to {1}, its load needs {2}",
          where(worst), Shown.pressure(worst.moment().judged()), Shown.pressure(worst.floor()));
    }
    if (dualsApart && !below) {
      return Phrase.of(
          "more than {0} under its dual mate", Shown.pressure(thresholds.dualApartPascals()));
    }
    return Phrase.of(
        "at {0} it is below {1}, {2}",
        Shown.pressure(leaving.settled()), Shown.pressure(limits.aim()), limits.aimFrom().words());
  }

  private void withoutAir(
      int visit,
      List<TireAtStop> track,
      Chances.@Nullable Judged worst,
      Phrase why,
      @Nullable Air air,
      SetFigure set,
      Moment leaving,
      List<Reason> reasons) {
    boolean underHere = false;
    for (Chances.Judged judged : chances.until(visit, track)) {
      underHere = underHere || (judged.visit() == visit && judged.under());
    }
    String none =
        air == null
            ? "no air here"
            : set.adds() ? "the hose here does not reach further" : "warm, so none may be let out";
    if (underHere && worst != null) {
      reasons.add(
          new Reason(
              Mark.HOLD,
              Phrase.of(
                  "{0}; {1}: do not roll until aired, on a spare, or lighter; get the animals to"
                      + " shade and water first, stand clear of the tire",
                  why, none),
              0));
      return;
    }
    int next = chances.nextWithAir(visit);
    boolean found = next < forecaster.itinerary().visits().size();
    String later =
        found
            ? "see to it at " + forecaster.itinerary().visits().get(next).stop().place()
            : "no air further on in the plan: find some";
    reasons.add(
        new Reason(
            Mark.RECHECK,
            Phrase.of("{0}; {1}, its load is carried: {2}", why, none, later),
            leaving.settled() < track.get(visit).limits().aim() ? 0 : 2));
  }

  /** More air than label and load want, yet under the limit: worth a word, no more. */
  private void overAim(TireAtStop at, Moment leaving, boolean start, List<Reason> reasons) {
    double over = leaving.settled() - at.limits().aim();
    double asked =
        Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * at.limits().aim());
    if (start && at.cold() && over > asked) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of(
                  "{0} cold is {1} over {2}: smaller footprint, hard ride, wear in the middle; may"
                      + " be let out cold to {3}",
                  Shown.pressure(leaving.settled()),
                  Shown.pressure(over),
                  at.limits().aimFrom().words(),
                  Shown.pressure(at.limits().aim())),
              5));
    }
  }

  private boolean dualsApart(int visit, Moment leaving, List<TireAtStop> mate) {
    if (visit >= mate.size()) {
      return false;
    }
    Moment other = mate.get(visit).leaving();
    Moment before = mate.get(visit).beforeSetting();
    Moment shown = before == null ? other : before;
    return shown != null
        && mate.get(visit).fitted().position().slot()
            != mate.get(visit).fitted().position().slot().mate()
        && Math.abs(shown.settled() - leaving.settled()) > thresholds.dualApartPascals();
  }

  /** The judged moment before the next air at which the tire is likeliest under its floor. */
  private Chances.@Nullable Judged worst(int visit, List<TireAtStop> track) {
    Chances.Judged worst = null;
    for (Chances.Judged judged : chances.until(visit, track)) {
      if (!Double.isNaN(judged.chance()) && (worst == null || judged.chance() > worst.chance())) {
        worst = judged;
      }
    }
    return worst;
  }

  private double needed(int visit, List<TireAtStop> track, Moment leaving) {
    double needed = Double.NEGATIVE_INFINITY;
    for (Chances.Judged judged : chances.until(visit, track)) {
      needed = Math.max(needed, chances.neededSettled(leaving, judged));
    }
    return needed;
  }

  private String where(Chances.Judged judged) {
    Itinerary itinerary = forecaster.itinerary();
    String from = itinerary.visits().get(judged.visit()).stop().place();
    return judged.onLeg()
        ? "between " + from + " and " + itinerary.visits().get(judged.visit() + 1).stop().place()
        : "leaving " + from;
  }

  private double step(Moment leaving) {
    return forecaster
        .trip()
        .rig()
        .gauge(leaving.origin().gauge())
        .map(gauge -> gauge.step().value().pascals())
        .orElse(DEFAULT_STEP);
  }
}
