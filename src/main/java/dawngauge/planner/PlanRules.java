package dawngauge.planner;

import dawngauge.advice.Thresholds;
import dawngauge.ambient.AmbientSource;
import dawngauge.fitness.FitnessCheck;
import dawngauge.forecast.ForecastOptions;
import dawngauge.settings.Settings;
import java.util.List;

/**
 * By what a trip is planned.
 *
 * @param options how limits are judged
 * @param thresholds when a tire is looked at again, and the like
 * @param fitness how the rig is judged before it rolls
 * @param further where air is asked for beyond what stands in the trip, in order
 */
record PlanRules(
    ForecastOptions options,
    Thresholds thresholds,
    FitnessCheck.Options fitness,
    List<AmbientSource> further) {

  PlanRules {
    further = List.copyOf(further);
  }

  static PlanRules of(Settings settings, List<AmbientSource> further) {
    double reserve = settings.reserve().value();
    double confidence = settings.confidence().value();
    return new PlanRules(
        new ForecastOptions(confidence, reserve),
        new Thresholds(
            settings.recheckChange().pascals(),
            settings.recheckChangePart().value(),
            settings.dualsApart().pascals(),
            settings.planUnderAim().value(),
            settings.shortStopMinutes() * 60.0),
        new FitnessCheck.Options(reserve, confidence, settings.dualsApart()),
        further);
  }
}
