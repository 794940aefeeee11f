package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LoadChange;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Judges whether a load that is only offered could be taken on. */
final class OfferJudge {

  /** Halvings in the search for the most that could be taken. */
  private static final int HALVINGS = 12;

  private final Forecaster forecaster;
  private final int visit;

  OfferJudge(Forecaster forecaster, int visit) {
    this.forecaster = forecaster;
    this.visit = visit;
  }

  OfferAdvice judge(LoadChange offer) {
    List<Reason> reasons = reasons(offer, 1);
    if (reasons.isEmpty()) {
      return new OfferAdvice(offer, reasons, null);
    }
    double fits = 0;
    double tooMuch = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double half = (fits + tooMuch) / 2;
      if (reasons(offer, half).isEmpty()) {
        fits = half;
      } else {
        tooMuch = half;
      }
    }
    return new OfferAdvice(offer, reasons, offer.weight().value().times(fits));
  }

  /** What stands against taking a part of the offer on, each thing once. */
  private List<Reason> reasons(LoadChange offer, double part) {
    Forecaster with = forecaster.taking(offer, part);
    Map<String, Reason> distinct = new LinkedHashMap<>();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      List<TireAtStop> track = with.track(position).map(Track::stops).orElse(List.of());
      if (visit < track.size() - 1) {
        for (Reason reason : HoldRules.overloadOnly(track.get(visit))) {
          distinct.putIfAbsent(reason.text().in(UnitSystem.US), reason);
        }
      }
    }
    return new ArrayList<>(distinct.values());
  }
}
