package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Leg;
import dawngauge.trip.Remarks;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A leg of which only the driving time is known. */
class UnknownLegTest {

  private static final Leg TWO_HOURS =
      new Leg(null, null, Duration.ofHours(2), null, List.of(), Remarks.NONE);

  private static Trip haul(@Nullable String airAtTheEnd, Duration stay) {
    var end = stop("low").stays(stay);
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("high").elevation("7000 ft").leaves("2027-06-01T06:00Z").steady("15 °F"))
            .stop(airAtTheEnd == null ? end : end.steady(airAtTheEnd))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .trip();
    return trip.withRoute(new Route(trip.route().stops(), List.of(TWO_HOURS)));
  }

  /** Each stop keeps its own height: 80 psi at 7,000 ft, as read. */
  @Test
  void stopsKeepTheirHeights() {
    List<TireAtStop> track = Forecasts.first(haul("70 °F", Duration.ofHours(4)));

    assertThat(known(track.get(0).leaving()).elevation()).isCloseTo(2133.6, within(1e-9));
    assertThat(known(track.get(1).leaving()).elevation()).isZero();
    assertThat(psi(known(track.get(0).leaving()).settled())).isCloseTo(80, within(1e-9));
    // (80 + 11.343)·529.67/474.67 − 14.696, gas law and U.S. Standard Atmosphere 1976
    assertThat(psi(known(track.get(1).leaving()).settled())).isCloseTo(87.23, within(0.01));
  }

  /** Without a speed nobody knows how warm the tire ran; parked three hours it is known again. */
  @Test
  void warmthIsNotKnownWithoutASpeed() {
    TireAtStop end = Forecasts.first(haul("70 °F", Duration.ofHours(4))).get(1);

    assertThat(known(end.arrival()).reading()).isNaN();
    assertThat(psi(known(end.leaving()).buildUp())).isCloseTo(0, within(1e-9));
  }

  /** Unknown air stays unknown: it is not that of the stop before. */
  @Test
  void unknownAirIsNotThatOfTheStopBefore() {
    Forecast forecast = Forecasts.of(haul(null, Duration.ZERO));

    assertThat(forecast.stops().get(1).airOnArrival()).isNaN();
    assertThat(forecast.stops().get(1).tires().get(0).arrival()).isNull();
  }
}
