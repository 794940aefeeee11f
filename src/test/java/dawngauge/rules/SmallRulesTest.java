package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules of one line: chances of the normal distribution, dual mates, names in machine output. */
class SmallRulesTest {

  /** From tables of the standard normal distribution. */
  @ParameterizedTest
  @CsvSource({"-1.2816, 0.1", "0, 0.5", "1.6449, 0.95", "3, 0.998650", "-7, 0", "7, 1"})
  void chancesAreThoseOfTheTables(double deviations, double chance) {
    assertThat(Quantile.under(deviations)).isCloseTo(chance, within(1e-5));
  }

  @Test
  void whatIsNotKnownHasNoChance() {
    assertThat(Quantile.under(Double.NaN)).isNaN();
  }

  /** Common practice, no source: under 80 % of its mate a tire carries no more. */
  @ParameterizedTest
  @CsvSource({"100, 79.9, true", "100, 80, false", "100, 120, false", "100, NaN, false"})
  void aTireCarriesForBothWhereItsMateIsWellUnderIt(double own, double mate, boolean alone) {
    assertThat(DualMates.carriesAlone(own, mate)).isEqualTo(alone);
  }

  /** As docs/commands.md promises for the field loadBasis. */
  @Test
  void theBasisOfALoadHasItsPromisedName() {
    assertThat(Loads.Basis.values())
        .extracting(Loads.Basis::word)
        .containsExactly("wheel", "axle", "group", "not weighed", "not known");
    assertThat(Loads.Basis.values())
        .extracting(Loads.Basis::words)
        .containsExactly(
            "each side weighed",
            "weighed alone",
            "weighed as a group",
            "not weighed",
            "no weight and no GAWR");
  }
}
