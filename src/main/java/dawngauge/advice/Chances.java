package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;

/** What lies between a stop and the next one where air can be added to a tire. */
final class Chances {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /**
   * A moment at which a tire is judged against its floor.
   *
   * @param visit index of the stop at or after which it lies
   * @param onLeg whether on the leg that leaves that stop, else when leaving it
   * @param moment the tire then
   * @param floor floor then, in pascal
   * @param chance that the tire is under it
   */
  record Judged(int visit, boolean onLeg, Moment moment, double floor, double chance) {

    /** Whether the tire is expected under its floor. */
    boolean under() {
      return moment.judged() < floor;
    }
  }

  private final Forecaster forecaster;
  private final double confidence;
  private final double sigmas;

  Chances(Forecaster forecaster) {
    this.forecaster = forecaster;
    this.confidence = forecaster.options().confidence();
    this.sigmas = NORMAL.inverseCumulativeProbability(confidence);
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

  /** Index of the next stop with air after one; the number of stops where there is none. */
  int nextWithAir(int visit) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    for (int i = visit + 1; i < visits.size(); i++) {
      if (!visits.get(i).passes() && airAt(forecaster, i) != null) {
        return i;
      }
    }
    return visits.size();
  }

  /** Every judged moment from leaving a stop until the next one with air. */
  List<Judged> until(int visit, List<TireAtStop> track) {
    List<Judged> all = new ArrayList<>();
    int end = Math.min(nextWithAir(visit), track.size() - 1);
    for (int i = visit; i < end; i++) {
      TireAtStop at = track.get(i);
      double floor = at.limits().floor();
      if (Double.isNaN(floor)) {
        continue;
      }
      Moment leaving = at.leaving();
      if (leaving != null) {
        all.add(new Judged(i, false, leaving, floor, at.leavingChance()));
      }
      if (at.low() != null) {
        all.add(new Judged(i, true, at.low().moment(), floor, at.low().chance()));
      }
    }
    return all;
  }

  /** Whether a chance is more than the chosen confidence allows. */
  boolean tooLikely(double chance) {
    return chance > 1 - confidence;
  }

  /**
   * The settled pressure at a moment of setting that keeps a later moment above its floor with the
   * chosen confidence, in pascal.
   */
  double neededSettled(Moment setting, Judged later) {
    Moment then = later.moment();
    double low = then.judged() - then.coldSide() - sigmas * then.limitSigma();
    double missing = later.floor() - low;
    double kelvins = Math.min(then.tireKelvins(), then.airKelvins());
    return setting.settled() + missing / kelvins * setting.airKelvins();
  }
}
