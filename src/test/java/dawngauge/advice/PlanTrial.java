package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.Quantile;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A plan tried on the forecast, with none of the plan's own arithmetic. */
final class PlanTrial {

  /** The plan takes lost air as a straight line of the air in the tire. */
  private static final double CLOSE = GaugePressure.of(0.1, Unit.PSI).pascals();

  private static final double UNDER_AIM = 0.1;

  private final Forecaster forecaster;
  private final AdjustmentPlan plan;
  private final Map<WheelPosition, Track> tracks = new HashMap<>();
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
    Moment check = at.check();
    assertThat(check).isNotNull();
    if (check == null) {
      return;
    }
    double figure = setting.set().figure().pascals();
    double step = step(check);
    assertThat(setting.set().settled().pascals() > at.limits().ceiling() + step / 2 + 2).isFalse();
    Air air = Chances.airAt(forecaster, visit);
    if (figure > SetFigure.now(check)) {
      assertThat(air).isNotNull();
      assertThat(figure).isLessThanOrEqualTo(Chances.reach(air == null ? Air.NONE : air) + 2);
    } else {
      assertThat(at.cold()).as("nothing is let out warm").isTrue();
      assertThat(setting.set().settled().pascals())
          .as("nothing is let out below the aim")
          .isGreaterThan(at.limits().aim() - step);
    }
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
    for (WheelPosition position : tracks.keySet()) {
      assertThat(missed(planned(position))).as(position.words()).isLessThan(CLOSE);
    }
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

  /** Whether every tire keeps its limits clearly with one stop, or none where that is negative. */
  private boolean allDo(int visit) {
    return tracks.values().stream().allMatch(track -> does(track, visit));
  }

  private boolean does(Track track, int visit) {
    if (missed(track) < -CLOSE) {
      return true;
    }
    TireAtStop at = visit < 0 ? null : track.stops().get(visit);
    Moment check = at == null ? null : at.check();
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

  private List<Double> figures(TireAtStop at, Moment check, int visit) {
    List<Double> figures = new ArrayList<>();
    double step = step(check);
    Air air = Chances.airAt(forecaster, visit);
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
              ? air != null && known && figure <= Chances.reach(air)
              : at.cold() && start && settled >= aim - step / 2;
      double highest = at.limits().ceiling() + step / 2;
      if (may && settled <= highest && (!at.cold() || figure <= highest) && settled >= aim - step) {
        figures.add(figure);
      }
    }
    return figures;
  }

  /** The largest miss of a limit, in pascal; negative where all are kept by so much. */
  private double missed(Track track) {
    double missed = Double.NEGATIVE_INFINITY;
    Chances chances = new Chances(forecaster);
    for (int visit = plan.from(); visit < stops - 1; visit++) {
      TireAtStop at = track.stops().get(visit);
      Moment check = at.check();
      if (check == null) {
        continue;
      }
      for (Chances.Judged judged : chances.judgedAt(visit, at)) {
        double least = judged.floor() + Quantile.deviations(0.9) * judged.sigma();
        missed = Math.max(missed, least - judged.low());
      }
      if (forecaster.itinerary().visits().get(visit).firstStartOfDay()) {
        missed = Math.max(missed, startMissed(at, check));
      }
    }
    return missed;
  }

  private double startMissed(TireAtStop at, Moment check) {
    Setting set = at.setting();
    double settled =
        set == null
            ? check.settled()
            : (set.gaugePascals() + check.airPressure())
                    / SetFigure.kelvins(check)
                    * check.airKelvins()
                - check.airPressure();
    double over =
        at.cold() ? settled - at.limits().ceiling() - step(check) / 2 : Double.NEGATIVE_INFINITY;
    double under = at.limits().aim() * (1 - UNDER_AIM) - settled;
    return Math.max(
        Double.isNaN(over) ? Double.NEGATIVE_INFINITY : over,
        Double.isNaN(under) ? Double.NEGATIVE_INFINITY : under);
  }

  private double step(Moment check) {
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
