package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What is expected of a reading, how sure, and what it then tells. */
class ReadingCheckTest {

  private static Trips day(String elevation) {
    return Trips.of(RigBuilder.trailer().ownGauge("1 psi"))
        .stop(stop("a").elevation(elevation).leaves("2027-06-01T06:00Z").steady("60 °F").measured())
        .leg("120 mi", "60 mph")
        .stop(stop("b").elevation(elevation).stays(Duration.ofHours(6)).steady("60 °F").measured());
  }

  private static ReadingCheck second(Trips trips) {
    return Forecasts.first(trips.trip()).get(0).readings().get(1);
  }

  /**
   * By hand: read again at once with the same gauge, 80 psi repeat to √2 · 0.5 = 0.707 psi. With
   * another the constant errors of both count, 2/√3 = 1.155 psi each: √(0.5 + 2 · 4/3) = 1.780.
   */
  @Test
  void anotherGaugeIsLessSureThanTheSame() {
    ReadingCheck same =
        second(
            day("0 ft")
                .read("2027-06-01T05:50Z", "T1", "80 psi")
                .read("2027-06-01T05:51Z", "T1", "81 psi"));
    assertThat(psi(same.expected())).isCloseTo(80, within(0.001));
    assertThat(psi(same.sigma())).isCloseTo(0.707, within(0.02));
    assertThat(psi(same.off())).isCloseTo(1, within(0.001));
    assertThat(same.deviations()).isCloseTo(1.41, within(0.05));
    assertThat(same.unexpected()).isFalse();
    assertThat(same.first()).isFalse();
    ReadingCheck other =
        second(
            day("0 ft")
                .read("2027-06-01T05:50Z", "T1", "80 psi")
                .read("2027-06-01T05:51Z", "T1", "84 psi", "own", ReadingState.COLD));
    assertThat(psi(other.sigma())).isCloseTo(1.780, within(0.02));
    assertThat(other.unexpected()).isTrue(); // 4 psi are 2.2 deviations
  }

  /**
   * By hand: in the sun a tire is 7.5 K warmer in the middle, of 94.696/288.706 psi a kelvin 2.460
   * psi; and 15/√12 K of spread 1.420 psi, beside 0.707 together 1.587.
   */
  @Test
  void aTireInTheSunIsExpectedToReadMore() {
    ReadingCheck sun =
        second(
            day("0 ft")
                .read("2027-06-01T05:50Z", "T1", "80 psi")
                .read("2027-06-01T05:51Z", "T1", "82 psi", "hand", ReadingState.COLD_IN_SUN));
    assertThat(psi(sun.expected())).isCloseTo(82.460, within(0.002));
    assertThat(psi(sun.sigma())).isCloseTo(1.587, within(0.02));
  }

  /** Whether it may have rolled so: since its last reading it did not move. */
  @Test
  void aTireThatStoodSinceItsLastReadingDidNotRollSo() {
    Trips trips =
        day("0 ft")
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T05:51Z", "T1", "55 psi")
            .read("2027-06-01T13:00Z", "T1", "55 psi");
    List<TireAtStop> track = Forecasts.first(trips.trip());
    assertThat(track.get(0).readings().get(0).rolledSinceSound()).isTrue(); // nobody knows
    assertThat(track.get(0).readings().get(1).rolledSinceSound()).isFalse();
    assertThat(track.get(1).readings().get(0).rolledSinceSound()).isTrue();
  }

  /**
   * A sealed gauge shows 76.65 psi at 7,000 ft for 80 by an open one (3.353 psi less: 14.696 −
   * 11.343, U.S. Standard Atmosphere 1976), for a tire of unknown warmth too.
   */
  @Test
  void aBareReadingIsBroughtToAnOpenGauge() {
    Trips trips =
        day("7000 ft").read("2027-06-01T05:50Z", "T1", "76.65 psi", "sealed", ReadingState.WARM);
    BareReading bare = Forecasts.first(trips.trip()).get(0).bare().get(0);
    assertThat(psi(bare.pascals())).isCloseTo(80.00, within(0.01));
  }

  /** Two deviations of both readings joined, 600 and 800 Pa: 1,000. */
  @Test
  void beyondTwoDeviationsItIsWarmth() {
    assertThat(Readings.isWarmth(2001, 600, 800)).isTrue();
    assertThat(Readings.isWarmth(1999, 600, 800)).isFalse();
    assertThat(Readings.isWarmth(-3000, 600, 800)).isFalse();
  }

  /**
   * A warm reading half a psi less than expected moves what is known by its weight: the square of
   * the spread before over that and its own. How much warmer than the air it was by the air before.
   */
  @Test
  void aWarmReadingCountsByItsWeight() {
    Trips dawn = day("0 ft").read("2027-06-01T05:50Z", "T1", "80 psi");
    TireSnapshot arrival = known(Forecasts.first(dawn.trip()).get(1).arrival());
    double expected = psi(arrival.reading());
    String less = String.format(Locale.ROOT, "%.3f psi", expected - 0.5);
    ReadingCheck check =
        Forecasts.first(
                dawn.read("2027-06-01T08:00Z", "T1", less, "hand", ReadingState.WARM).trip())
            .get(1)
            .readings()
            .get(0);
    double before = arrival.settledSigma() * arrival.settledSigma();
    double now = check.coldSigma() * check.coldSigma();
    double moved =
        (check.fillKnown() - check.fillExpected()) / (check.fillRead() - check.fillExpected());
    assertThat(moved).isCloseTo(before / (before + now), within(1e-3)).isBetween(0.1, 0.6);
    assertThat(check.warmthRead())
        .isCloseTo(arrival.tireKelvins() - 288.7056 - 0.5 / psi(arrival.fill()), within(0.01));
    assertThat(check.shown() / 6894.757293168361).isCloseTo(expected - 0.5, within(0.01));
  }
}
