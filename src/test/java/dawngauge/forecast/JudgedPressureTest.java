package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.physics.StandardAtmosphere;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which pressure is held against the floor, and where on a leg. */
class JudgedPressureTest {

  /**
   * Sunrise at 6, sunset at 18 (equator, equinox), low 10 °C, high 30 °C: at 08:00 a tire of 45 min
   * is 2.7 K behind the air, 0.9 psi at 80 psi (computed apart from this code from Parton and
   * Logan's curve).
   */
  @Test
  void aParkedTireLagsTheWarmingMorning() {
    Trip trip =
        Trips.of(RigBuilder.trailer().tires(small()))
            .stop(
                stop("a")
                    .at(0, 1.85, "UTC") // the sun's noon at 12:00 UTC that day
                    .arrives("2027-03-19T18:00Z")
                    .leaves("2027-03-20T08:00Z")
                    .lowHigh("2027-03-20", "10 °C", "30 °C"))
            .stop(stop("b").steady("30 °C"))
            .read("2027-03-20T06:00Z", "T1", "80 psi")
            .trip();

    TireSnapshot leaving = known(Forecasts.first(trip).get(0).leaving());

    assertThat(leaving.airKelvins() - 273.15).isCloseTo(18.4, within(0.15));
    assertThat(leaving.airKelvins() - leaving.tireKelvins()).isCloseTo(2.7, within(0.1));
    assertThat(psi(leaving.settled() - leaving.judged())).isCloseTo(0.9, within(0.05));
    assertThat(leaving.judged()).isEqualTo(leaving.reading());
    assertThat(leaving.judged())
        .isCloseTo(leaving.fill() * leaving.tireKelvins() - leaving.airPressure(), within(1e-6));
  }

  private static TireBuilder small() {
    return TireBuilder.special().rated("3000 lb", "80 psi");
  }

  /** Warmth of running is never credited: a warm tire is judged as cool as the air. */
  @Test
  void warmthIsNotCredited() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("b").steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .trip();

    List<TireAtStop> track = Forecasts.first(trip);
    TireSnapshot arrival = known(track.get(1).arrival());

    assertThat(psi(arrival.buildUp())).isGreaterThan(5);
    assertThat(arrival.judged()).isEqualTo(arrival.settled());
    assertThat(psi(known(track.get(0).low()).moment().judged())).isCloseTo(80, within(1e-9));
  }

  /** A pass of 3 km from 15 °C at 1 km, with or without its own temperature. */
  private static LegLow overThePass(boolean asWarm, String endElevation, String endAir) {
    var pass =
        asWarm
            ? Trips.point("pass", "50 mi", "3000 m", "15 °C")
            : Trips.point("pass", "50 mi", "3000 m");
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").elevation("1000 m").leaves("2027-06-01T06:00Z").steady("15 °C"))
            .leg("100 mi", "50 mph", pass)
            .stop(stop("b").elevation(endElevation).steady(endAir))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .trip();
    return known(Forecasts.first(trip).get(0).low());
  }

  /**
   * 80 psi at 15 °C, 1 km (898.76 hPa) is 78.7 at 3 km (701.21 hPa, U.S. Standard Atmosphere 1976)
   * in air 13 K colder.
   */
  @Test
  void theLowestPointMayBeThePass() {
    LegLow low = overThePass(false, "1000 m", "15 °C");

    assertThat(psi(low.moment().judged())).isCloseTo(78.7, within(0.05));
    assertThat(low.meters()).isCloseTo(50 * 1609.344, within(1.0));
    assertThat(low.moment().elevation()).isCloseTo(3000, within(0.1));
  }

  /** Where the pass is as warm, the tire reads 82.9 up there, and is lowest where it starts. */
  @Test
  void aPassAsWarmRaisesThePressure() {
    LegLow low = overThePass(true, "1000 m", "15 °C");

    assertThat(psi(low.moment().judged())).isCloseTo(80, within(1e-9));
    assertThat(low.moment().elevation()).isCloseTo(1000, within(1e-9));
    double onThePass = low.moment().fill() * 288.15 - StandardAtmosphere.pressureAt(3000);
    assertThat(psi(onThePass)).isCloseTo(82.9, within(0.05));
  }

  /**
   * The pass is the coldest point by 12 K, but the tire reads 0.7 psi less at the sea-level end.
   */
  @Test
  void theLowestPointNeedNotBeTheColdest() {
    LegLow low = overThePass(false, "0 m", "6 °C");

    TireSnapshot end = low.moment();
    assertThat(low.meters()).isCloseTo(100 * 1609.344, within(1.0));
    assertThat(end.elevation()).isZero();
    // straight line to the end: 10.5 °C at 500 m; the pass 2,500 m above that: −5.75 °C
    assertThat(end.airKelvins() - 273.15).isCloseTo(6, within(1e-9));
    double atThePass = end.fill() * (273.15 - 5.75) - StandardAtmosphere.pressureAt(3000);
    assertThat(end.judged()).isLessThan(atThePass);
  }

  @Test
  void onALegWhoseAirIsBridgedNothingIsJudged() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("unknown").stays(Duration.ofHours(1)))
            .stop(stop("c").steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .trip();

    List<TireAtStop> track = Forecasts.first(trip);

    assertThat(known(track.get(0).low()).meters()).isZero();
    assertThat(track.get(1).arrival()).isNull();
    assertThat(Forecasts.of(trip).stops().get(0).airAheadKnown()).isFalse();
    assertThat(known(track.get(2).arrival()).settled()).isPositive();
  }
}
