package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.Limits;
import dawngauge.rules.SettingBand;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Judges the tire at one position, stop after stop: first what is set there, then, with all that is
 * set there taken as done, whether it carries its load. Remembers what was left open: a tire below
 * its aim where there was no air.
 */
final class TireJudge {

  /**
   * A tire low for its aim where nothing can be done about it.
   *
   * @param visit index of the stop
   * @param why in words
   * @param none why nothing can be done there
   */
  record LeftLow(int visit, Phrase why, String none) {}

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Lookahead lookahead;
  private final FigureRule figures;
  private final HoldRules holds;
  private final LoadRules loads;
  private final Rechecks rechecks;
  private final AirWords words;
  private final @Nullable TirePlan plan;
  private final List<LeftLow> leftLow = new ArrayList<>();
  private boolean belowAimSinceStart;
  private boolean handsOffToldToday;

  TireJudge(Forecaster forecaster, Thresholds thresholds, @Nullable TirePlan plan) {
    this.plan = plan;
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.lookahead = new Lookahead(forecaster);
    this.figures = new FigureRule(forecaster, lookahead);
    this.holds = new HoldRules(forecaster);
    this.loads = new LoadRules(forecaster, lookahead);
    this.rechecks = new Rechecks(forecaster, thresholds);
    this.words = new AirWords(forecaster);
  }

  /** Where it was left low, in order. */
  List<LeftLow> leftLow() {
    return leftLow;
  }

  /**
   * What is to be set at a stop, and what keeps the tire itself from rolling.
   *
   * @param mate the tire beside it, stop by stop; empty without one
   */
  TireAdvice decide(int visit, Track track, List<TireAtStop> mate) {
    List<TireAtStop> stops = track.stops();
    TireAtStop at = stops.get(visit);
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    if (stop.passes()) {
      return new TireAdvice(at, List.of(), null, null, false);
    }
    List<Reason> reasons = new ArrayList<>(holds.at(visit, stops, mate));
    boolean last = visit == stops.size() - 1;
    TireSnapshot check = at.check();
    TimedFigures set = null;
    if (check != null && !last && !at.limits().overloaded()) {
      set = adjust(visit, track, mate, check, reasons);
    }
    return new TireAdvice(at, reasons, set == null ? null : set.at(), set, Rechecks.takenCold(at));
  }

  /**
   * The whole advice, with all that is set at the stop taken as done.
   *
   * @param stops the tire after that, beside its mate
   * @param over whether the rig has left the stop
   */
  TireAdvice finish(int visit, List<TireAtStop> stops, TireAdvice decided, boolean over) {
    TireAtStop at = stops.get(visit);
    if (forecaster.itinerary().visits().get(visit).passes()) {
      return new TireAdvice(at, List.of(), null, null, false);
    }
    List<Reason> reasons = new ArrayList<>(decided.reasons());
    SetFigure set = decided.set();
    if (reasons.stream().noneMatch(HoldRules::ofTheTire)) { // such a tire is not just aired
      reasons.addAll(loads.at(visit, stops, set, over));
    }
    handsOff(at, set, reasons);
    if (forecaster.itinerary().visits().get(visit).firstStartOfDay()) {
      handsOffToldToday = false;
    }
    reasons.addAll(rechecks.at(visit, stops));
    rechecks.remember(visit, at, set);
    return new TireAdvice(at, reasons, set, decided.timed(), decided.readingTaken());
  }

  /**
   * A tire over its cold limit while warm is not to be touched, unless it is to be set. Told once a
   * day, for on most days most tires of a trailer are so at every stop; and wherever it stands cold
   * on a warm day, when a gauge tempts most.
   */
  private void handsOff(TireAtStop at, @Nullable SetFigure set, List<Reason> reasons) {
    double now = read(at.check());
    double highest = at.cold() && handsOffToldToday ? now : Math.max(onArrival(at), now);
    TireSnapshot known = at.check() == null ? at.arrival() : at.check();
    if ((!handsOffToldToday || at.cold())
        && known != null
        && highest > at.limits().ceiling() + known.origin().errors().step() / 2
        && set == null
        && reasons.stream().noneMatch(reason -> reason.mark() == Mark.HOLD)) {
      handsOffToldToday = true;
      reasons.add(
          new Reason(
              Mark.CLEAR,
              Phrase.of("high because warm, leave it"),
              Phrase.of(
                  "over its cold limit of {0} only because it is warm: let no air out; the limit is"
                      + " judged cold, before a day's first start",
                  PressureText.pressure(at.limits().ceiling())),
              0));
    }
  }

  /** What the gauge showed here, else what it is expected to show. */
  private static double onArrival(TireAtStop at) {
    return at.readings().stream().mapToDouble(ReadingCheck::shown).max().orElse(read(at.arrival()));
  }

  private static double read(@Nullable TireSnapshot moment) {
    return moment == null || Double.isNaN(moment.reading()) ? 0 : moment.reading();
  }

  private @Nullable TimedFigures adjust(
      int visit, Track track, List<TireAtStop> mate, TireSnapshot check, List<Reason> reasons) {
    TireAtStop at = track.stops().get(visit);
    Limits limits = at.limits();
    GaugeErrors errors = check.origin().errors();
    boolean start = forecaster.itinerary().visits().get(visit).firstStartOfDay();
    boolean coldStart = start && at.cold();
    double aim = limits.aim();
    boolean readCold = at.cold() && Rechecks.takenCold(at);
    double apart = coldStart || readCold ? overMate(visit, check, mate) : 0;
    boolean low = check.settled() < SettingBand.lowUnder(limits, errors);
    boolean below = low && (coldStart || belowAimSinceStart);
    boolean belowMate = apart < -thresholds.dualApartPascals() && check.settled() < aim;
    boolean above =
        coldStart && check.settled() > SettingBand.letOutAbove(limits, at.fitted(), errors);
    Lookahead.Judged bad = lookahead.firstBad(lookahead.until(visit, track.stops()));

    boolean planned = plan != null && plan.speaksOf(visit);
    Double figure = planned && plan != null ? plan.at(visit).orElse(null) : null;
    TimedFigures byPlan = figure == null ? null : byPlan(visit, track, check, figure, reasons);
    if (byPlan != null) {
      return byPlan;
    }
    if (above) {
      belowAimSinceStart = false;
      return letOut(visit, track, check, reasons);
    }
    if (planned && below && !belowMate && bad == null) {
      belowAimSinceStart = false;
      reasons.add(leftByPlan(visit, check, limits, start));
      return null;
    }
    if (!below && !belowMate && bad == null) {
      belowAimSinceStart = belowAimSinceStart && !start && low;
      overAim(at, check, coldStart, apart, reasons);
      return null;
    }
    Phrase underMate =
        belowMate
            ? Phrase.of(
                "more than {0} under its dual mate",
                PressureText.pressure(thresholds.dualApartPascals()))
            : Phrase.of("");
    Phrase why = words.why(at, check, bad, below, underMate);
    Air air = Lookahead.airAt(forecaster, visit);
    boolean warmthUnknown = !at.cold() && Double.isNaN(check.reading());
    SetFigure set = figures.of(visit, track, check, !at.cold());
    if (air != null && !warmthUnknown && set.adds()) {
      belowAimSinceStart =
          set.cutByHose() && set.settled().pascals() < SettingBand.lowUnder(limits, errors);
      TimedFigures timed = figures.timed(visit, track, check, set);
      reasons.add(toAdd(timed, at, track, check, why, bad == null ? 1 : 0, reasons));
      return timed;
    }
    boolean saidBefore = belowAimSinceStart && !start;
    belowAimSinceStart = belowAimSinceStart || below || belowMate;
    if (!saidBefore && bad == null) {
      String none =
          air == null
              ? "no air here"
              : warmthUnknown
                  ? "how warm it is here is not known, so there is no figure to set"
                  : set.cutByHose()
                      ? "the hose here does not reach further"
                      : set.cutByCeiling()
                          ? "its limit allows no more here"
                          : errors.tooCoarse(aim)
                              ? "its gauge cannot show what is missing: read it with a finer one"
                              : "less than a gauge step is missing";
      leftLow.add(new LeftLow(visit, why, none));
    }
    return null;
  }

  private Reason toAdd(
      TimedFigures timed,
      TireAtStop at,
      Track track,
      TireSnapshot check,
      Phrase why,
      int rank,
      List<Reason> before) {
    Phrase text = words.added(timed, at, check, why);
    boolean unfit =
        before.stream().anyMatch(HoldRules::ofTheTire)
            || HoldRules.foundLowBefore(at.visit(), track.stops()) >= 0;
    return new Reason(
        Mark.ADJUST,
        Phrase.of(unfit ? "Only once it is found sound" : ""),
        unfit ? Phrase.of("only once it is found sound: {0}", text) : text,
        rank);
  }

  /** What the accepted plan sets here; nothing where the tire has it already. */
  private @Nullable TimedFigures byPlan(
      int visit, Track track, TireSnapshot check, double figure, List<Reason> reasons) {
    TireAtStop at = track.stops().get(visit);
    belowAimSinceStart = false;
    Air air = Lookahead.airAt(forecaster, visit);
    TimedFigures timed = figures.chosen(at, check, figure);
    SetFigure set = timed.at();
    double step = check.origin().errors().step();
    boolean same = Math.abs(figure - SetFigure.now(check)) <= step / 2;
    boolean may = set.adds() ? air != null : at.cold();
    if (same || !may) {
      return null;
    }
    Phrase why = Phrase.of("by the plan that you follow");
    reasons.add(
        set.adds()
            ? toAdd(timed, at, track, check, why, 1, reasons)
            : new Reason(Mark.ADJUST, words.letOut(set, check, why), 1));
    return timed;
  }

  /** A tire under its aim that the plan leaves as it is. */
  private Reason leftByPlan(int visit, TireSnapshot check, Limits limits, boolean start) {
    int next = plan == null ? -1 : plan.nextAfter(visit);
    String then =
        next < 0
            ? "leaves it so"
            : "sets it at " + forecaster.itinerary().visits().get(next).stop().place();
    return new Reason(
        Mark.RECHECK,
        Phrase.of("low; your plan {0}", then),
        Phrase.of(
            "{0} is below {1}, {2}; the plan that you follow {3}",
            PressureText.beside(check.settled(), limits.aim()),
            PressureText.pressure(limits.aim()),
            AirWords.aim(limits),
            then),
        start ? 3 : 4);
  }

  private TimedFigures letOut(int visit, Track track, TireSnapshot check, List<Reason> reasons) {
    TireAtStop at = track.stops().get(visit);
    double ceiling = at.limits().ceiling();
    Phrase over =
        Phrase.of(
            "{0} is over its limit of {1}",
            PressureText.beside(check.settled(), ceiling), PressureText.pressure(ceiling));
    SetFigure set = figures.of(visit, track, check, false);
    reasons.add(new Reason(Mark.ADJUST, words.letOut(set, check, over), 1));
    return figures.timed(visit, track, check, set);
  }

  /** More air than label and load want, or than its mate has, yet under the limit: a word. */
  private void overAim(
      TireAtStop at, TireSnapshot check, boolean coldStart, double apart, List<Reason> reasons) {
    Limits limits = at.limits();
    double over = check.settled() - limits.aim();
    double asked = Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * limits.aim());
    if (apart > thresholds.dualApartPascals() && over > 0) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("over its dual mate: set both alike while cold"),
              Phrase.of(
                  "{0} over its dual mate, which then carries less than its part: set both alike"
                      + " while they are cold",
                  PressureText.pressure(apart)),
              3));
    } else if (coldStart && over > asked) {
      reasons.add(
          new Reason(
              Mark.CLEAR,
              Phrase.of(
                  "{0} is {1} over {2}: smaller footprint, hard ride, wear in the middle",
                  PressureText.pressure(check.settled()),
                  PressureText.pressure(over),
                  AirWords.aim(limits)),
              5));
    }
  }

  /** How much more it has than its dual mate, in pascal; 0 without one. */
  private static double overMate(int visit, TireSnapshot check, List<TireAtStop> mate) {
    if (visit >= mate.size()) {
      return 0;
    }
    TireAtStop other = mate.get(visit);
    TireSnapshot theirs = other.check();
    WheelSlot slot = other.fitted().position().slot();
    return theirs == null || slot == slot.mate() ? 0 : check.settled() - theirs.settled();
  }
}
