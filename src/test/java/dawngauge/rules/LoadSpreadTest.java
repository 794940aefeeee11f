package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A load's spread against closed forms of the normal distribution, and against drawn loads. */
class LoadSpreadTest {

  private static final LoadSpread CUT = new LoadSpread(80, 12, 100);

  /**
   * N(80, 12) cut at 100: with a = 5/3, λ = φ(a)/Φ(a) = 0.0994771/0.9522096 = 0.104470 the mean is
   * 80 − 12·λ, σ 12·√(1 − a·λ − λ²) (Johnson, Kotz, Balakrishnan 1994, 13.10).
   */
  @Test
  void cutAboveTheMiddle() {
    assertThat(CUT.mean()).isCloseTo(78.7464, within(0.0005));
    assertThat(CUT.sigma()).isCloseTo(10.8331, within(0.0005));
  }

  @Test
  void cutAtTheMiddleIsHalfANormalDistribution() {
    LoadSpread half = new LoadSpread(50, 10, 50);
    assertThat(half.mean()).isCloseTo(50 - 10 * Math.sqrt(2 / Math.PI), within(1e-4));
    assertThat(half.sigma()).isCloseTo(10 * Math.sqrt(1 - 2 / Math.PI), within(1e-4));
    assertThat(half.quantile(0.5)).isCloseTo(50 - 6.7449, within(1e-3)); // Φ⁻¹(0.25)
  }

  /** Seeded: 200,000 loads drawn and thrown away above the cut. */
  @Test
  void drawnLoadsHaveItsMeanSpreadAndChances() {
    Random random = new Random(20270309);
    double sum = 0;
    double squares = 0;
    int over90 = 0;
    int kept = 0;
    while (kept < 200_000) {
      double load = 80 + 12 * random.nextGaussian();
      if (load <= 100) {
        kept++;
        sum += load;
        squares += load * load;
        over90 += load > 90 ? 1 : 0;
      }
    }
    double mean = sum / kept;
    assertThat(CUT.mean()).isCloseTo(mean, within(0.1));
    assertThat(CUT.sigma()).isCloseTo(Math.sqrt(squares / kept - mean * mean), within(0.1));
    assertThat(CUT.chanceOver(90)).isCloseTo((double) over90 / kept, within(0.004));
  }

  /**
   * Equal parts of the chance: their quantiles' mean is the mean, within what 1,000 parts leave.
   */
  @Test
  void meanOfTheQuantilesIsTheMean() {
    for (LoadSpread load : new LoadSpread[] {CUT, LoadSpread.about(80, 12)}) {
      double sum = 0;
      for (int i = 0; i < 1000; i++) {
        sum += load.quantile((i + 0.5) / 1000);
      }
      assertThat(sum / 1000).isCloseTo(load.mean(), within(0.01));
    }
  }

  @Test
  void chanceOverUndoesTheQuantile() {
    for (double chance = 0.05; chance < 1; chance += 0.05) {
      assertThat(1 - CUT.chanceOver(CUT.quantile(chance))).isCloseTo(chance, within(1e-5));
    }
    assertThat(CUT.chanceOver(100)).isZero();
    assertThat(LoadSpread.about(80, 12).chanceOver(80)).isCloseTo(0.5, within(1e-6));
    assertThat(LoadSpread.about(80, 0).chanceOver(79)).isEqualTo(1);
    assertThat(LoadSpread.about(80, 0).chanceOver(80)).isZero();
    LoadSpread unknown = new LoadSpread(Double.NaN, Double.NaN, Double.NaN);
    assertThat(unknown.chanceOver(80)).isNaN();
    assertThat(unknown.mean()).isNaN();
  }

  /** Two halves are the whole. */
  @Test
  void partsAndSums() {
    LoadSpread half = CUT.times(0.5);
    assertThat(half.mean()).isCloseTo(CUT.mean() / 2, within(1e-9));
    assertThat(half.sigma()).isCloseTo(CUT.sigma() / 2, within(1e-9));
    assertThat(half.plus(half)).isEqualTo(CUT);
  }

  @Test
  void noLoadIsUnderNothing() {
    LoadSpread nothing = new LoadSpread(0, 12, 5);
    assertThat(nothing.mean()).isZero();
    assertThat(nothing.quantile(0.01)).isZero();
  }
}
