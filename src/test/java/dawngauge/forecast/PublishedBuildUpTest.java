package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 49 CFR 393.75(i)(2), Table 1. */
class PublishedBuildUpTest {

  @ParameterizedTest
  @CsvSource({
    "4000, 50, 5",
    "4001, 50, 15",
    "1500, 41, 5",
    "1500, 55, 5",
    "6000, 41, 15",
    "6000, 55, 15",
    "4000, 40, ",
    "4000, 56, ",
    "4001, 40, ",
    "4001, 56, ",
    "4000, 0, "
  })
  void isTheRegulationsTable(double pounds, double mph, @Nullable Double expected) {
    Optional<PublishedBuildUp> found =
        PublishedBuildUp.of(Mass.of(pounds, Unit.POUND), Speed.of(mph, Unit.MILE_PER_HOUR));

    if (expected == null) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found.orElseThrow().pressure().in(Unit.PSI)).isCloseTo(expected, within(1e-9));
    }
  }

  private static @Nullable PublishedBuildUp onArrival(
      TireBuilder tire, String distance, String speed) {
    return Forecasts.first(
            Trips.of(RigBuilder.trailer().tires(tire))
                .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
                .leg(distance, speed)
                .stop(stop("b").stays(Duration.ofHours(1)).steady("60 °F"))
                .trip())
        .get(1)
        .published();
  }

  @Test
  void holdsForTheTireAndTheHourBefore() {
    PublishedBuildUp small =
        Forecasts.known(
            onArrival(TireBuilder.special().rated("4000 lb", "80 psi"), "100 mi", "55 mph"));
    PublishedBuildUp large =
        Forecasts.known(
            onArrival(TireBuilder.special().rated("4001 lb", "80 psi"), "100 mi", "41 mph"));

    assertThat(psi(small.pressure().pascals())).isCloseTo(5, within(1e-9));
    assertThat(psi(large.pressure().pascals())).isCloseTo(15, within(1e-9));
  }

  @Test
  void nothingIsPublishedForOtherSpeedsOrLessThanAnHour() {
    assertThat(onArrival(TireBuilder.special(), "100 mi", "56 mph")).isNull();
    assertThat(onArrival(TireBuilder.special(), "100 mi", "40 mph")).isNull();
    assertThat(onArrival(TireBuilder.special(), "49 mi", "50 mph")).isNull();
    assertThat(onArrival(TireBuilder.special(), "50 mi", "50 mph")).isNotNull();
  }

  /** 30 min at 60 mph, 15 min standing, 15 min at 60 mph: 45 mph on average. */
  @Test
  void standingCountsInTheHour() {
    var track =
        Forecasts.first(
            Trips.of(RigBuilder.trailer())
                .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
                .leg("60 mi", "60 mph")
                .stop(stop("b").stays(Duration.ofMinutes(15)).steady("60 °F"))
                .leg("15 mi", "60 mph")
                .stop(stop("c").steady("60 °F"))
                .trip());

    assertThat(track.get(1).published()).isNull();
    assertThat(track.get(2).published()).isNotNull();
  }
}
