package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.FigureNow;
import dawngauge.advice.SetFigure;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Where a plan is followed, its figure is that of every page. */
class FollowedFigureTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  @Test
  void theFigurePageAndTheForecastShowThePlannedFigures() {
    Trip demo = PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
    Trip trip = demo.withPlan(new PlanChoices(true, List.of(), Remarks.NONE));
    AdjustmentPlan plan = PLANNER.plan(trip).adjustment().get().plan();
    int compared = 0;
    for (AdjustmentPlan.Planned stop : plan.stops()) {
      for (var each : stop.settings().entrySet()) {
        FigureNow now = PLANNER.plan(trip).figureNow(stop.visit(), each.getKey()).orElseThrow();
        assertThat(shown(now.cold())).isEqualTo(shown(each.getValue().timed().cold()));
        SetFigure onArrival = each.getValue().timed().onArrival();
        if (onArrival != null) {
          assertThat(shown(now.warm())).isEqualTo(shown(onArrival));
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(2);
  }

  private static String shown(@Nullable SetFigure figure) {
    return figure == null ? "none" : String.valueOf(figure.figure());
  }
}
