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
import org.junit.jupiter.api.Test;

/** What was noted of a spare while it was carried along counts once it is on a wheel. */
class CarriedSpareTest {

  private static final String FITTED = "2027-06-01T08:10Z";

  /** Home 06:00, two hours, noon stop 08:00 to 14:00 in the same air, two hours, end. */
  private static Trips haul() {
    return Trips.of(RigBuilder.trailer().spare())
        .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("noon").stays(Duration.ofHours(6)).steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("end").stays(Duration.ofHours(6)).steady("60 °F"))
        .read("2027-06-01T05:50Z", "T1", "80 psi");
  }

  private static double settledAtNoon(Trips haul) {
    TireAtStop noon = Forecasts.first(haul.trip()).get(1);
    assertThat(noon.fitted().tire().id()).isEqualTo("S");
    return psi(known(noon.leaving()).settled());
  }

  @Test
  void itsReadingCounts() {
    Trips haul = haul().read("2027-06-01T05:55Z", "S", "70 psi").change(FITTED, 0, "T1", "S");
    assertThat(settledAtNoon(haul)).isCloseTo(70, within(1e-9));
  }

  /** It did not roll, whatever the reading is called. */
  @Test
  void itIsCoolThoughItsReadingSaysWarm() {
    Trips haul =
        haul()
            .read("2027-06-01T05:55Z", "S", "70 psi", "hand", ReadingState.WARM)
            .change(FITTED, 0, "T1", "S");
    assertThat(settledAtNoon(haul)).isCloseTo(70, within(1e-9));
  }

  /**
   * The same reading in the sun tells of less air: by hand 7.5 K are the sun's, (70 + 14.696) ·
   * 288.71/296.21 − 14.696 = 67.86 psi at sea level.
   */
  @Test
  void readInTheSunItHasLess() {
    Trips haul =
        haul()
            .read("2027-06-01T05:55Z", "S", "70 psi", "hand", ReadingState.COLD_IN_SUN)
            .change(FITTED, 0, "T1", "S");
    assertThat(settledAtNoon(haul)).isCloseTo(67.86, within(0.01));
  }

  @Test
  void whatItWasSetToLaterCounts() {
    Trips haul =
        haul()
            .read("2027-06-01T05:52Z", "S", "70 psi")
            .adjust("2027-06-01T05:55Z", "S", "78 psi")
            .change(FITTED, 0, "T1", "S");
    assertThat(settledAtNoon(haul)).isCloseTo(78, within(1e-9));
  }

  /** Read in the very minute in which it goes on. */
  @Test
  void itsReadingAtTheChangeCounts() {
    Trips haul =
        haul()
            .read("2027-06-01T05:52Z", "S", "70 psi")
            .read(FITTED, "S", "76 psi")
            .change(FITTED, 0, "T1", "S");
    assertThat(settledAtNoon(haul)).isCloseTo(76, within(1e-9));
  }

  /** What was noted of another tire is not its own. */
  @Test
  void withoutAnyNothingIsSaidOfIt() {
    List<TireAtStop> track =
        Forecasts.first(
            haul()
                .read("2027-06-01T05:52Z", "T2", "70 psi")
                .adjust("2027-06-01T05:55Z", "T2", "78 psi")
                .change(FITTED, 0, "T1", "S")
                .trip());
    assertThat(track.get(1).leaving()).isNull();
    assertThat(track.get(2).arrival()).isNull();
  }
}
