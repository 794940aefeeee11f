package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Mark;
import dawngauge.advice.ReadTable;
import dawngauge.advice.ReadTable.Band;
import dawngauge.advice.StopReadTables;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What readings at a stop would mean, found by trying them. */
class ReadTrialsTest {

  private static final double PSI = 6894.757293168361;

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip DEMO =
      PLANNER.store().open(Path.of("demo-data/spring-fleece-haul.dawngauge")).get();
  private static final Instant NOW = Instant.parse("2027-04-06T02:10:00Z");

  private static ReadTable table(StopReadTables stop, ReadingState state) {
    return stop.tables().stream().filter(table -> table.state() == state).findFirst().orElseThrow();
  }

  private static ReadTable.OfTire tire(ReadTable.Slot slot, String id) {
    return slot.tires().stream().filter(of -> of.tire().equals(id)).findFirst().orElseThrow();
  }

  /**
   * The label of t2r is 80 psi. At or below 80 % of it, 64 psi, a tire that rolled is to be looked
   * at inside (29 CFR 1910.177(f)(2) says so of truck wheels): the lowest band, and it ends there,
   * within half a psi, by quarters of which figures are tried.
   */
  @Test
  void aColdTireIsHeldUpToFourFifthsOfItsLabel() {
    ReadTable table =
        table(ReadTrials.of(PLANNER.plan(DEMO), 0, NOW, () -> true), ReadingState.COLD);
    for (ReadTable.Slot slot : table.slots()) {
      List<Band> bands = tire(slot, "T4").bands();
      assertThat(bands.get(0).low().mark()).isEqualTo(Mark.HOLD);
      assertThat(bands.get(0).from()).isZero();
      assertThat(bands.get(0).to() / PSI).isCloseTo(64, within(0.51));
    }
  }

  @Test
  void bandsFollowEachOtherAndSlotsStandAQuarterApart() {
    StopReadTables stop = ReadTrials.of(PLANNER.plan(DEMO), 4, NOW, () -> true);
    assertThat(stop.usual()).isEqualTo(ReadingState.WARM);
    ReadTable table = table(stop, ReadingState.WARM);
    Instant before = null;
    for (ReadTable.Slot slot : table.slots()) {
      assertThat(slot.tires()).hasSize(10);
      if (before != null) {
        assertThat(Duration.between(before, slot.time()))
            .isLessThanOrEqualTo(Duration.ofMinutes(15));
      }
      before = slot.time();
      for (ReadTable.OfTire tire : slot.tires()) {
        double end = 0;
        for (Band band : tire.bands()) {
          assertThat(band.from()).isEqualTo(end).isLessThan(band.to());
          assertThat(ReadTable.same(band.low(), band.high())).isTrue();
          end = band.to();
        }
        assertThat(end / PSI).isGreaterThan(85);
      }
    }
  }

  @Test
  void nothingIsTriedBeforeWhatIsNotedThere() {
    ReadTable table =
        table(ReadTrials.of(PLANNER.plan(DEMO), 0, NOW, () -> true), ReadingState.COLD);
    Instant noted = DEMO.log().get(DEMO.log().size() - 1).time().instant();
    assertThat(table.slots().get(0).time()).isAfter(noted);
  }

  @Test
  void aDayEndsWithTheMorningOfTheNext() {
    List<StopReadTables> day = ReadTrials.ahead(PLANNER.plan(DEMO), 1, NOW, () -> true);
    assertThat(day).extracting(StopReadTables::visit).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
    assertThat(day.get(7).tables())
        .extracting(ReadTable::state)
        .containsExactly(ReadingState.COLD, ReadingState.COLD_IN_SUN, ReadingState.WARM);
    assertThat(day.get(3).tables()).as("Clayton is passed").isEmpty();
  }

  @Test
  void whereAPlanIsFollowedNothingIsTold() {
    Trip followed = DEMO.withPlan(new PlanChoices(true, List.of(), Remarks.NONE));
    assertThat(ReadTrials.of(PLANNER.plan(followed), 4, NOW, () -> true).tables()).isEmpty();
  }
}
