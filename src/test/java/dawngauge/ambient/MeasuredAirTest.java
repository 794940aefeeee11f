package dawngauge.ambient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.FakeWeather;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stations measured beside what the trip expected. */
class MeasuredAirTest {

  private static final Trip TRIP =
      Trips.of(RigBuilder.trailer())
          .stop(
              StopBuilder.stop("a")
                  .at(40, -100, "America/Chicago")
                  .leaves("2027-06-01T12:30Z")
                  .steady("60 °F"))
          .leg("60 mi", "60 mph")
          .stop(StopBuilder.stop("b").at(41, -100, "America/Chicago"))
          .trip();

  private static List<MeasuredAir> measured(FakeWeather station, String now) {
    return MeasuredAir.of(
        TRIP, Itinerary.of(TRIP).get(), station, Instant.parse(now), (done, all, place) -> true);
  }

  /**
   * By hand: 10 °C at 12:00 and 14 °C at 13:00 are 12 °C at 12:30, when the rig left; the trip
   * expected 60 °F = 288.706 K. The stops of this trip have no height, so nothing is corrected.
   */
  @Test
  void itIsReadBetweenTwoMeasurementsAtTheTimeOfLeaving() {
    FakeWeather station =
        new FakeWeather(
            "2027-06-01T12:00:00Z", time -> time.toString().startsWith("2027-06-01T12") ? 10 : 14);
    MeasuredAir air = measured(station, "2027-06-01T13:00:00Z").get(0);
    assertThat(air.measuredKelvins() - 273.15).isCloseTo(12, within(1e-9));
    assertThat(air.expectedKelvins()).isCloseTo(288.706, within(1e-3));
    assertThat(air.source()).isEqualTo("fake service");
    assertThat(measured(station, "2027-06-01T13:00:00Z")).hasSize(1);
    assertThat(measured(station, "2027-06-01T14:00:00Z")).hasSize(2);
    assertThat(measured(station, "2027-06-01T12:00:00Z")).isEmpty();
  }

  @Test
  void aMeasurementHoursAwaySaysNothing() {
    FakeWeather late = new FakeWeather("2027-06-01T15:00:00Z", time -> 20);
    MeasuredAir air = measured(late, "2027-06-01T13:00:00Z").get(0);
    assertThat(air.measuredKelvins()).isNaN();
    assertThat(air.source()).isEmpty();
  }
}
