package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a forecast says is missing. */
class ForecastProblemsTest {

  private static Trips haul() {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("noon").stays(Duration.ofHours(6)).steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("end").steady("60 °F"));
  }

  private static List<ProblemCode> codes(Trips haul) {
    return Forecasts.of(haul.trip()).problems().stream().map(Problem::code).toList();
  }

  private static Trips read(Trips haul, String time, String tire, ReadingState state) {
    return haul.read(time, tire, "80 psi", "hand", state);
  }

  @Test
  void nothingWhereEveryTireWasReadCold() {
    assertThat(codes(haul().readAll("2027-06-01T05:50Z", "80 psi"))).isEmpty();
  }

  @Test
  void eachTireWithoutAReading() {
    assertThat(Forecasts.of(haul().read("2027-06-01T05:50Z", "T2", "80 psi").trip()).problems())
        .extracting(Problem::code, Problem::where)
        .containsExactly(tuple(ProblemCode.NO_READING, haul().rig().positions().get(0).words()));
  }

  /** Warm, with no drive before it that tells how warm: nothing is forecast from it. */
  @Test
  void aFirstReadingThatIsWarm() {
    Trips haul = read(haul(), "2027-06-01T05:50Z", "T1", ReadingState.WARM);
    assertThat(codes(read(haul, "2027-06-01T05:50Z", "T2", ReadingState.WARM)))
        .containsExactly(ProblemCode.FIRST_READING_NOT_COLD, ProblemCode.FIRST_READING_NOT_COLD);
    // A cold one behind it is forecast from.
    assertThat(codes(haul.read("2027-06-01T13:55Z", "T1", "80 psi")))
        .containsExactly(ProblemCode.FIRST_READING_NOT_COLD);
  }

  /** A quarter of an hour after 120 miles at 60 mph no tire is cold. */
  @Test
  void aReadingThatIsNotColdAsItSays() {
    Trips haul =
        haul()
            .readAll("2027-06-01T05:50Z", "80 psi")
            .left("2027-06-01T06:00Z", "home")
            .arrived("2027-06-01T08:00Z", "noon");
    assertThat(codes(read(haul, "2027-06-01T08:15Z", "T1", ReadingState.COLD)))
        .containsExactly(ProblemCode.READING_NOT_COLD);
  }

  @Test
  void anAxleOfWhichNoLoadIsKnown() {
    Trips haul =
        Trips.of(RigBuilder.trailer().gawr(null).weighed(null))
            .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("end").steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi");
    assertThat(codes(haul)).contains(ProblemCode.NO_LOAD).doesNotContain(ProblemCode.NOT_WEIGHED);
  }

  /** On the leg from noon on no air is known; the last stop has none ahead. */
  @Test
  void theAirOfAWholeLegIsKnownOrNot() {
    Forecast forecast =
        Forecasts.of(
            Trips.of(RigBuilder.trailer())
                .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
                .stop(stop("noon").stays(Duration.ofHours(1)).steady("70 °F"))
                .stop(stop("end").stays(Duration.ofHours(1)))
                .readAll("2027-06-01T05:50Z", "80 psi")
                .trip());
    assertThat(forecast.stops())
        .extracting(StopForecast::airAheadKnown)
        .containsExactly(true, false, false);
    StopForecast noon = forecast.stops().get(1);
    assertThat(noon.airOnArrival()).isCloseTo(294.261, within(1e-3)); // 70 °F
    assertThat(noon.airOnLeaving()).isEqualTo(noon.airOnArrival());
    assertThat(forecast.stops().get(2).airOnArrival()).isNaN();
    assertThat(forecast.stops().get(2).airOnLeaving()).isNaN();
  }

  /** A place that is only passed has the air of the way, where that is known. */
  @Test
  void aPlaceThatIsPassedHasTheAirOfTheWay() {
    Trips haul =
        Trips.of(RigBuilder.trailer())
            .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .leg("50 mi", "50 mph")
            .stop(stop("pass"))
            .leg("50 mi", "50 mph")
            .stop(stop("end").stays(Duration.ofHours(1)).steady("60 °F"));
    assertThat(Forecasts.of(haul.trip()).stops().get(1).airOnArrival())
        .isCloseTo(288.706, within(1e-3)); // 60 °F
  }
}
