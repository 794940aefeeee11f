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

  private static WholeTrip.Moment moment(long day, double chance, double gauge, double air) {
    return new WholeTrip.Moment(day, chance, 1, gauge, air);
  }

  @Test
  void oneMomentIsItsOwnChance() {
    assertThat(WholeTrip.chance(List.of(moment(1, 0.07, 0.6, 0.5)))).isCloseTo(0.07, within(1e-4));
  }

  @Test
  void independentMomentsMultiply() {
    // 1 − 0.95 · 0.9 = 0.145
    assertThat(WholeTrip.chance(List.of(moment(1, 0.05, 0, 0), moment(2, 0.1, 0, 0))))
        .isCloseTo(0.145, within(1e-4));
  }

  @Test
  void fullySharedErrorsAreHardlyMoreThanOne() {
    List<WholeTrip.Moment> same = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      same.add(moment(i, 0.05, 0.9999, 0));
    }
    assertThat(WholeTrip.chance(same)).isBetween(0.05, 0.08);
  }

  @Test
  void nothingIsNothingAndCertainIsCertain() {
    assertThat(WholeTrip.chance(List.of())).isZero();
    assertThat(WholeTrip.chance(List.of(moment(1, 0, 0.5, 0.5)))).isZero();
    assertThat(WholeTrip.chance(List.of(moment(1, 0.2, 0, 0), moment(1, 1, 0.5, 0.5)))).isOne();
  }

  /** Ten tires on five days, errors drawn: gauge for the trip, air for the day, the rest each. */
  @ParameterizedTest
  @CsvSource({"0.05, 0.5, 0.5", "0.01, 0.6, 0.4", "0.002, 0.4, 0.7"})
  void agreesWithDrawnTrips(double each, double gauge, double air) {
    List<WholeTrip.Moment> moments = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      for (int tire = 0; tire < 10; tire++) {
        moments.add(moment(day, each, gauge, air));
      }
    }
    double distance = Quantile.deviations(1 - each);
    double own = Math.sqrt(1 - gauge * gauge - air * air);
    Random random = new Random(17);
    int under = 0;
    for (int trip = 0; trip < TRIPS; trip++) {
      double shared = gauge * random.nextGaussian();
      boolean some = false;
      for (int day = 0; day < 5; day++) {
        double ofDay = air * random.nextGaussian();
        for (int tire = 0; tire < 10; tire++) {
          some |= distance + shared + ofDay + own * random.nextGaussian() < 0;
        }
      }
      under += some ? 1 : 0;
    }
    double drawn = (double) under / TRIPS;
    double sigma = Math.sqrt(drawn * (1 - drawn) / TRIPS);
    assertThat(WholeTrip.chance(moments)).isCloseTo(drawn, within(4 * sigma + 0.002));
  }
}
