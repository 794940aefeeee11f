package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Limits;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
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
    Moment check = at.check();
    SetFigure set = null;
    if (check != null && !last) {
      set = adjust(visit, track, mate, check, reasons);
    }
    handsOff(at, set, reasons);
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
      } else if (chances.tooLikely(judged.chance())) {
        reasons.add(
            new Reason(
                Mark.RECHECK,
                Phrase.of(
                    "even so {0} a {1} chance of being under the {2} that its load needs: gauge it"
                        + " there",
                    where(judged), new Ratio(judged.chance()), Shown.pressure(judged.floor())),
                2));
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

  /** A tire above its limit only by the warmth of road and day is not to be touched. */
  private void handsOff(TireAtStop at, @Nullable SetFigure set, List<Reason> reasons) {
    double ceiling = at.limits().ceiling();
    Moment arrival = at.arrival();
    Moment check = at.check();
    double highest =
        Math.max(
            arrival == null || Double.isNaN(arrival.reading()) ? 0 : arrival.reading(),
            check == null || Double.isNaN(check.reading()) ? 0 : check.reading());
    if (highest > ceiling && (set == null || set.adds())) {
      reasons.add(
          new Reason(
              Mark.CLEAR,
              Phrase.of(
                  "reads over the cold limit of {0} by the warmth of road and day only: let no air out"
                      + " while it is warm",
                  Shown.pressure(ceiling)),
              0));
    }
  }

  private @Nullable SetFigure adjust(
      int visit,
      List<TireAtStop> track,
      List<TireAtStop> mate,
      Moment check,
      List<Reason> reasons) {
    TireAtStop at = track.get(visit);
    Limits limits = at.limits();
    double step = step(check);
    boolean start = forecaster.itinerary().visits().get(visit).firstStartOfDay();
    boolean dualsApart = start && at.cold() && dualsApart(visit, check, mate);
    double aim = limits.aim();
    boolean below =
        !Double.isNaN(aim)
            && check.settled() < aim - step
            && ((start && at.cold()) || belowAimSinceStart);
    boolean belowMate = dualsApart && check.settled() < aim - step / 2;
    boolean above =
        start
            && at.cold()
            && !Double.isNaN(limits.ceiling())
            && check.settled() > limits.ceiling() + step / 2;
    Chances.@Nullable Judged worst = worst(visit, track);
    double needed = worst == null ? Double.NEGATIVE_INFINITY : needed(visit, track, check);
    boolean floorAtRisk = worst != null && chances.tooLikely(worst.chance());
    double wanted = Double.isNaN(aim) ? needed : Math.max(aim, needed);

    if (above) {
      belowAimSinceStart = false;
      return letOut(check, limits, Math.max(aim, needed), step, reasons);
    }
    if (!below && !belowMate && !floorAtRisk) {
      if (start || check.settled() >= aim - step) {
        belowAimSinceStart = false;
      }
      overAim(at, check, start, reasons);
      return null;
    }
    Phrase why = why(at, check, worst, floorAtRisk, below, dualsApart);
    SetFigure set = SetFigure.of(check, wanted, limits.ceiling(), !at.cold(), step);
    Air air = Chances.airAt(forecaster, visit);
    if (air != null && reaches(air, set, check) && set.adds()) {
      belowAimSinceStart = false;
      reasons.add(new Reason(Mark.ADJUST, added(set, limits, why), floorAtRisk ? 0 : 1));
      return set;
    }
    boolean saidBefore = belowAimSinceStart && !start && !floorAtRisk;
    belowAimSinceStart = belowAimSinceStart || below || belowMate;
    if (saidBefore) {
      return null;
    }
    withoutAir(visit, track, worst, why, air, set, check, reasons);
    return null;
  }

  private static boolean reaches(Air air, SetFigure set, Moment check) {
    return air.upTo() == null
        || air.upTo().value().pascals() >= set.figure().pascals() - 1
        || air.upTo().value().pascals() > SetFigure.now(check) + 1;
  }

  private SetFigure letOut(
      Moment check, Limits limits, double wanted, double step, List<Reason> reasons) {
    SetFigure set =
        SetFigure.of(check, Math.min(wanted, limits.ceiling()), limits.ceiling(), false, step);
    reasons.add(
        new Reason(
            Mark.ADJUST,
            Phrase.of(
                "let out to {0}, cold only, before sun or road warm it: {1} is over its limit of {2}",
                Shown.figure(set.figure()),
                Shown.pressure(check.settled()),
                Shown.pressure(limits.ceiling())),
            1));
    return set;
  }

  private static Phrase added(SetFigure set, Limits limits, Phrase why) {
    Phrase cut =
        set.cutByCeiling()
            ? Phrase.of(
                "; {0} would be wanted, its limit cuts it", Shown.pressure(set.wanted().pascals()))
            : Phrase.of("");
    if (set.warm()) {
      return Phrase.of(
          "add to {0} warm (settles at {1}, limit {2} cold; never let air out of a warm tire):"
              + " {3}{4}",
          Shown.figure(set.figure()),
          Shown.pressure(set.settled().pascals()),
          Shown.pressure(limits.ceiling()),
          why,
          cut);
    }
    return Phrase.of(
        "add to {0} cold (limit {1}): {2}{3}",
        Shown.figure(set.figure()), Shown.pressure(limits.ceiling()), why, cut);
  }

  private Phrase why(
      TireAtStop at,
      Moment check,
      Chances.@Nullable Judged worst,
      boolean floorAtRisk,
      boolean below,
      boolean dualsApart) {
    Limits limits = at.limits();
    if (floorAtRisk && worst != null) {
      return Phrase.of(
          "{0} it is expected at {1}, with a {2} chance of being under the {3} that its load needs",
          where(worst),
          Shown.pressure(worst.moment().judged()),
          new Ratio(worst.chance()),
          Shown.pressure(worst.floor()));
    }
    if (dualsApart && !below) {
      return Phrase.of(
          "more than {0} under its dual mate", Shown.pressure(thresholds.dualApartPascals()));
    }
    return Phrase.of(
        "{0} is below {1}, {2}{3}",
        Shown.pressure(check.settled()),
        Shown.pressure(limits.aim()),
        limits.aimFrom().words(),
        dualsApart ? ", and far under its dual mate" : "");
  }

  private void withoutAir(
      int visit,
      List<TireAtStop> track,
      Chances.@Nullable Judged worst,
      Phrase why,
      @Nullable Air air,
      SetFigure set,
      Moment check,
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
            Phrase.of("{0}; {1}, its load is carried; {2}", why, none, later),
            check.settled() < track.get(visit).limits().aim() ? 0 : 2));
  }

  /** More air than label and load want, yet under the limit: worth a word, no more. */
  private void overAim(TireAtStop at, Moment check, boolean start, List<Reason> reasons) {
    double over = check.settled() - at.limits().aim();
    double asked =
        Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * at.limits().aim());
    if (start && at.cold() && over > asked) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of(
                  "{0} is {1} over {2}: smaller footprint, hard ride, wear in the middle; may be let"
                      + " out to {3}, cold only",
                  Shown.pressure(check.settled()),
                  Shown.pressure(over),
                  at.limits().aimFrom().words(),
                  Shown.pressure(at.limits().aim())),
              5));
    }
  }

  private boolean dualsApart(int visit, Moment check, List<TireAtStop> mate) {
    if (visit >= mate.size()) {
      return false;
    }
    Moment shown = mate.get(visit).check();
    return shown != null
        && mate.get(visit).fitted().position().slot()
            != mate.get(visit).fitted().position().slot().mate()
        && Math.abs(shown.settled() - check.settled()) > thresholds.dualApartPascals();
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

  private double needed(int visit, List<TireAtStop> track, Moment check) {
    double needed = Double.NEGATIVE_INFINITY;
    for (Chances.Judged judged : chances.until(visit, track)) {
      needed = Math.max(needed, chances.neededSettled(check, judged));
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

  private double step(Moment check) {
    return forecaster
        .trip()
        .rig()
        .gauge(check.origin().gauge())
        .map(gauge -> gauge.step().value().pascals())
        .orElse(DEFAULT_STEP);
  }
}
