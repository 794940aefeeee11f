package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dawngauge.ambient.AmbientSource;
import dawngauge.problem.Outcome;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What follows from a trip is computed when it is asked for, and once. */
class PlanTest {

  private final AtomicInteger asked = new AtomicInteger();
  private final AmbientSource counting =
      needs -> {
        asked.incrementAndGet();
        return Outcome.of(Map.of());
      };
  private final Planner planner = new Planner(SettingsFile.defaults(), List.of(counting));
  private final Trip trip =
      planner.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();

  @Test
  void nothingIsComputedBeforeItIsAskedFor() {
    Plan plan = planner.plan(trip);
    assertThat(plan.trip()).isEqualTo(trip);
    assertThat(asked).hasValue(0);
    plan.reminders();
    assertThat(asked).hasValue(1);
  }

  @Test
  void allPartsShareOneForecast() {
    Plan plan = planner.plan(trip).computed();
    assertThat(plan.advice()).isSameAs(plan.advice()).isNotNull();
    plan.fitness();
    plan.problems();
    plan.gaps();
    plan.adjustment();
    plan.checks(0);
    plan.losses();
    plan.heatFits();
    trip.rig().positions().forEach(position -> plan.figureNow(0, position));
    assertThat(asked).hasValue(1);
  }

  /** The review is held against a trip without leaks. */
  @Test
  void theReviewIsMadeOnce() {
    Plan plan = planner.plan(trip);
    assertThat(plan.review()).isPresent().isEqualTo(plan.review());
    plan.nextTrip(false);
    assertThat(asked).hasValue(1);
  }

  @Test
  void whatGoesWrongIsThrownEachTime() {
    AmbientSource broken =
        needs -> {
          throw new IllegalStateException("no air");
        };
    Plan plan = new Planner(SettingsFile.defaults(), List.of(broken)).plan(trip);
    assertThatThrownBy(plan::advice).hasMessage("no air");
    assertThatThrownBy(plan::fitness).hasMessage("no air");
  }
}
