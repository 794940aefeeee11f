package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Ratio;
import dawngauge.rules.Limits;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Judges the tire at one position, stop after stop. Remembers what was left open: a tire below its
 * aim where there was no air, a start or a setting that wants a look at the next stop.
 */
final class TireJudge {

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Chances chances;
  private final HoldRules holds;
  private final Rechecks rechecks;
  private final AirWords words;
  private final @Nullable TirePlan plan;
  private boolean belowAimSinceStart;

  TireJudge(Forecaster forecaster, Thresholds thresholds, @Nullable TirePlan plan) {
    this.plan = plan;
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.chances = new Chances(forecaster);
    this.holds = new HoldRules(forecaster);
    this.rechecks = new Rechecks(forecaster, thresholds);
    this.words = new AirWords(forecaster, thresholds);
  }

  /** Judges the tire at a stop. */
  TireAdvice judge(int visit, List<TireAtStop> track, List<TireAtStop> mate) {
    TireAtStop at = track.get(visit);
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    if (stop.passes()) {
      return new TireAdvice(at, List.of(), null, false);
    }
    List<Reason> reasons = new ArrayList<>(holds.at(visit, track, mate));
    List<Chances.Judged> ahead = chances.until(visit, track);
    boolean last = visit == track.size() - 1;
    Moment check = at.check();
    SetFigure set = null;
    if (check != null && !last) {
      set = adjust(visit, track, ahead, mate, check, reasons);
    }
    handsOff(at, set, reasons);
    reasons.addAll(rechecks.at(visit, track, chances.tooLikely(Chances.worst(ahead))));
    rechecks.remember(visit, at, set, reasons);
    return new TireAdvice(at, reasons, set, Rechecks.takenCold(at));
  }

  /** After the setting was taken as done: is its floor safe now until the next air? */
  TireAdvice afterSetting(int visit, List<TireAtStop> track, TireAdvice before) {
    List<Reason> reasons = new ArrayList<>(before.reasons());
    List<Chances.Judged> ahead = chances.until(visit, track);
    Chances.Judged under = Chances.firstUnder(ahead);
    Chances.Judged worst = Chances.worst(ahead);
    if (under != null) {
      reasons.add(
          new Reason(
              Mark.HOLD,
              Phrase.of(
                  "even set to what can be set here it falls to {0} {1}, under the {2} that its"
                      + " load needs, before the next air: lighten it before it rolls, or take air"
                      + " along",
                  AirWords.low(under), words.where(under), AirWords.floor(under)),
              1));
    } else if (worst != null && chances.tooLikely(worst)) {
      boolean leaks = leaks(track.get(visit));
      reasons.add(
          new Reason(
              leaks ? Mark.HOLD : Mark.RECHECK,
              leaks
                  ? words.leak(worst)
                  : Phrase.of(
                      "even so {0} there is a {1} chance of being under the {2} that its load"
                          + " needs: gauge it there",
                      words.where(worst), new Ratio(worst.chance()), AirWords.floor(worst)),
              2));
    }
    return new TireAdvice(track.get(visit), reasons, before.set(), before.readingTaken());
  }

  /** A tire over its cold limit while warm is not to be touched. */
  private void handsOff(TireAtStop at, @Nullable SetFigure set, List<Reason> reasons) {
    double highest = Math.max(read(at.arrival()), read(at.check()));
    Moment known = at.check() == null ? at.arrival() : at.check();
    if (known != null
        && highest > at.limits().ceiling() + chances.step(known) / 2
        && (set == null || set.adds())) {
      reasons.add(
          new Reason(
              Mark.CLEAR,
              Phrase.of(
                  "reads over its cold limit of {0} by the warmth of road or day: let no air out;"
                      + " the limit is judged cold, before a day's first start",
                  Shown.pressure(at.limits().ceiling())),
              0));
    }
  }

  private static double read(@Nullable Moment moment) {
    return moment == null || Double.isNaN(moment.reading()) ? 0 : moment.reading();
  }

  private @Nullable SetFigure adjust(
      int visit,
      List<TireAtStop> track,
      List<Chances.Judged> ahead,
      List<TireAtStop> mate,
      Moment check,
      List<Reason> reasons) {
    TireAtStop at = track.get(visit);
    Limits limits = at.limits();
    double step = chances.step(check);
    boolean start = forecaster.itinerary().visits().get(visit).firstStartOfDay();
    boolean coldStart = start && at.cold();
    double aim = limits.aim();
    double apart = coldStart ? overMate(visit, check, mate) : 0;
    boolean below =
        !Double.isNaN(aim) && check.settled() < aim - step && (coldStart || belowAimSinceStart);
    boolean belowMate = apart < -thresholds.dualApartPascals() && check.settled() < aim - step / 2;
    boolean above = coldStart && check.settled() > limits.ceiling() + step / 2;
    Chances.Judged worst = Chances.worst(ahead);
    double needed = chances.needed(ahead, check);
    boolean floorAtRisk = worst != null && chances.tooLikely(worst);
    double wanted = Double.isNaN(aim) ? needed : Math.max(aim, needed);

    boolean planned = plan != null && plan.speaksOf(visit);
    Double figure = planned && plan != null ? plan.at(visit).orElse(null) : null;
    SetFigure byPlan = figure == null ? null : byPlan(at, check, figure, step, reasons);
    if (byPlan != null) {
      return byPlan;
    }
    if (above) {
      belowAimSinceStart = false;
      double down = Double.isNaN(aim) ? limits.ceiling() : Math.min(wanted, limits.ceiling());
      Phrase over =
          Phrase.of(
              "{0} is over its limit of {1}",
              Shown.beside(check.settled(), limits.ceiling()), Shown.pressure(limits.ceiling()));
      return letOut(check, limits, down, needed, step, over, reasons);
    }
    if (!Double.isNaN(aim) && aboveMate(apart, check, wanted, step)) {
      Phrase over =
          Phrase.of(
              "{0} over its dual mate, set both alike; {1} is over {2}",
              Shown.pressure(apart), Shown.pressure(check.settled()), AirWords.aim(limits));
      return letOut(check, limits, wanted, needed, step, over, reasons);
    }
    if (planned && below && !belowMate && !floorAtRisk) {
      belowAimSinceStart = false;
      reasons.add(leftByPlan(visit, check, limits, start));
      return null;
    }
    if (!below && !belowMate && !floorAtRisk) {
      if (start || check.settled() >= aim - step) {
        belowAimSinceStart = false;
      }
      overAim(at, check, coldStart, wanted, reasons);
      return null;
    }
    Phrase why = words.why(at, check, floorAtRisk ? worst : null, below, belowMate);
    Air air = Chances.airAt(forecaster, visit);
    boolean warmthUnknown = !at.cold() && Double.isNaN(check.reading());
    SetFigure set =
        SetFigure.of(
            check,
            wanted,
            !at.cold(),
            new SetFigure.Bounds(
                needed,
                limits.ceiling(),
                air == null ? Double.POSITIVE_INFINITY : Chances.reach(air),
                step));
    if (air != null && !warmthUnknown && set.adds()) {
      belowAimSinceStart = set.settled().pascals() < aim - step && set.cutByHose();
      Phrase text = words.added(set, limits, check, why);
      boolean unfit = reasons.stream().anyMatch(HoldRules::ofTheTire);
      reasons.add(
          new Reason(
              Mark.ADJUST,
              unfit ? Phrase.of("only once it is found sound, or for the spare: {0}", text) : text,
              floorAtRisk ? 0 : 1));
      return set;
    }
    boolean saidBefore = belowAimSinceStart && !start && !floorAtRisk;
    belowAimSinceStart = belowAimSinceStart || below || belowMate;
    if (!saidBefore) {
      String none =
          air == null
              ? "no air here"
              : warmthUnknown
                  ? "how warm it is here is not known, so there is no figure to set"
                  : set.cutByHose()
                      ? "the hose here does not reach further"
                      : set.cutByCeiling()
                          ? "its limit allows no more here"
                          : "less than a gauge step is missing";
      withoutAir(visit, track, ahead, why, none, check, reasons);
    }
    return null;
  }

  /** What the accepted plan sets here; nothing where the tire has it already. */
  private @Nullable SetFigure byPlan(
      TireAtStop at, Moment check, double figure, double step, List<Reason> reasons) {
    Limits limits = at.limits();
    belowAimSinceStart = false;
    Air air = Chances.airAt(forecaster, at.visit());
    double wanted = Double.isNaN(limits.aim()) ? check.settled() : limits.aim();
    SetFigure set =
        SetFigure.chosen(
            check,
            figure,
            wanted,
            !at.cold(),
            new SetFigure.Bounds(
                Double.NEGATIVE_INFINITY,
                limits.ceiling(),
                air == null ? Double.POSITIVE_INFINITY : Chances.reach(air),
                step));
    boolean same = Math.abs(figure - SetFigure.now(check)) <= step / 2;
    boolean may = set.adds() ? air != null : at.cold();
    if (same || !may) {
      return null;
    }
    Phrase why = Phrase.of("by the plan that you follow");
    Phrase text = set.adds() ? words.added(set, limits, check, why) : words.letOut(set, check, why);
    boolean unfit = reasons.stream().anyMatch(HoldRules::ofTheTire);
    reasons.add(
        new Reason(
            Mark.ADJUST,
            unfit ? Phrase.of("only once it is found sound, or for the spare: {0}", text) : text,
            1));
    return set;
  }

  /** A tire under its aim that the plan leaves as it is, since its load is carried. */
  private Reason leftByPlan(int visit, Moment check, Limits limits, boolean start) {
    int next = plan == null ? -1 : plan.nextAfter(visit);
    return new Reason(
        Mark.RECHECK,
        Phrase.of(
            "{0} is below {1}, {2}; its load is carried, and the plan that you follow {3}",
            Shown.beside(check.settled(), limits.aim()),
            Shown.pressure(limits.aim()),
            AirWords.aim(limits),
            next < 0
                ? "leaves it so"
                : "sets it at " + forecaster.itinerary().visits().get(next).stop().place()),
        start ? 3 : 4);
  }

  /** Whether it is this tire of a dual pair that is to be let out: its mate is not too low. */
  private boolean aboveMate(double apart, Moment check, double wanted, double step) {
    double most = thresholds.dualApartPascals();
    boolean mateWillBeRaised = check.settled() - apart < wanted - step / 2;
    return apart > most
        && check.settled() > wanted + step / 2
        && (!mateWillBeRaised || check.settled() - wanted > most);
  }

  private SetFigure letOut(
      Moment check,
      Limits limits,
      double wanted,
      double needed,
      double step,
      Phrase why,
      List<Reason> reasons) {
    SetFigure set =
        SetFigure.of(
            check,
            wanted,
            false,
            new SetFigure.Bounds(needed, limits.ceiling(), Double.POSITIVE_INFINITY, step));
    reasons.add(new Reason(Mark.ADJUST, words.letOut(set, check, why), 1));
    return set;
  }

  private void withoutAir(
      int visit,
      List<TireAtStop> track,
      List<Chances.Judged> ahead,
      Phrase why,
      String none,
      Moment check,
      List<Reason> reasons) {
    Chances.Judged under = Chances.firstUnder(ahead);
    Chances.Judged worst = Chances.worst(ahead);
    if (under != null && under.visit() == visit) {
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
    if (worst != null && chances.tooLikely(worst) && leaks(track.get(visit))) {
      reasons.add(new Reason(Mark.HOLD, words.leak(worst), 0));
      return;
    }
    Phrase carried =
        under == null
            ? Phrase.of(
                "{0}; {1}",
                worst == null ? "whether its load is carried is not known" : "its load is carried",
                nextAir(visit, track))
            : Phrase.of(
                "its load is carried here, no more {0}: find air before", words.where(under));
    reasons.add(
        new Reason(
            Mark.RECHECK,
            Phrase.of("{0}; {1}, {2}", why, none, carried),
            check.settled() < track.get(visit).limits().aim() ? 0 : 2));
  }

  private String nextAir(int visit, List<TireAtStop> track) {
    int next = chances.nextWithAir(visit, track);
    return next < forecaster.itinerary().visits().size()
        ? "see to it at " + forecaster.itinerary().visits().get(next).stop().place()
        : "no air for it further on in the plan: find some";
  }

  private static boolean leaks(TireAtStop at) {
    return at.fitted().tire().lossPerDay() != null;
  }

  /** More air than label and load want, yet under the limit: worth a word, no more. */
  private void overAim(
      TireAtStop at, Moment check, boolean coldStart, double wanted, List<Reason> reasons) {
    double over = check.settled() - at.limits().aim();
    double asked =
        Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * at.limits().aim());
    if (coldStart && over > asked && check.settled() > wanted + chances.step(check)) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of(
                  "{0} is {1} over {2}: smaller footprint, hard ride, wear in the middle; may be let"
                      + " out to {3}, only while it is cold",
                  Shown.pressure(check.settled()),
                  Shown.pressure(over),
                  AirWords.aim(at.limits()),
                  Shown.pressure(wanted)),
              5));
    }
  }

  /** How much more it has than its dual mate, in pascal; 0 without one. */
  private static double overMate(int visit, Moment check, List<TireAtStop> mate) {
    if (visit >= mate.size()) {
      return 0;
    }
    TireAtStop other = mate.get(visit);
    Moment theirs = other.check();
    WheelSlot slot = other.fitted().position().slot();
    return theirs == null || slot == slot.mate() ? 0 : check.settled() - theirs.settled();
  }
}
