package dawngauge.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A re-check has a reason of that tire; what is good habit is a line of the stop. */
class RecheckBudgetTest {

  /** More re-checks than this part of all tires at stops, and nobody reads them; ours. */
  private static final double MOST = 0.15;

  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul", "autumn-stock-haul"})
  void fewTiresAreToBeRechecked(String name) {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Trip trip = planner.store().open(Path.of("demo-data", name + ".dawngauge")).get();
    List<StopAdvice> stops = Objects.requireNonNull(planner.plan(trip).advice()).stops();
    List<TireAdvice> tires = stops.stream().flatMap(stop -> stop.tires().stream()).toList();
    long rechecks = tires.stream().filter(tire -> tire.mark() == Mark.RECHECK).count();
    assertThat(rechecks).isPositive().isLessThanOrEqualTo((long) (MOST * tires.size()));
    assertThat(stops).anyMatch(stop -> !stop.routine().isEmpty());
  }
}
