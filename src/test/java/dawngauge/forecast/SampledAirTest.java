package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.Air;
import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.TypedAmbient;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is lost by taking the air as straight lines between the nodes of the timeline. */
class SampledAirTest {

  /** Pascal per kelvin of an 80 psi tire at 15 °F, 7,543 ft: what a kelvin makes at most. */
  private static final double FILL = 2363;

  private static final double PSI = 6894.757293168361;

  /** A high desert day of 45 °F between low and high, a dawn at any minute of the ten. */
  private static Trip haul(int minutes) {
    return Trips.of(RigBuilder.trailer())
        .stop(
            stop("a")
                .at(37.469, -105.87 + minutes / 4.0, "America/Denver")
                .elevation("7543 ft")
                .arrives("2027-04-05T12:00-06:00[America/Denver]")
                .leaves("2027-04-06T05:45-06:00[America/Denver]")
                .lowHigh("2027-04-06", "10 °F", "55 °F"))
        .leg("180 mi", "50 mph", Trips.point("pass", "47 mi", "9413 ft"))
        .stop(
            stop("b")
                .at(36.059, -102.513, "America/Chicago")
                .elevation("3983 ft")
                .stays(Duration.ofHours(20))
                .lowHigh("2027-04-06", "30 °F", "75 °F"))
        .trip();
  }

  /**
   * Computed: at most 0.009 psi anywhere, at rest and on the way (0.060 before the time of each low
   * was a node of its own). Promised: under 0.05 psi.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
  void samplingCostsLittle(int minutes) {
    Trip trip = haul(minutes);
    Itinerary itinerary = Itinerary.of(trip).get();
    Ambient ambient =
        Ambient.of(AmbientNeeds.of(trip, itinerary), List.of(new TypedAmbient(trip))).get();
    Timeline timeline = new Timeline(trip, itinerary, ambient);
    double worst = 0;
    for (int node = 0; node + 1 < timeline.count(); node++) {
      for (double part = 0.1; part < 1; part += 0.1) {
        double time =
            timeline.seconds[node] + part * (timeline.seconds[node + 1] - timeline.seconds[node]);
        double straight = timeline.air[node] + part * (timeline.air[node + 1] - timeline.air[node]);
        double height =
            timeline.elevation[node]
                + part * (timeline.elevation[node + 1] - timeline.elevation[node]);
        Air exact =
            timeline.drive[node] >= 0
                ? ambient.onTheWay(timeline.metersAt(time), height, time)
                : ambient.atStop(node < timeline.leave[0] ? 0 : 1, time);
        worst = Math.max(worst, Math.abs(exact.kelvins() - straight));
      }
    }
    assertThat(worst * FILL / PSI).isPositive().isLessThan(0.02);
  }
}
