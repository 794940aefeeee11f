package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.testdata.TireBuilder;
import dawngauge.tire.Capacity;
import dawngauge.tire.CertifiedPoint;
import dawngauge.tire.Fitment;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Floor, margin and chances of a loaded tire: what holds for all of them, drawn by lot (seeded).
 */
class CarryingTest {

  private static final int TIRES = 3_000;
  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  private final Random random = new Random(20270310);

  /** A tire, loaded, and the pressure it is rated at. */
  private record Case(Capacity capacity, Carrying carrying, LoadSpread load, double rated) {}

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static String text(double number, String unit) {
    return String.format(Locale.ROOT, "%.3f %s", number, unit);
  }

  private Case next() {
    double psi = between(30, 120);
    double pounds = between(1000, 7000);
    TireBuilder tire =
        (random.nextBoolean() ? TireBuilder.special() : TireBuilder.lightTruck())
            .rated(text(pounds, "lb"), text(psi, "psi"));
    if (random.nextInt(3) == 0) {
      double p = psi * between(0.4, 0.8);
      double load = pounds * between(0.4, 0.7);
      for (int i = 0; i < 4; i++) {
        tire.row(text(p, "psi"), text(load, "lb"));
        p += between(0.5, 15);
        load += between(0, 0.2) * pounds;
      }
    }
    CertifiedPoint label = null;
    if (random.nextBoolean()) {
      double part = between(0.4, 1);
      label =
          new CertifiedPoint(
              new GaugePressure(psi * PSI * part),
              Mass.of(pounds * part * between(0.9, 1.2), Unit.POUND));
    }
    Capacity capacity = capacity(tire, label);
    double middle = capacity.ratedKilograms() * between(0.1, 1.05);
    double sigma = middle * (random.nextInt(5) == 0 ? 0 : between(0.005, 0.15));
    LoadSpread load =
        random.nextBoolean()
            ? LoadSpread.about(middle, sigma)
            : new LoadSpread(middle, sigma, middle + 2 * sigma);
    boolean fast = random.nextInt(4) == 0;
    return new Case(
        capacity,
        new Carrying(capacity, load, fast ? 0.9 : 1, fast ? 10 * PSI : 0),
        load,
        capacity.ratedPascals());
  }

  private static Capacity capacity(TireBuilder tire, @Nullable CertifiedPoint label) {
    return Capacity.of(tire.spec(), new Fitment(false, true), label).get();
  }

  /** Both say the same: a margin of nothing or more, and a pressure at the floor or over it. */
  @Test
  void theMarginIsNotNegativeJustFromTheFloorOn() {
    int none = 0;
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      double floor = tire.carrying.floor();
      if (Double.isNaN(floor)) {
        none++;
        assertThat(tire.carrying.marginAt(10 * tire.rated)).isNegative();
        continue;
      }
      assertThat(tire.carrying.marginAt(floor + 1)).isGreaterThanOrEqualTo(0);
      assertThat(tire.carrying.marginAt(floor - 1)).isNegative();
      for (int i = 0; i < 10; i++) {
        double p = between(-0.2, 1.5) * tire.rated;
        if (Math.abs(p - floor) > 1) {
          assertThat(tire.carrying.marginAt(p) >= 0).isEqualTo(p > floor);
        }
      }
    }
    assertThat(none).as("loads over all that a tire may carry").isBetween(50, TIRES / 2);
  }

  /**
   * More air: no chance rises, no margin falls. The cautious curve never says less than the likely.
   */
  @Test
  void moreAirNeverHurtsAndTheCautiousChanceIsTheLarger() {
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      double sigma = random.nextInt(5) == 0 ? 0 : between(0.3, 5) * PSI;
      double under = 1;
      double notShown = 1;
      double margin = -1;
      for (int i = -2; i <= 14; i++) {
        double p = tire.rated * i / 10;
        double nextUnder = tire.carrying.underFloor(p, sigma);
        double nextNotShown = tire.carrying.notShown(p, sigma);
        assertThat(nextUnder).isLessThanOrEqualTo(under + 1e-6);
        assertThat(nextNotShown).isLessThanOrEqualTo(notShown + 1e-6);
        assertThat(nextNotShown).isGreaterThanOrEqualTo(nextUnder - 1e-9);
        assertThat(tire.carrying.marginAt(p)).isGreaterThanOrEqualTo(margin);
        under = nextUnder;
        notShown = nextNotShown;
        margin = tire.carrying.marginAt(p);
      }
    }
  }

  @Test
  void neededIsTheLowestPressureWithTheChance() {
    int none = 0;
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      double sigma = between(0.05, 5) * PSI;
      double chance = between(0.01, 0.6);
      double needed = tire.carrying.needed(chance, sigma);
      if (Double.isNaN(needed)) {
        none++;
        assertThat(tire.carrying.underFloor(10 * tire.rated, sigma)).isGreaterThan(chance);
        continue;
      }
      assertThat(tire.carrying.underFloor(needed, sigma)).isLessThanOrEqualTo(chance);
      assertThat(tire.carrying.underFloor(needed - 20, sigma)).isGreaterThan(chance - 1e-6);
    }
    assertThat(none).as("loads that no pressure carries with the chance").isBetween(50, TIRES / 2);
  }

  /** Of two spreads the one that needs more counts, whichever is named first. */
  @Test
  void theLargerNeedOfTwoSpreadsCounts() {
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      double one = between(0.05, 5) * PSI;
      double other = between(0.05, 5) * PSI;
      double chance = between(0.01, 0.6);
      double larger =
          Math.max(tire.carrying.needed(chance, one), tire.carrying.needed(chance, other));
      assertThat(tire.carrying.needed(chance, one, other)).isCloseTo(larger, within(20.0));
      assertThat(tire.carrying.needed(chance, other, one)).isCloseTo(larger, within(20.0));
    }
  }

  /** Rows that go on above the rated pressure: 2,800 lb at 71.33 psi of a tire rated at 70. */
  @Test
  void neededReachesAboveTheRatedPressureWhereRowsDo() {
    Capacity capacity =
        capacity(
            TireBuilder.lightTruck()
                .rated("2800 lb", "70 psi")
                .row("50 psi", "2205 lb")
                .row("80 psi", "3042 lb"),
            null);
    double load = capacity.ratedKilograms();
    Carrying carrying = new Carrying(capacity, LoadSpread.about(load, 0), 1, 0);
    // 50 + 30·595/837, and 1.2816 of 0.1 psi more
    assertThat(carrying.needed(0.1, 0.1 * PSI) / PSI).isCloseTo(71.326 + 0.128, within(0.001));
  }

  /** A pressure known for sure, a load known for sure: a step at the floor. */
  @Test
  void withoutSpreadTheChanceIsAStep() {
    Capacity capacity = capacity(TireBuilder.special(), null);
    double load = 0.8 * capacity.ratedKilograms();
    Carrying carrying = new Carrying(capacity, LoadSpread.about(load, 0), 1, 0);
    assertThat(carrying.notShown(64.001 * PSI, 0)).isZero(); // 80 · 0.8
    assertThat(carrying.notShown(63.999 * PSI, 0)).isEqualTo(1);
    assertThat(carrying.underFloor(54.631 * PSI, 0)).isZero(); // 80 · 0.8^(1/0.585) = 54.630
    assertThat(carrying.underFloor(54.629 * PSI, 0)).isEqualTo(1);
    assertThat(carrying.times(1.25).floor() / PSI).isCloseTo(80, within(1e-6));
    assertThat(carrying.notShown(Double.NaN, 0)).isNaN();
  }

  /** Rows straight through nothing, 20 lb a psi. */
  private static Carrying even(double pounds, double sigma) {
    Capacity capacity =
        capacity(
            TireBuilder.lightTruck()
                .rated("2000 lb", "100 psi")
                .row("50 psi", "1000 lb")
                .row("100 psi", "2000 lb"),
            null);
    double lb = Mass.of(1, Unit.POUND).kilograms();
    return new Carrying(capacity, LoadSpread.about(pounds * lb, sigma * lb), 1, 0);
  }

  /**
   * 50 lb at 20 lb a psi are 2.5 psi; the 32 middle quantiles of a normal spread have 0.98038 of
   * its standard deviation (the root of the mean of their squares, computed outside this code).
   */
  @Test
  void theNeededPressureSpreadsAsTheLoadDoes() {
    assertThat(even(1000, 50).needSigma() / PSI).isCloseTo(2.5 * 0.98038, within(1e-4));
    assertThat(even(1000, 0).needSigma()).isCloseTo(0.0, within(1.0));
    assertThat(even(2500, 0).needSigma()).as("no pressure carries it").isZero();
  }

  /** 1,500 lb at 75 psi: over 1,000 lb by half, over twice as much short by a quarter. */
  @Test
  void theMarginIsOfThePartThatIsCarried() {
    Carrying carrying = even(1000, 0);
    assertThat(carrying.marginAt(75 * PSI)).isCloseTo(0.5, within(1e-9));
    assertThat(carrying.times(2).marginAt(75 * PSI)).isCloseTo(-0.25, within(1e-9));
    assertThat(carrying.times(2).floor() / PSI).isCloseTo(100, within(1e-6));
    assertThat(even(0, 0).marginAt(75 * PSI)).isNaN();
  }
}
