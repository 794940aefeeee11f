package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Stops and tires of the demo, looked for by a part of their name. */
class FoundTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static StopGrid grid(Trip trip) {
    Plan planned = PLANNER.plan(trip);
    Ledger ledger =
        Ledger.of(
            trip, planned.advice(), planned.problems(), planned.fitness(), UnitSystem.US, null);
    return StopGrid.of(trip, ledger, planned.advice(), StopGrid.Display.READS, Set.of());
  }

  private static Trip spring() {
    return PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  }

  @Test
  void stopsByAPartOfTheirName() {
    StopGrid grid = grid(spring());
    assertThat(Found.in(grid, "wal").stops()).containsExactly(1);
    assertThat(Found.in(grid, " TX ").stops()).containsExactly(4, 5, 6, 7, 8, 9, 10, 11, 12);
    assertThat(Found.in(grid, "overnight").stops()).isNotEmpty();
    assertThat(Found.in(grid, "").count()).isZero();
    assertThat(Found.in(grid, "?!").words()).isEqualTo("nothing found");
  }

  @Test
  void accentsAndCapitalsDoNotMatter() {
    Trip trip = spring();
    Trip renamed =
        RouteEdits.withStop(trip, 3, trip.route().stops().get(3).withPlace("Cañon Łódź"));
    assertThat(Found.in(grid(renamed), "canon lodz").stops()).containsExactly(3);
  }

  @Test
  void tiresByShortFormAndByWords() {
    StopGrid grid = grid(spring());
    assertThat(Found.in(grid, "t2r").tires()).containsExactly(9);
    assertThat(Found.in(grid, "t1").tires()).containsExactly(6, 7);
    assertThat(Found.in(grid, "left inner").tires()).containsExactly(3);
    assertThat(Found.in(grid, "left inner").words()).isEqualTo("stops 0, tires 1");
  }
}
