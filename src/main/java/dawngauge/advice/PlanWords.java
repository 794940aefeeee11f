package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.rules.RanLow;
import dawngauge.trip.Air;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sentences of an adjustment plan. */
final class PlanWords {

  /** A plan takes lost air as a straight line of the air in the tire; pascal. */
  private static final double ROUNDING = GaugePressure.of(0.1, Unit.PSI).pascals();

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final PlanWishes wishes;
  private final int first;
  private final Lookahead lookahead;
  private final AirWords words;

  PlanWords(Forecaster forecaster, Thresholds thresholds, PlanWishes wishes, int first) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.wishes = wishes;
    this.first = first;
    this.lookahead = new Lookahead(forecaster);
    this.words = new AirWords(forecaster);
  }

  /**
   * Which figures clash where a limit cannot be kept; empty where it is kept after all.
   *
   * @param visits where it was given up, in the order found
   * @param track the tire with what the plan sets
   */
  Optional<AdjustmentPlan.Clash> clash(
      WheelPosition position,
      AdjustmentPlan.Limit limit,
      List<Integer> visits,
      List<TireAtStop> track) {
    if (limit == AdjustmentPlan.Limit.FLOOR) {
      List<Lookahead.Judged> all = new ArrayList<>();
      visits.forEach(visit -> all.addAll(lookahead.judgedAt(visit, track.get(visit))));
      Lookahead.Judged worst = lookahead.worst(all);
      return worst == null
          ? Optional.empty()
          : Optional.of(
              new AdjustmentPlan.Clash(position, limit, worst.visit(), underFloor(worst, track)));
    }
    int visit = visits.get(0);
    TireAtStop at = track.get(visit);
    TireSnapshot check = at.check();
    if (check == null) {
      return Optional.empty();
    }
    Phrase text =
        limit == AdjustmentPlan.Limit.CEILING
            ? overCeiling(at, check)
            : underAim(at, check, cause(visit, track));
    return Optional.of(new AdjustmentPlan.Clash(position, limit, visit, text));
  }

  /**
   * Adds where the tire lacks air all the same, and that is not told yet: before anything could be
   * set, or since its load is likelier too much than allowed at any pressure.
   */
  void stillLacking(
      WheelPosition position, List<TireAtStop> track, List<AdjustmentPlan.Clash> clashes) {
    boolean told =
        clashes.stream()
            .filter(clash -> clash.position().equals(position))
            .anyMatch(
                clash ->
                    clash.limit() == AdjustmentPlan.Limit.FLOOR
                        || clash.limit() == AdjustmentPlan.Limit.LOAD);
    List<Lookahead.Judged> all = new ArrayList<>();
    for (int visit = first; visit < track.size() - 1 && !told; visit++) {
      all.addAll(lookahead.judgedAt(visit, track.get(visit)));
    }
    all.removeIf(judged -> !lookahead.noAirHelps(judged) && lookahead.missing(judged) < ROUNDING);
    Lookahead.Judged worst = lookahead.worst(all);
    if (worst != null) {
      clashes.add(
          new AdjustmentPlan.Clash(
              position, AdjustmentPlan.Limit.FLOOR, worst.visit(), underFloor(worst, track)));
    }
  }

  private Phrase underFloor(Lookahead.Judged worst, List<TireAtStop> track) {
    return Phrase.of(
        "{0} {1}: {2}: lighten it, fit a tire that may have more, or take air along",
        words.where(worst), words.state(worst), cause(worst.visit(), track));
  }

  /** A figure chosen by hand that is not set. */
  AdjustmentPlan.Clash refused(WheelPosition position, int visit, double figure) {
    Phrase text =
        Phrase.of(
            "the {0} that you chose at {1} is not set: it is over its limit, below what it has while"
                + " it is warm, or would not last",
            PressureText.figure(new GaugePressure(figure)), place(visit));
    return new AdjustmentPlan.Clash(position, AdjustmentPlan.Limit.WISH, visit, text);
  }

  private Phrase overCeiling(TireAtStop at, TireSnapshot check) {
    return Phrase.of(
        "before the start at {0} it would be at {1}, over its limit of {2}: let air out there while"
            + " it is cold",
        place(at.visit()),
        PressureText.beside(check.settled(), at.limits().ceiling()),
        PressureText.pressure(at.limits().ceiling()));
  }

  private Phrase underAim(TireAtStop at, TireSnapshot check, Phrase cause) {
    return Phrase.of(
        "before the start at {0} it would be at {1}, more than {2} under {3}, {4}: {5}",
        place(at.visit()),
        PressureText.pressure(check.settled()),
        new Ratio(thresholds.planUnderAim()),
        PressureText.pressure(at.limits().aim()),
        AirWords.aim(at.limits()),
        cause);
  }

  /** Why it cannot have more air. */
  private Phrase cause(int visit, List<TireAtStop> track) {
    boolean ruledOut = false;
    for (int before = visit; before >= first; before--) {
      boolean forbidden = wishes.forbidden().contains(before);
      boolean passes = forecaster.itinerary().visits().get(before).passes();
      Air air = passes ? null : Lookahead.airAt(forecaster, before);
      ruledOut |= forbidden && air != null;
      if (air != null && !forbidden) {
        double ceiling = track.get(before).limits().ceiling();
        return Double.isNaN(ceiling)
            ? Phrase.of(
                "its limit is not known, so no more than what it is set to cold is set at {0}",
                place(before))
            : Phrase.of(
                "its limit of {0}{1} allows no more at {2}",
                PressureText.pressure(ceiling),
                Double.isInfinite(Lookahead.reach(air)) ? "" : ", or the hose,",
                place(before));
      }
    }
    return ruledOut
        ? Phrase.of("the stops with air before it are ruled out")
        : Phrase.of("there is no air before it");
  }

  /** In one line why no plan is better. */
  Phrase why(int count, StopSearch.Result result, List<TireConstraints> tires) {
    if (result.sets().isEmpty()) {
      return Phrase.of("no smaller number of stops was found in the time allowed");
    }
    StopSearch.Failure closest = result.closest();
    if (count == 0) {
      return Phrase.of("no tire leaves its limits, so no hose is needed");
    }
    if (closest.tire() < 0) {
      return Phrase.of("the stops that you chose are enough");
    }
    TireConstraints tire = tires.get(closest.tire());
    return Phrase.of(
        "{0} {1} {2}",
        count == 1 ? "with no stop" : "with one stop fewer, whichever is left out,",
        tire.position().words(),
        shortfall(tire, closest));
  }

  private Phrase shortfall(TireConstraints tire, StopSearch.Failure closest) {
    if (tire.enoughAt(closest.chosen(), closest.at())) {
      return Phrase.of("would be over its limit before the start at {0}", place(closest.at()));
    } else if (tire.keepsFloorAt(closest.chosen(), closest.at())) {
      return Phrase.of(
          "would start from {0} more than {1} under what it is set to cold",
          place(closest.at()), new Ratio(thresholds.planUnderAim()));
    }
    return Phrase.of(
        "would have too little for its load, likelier than the {0} that you allow, or be down to {1}"
            + " of what it belongs at, when leaving {2} or on the leg ahead",
        new Ratio(lookahead.allowed()), new Ratio(RanLow.PART), place(closest.at()));
  }

  private String place(int visit) {
    return forecaster.itinerary().visits().get(visit).stop().place();
  }
}
