package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.RanLow;
import dawngauge.rules.SettingBand;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** A plan tried on the forecast, with none of the plan's own arithmetic. */
final class PlanTrial {

  /** The plan takes lost air as a straight line of the air in the tire. */
  private static final double CLOSE = GaugePressure.of(0.1, Unit.PSI).pascals();

  private static final double UNDER_AIM = 0.1;

  /** By so much a chance of 10 % changes with a tenth of a psi, at σ of a psi or more. */
  private static final double NEARLY = 0.02;

  /** Forgives rounding, in pascal. */
  private static final double ROUNDING = 2;

  private final Forecaster forecaster;
  private final AdjustmentPlan plan;
  private final Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
  private final int stops;

  PlanTrial(Forecaster forecaster, AdjustmentPlan plan) {
    this.forecaster = forecaster;
    this.plan = plan;
    this.stops = forecaster.itinerary().visits().size();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      boolean left = plan.leftOut().stream().anyMatch(out -> out.position().equals(position));
      if (!left) {
        tracks.put(position, forecaster.track(position).orElseThrow());
      }
    }
  }

  void everySettingIsAllowed() {
    for (AdjustmentPlan.Planned stop : plan.stops()) {
      assertThat(stop.settings()).isNotEmpty();
      stop.settings().forEach((position, setting) -> allowed(stop.visit(), position, setting));
    }
  }

  private void allowed(int visit, WheelPosition position, AdjustmentPlan.PlannedSetting setting) {
    TireAtStop at = planned(position).stops().get(visit);
    TireSnapshot check = at.check();
    assertThat(check).isNotNull();
    if (check == null) {
      return;
    }
    double figure = setting.set().figure().pascals();
    double step = step(check);
    double highest = highest(at, check, !at.cold());
    assertThat(setting.set().settled().pascals() > highest + ROUNDING).isFalse();
    Air air = Lookahead.airAt(forecaster, visit);
    if (figure > SetFigure.now(check)) {
      assertThat(air).isNotNull();
      assertThat(figure).isLessThanOrEqualTo(Lookahead.reach(air == null ? Air.NONE : air) + 2);
    } else {
      assertThat(at.cold()).as("nothing is let out warm").isTrue();
      assertThat(setting.set().settled().pascals())
          .as("nothing is let out below the aim")
          .isGreaterThan(at.limits().aim() - step);
    }
  }

  /**
   * Highest pressure at which a tire set there may settle: cold half a step over the limit; warm
   * what the gauge cannot tell over it, less what its warmth may be short of in nine of ten cases.
   */
  static double highest(TireAtStop at, TireSnapshot check, boolean warm) {
    double ceiling = at.limits().ceiling();
    GaugeErrors errors = check.origin().errors();
    double unsure = 1.2816 * Math.max(0, check.warmSigma());
    return ceiling + (warm ? Math.max(0, errors.deadBand(ceiling) - unsure) : errors.step() / 2);
  }

  private Track planned(WheelPosition position) {
    Track track = forecaster.track(position).orElseThrow();
    for (AdjustmentPlan.Planned stop : plan.stops()) {
      AdjustmentPlan.PlannedSetting setting = stop.settings().get(position);
      if (setting != null) {
        track = track.with(stop.visit(), new Setting(setting.set().figure().pascals()));
      }
    }
    return track;
  }

  void limitsAreKept() {
    Lookahead lookahead = new Lookahead(forecaster);
    for (WheelPosition position : tracks.keySet()) {
      Track track = planned(position);
      assertThat(missed(track)).as(position.words()).isLessThan(CLOSE);
      for (TireAtStop at : track.stops().subList(plan.from(), stops - 1)) {
        for (Lookahead.Judged judged : lookahead.judgedAt(at.visit(), at)) {
          assertThat(lookahead.lacksAir(judged) && !nearly(judged)).as(position.words()).isFalse();
        }
      }
    }
  }

  /** Whether the forecast itself is within a tenth of a psi or so of what is allowed. */
  private static boolean nearly(Lookahead.Judged judged) {
    double line = RanLow.line(judged.limits().reference());
    boolean low = judged.moment().settled() <= line - CLOSE;
    LoadChance chance = judged.chance();
    return !low && (chance.asCertified() || !(chance.underFloor() > 0.1 + NEARLY));
  }

  /** For plans of one or two stops: none, or any one, does not do. */
  void noSmallerSetDoes() {
    int size = plan.stops().size();
    if (size == 0) {
      return;
    }
    assertThat(allDo(-1)).as("without any stop").isFalse();
    for (int visit = plan.from(); size == 2 && visit < stops - 1; visit++) {
      assertThat(allDo(visit)).as("with stop %d alone", visit).isFalse();
    }
  }

  /** Where a limit is given up, no one fill of each tire at any one stop would have kept all. */
  void noOneFillDoes() {
    assertThat(allDo(-1)).as("without any stop").isFalse();
    for (int visit = plan.from(); visit < stops - 1; visit++) {
      assertThat(allDo(visit)).as("with stop %d alone", visit).isFalse();
    }
  }

  /** At how many stops every tire is set to its aim each morning, where that keeps all limits. */
  OptionalInt eachMorning() {
    Lookahead lookahead = new Lookahead(forecaster);
    Adjustment.Habit habit =
        Adjustment.Habit.of(forecaster, lookahead, tracks, plan.from(), Integer.MAX_VALUE);
    return habit.tracks().stream().allMatch(track -> missed(track) < -CLOSE)
        ? OptionalInt.of(habit.stops())
        : OptionalInt.empty();
  }

  /** Whether every tire keeps its limits clearly with one stop, or none where that is negative. */
  private boolean allDo(int visit) {
    return tracks.values().stream().allMatch(track -> does(track, visit));
  }

  private boolean does(Track track, int visit) {
    if (missed(track) < -CLOSE) {
      return true;
    }
    TireAtStop at = visit < 0 ? null : track.stops().get(visit);
    TireSnapshot check = at == null ? null : at.check();
    Itinerary.Visit stop = forecaster.itinerary().visits().get(Math.max(0, visit));
    boolean tooShort = stop.stay().toSeconds() < 300 && !stop.firstStartOfDay();
    if (at == null || check == null || stop.passes() || tooShort) {
      return false;
    }
    for (double figure : figures(at, check, visit)) {
      if (missed(track.with(visit, new Setting(figure))) < -CLOSE) {
        return true;
      }
    }
    return false;
  }

  private List<Double> figures(TireAtStop at, TireSnapshot check, int visit) {
    List<Double> figures = new ArrayList<>();
    double step = step(check);
    Air air = Lookahead.airAt(forecaster, visit);
    boolean start = forecaster.itinerary().visits().get(visit).firstStartOfDay();
    double aim = at.limits().aim();
    for (int steps = 1; steps * step < GaugePressure.of(150, Unit.PSI).pascals(); steps++) {
      double figure = steps * step;
      double settled =
          (figure + check.airPressure()) / SetFigure.kelvins(check) * check.airKelvins()
              - check.airPressure();
      boolean adds = figure > SetFigure.now(check);
      boolean known = at.cold() || !Double.isNaN(check.reading());
      boolean may =
          adds
              ? air != null && known && figure <= Lookahead.reach(air)
              : at.cold() && start && settled >= aim - step / 2;
      double ceiling = at.limits().ceiling();
      double highest =
          (Double.isNaN(ceiling) ? aim + step / 2 : highest(at, check, !at.cold())) + ROUNDING;
      boolean over = settled > highest || (at.cold() && figure > ceiling + ROUNDING);
      if (may && !over && settled >= aim - step) {
        figures.add(figure);
      }
    }
    return figures;
  }

  /** The largest miss of a limit, in pascal; negative where all are kept by so much. */
  private double missed(Track track) {
    double missed = Double.NEGATIVE_INFINITY;
    Lookahead lookahead = new Lookahead(forecaster);
    for (int visit = plan.from(); visit < stops - 1; visit++) {
      TireAtStop at = track.stops().get(visit);
      TireSnapshot check = at.check();
      for (Lookahead.Judged judged : lookahead.judgedAt(visit, at)) {
        boolean hopeless = lookahead.noAirHelps(judged);
        missed = Math.max(missed, hopeless ? Double.MAX_VALUE : lookahead.missing(judged));
      }
      if (check != null && forecaster.itinerary().visits().get(visit).firstStartOfDay()) {
        missed = Math.max(missed, startMissed(at, check));
      }
    }
    return missed;
  }

  private double startMissed(TireAtStop at, TireSnapshot check) {
    Setting set = at.setting();
    double settled =
        set == null
            ? check.settled()
            : (set.gaugePascals() + check.airPressure())
                    / SetFigure.kelvins(check)
                    * check.airKelvins()
                - check.airPressure();
    double most = SettingBand.letOutAbove(at.limits(), at.fitted(), check.origin().errors());
    double over = at.cold() ? settled - most : Double.NEGATIVE_INFINITY;
    double under = at.limits().aim() * (1 - UNDER_AIM) - settled;
    return Math.max(
        Double.isNaN(over) ? Double.NEGATIVE_INFINITY : over,
        Double.isNaN(under) ? Double.NEGATIVE_INFINITY : under);
  }

  private double step(TireSnapshot check) {
    return forecaster
        .trip()
        .rig()
        .gauge(check.origin().gauge())
        .orElseThrow()
        .step()
        .value()
        .pascals();
  }
}
