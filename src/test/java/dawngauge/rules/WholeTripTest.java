package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chance over a whole trip against bounds, closed forms and drawn trips. */
class WholeTripTest {

  private static final int TRIPS = Integer.getInteger("drawn.trips", 40_000);

  private static WholeTrip.Moment moment(String tire, double chance, double gauge, double air) {
    return moment(tire, 1, chance, gauge, 0, air);
  }

  private static WholeTrip.Moment moment(
      String tire, long day, double chance, double gauge, double airRead, double air) {
    return new WholeTrip.Moment(tire, day, chance, 1, gauge, airRead, air);
  }

  @Test
  void oneMomentIsItsOwnChance() {
    assertThat(WholeTrip.chance(List.of(moment("a", 0.07, 0.6, 0.5))))
        .isCloseTo(0.07, within(1e-4));
  }

  @Test
  void independentMomentsMultiply() {
    // 1 − 0.95 · 0.9 = 0.145
    assertThat(WholeTrip.chance(List.of(moment("a", 0.05, 0, 0), moment("b", 0.1, 0, 0))))
        .isCloseTo(0.145, within(1e-4));
  }

  @Test
  void fullySharedErrorsAreHardlyMoreThanOne() {
    List<WholeTrip.Moment> same = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      same.add(moment("t" + i, 0.05, 0.99, 0));
    }
    assertThat(WholeTrip.chance(same)).isBetween(0.05, 0.08);
  }

  @Test
  void nothingIsNothingAndCertainIsCertain() {
    assertThat(WholeTrip.chance(List.of())).isZero();
    assertThat(WholeTrip.chance(List.of(moment("a", 0, 0.5, 0.5)))).isZero();
    assertThat(WholeTrip.chance(List.of(moment("a", 0.2, 0, 0), moment("b", 1, 0.5, 0.5)))).isOne();
  }

  /** A load that is too much on one day is so on the next: five days are hardly more than one. */
  @Test
  void whatIsATiresOwnLasts() {
    List<WholeTrip.Moment> days = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      days.add(moment("a", day, 0.05, 0, 0.5, 0.1));
    }
    assertThat(WholeTrip.chance(days)).isBetween(0.05, 0.07);
    // 1 − 0.95^5 = 0.2262: were all of it the air's, new each day. Own is 5 % at the least.
    days.replaceAll(of -> moment("a", of.day(), 0.05, 0, 0, 1));
    assertThat(WholeTrip.chance(days)).isCloseTo(0.2262, within(0.008));
  }

  /** Forty days and more are drawn with as many numbers as the sequence has. */
  @Test
  void aLongTripHasItsChanceToo() {
    List<WholeTrip.Moment> days = new ArrayList<>();
    for (int day = 0; day < 60; day++) {
      days.add(moment("a", day, 0.001, 0, 0, 0.6));
    }
    assertThat(WholeTrip.chance(days)).isBetween(0.005, 0.06);
  }

  /**
   * Ten tires on five days, drawn: gauge and air of the reading once for the trip, air for the day,
   * the rest once a tire.
   */
  @ParameterizedTest
  @CsvSource({
    "0.05, 0.5, 0, 0.5",
    "0.01, 0.6, 0.3, 0.4",
    "0.002, 0.4, 0.2, 0.7",
    "0.002, 0, 0, 0.1"
  })
  void agreesWithDrawnTrips(double each, double gauge, double airRead, double air) {
    List<WholeTrip.Moment> moments = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      for (int tire = 0; tire < 10; tire++) {
        moments.add(moment("t" + tire, day, each, gauge, airRead, air));
      }
    }
    double distance = Quantile.deviations(1 - each);
    double own = Math.sqrt(1 - gauge * gauge - airRead * airRead - air * air);
    Random random = new Random(17);
    int under = 0;
    for (int trip = 0; trip < TRIPS; trip++) {
      double shared = gauge * random.nextGaussian() + airRead * random.nextGaussian();
      double least = Double.POSITIVE_INFINITY;
      for (int day = 0; day < 5; day++) {
        least = Math.min(least, random.nextGaussian());
      }
      boolean some = false;
      for (int tire = 0; tire < 10; tire++) {
        some |= distance + shared + air * least + own * random.nextGaussian() < 0;
      }
      under += some ? 1 : 0;
    }
    double drawn = (double) under / TRIPS;
    double sigma = Math.sqrt(drawn * (1 - drawn) / TRIPS);
    assertThat(WholeTrip.chance(moments)).isCloseTo(drawn, within(4 * sigma + 0.004));
  }
}
