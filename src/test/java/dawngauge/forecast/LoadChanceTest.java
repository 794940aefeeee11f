package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireClass;
import dawngauge.trip.ReadingState;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both chances at a stop: with a coarse gauge, and at the label's own pressure. */
class LoadChanceTest {

  /** GAWR 5,200 lb at 60 psi, weighed at 99 % of it: nothing to spare. */
  private static RigBuilder full() {
    return RigBuilder.trailer()
        .tires(TireBuilder.lightTruck())
        .gawr("5200 lb")
        .weighed("5148 lb")
        .label("LT245/75R17", TireClass.LIGHT_TRUCK, "E", "60 psi");
  }

  private static List<TireAtStop> read(RigBuilder rig, String gauge, String pressure, String then) {
    return Forecasts.first(
        Trips.of(rig)
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("b").steady(then))
            .read("2027-06-01T05:59Z", "T1", pressure, gauge, ReadingState.COLD)
            .trip());
  }

  private static LoadChance chance(RigBuilder rig, String gauge, String pressure) {
    return read(rig, gauge, pressure, "60 °F").get(0).leavingChance();
  }

  /**
   * At its label, or under it by no more than the dead band (gauge "hand": 1.2816·1.2583 = 1.61
   * psi), it carries as certified, and no chance asks for anything.
   */
  @ParameterizedTest
  @CsvSource({"60 psi, true", "61 psi, true", "58.5 psi, true", "58.3 psi, false", "55 psi, false"})
  void asCertifiedAtTheLabelAndInItsDeadBand(String pressure, boolean certified) {
    LoadChance chance = chance(full(), "hand", pressure);

    assertThat(chance.asCertified()).isEqualTo(certified);
    assertThat(chance.notShown()).isGreaterThan(0.1);
    assertThat(chance.cannotBeShown(0.1)).isEqualTo(!certified);
    assertThat(chance.tooLikely(0)).isEqualTo(!certified);
  }

  /** 20 °F colder, the tire stands 2.9 psi lower: (60 + 14.7)·20/520. */
  @Test
  void notAnyMoreOnceItIsColder() {
    LoadChance later = read(full(), "hand", "60 psi", "40 °F").get(1).leavingChance();
    assertThat(later.asCertified()).isFalse();
    assertThat(later.cannotBeShown(0.1)).isTrue();
  }

  /** No ticket is needed for it, but none may say more than the GAWR. */
  @Test
  void noTicketNeededNoneOverTheRating() {
    assertThat(chance(full().weighed(null), "hand", "60 psi").asCertified()).isTrue();
    assertThat(chance(full().weighed("5230 lb"), "hand", "60 psi").asCertified()).isFalse();
  }

  /** Each coarser gauge says the same or more, at pressures all around the floors. */
  @Test
  void aCoarserGaugeNeverLoosens() {
    for (int psi = 40; psi <= 70; psi += 2) {
      double under = 0;
      double notShown = 0;
      for (String step : List.of("0.5 psi", "1 psi", "2 psi", "5 psi", "10 psi")) {
        LoadChance chance = chance(full().ownGauge(step), "own", psi + " psi");
        assertThat(chance.underFloor()).isGreaterThanOrEqualTo(under - 1e-3);
        assertThat(chance.notShown()).isGreaterThanOrEqualTo(notShown - 1e-3);
        under = chance.underFloor();
        notShown = chance.notShown();
      }
    }
  }

  /** With rows both curves are the rows: nothing typed or weighed would tell more. */
  @Test
  void firmWhereBothCurvesAreOne() {
    RigBuilder rows =
        full().tires(TireBuilder.lightTruck().row("50 psi", "2300 lb").row("80 psi", "3195 lb"));
    LoadChance chance = chance(rows, "hand", "58 psi");
    assertThat(chance.underFloor()).isEqualTo(chance.notShown()).isBetween(0.01, 0.99);
    assertThat(chance.firm()).isTrue();
    assertThat(chance(full(), "hand", "55 psi").firm()).isFalse();
  }

  @Test
  void unknownWithoutALoad() {
    LoadChance chance = chance(full().gawr(null).weighed(null), "hand", "60 psi");
    assertThat(chance.underFloor()).isNaN();
    assertThat(chance.tooLikely(0.1)).isFalse();
    assertThat(chance.cannotBeShown(0.1)).isFalse();
  }
}
