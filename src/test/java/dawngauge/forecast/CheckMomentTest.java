package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a tire is to be gauged and set at a stop, and when it counts as cold. */
class CheckMomentTest {

  /** At 38.54° N 106.93° W on 9 March 2027 the sun rises at 13:28:13 UTC (NOAA's algorithm). */
  private static final double SUNRISE = Instant.parse("2027-03-09T13:28:13Z").getEpochSecond();

  private static StopBuilder mountains(String id) {
    return stop(id).at(38.54, -106.93, "America/Denver").elevation("7703 ft").steady("20 °F");
  }

  private static Trip night(String arrives, String leaves) {
    return Trips.of(RigBuilder.trailer())
        .stop(mountains("home").leaves("2027-03-08T08:00-07:00[America/Denver]"))
        .stop(
            mountains("night")
                .arrives(arrives + ":00-07:00[America/Denver]")
                .leaves(leaves + ":00-07:00[America/Denver]"))
        .stop(mountains("noon").stays(Duration.ofHours(1)))
        .stop(mountains("end"))
        .readAll("2027-03-08T07:50-07:00[America/Denver]", "80 psi")
        .trip();
  }

  private static double checkAfter(String arrives, String leaves) {
    return known(Forecasts.first(night(arrives, leaves)).get(1).check()).seconds();
  }

  private static double seconds(String instant) {
    return Instant.parse(instant).getEpochSecond();
  }

  @Test
  void beforeALateStartItIsHalfAnHourAfterSunrise() {
    assertThat(checkAfter("2027-03-08T20", "2027-03-09T10"))
        .isCloseTo(SUNRISE + 1800, within(60.0));
  }

  @Test
  void beforeAnEarlyStartItIsLeaving() {
    assertThat(checkAfter("2027-03-08T20", "2027-03-09T05"))
        .isEqualTo(seconds("2027-03-09T12:00:00Z"));
  }

  /** Arrived at 05:00, left at 10:00: at sunrise + 30 min the tire is not cold yet. */
  @Test
  void notBeforeTheTireIsCold() {
    assertThat(checkAfter("2027-03-09T05", "2027-03-09T10"))
        .isEqualTo(seconds("2027-03-09T17:00:00Z"));
  }

  @Test
  void atALaterStopOfTheDayItIsLeaving() {
    Trip trip = night("2027-03-08T20", "2027-03-09T10");
    TireAtStop noon = Forecasts.first(trip).get(2);

    assertThat(known(noon.check()).seconds()).isEqualTo(known(noon.leaving()).seconds());
    assertThat(Forecasts.of(trip).stops())
        .extracting(StopForecast::firstStartOfDay)
        .containsExactly(true, true, false, false);
  }

  /** A figure set at the check holds when leaving two hours later, after the air has warmed. */
  @Test
  void anAssumedSettingIsMadeAtTheCheck() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("home")
                    .at(38.54, -106.93, "America/Denver")
                    .arrives("2027-03-08T20:00-07:00[America/Denver]")
                    .leaves("2027-03-09T10:00-07:00[America/Denver]")
                    .lowHigh("2027-03-09", "10 °F", "60 °F"))
            .stop(stop("end").steady("60 °F"))
            .readAll("2027-03-09T06:00-07:00[America/Denver]", "70 psi")
            .trip();
    double eighty = 80 * 6894.757293168361;

    TireAtStop home =
        Forecasts.forecaster(trip)
            .track(trip.rig().positions().get(0))
            .orElseThrow()
            .with(0, new Setting(eighty))
            .stops()
            .get(0);

    assertThat(known(home.check()).seconds()).isCloseTo(SUNRISE + 1800, within(60.0));
    assertThat(known(home.leaving()).origin().kind()).isEqualTo(FillOrigin.Kind.ASSUMED);
    assertThat(known(home.leaving()).fill())
        .isCloseTo(
            (eighty + known(home.check()).airPressure()) / known(home.check()).tireKelvins(),
            within(1e-9));
    assertThat(known(home.leaving()).reading()).isGreaterThan(eighty);
  }

  /** Read two hours after sunrise: what is set is set after that, and what is known is that. */
  @Test
  void aLaterReadingOfTheMorningComesBeforeTheCheck() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                mountains("home")
                    .arrives("2027-03-08T20:00-07:00[America/Denver]")
                    .leaves("2027-03-09T10:00-07:00[America/Denver]"))
            .stop(mountains("end"))
            .readAll("2027-03-09T08:30-07:00[America/Denver]", "70 psi")
            .trip();
    double eighty = 80 * 6894.757293168361;

    TireAtStop home =
        Forecasts.forecaster(trip)
            .track(trip.rig().positions().get(0))
            .orElseThrow()
            .with(0, new Setting(eighty))
            .stops()
            .get(0);

    assertThat(known(home.check()).seconds()).isEqualTo(seconds("2027-03-09T15:30:00Z"));
    assertThat(known(home.check()).settled()).isCloseTo(70 * 6894.757293168361, within(1.0));
    assertThat(known(home.leaving()).settled()).isCloseTo(eighty, within(1.0));
  }

  private static List<Boolean> cold(Trip trip) {
    return Forecasts.first(trip).stream().map(TireAtStop::cold).toList();
  }

  private static StopBuilder stay(String id, Duration time) {
    return stop(id).steady("60 °F").stays(time);
  }

  private static Trips start() {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"));
  }

  /** Parked at least three hours, or driven less than one mile (NHTSA consumer text). */
  @Test
  void coldIsThreeHoursParkedOrUnderAMile() {
    Trip trip =
        start()
            .leg("0.9 mi", "10 mph")
            .stop(stay("b", Duration.ofMinutes(10)))
            .leg("50 mi", "50 mph")
            .stop(stay("c", Duration.ofMinutes(179)))
            .leg("50 mi", "50 mph")
            .stop(stay("d", Duration.ofHours(3)))
            .leg("1.1 mi", "10 mph")
            .stop(stay("e", Duration.ofMinutes(10)))
            .leg("0.5 mi", "10 mph")
            .stop(stay("f", Duration.ofHours(3)))
            .trip();

    assertThat(cold(trip)).containsExactly(true, true, false, true, false, true);
  }

  /** Three moves of half a mile are more than a mile. */
  @Test
  void shortMovesAddUp() {
    Trip trip =
        start()
            .leg("0.5 mi", "10 mph")
            .stop(stay("b", Duration.ofMinutes(10)))
            .leg("0.4 mi", "10 mph")
            .stop(stay("c", Duration.ofMinutes(10)))
            .leg("0.5 mi", "10 mph")
            .stop(stay("d", Duration.ofMinutes(10)))
            .trip();

    assertThat(cold(trip)).containsExactly(true, true, true, false);
  }

  /** Sixty places passed within a mile of each other do not keep a tire cold. */
  @Test
  void placesPassedDoNotCutADrive() {
    Trips trips = start();
    for (int i = 0; i < 60; i++) {
      trips.leg("0.9 mi", "50 mph").stop(stop("passed " + i));
    }
    Trip trip = trips.leg("0.9 mi", "50 mph").stop(stay("b", Duration.ofMinutes(10))).trip();

    assertThat(cold(trip).get(61)).isFalse();
  }
}
