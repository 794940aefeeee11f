package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.rules.Limits;
import dawngauge.testdata.Forecasts;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What must hold for every haul, on hauls drawn by lot (seeded). Tires are tight unless said. */
class ForecastPropertyTest {

  private static final int HAULS = 200;

  /** Relative; the times of a changed haul are rounded to a quarter of a microsecond. */
  private static final double ROUNDING = 1e-9;

  private static void forEach(long seed, BiConsumer<RandomHaul, Random> check) {
    Random random = new Random(seed);
    for (int i = 0; i < HAULS; i++) {
      check.accept(RandomHaul.drawn(random), random);
    }
  }

  private static List<TireAtStop> track(RandomHaul haul) {
    return Forecasts.first(haul.trip());
  }

  private static int laterStop(RandomHaul haul, Random random) {
    return 1 + random.nextInt(haul.places().size() - 1);
  }

  private static List<@Nullable TireSnapshot> moments(TireAtStop at) {
    List<@Nullable TireSnapshot> all = new ArrayList<>();
    all.add(at.arrival());
    all.add(at.check());
    all.add(at.leaving());
    return all;
  }

  private static double settled(TireAtStop at) {
    return known(at.arrival()).settled();
  }

  private static void assertSame(double actual, double expected) {
    if (Double.isNaN(expected)) {
      assertThat(actual).isNaN();
    } else {
      assertThat(actual).isCloseTo(expected, within(ROUNDING * (1 + Math.abs(expected))));
    }
  }

  private static void assertSameNumbers(TireAtStop actual, TireAtStop expected) {
    for (int i = 0; i < 3; i++) {
      TireSnapshot one = known(moments(actual).get(i));
      TireSnapshot other = known(moments(expected).get(i));
      assertSame(one.settled(), other.settled());
      assertSame(one.reading(), other.reading());
      assertSame(one.judged(), other.judged());
      assertSame(one.settledSigma(), other.settledSigma());
      assertSame(one.limitSigma(), other.limitSigma());
      assertSame(one.readingSigma(), other.readingSigma());
      assertSame(one.coldSide(), other.coldSide());
    }
    assertThat(actual.cold()).isEqualTo(expected.cold());
    assertSameLimits(actual.limits(), expected.limits());
    assertSame(actual.leavingChance().underFloor(), expected.leavingChance().underFloor());
    assertSame(actual.leavingChance().notShown(), expected.leavingChance().notShown());
    assertThat(actual.published()).isEqualTo(expected.published());
  }

  /** To the last bit; what a tire carries is made anew each time, so its figures are compared. */
  private static void assertSameLimits(Limits actual, Limits expected) {
    assertThat(actual.load()).isEqualTo(expected.load());
    assertThat(actual.floor()).isEqualTo(expected.floor());
    assertThat(actual.marginAt(expected.aim())).isEqualTo(expected.marginAt(expected.aim()));
    assertThat(actual.aim()).isEqualTo(expected.aim());
    assertThat(actual.ceiling()).isEqualTo(expected.ceiling());
    assertThat(actual.reference()).isEqualTo(expected.reference());
    assertThat(actual.certified()).isEqualTo(expected.certified());
    assertThat(actual.aimFrom()).isEqualTo(expected.aimFrom());
    assertThat(actual.speed()).isEqualTo(expected.speed());
    assertThat(actual.capacityBasis()).isEqualTo(expected.capacityBasis());
  }

  @Test
  void warmerAirRaisesTheSettledPressureThereOnly() {
    forEach(
        1,
        (haul, random) -> {
          int there = laterStop(haul, random);
          double kelvins = 0.1 + 10 * random.nextDouble();

          List<TireAtStop> before = track(haul);
          List<TireAtStop> after =
              track(haul.with(there, haul.places().get(there).warmer(kelvins)));

          double rise = settled(after.get(there)) - settled(before.get(there));
          assertThat(rise).isCloseTo(kelvins * known(before.get(0).leaving()).fill(), within(0.01));
          for (int i = 0; i < before.size(); i++) {
            if (i != there) {
              assertSame(settled(after.get(i)), settled(before.get(i)));
            }
          }
        });
  }

  @Test
  void higherGroundRaisesTheSettledPressureThereOnly() {
    forEach(
        2,
        (haul, random) -> {
          int there = laterStop(haul, random);
          double meters = 1 + 2000 * random.nextDouble();

          List<TireAtStop> before = track(haul);
          List<TireAtStop> after = track(haul.with(there, haul.places().get(there).higher(meters)));

          // less than 12 Pa a meter of height at the lowest ground, more than 7 up to 5,000 m
          double rise = settled(after.get(there)) - settled(before.get(there));
          assertThat(rise / meters).isBetween(7.0, 12.5);
          for (int i = 0; i < before.size(); i++) {
            if (i != there) {
              assertSame(settled(after.get(i)), settled(before.get(i)));
            }
          }
        });
  }

  @Test
  void weatherAndHeightLeaveTheFillAlone() {
    forEach(
        3,
        (haul, random) -> {
          List<TireAtStop> track = track(haul);
          double fill = known(track.get(0).leaving()).origin().fill();
          for (TireAtStop at : track) {
            for (TireSnapshot moment : moments(at)) {
              assertThat(known(moment).fill()).isCloseTo(fill, within(fill * 1e-12));
            }
          }
        });
  }

  @Test
  void aLeakLowersTheFillFromStopToStop() {
    forEach(
        4,
        (haul, random) -> {
          double before = Double.MAX_VALUE;
          for (TireAtStop at : track(haul.losing("2 psi"))) {
            double fill = known(at.leaving()).fill();
            assertThat(fill).isLessThan(before);
            before = fill;
          }
        });
  }

  @Test
  void moreLoadLeavesLessMargin() {
    forEach(
        5,
        (haul, random) -> {
          List<TireAtStop> before = track(haul);
          List<TireAtStop> after = track(haul.heavier(1.01 + random.nextDouble() / 5));
          for (int i = 0; i < before.size(); i++) {
            if (!Double.isNaN(before.get(i).worstMargin())) {
              assertThat(after.get(i).worstMargin()).isLessThan(before.get(i).worstMargin());
            }
            assertThat(after.get(i).limits().floor())
                .isGreaterThanOrEqualTo(before.get(i).limits().floor());
          }
        });
  }

  /** An edit undone gives the same numbers to the last bit. */
  @Test
  void theSameTripGivesTheSameForecast() {
    forEach(
        6,
        (haul, random) -> {
          List<TireAtStop> before = track(haul);
          track(haul.with(1, haul.places().get(1).warmer(5)));
          List<TireAtStop> again = track(haul);
          for (int i = 0; i < before.size(); i++) {
            assertThat(moments(again.get(i))).isEqualTo(moments(before.get(i)));
            assertThat(again.get(i).low()).isEqualTo(before.get(i).low());
            assertSameLimits(again.get(i).limits(), before.get(i).limits());
            assertThat(again.get(i).leavingChance()).isEqualTo(before.get(i).leavingChance());
            assertThat(again.get(i).readings()).isEqualTo(before.get(i).readings());
          }
        });
  }

  /** One to three places passed, anywhere on a leg: no number changes at any other stop. */
  @Test
  void placesPassedChangeNothingElsewhere() {
    forEach(7, (haul, random) -> assertPassingChangesNothing(haul, random));
  }

  /**
   * Where air is lost, by permeation or by a leak, a piece cut in two has two mean temperatures:
   * the loss differs by less than 0.00005 psi.
   */
  @Test
  void placesPassedChangeNextToNothingWhereAirIsLost() {
    forEach(
        8,
        (drawn, random) -> {
          RandomHaul haul = drawn.losing(random.nextBoolean() ? null : "2 psi");
          int leg = random.nextInt(haul.legs().size());
          List<TireAtStop> before = track(haul);
          List<TireAtStop> after = track(haul.passing(leg, random.nextDouble()));
          for (int i = 0; i < before.size(); i++) {
            double other = settled(after.get(i <= leg ? i : i + 1));
            assertThat(psi(other - settled(before.get(i)))).isCloseTo(0, within(5e-5));
          }
        });
  }

  private static void assertPassingChangesNothing(RandomHaul haul, Random random) {
    int leg = random.nextInt(haul.legs().size());
    int count = 1 + random.nextInt(3);
    RandomHaul cut = haul;
    for (int i = 0; i < count; i++) {
      cut = cut.passing(leg + i, 0.001 + 0.998 * random.nextDouble());
    }
    List<TireAtStop> before = track(haul);
    List<TireAtStop> after = track(cut);
    for (int i = 0; i < before.size(); i++) {
      assertSameNumbers(after.get(i <= leg ? i : i + count), before.get(i));
    }
    double low = Double.MAX_VALUE;
    for (int i = leg; i <= leg + count; i++) {
      low = Math.min(low, known(after.get(i).low()).moment().judged());
    }
    double uncut = known(before.get(leg).low()).moment().judged();
    // the pieces together are judged at the same points and at the places passed
    assertThat(low).isLessThanOrEqualTo(uncut * (1 + ROUNDING));
    assertThat(low).isCloseTo(uncut, within(100.0));
  }

  /** Air unknown at one stop leaves the settled figures of all others. */
  @Test
  void unknownAirAtOneStopLeavesTheOthersAlone() {
    forEach(
        9,
        (haul, random) -> {
          int there = laterStop(haul, random);

          List<TireAtStop> before = track(haul);
          List<TireAtStop> after = track(haul.with(there, haul.places().get(there).unknown()));

          assertThat(after.get(there).arrival()).isNull();
          for (int i = 0; i < before.size(); i++) {
            if (i != there) {
              assertSame(settled(after.get(i)), settled(before.get(i)));
            }
          }
        });
  }

  /** Typed in other units: the same numbers. */
  @Test
  void unitsNeverEnterTheNumbers() {
    forEach(
        10,
        (haul, random) -> {
          List<TireAtStop> si = track(haul);
          List<TireAtStop> us = track(haul.inUsUnits());
          for (int i = 0; i < si.size(); i++) {
            for (int m = 0; m < 3; m++) {
              TireSnapshot one = known(moments(us.get(i)).get(m));
              TireSnapshot other = known(moments(si.get(i)).get(m));
              assertSame(one.settled(), other.settled());
              assertSame(one.reading(), other.reading());
              assertSame(one.limitSigma(), other.limitSigma());
            }
            assertSame(us.get(i).margin(), si.get(i).margin());
          }
        });
  }

  /** Whole days later in the same air: the same numbers. */
  @Test
  void wholeDaysLaterNothingChanges() {
    forEach(
        11,
        (haul, random) -> {
          List<TireAtStop> before = track(haul);
          List<TireAtStop> after = track(haul.shifted(Duration.ofDays(1 + random.nextInt(300))));
          for (int i = 0; i < before.size(); i++) {
            assertSameNumbers(after.get(i), before.get(i));
          }
        });
  }
}
