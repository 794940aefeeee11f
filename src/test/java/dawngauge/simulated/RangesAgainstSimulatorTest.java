package dawngauge.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.simulated.ReadingRanges.HeatFactors;
import dawngauge.simulated.ReadingRanges.Known;
import dawngauge.simulated.ReadingRanges.Stratum;
import dawngauge.simulated.ReadingRanges.Tally;
import dawngauge.simulated.SimulatedHaul.World;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The 90 % ranges of readings against the second simulator, seeded. What was to hold: 86 to 94 % of
 * all readings, and in each stratum 80 % less two counting errors. Where that holds it is asserted;
 * where it does not, that it is no worse than it was over 1,000 hauls, whose figures stand here and
 * in docs/accuracy.md. More hauls come with {@code -Dsimulated.hauls=…}; what came of them is
 * printed. Whole hauls are independent, single readings are not: three errors counted by hauls are
 * allowed.
 */
class RangesAgainstSimulatorTest {

  private static final int HAULS = Integer.getInteger("simulated.hauls", 20);
  private static final long SEED = 20270801;
  private static final double ALLOWED = 3;

  private static ReadingRanges ranges(World world, Known known, HeatFactors factors, int hauls) {
    ReadingRanges ranges = ReadingRanges.of(world, known, factors, hauls, SEED);
    System.out.println(world + ", " + known + ", " + factors + ":\n" + ranges);
    return ranges;
  }

  private static void noWorse(ReadingRanges ranges, Map<Stratum, Double> measured) {
    measured.forEach(
        (stratum, held) -> {
          Tally tally = ranges.of(stratum);
          assertThat(tally.count()).as(stratum.toString()).isPositive();
          assertThat(tally.held() + ALLOWED * tally.byHauls())
              .as(stratum + ", of " + tally.count())
              .isGreaterThanOrEqualTo(held);
        });
  }

  /** Cold readings hold; warm ones lie over their ranges, by 3.1 psi but for truck tires. */
  @Test
  void fromTheFirstMorning() {
    ReadingRanges ranges = ranges(World.PLAIN, Known.FIRST_MORNING, HeatFactors.NONE, HAULS);
    Tally cold = ranges.of(Stratum.COLD);
    double allowed = ALLOWED * cold.byHauls();
    assertThat(cold.held()).isBetween(0.86 - allowed, 0.94 + allowed);
    assertThat(cold.mean()).isCloseTo(0, within(0.5)); // psi; 0.05 over 1,000 hauls
    Tally dawn = ranges.of(Stratum.COLD_DAWN);
    assertThat(dawn.count()).isGreaterThan(100);
    assertThat(dawn.held() + allowed - 2 * dawn.binomial()).isGreaterThanOrEqualTo(0.80);
    noWorse(
        ranges,
        Map.of(
            Stratum.COLD_DAWN, 0.916,
            Stratum.ALL, 0.772, // fails
            Stratum.WARM, 0.714, // fails
            Stratum.WARM_SMALL, 0.659, // fails
            Stratum.DUALS, 0.851,
            Stratum.UNWEIGHED, 0.799, // fails
            Stratum.DAY_FIVE, 0.795, // fails
            Stratum.PASS, 0.692)); // fails
    Tally small = ranges.of(Stratum.WARM_SMALL);
    assertThat(small.mean()).as("psi over what was expected").isLessThan(3.07 + 1);
  }

  /**
   * A warm reading over what was expected is taken for warmth, not for air: the next dawn's holds.
   * Taken for air, 29.8 % of the cold ones did, 4.0 psi under what was expected.
   */
  @Test
  void asReadingsCome() {
    ReadingRanges ranges = ranges(World.PLAIN, Known.AS_THEY_COME, HeatFactors.NONE, HAULS);
    Tally cold = ranges.of(Stratum.COLD);
    double allowed = ALLOWED * cold.byHauls();
    assertThat(cold.held()).isBetween(0.86 - allowed, 0.94 + allowed);
    assertThat(cold.mean()).isCloseTo(0, within(1.0)); // psi; 0.04 over 1,000 hauls
    noWorse(ranges, Map.of(Stratum.COLD_DAWN, 0.930, Stratum.ALL, 0.758)); // ALL fails
  }

  /**
   * With a record of earlier trips all strata hold, so that nothing else is amiss, and no range is
   * wider than need be: over 1,000 hauls 1.97 and 1.91 psi are told for 1.83 and 1.75.
   */
  @Test
  void withTheWarmthOfTheRigKnown() {
    HeatFactors known = HeatFactors.learned(Math.max(8, HAULS / 5), SEED + 1);
    for (Known from : Known.values()) {
      ReadingRanges ranges = ranges(World.PLAIN, from, known, HAULS);
      for (Stratum stratum : Stratum.values()) {
        Tally tally = ranges.of(stratum);
        assertThat(tally.held() + ALLOWED * tally.byHauls() - 2 * tally.binomial())
            .as(stratum.toString())
            .isGreaterThanOrEqualTo(0.86);
      }
      Tally all = ranges.of(Stratum.ALL);
      assertThat(all.mean()).isCloseTo(0, within(0.8)); // psi; −0.11 and 0.07 over 1,000 hauls
      assertThat(all.told() / all.spread()).as("as wide").isLessThan(1.4); // 1.08, 1.09
    }
  }

  /** Reported apart, without a target: 83.0 and 90.3 % of cold readings over 250 hauls. */
  @Test
  void sunThatNobodyNotedAndBrakes() {
    int hauls = Math.max(10, HAULS / 4);
    ReadingRanges sun = ranges(World.SUN_NOT_NOTED, Known.FIRST_MORNING, HeatFactors.NONE, hauls);
    noWorse(sun, Map.of(Stratum.COLD, 0.830));
    ReadingRanges brakes = ranges(World.BRAKES, Known.FIRST_MORNING, HeatFactors.NONE, hauls);
    noWorse(brakes, Map.of(Stratum.COLD, 0.903, Stratum.WARM, 0.219));
  }
}
