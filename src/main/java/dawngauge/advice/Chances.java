package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.rules.Quantile;
import dawngauge.tire.Capacity;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What lies between a stop and the next one where air can be added to a tire. */
final class Chances {

  /** Where no gauge is listed. */
  private static final double DEFAULT_STEP = GaugePressure.of(1, Unit.PSI).pascals();

  /**
   * A moment at which a tire is judged against its floor.
   *
   * @param visit index of the stop at or after which it lies
   * @param onLeg whether on the leg that leaves that stop, else when leaving it
   * @param moment the tire then
   * @param floor floor then, in pascal
   * @param sigma one standard deviation of the tire's distance from it
   * @param grace half a step of the gauge: so much under the floor is not yet under it
   */
  record Judged(int visit, boolean onLeg, Moment moment, double floor, double sigma, double grace) {

    /** Whether the tire is expected under its floor. */
    boolean under() {
      return moment.judged() < floor - grace;
    }

    /** The cautious side of the expected pressure. */
    double low() {
      return moment.judged() - moment.coldSide();
    }

    /** Chance that the tire is under it. */
    double chance() {
      return Quantile.under(sigmasUnder());
    }

    /** How far the cautious side lies under the floor, in standard deviations. */
    double sigmasUnder() {
      return (floor - low()) / sigma;
    }
  }

  private final Forecaster forecaster;
  private final double confidence;
  private final double sigmas;

  /** The gauge last asked for, and its step. */
  private @Nullable String gauge;

  private double step;

  Chances(Forecaster forecaster) {
    this.forecaster = forecaster;
    this.confidence = forecaster.options().confidence();
    this.sigmas = Quantile.deviations(confidence);
  }

  /** The air at a stop, the crew's own compressor included; null where there is none. */
  static @Nullable Air airAt(Forecaster forecaster, int visit) {
    Entered<GaugePressure> own = forecaster.trip().rig().compressorTop();
    Air here = forecaster.itinerary().visits().get(visit).stop().air();
    if (!here.available()) {
      return own == null ? null : new Air(true, own);
    }
    Entered<GaugePressure> top = here.upTo();
    boolean ownReachesMore = own != null && top != null && own.value().compareTo(top.value()) > 0;
    return ownReachesMore ? new Air(true, own) : here;
  }

  /** Highest figure of a hose in pascal; infinite where that is not known. */
  static double reach(Air air) {
    Entered<GaugePressure> top = air.upTo();
    return top == null ? Double.POSITIVE_INFINITY : top.value().pascals();
  }

  /** Whether the rig starts from a stop for the first time that day. */
  boolean firstStart(int visit) {
    return forecaster.itinerary().visits().get(visit).firstStartOfDay();
  }

  /** The step of the gauge that a tire is read with, in pascal. */
  double step(Moment check) {
    String name = check.origin().gauge();
    if (!name.equals(gauge)) {
      gauge = name;
      step =
          forecaster
              .trip()
              .rig()
              .gauge(name)
              .map(known -> known.step().value().pascals())
              .orElse(DEFAULT_STEP);
    }
    return step;
  }

  /**
   * Index of the next stop where the tire can be brought to its aim; the number of stops where
   * there is none. A hose that does not reach so far is no such place.
   */
  int nextWithAir(int visit, List<TireAtStop> track) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    for (int i = visit + 1; i < visits.size(); i++) {
      Air air = visits.get(i).passes() ? null : airAt(forecaster, i);
      if (air != null && reachesAim(air, track.get(i))) {
        return i;
      }
    }
    return visits.size();
  }

  private boolean reachesAim(Air air, TireAtStop at) {
    if (Double.isInfinite(reach(air))) {
      return true;
    }
    double aim = at.limits().aim();
    Moment check = at.check();
    if (Double.isNaN(aim) || check == null) {
      return !(reach(air) < aim);
    }
    return reach(air) >= SetFigure.shown(check, aim) - step(check) / 2;
  }

  /** Every judged moment from leaving a stop until the next one with air. */
  List<Judged> until(int visit, List<TireAtStop> track) {
    List<Judged> all = new ArrayList<>();
    int end = Math.min(nextWithAir(visit, track), track.size() - 1);
    for (int i = visit; i < end; i++) {
      all.addAll(judgedAt(i, track.get(i)));
    }
    return all;
  }

  /** The judged moments of one stop: when leaving, and the lowest point of the leg ahead. */
  List<Judged> judgedAt(int visit, TireAtStop at) {
    List<Judged> all = new ArrayList<>(2);
    Moment leaving = at.leaving();
    if (leaving != null) {
      addJudged(all, visit, false, leaving, at);
    }
    LegLow low = at.low();
    if (low != null) {
      addJudged(all, visit, true, low.moment(), at);
    }
    return all;
  }

  private void addJudged(List<Judged> all, int visit, boolean onLeg, Moment moment, TireAtStop at) {
    double floor = floor(at);
    if (Double.isNaN(floor)) {
      return;
    }
    Loads.TireLoad load = at.limits().load();
    double byLoad = load.kilograms() > 0 ? load.sigma() / load.kilograms() * floor : 0;
    all.add(
        new Judged(
            visit,
            onLeg,
            moment,
            floor,
            Math.sqrt(moment.limitSigma() * moment.limitSigma() + byLoad * byLoad),
            step(moment) / 2));
  }

  /**
   * The floor; for an axle that was not weighed and that only the assumed uneven sides bring over
   * what its tires may carry, the floor for even sides.
   */
  private static double floor(TireAtStop at) {
    Limits limits = at.limits();
    Capacity capacity = at.fitted().capacity();
    boolean bySides =
        Double.isNaN(limits.floor()) && limits.load().axle().source() == Loads.Source.GAWR;
    return bySides && capacity != null
        ? capacity.pascalsFor(at.fitted().gawrShare())
        : limits.floor();
  }

  /** The judged moment at which the tire is likeliest under its floor. */
  static @Nullable Judged worst(List<Judged> ahead) {
    Judged worst = null;
    double most = Double.NaN;
    for (Judged judged : ahead) {
      double under = judged.sigmasUnder();
      if (worst == null || under > most) {
        worst = judged;
        most = under;
      }
    }
    return worst;
  }

  /** The first judged moment at which the tire is expected under its floor. */
  static @Nullable Judged firstUnder(List<Judged> ahead) {
    for (Judged judged : ahead) {
      if (judged.under()) {
        return judged;
      }
    }
    return null;
  }

  /** Whether the tire is under its floor likelier than the chosen confidence allows. */
  boolean tooLikely(@Nullable Judged judged) {
    return judged != null && judged.sigmasUnder() > -sigmas;
  }

  /**
   * The settled pressure at a moment of setting that keeps the tire above its floor at every judged
   * moment with the chosen confidence, in pascal; negative infinity where nothing is judged.
   */
  double needed(List<Judged> ahead, Moment setting) {
    double needed = Double.NEGATIVE_INFINITY;
    for (Judged later : ahead) {
      double more = needed(later) - later.moment().fill();
      needed = Math.max(needed, setting.settled() + more * setting.airKelvins());
    }
    return needed;
  }

  /**
   * The fill that keeps a tire above its floor at a judged moment with the chosen confidence, in
   * pascal per kelvin.
   */
  double needed(Judged judged) {
    Moment then = judged.moment();
    double missing = judged.floor() - (judged.low() - sigmas * judged.sigma());
    return then.fill() + missing / Math.min(then.tireKelvins(), then.airKelvins());
  }
}
