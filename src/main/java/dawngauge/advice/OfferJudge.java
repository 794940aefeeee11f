package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.HitchShare;
import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LoadChange;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges whether a load that is only offered could be taken on, from its stop to the end. */
final class OfferJudge {

  /** Halvings in the search for the most that could be taken. */
  private static final int HALVINGS = 12;

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Adviser.Judgement without;
  private final int visit;
  private final Map<AxleRef, Double> hitchShare;

  OfferJudge(Forecaster forecaster, Thresholds thresholds, Adviser.Judgement without, int visit) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.without = without;
    this.visit = visit;
    this.hitchShare = HitchShare.of(forecaster.trip().rig()).parts();
  }

  OfferAdvice judge(LoadChange offer) {
    List<Reason> unknown = unweighed(offer);
    if (!unknown.isEmpty()) {
      return new OfferAdvice(offer, unknown, new Mass(0));
    }
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
    Mass most = offer.weight().value().times(fits);
    return new OfferAdvice(offer, binding(reasons, reasons(offer, tooMuch), most), most);
  }

  /** Names what binds first where that is not what stands against all of it. */
  private static List<Reason> binding(List<Reason> all, List<Reason> first, Mass most) {
    String template = first.get(0).text().template();
    if (all.stream().anyMatch(reason -> reason.text().template().equals(template))) {
      return all;
    }
    List<Reason> named = new ArrayList<>(all);
    Phrase text =
        Phrase.of("{0}; above {1} already {2}", all.get(0).text(), most, first.get(0).text());
    named.set(0, new Reason(Mark.HOLD, all.get(0).todo(), text, all.get(0).rank(), true));
    return named;
  }

  /** An axle that was not weighed is judged as full already: nothing can be said of more. */
  private List<Reason> unweighed(LoadChange offer) {
    Set<AxleRef> axles = new LinkedHashSet<>();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      Entered<Ratio> share = offer.axles().get(position.axle());
      if ((share != null && share.value().value() != 0) || takesHitch(offer, position.axle())) {
        axles.add(position.axle());
      }
    }
    List<Reason> reasons = new ArrayList<>();
    if (axles.isEmpty()) {
      reasons.add(
          new Reason(
              Mark.HOLD,
              Phrase.of("not said which axles take it: whether it fits is not known"),
              0));
    }
    for (AxleRef axle : axles) {
      Loads.Basis basis = forecaster.loads().axle(visit, axle).basis();
      if (!basis.weighed()) {
        reasons.add(
            new Reason(
                Mark.HOLD,
                Phrase.of(
                    "{0} is not weighed, so whether it can carry more is not known: weigh it first",
                    axle.words()),
                0));
      }
    }
    return reasons;
  }

  private boolean takesHitch(LoadChange offer, AxleRef axle) {
    Entered<Ratio> hitch = offer.hitch();
    return hitch != null && hitch.value().value() != 0 && hitchShare.containsKey(axle);
  }

  /** What stands against taking a part of the offer on, each thing once. */
  private List<Reason> reasons(LoadChange offer, double part) {
    Forecaster with = forecaster.taking(offer, part);
    Map<String, Reason> distinct = new LinkedHashMap<>();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      List<TireAtStop> track = with.track(position).map(Track::stops).orElse(List.of());
      for (int stop = visit; stop < track.size() - 1; stop++) {
        HoldRules.overloadOnly(track.get(stop)).stream()
            .filter(reason -> reason.mark() == Mark.HOLD)
            .forEach(reason -> distinct.putIfAbsent(reason.text().in(UnitSystem.US), reason));
      }
    }
    return distinct.isEmpty() ? furtherHolds(with) : new ArrayList<>(distinct.values());
  }

  /** Tires that the load puts on hold although no rating is passed: not enough air for it. */
  private List<Reason> furtherHolds(Forecaster with) {
    Adviser.Judgement taken = Adviser.Judgement.of(with, thresholds, null, loadedBy(with));
    Map<String, Reason> distinct = new LinkedHashMap<>();
    for (int stop = visit; stop < taken.byStop().size(); stop++) {
      String place = forecaster.itinerary().visits().get(stop).stop().place();
      for (TireAdvice tire : taken.byStop().get(stop)) {
        WheelPosition position = tire.tire().fitted().position();
        Set<String> known = new HashSet<>();
        without.byStop().get(stop).stream()
            .filter(before -> before.tire().fitted().position().equals(position))
            .flatMap(before -> before.reasons().stream())
            .forEach(before -> known.add(before.mark() + before.text().template()));
        tire.reasons().stream()
            .filter(reason -> reason.mark() == Mark.HOLD)
            .filter(reason -> !known.contains(reason.mark() + reason.text().template()))
            .map(reason -> named(place, position.words(), reason))
            .forEach(reason -> distinct.putIfAbsent(reason.text().in(UnitSystem.US), reason));
      }
    }
    return new ArrayList<>(distinct.values());
  }

  /**
   * Tires of the axles on which any carries another load then, be it for a flat one on another
   * axle: of all others nothing changes.
   */
  private List<WheelPosition> loadedBy(Forecaster with) {
    List<WheelPosition> all = forecaster.trip().rig().positions();
    Set<AxleRef> loaded = new HashSet<>();
    for (WheelPosition position : all) {
      for (int stop = visit; stop < forecaster.itinerary().visits().size(); stop++) {
        if (!with.loads().tire(stop, position).equals(forecaster.loads().tire(stop, position))) {
          loaded.add(position.axle());
        }
      }
    }
    return all.stream().filter(position -> loaded.contains(position.axle())).toList();
  }

  private static Reason named(String place, String tire, Reason reason) {
    return new Reason(
        Mark.HOLD, Phrase.of("at {0}, {1}: {2}", place, tire, reason.text()), reason.rank());
  }
}
