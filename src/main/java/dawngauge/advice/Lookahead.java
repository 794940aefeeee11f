package dawngauge.advice;

import dawngauge.forecast.FillOrigin;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.Carrying;
import dawngauge.rules.Limits;
import dawngauge.rules.RanLow;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What lies between a stop and the next one where air can be added to a tire. */
final class Lookahead {

  /**
   * A moment at which a tire is judged.
   *
   * @param visit index of the stop at or after which it lies
   * @param onLeg whether on the leg that leaves that stop, else when leaving it
   * @param moment the tire then
   * @param limits its limits then
   * @param chance that it does not carry its load then
   */
  record Judged(int visit, boolean onLeg, TireSnapshot moment, Limits limits, LoadChance chance) {

    /** Whether it is expected at or under the line at which a tire counts as run low. */
    boolean expectedLow() {
      return moment.settled() <= RanLow.line(limits.reference());
    }
  }

  /** At the line itself a tire counts as run low: so much over it, it does not; pascal. */
  private static final double OVER_LINE = 1;

  private final Forecaster forecaster;
  private final double allowed;
  private final boolean shown;

  Lookahead(Forecaster forecaster) {
    this(forecaster, false);
  }

  /**
   * What lies ahead.
   *
   * @param shown whether a tire is to roll only where it can be shown that its load is carried
   */
  Lookahead(Forecaster forecaster, boolean shown) {
    this.forecaster = forecaster;
    this.shown = shown;
    this.allowed = 1 - forecaster.options().confidence();
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
    TireSnapshot check = at.check();
    if (Double.isNaN(aim) || check == null) {
      return !(reach(air) < aim);
    }
    return reach(air) >= SetFigure.shown(check, aim) - check.origin().errors().step() / 2;
  }

  /** Every judged moment from leaving a stop until the next one with air. */
  List<Judged> until(int visit, List<TireAtStop> track) {
    return between(visit, Math.min(nextWithAir(visit, track), track.size() - 1), track);
  }

  /** Every judged moment from leaving a stop until another. */
  List<Judged> between(int visit, int end, List<TireAtStop> track) {
    List<Judged> all = new ArrayList<>();
    for (int i = visit; i < end; i++) {
      all.addAll(judgedAt(i, track.get(i)));
    }
    return all;
  }

  /** The judged moments of one stop: when leaving, and the lowest point of the leg ahead. */
  List<Judged> judgedAt(int visit, TireAtStop at) {
    List<Judged> all = new ArrayList<>(2);
    TireSnapshot leaving = at.leaving();
    if (leaving != null) {
      all.add(new Judged(visit, false, leaving, at.limits(), at.leavingChance()));
    }
    LegLow low = at.low();
    if (low != null) {
      all.add(new Judged(visit, true, low.moment(), at.limits(), low.chance()));
    }
    return all;
  }

  /**
   * Of the judged moments at which the tire is not to roll the one at which its load is likeliest
   * to be too much, else at which it is lowest; null where there is none.
   */
  @Nullable Judged worst(List<Judged> ahead) {
    return ahead.stream()
        .filter(this::lacksAir)
        .max(
            Comparator.comparingDouble(Lookahead::chanceKnown)
                .thenComparing(judged -> -judged.moment().settled()))
        .orElse(null);
  }

  private static double chanceKnown(Judged judged) {
    double chance = judged.chance().underFloor();
    return Double.isNaN(chance) ? 0 : chance;
  }

  /**
   * Whether the tire is not to roll so for want of air: its load likelier too much than allowed, or
   * run low. Where air is no cure, that is no reason to find any.
   */
  boolean lacksAir(Judged judged) {
    return judged.expectedLow()
        || (judged.chance().tooLikely(allowed) && !judged.limits().overloaded());
  }

  /**
   * Whether the tire is not to roll so, be air a cure or none; with a load that cannot be shown to
   * be carried, where that is asked for.
   */
  boolean mayNotRoll(Judged judged) {
    return judged.expectedLow()
        || judged.chance().tooLikely(allowed)
        || (shown && judged.chance().cannotBeShown(allowed));
  }

  /** The first judged moment at which the tire is not to roll. */
  @Nullable Judged firstBad(List<Judged> ahead) {
    for (Judged judged : ahead) {
      if (lacksAir(judged)) {
        return judged;
      }
    }
    return null;
  }

  /** The first judged moment at which it cannot be shown that the load is carried. */
  @Nullable Judged firstNotShown(List<Judged> ahead) {
    for (Judged judged : ahead) {
      if (judged.chance().cannotBeShown(allowed)) {
        return judged;
      }
    }
    return null;
  }

  /** The chance that is still allowed. */
  double allowed() {
    return allowed;
  }

  /**
   * The settled pressure at a moment of setting that lets the tire roll at every judged moment, in
   * pascal; negative infinity where nothing asks for any.
   *
   * @param ahead the judged moments of a tire set to a pressure
   * @param settled that pressure, as cool as the air, in pascal
   * @param airKelvins the air where it was set
   */
  double needed(List<Judged> ahead, double settled, double airKelvins) {
    double needed = Double.NEGATIVE_INFINITY;
    for (Judged later : ahead) {
      double more = missing(later) / later.moment().airKelvins();
      needed = Math.max(needed, settled + more * airKelvins);
    }
    return needed;
  }

  /**
   * The least fill with which a tire may roll at a judged moment, in pascal per kelvin: over the
   * line at which it counts as run low, and with its load carried with the chosen confidence or as
   * certified, whichever takes less. Negative infinity where nothing asks for any; where no
   * pressure carries the load, only the line counts.
   */
  double needed(Judged judged) {
    Limits limits = judged.limits();
    TireSnapshot then = judged.moment();
    double line = RanLow.line(limits.reference()) + OVER_LINE;
    double load = neededForLoad(limits.carrying(), then);
    double certified = certified(limits.certified(), then);
    double needed = Double.isNaN(load) || certified < load ? certified : load;
    return most(needed, (line + then.airPressure()) / then.airKelvins());
  }

  private static double most(double needed, double line) {
    double known = Double.isNaN(needed) ? Double.NEGATIVE_INFINITY : needed;
    return Double.isNaN(line) ? known : Math.max(known, line);
  }

  /** The settled pressure that is missing at a judged moment, in pascal; negative where enough. */
  double missing(Judged judged) {
    TireSnapshot then = judged.moment();
    return (needed(judged) - then.fill()) * then.airKelvins();
  }

  /** Whether its load is likelier too much than allowed at any pressure, the label's too. */
  boolean noAirHelps(Judged judged) {
    return lacksAir(judged) && beyondAir(judged);
  }

  /** Whether no pressure that is allowed carries the load with the chance that is asked for. */
  boolean beyondAir(Judged judged) {
    return Double.isNaN(judged.limits().certified())
        && Double.isNaN(neededForLoad(judged.limits().carrying(), judged.moment()));
  }

  /** NaN where no pressure helps; negative infinity where load or capacity are not known. */
  private double neededForLoad(@Nullable Carrying carrying, TireSnapshot then) {
    if (carrying == null) {
      return Double.NEGATIVE_INFINITY;
    }
    double coarse = then.limitSigma();
    double fine = then.fineSigma();
    double wanted =
        shown // the cautious curve is nowhere under the likely one
            ? carrying.neededToShow(allowed, coarse, fine)
            : carrying.needed(allowed, coarse, fine);
    // The cautious side reaches further, the more air there is.
    return then.fill() * (wanted + then.airPressure()) / (then.low() + then.airPressure());
  }

  /**
   * The fill from which on the tire is as certified: near the label's pressure at the moment and
   * when it was read or set. NaN where the label does not speak.
   */
  private static double certified(double label, TireSnapshot then) {
    FillOrigin origin = then.origin();
    double least = label - origin.errors().deadBand(label);
    double missing = (least + origin.airPressure()) / origin.airKelvins() - origin.fill();
    return Math.max(
        (least + then.airPressure()) / then.airKelvins(), then.fill() + Math.max(0, missing));
  }
}
