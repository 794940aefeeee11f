package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Ratio;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Optional;

/** The sentences of an adjustment plan. */
final class PlanWords {

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Chances chances;
  private final AirWords words;

  PlanWords(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.chances = new Chances(forecaster);
    this.words = new AirWords(forecaster, thresholds);
  }

  /** Which figures clash where a limit cannot be kept; empty where it is kept after all. */
  Optional<AdjustmentPlan.Clash> clash(
      WheelPosition position,
      int visit,
      boolean floor,
      List<TireAtStop> track,
      List<Integer> stops) {
    TireAtStop at = track.get(visit);
    Phrase text;
    if (floor) {
      Chances.Judged worst = Chances.worst(chances.judgedAt(visit, at));
      if (worst == null || !chances.tooLikely(worst)) {
        return Optional.empty();
      }
      text =
          Phrase.of(
              "{0} its load needs {1}, but it would be at {2} there, with a {3} chance of being"
                  + " under: {4}",
              words.where(worst),
              AirWords.floor(worst),
              AirWords.low(worst),
              new Ratio(worst.chance()),
              cause(visit, track, stops));
    } else {
      Moment check = at.check();
      if (check == null) {
        return Optional.empty();
      }
      text =
          Phrase.of(
              "before the start at {0} it would be at {1}, over its limit of {2}: let air out there"
                  + " while it is cold",
              place(visit),
              Shown.beside(check.settled(), at.limits().ceiling()),
              Shown.pressure(at.limits().ceiling()));
    }
    return Optional.of(new AdjustmentPlan.Clash(position, visit, text));
  }

  /** Why it cannot have more air. */
  private Phrase cause(int visit, List<TireAtStop> track, List<Integer> stops) {
    for (int i = stops.size() - 1; i >= 0; i--) {
      TireAtStop at = stops.get(i) <= visit ? track.get(stops.get(i)) : null;
      if (at != null && at.setting() != null) {
        double ceiling = at.limits().ceiling();
        return Double.isNaN(ceiling)
            ? Phrase.of(
                "its limit is not known, so no more than its aim is set at {0}",
                place(stops.get(i)))
            : Phrase.of(
                "its limit of {0}, or the hose, allows no more at {1}: lighten it, fit a tire that"
                    + " may have more, or take air along",
                Shown.pressure(ceiling), place(stops.get(i)));
      }
    }
    return Phrase.of("there is no air before: find some, or take it along");
  }

  /** In one line why no plan is better. */
  Phrase why(int count, StopSearch.Result result, List<TireWay> tires) {
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
    TireWay tire = tires.get(closest.tire());
    return Phrase.of(
        "{0} {1} {2}",
        count == 1 ? "with no stop" : "with one stop fewer, whichever is left out,",
        tire.position().words(),
        shortfall(tire, closest));
  }

  private Phrase shortfall(TireWay tire, StopSearch.Failure closest) {
    if (tire.enoughAt(closest.chosen(), closest.at())) {
      return Phrase.of("would be over its limit before the start at {0}", place(closest.at()));
    } else if (tire.keepsFloorAt(closest.chosen(), closest.at())) {
      return Phrase.of(
          "would start from {0} more than {1} under its aim",
          place(closest.at()), new Ratio(thresholds.planUnderAim()));
    }
    return Phrase.of(
        "would be under what its load needs, likelier than the {0} that you allow, when leaving {1}"
            + " or on the leg ahead",
        new Ratio(1 - forecaster.options().confidence()), place(closest.at()));
  }

  private String place(int visit) {
    return forecaster.itinerary().visits().get(visit).stop().place();
  }
}
