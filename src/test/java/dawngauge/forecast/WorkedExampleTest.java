package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One tire of the demo haul, trailer axle 1 left, worked apart from this program: in Python, with
 * NOAA's sunrise, Parton and Logan's curve, the U.S. Standard Atmosphere 1976 and small steps of
 * two seconds in place of closed forms. Temperatures in kelvin, air pressures in pascal.
 *
 * <pre>
 * Reading, Alamosa, 6 April 05:08 MDT, 7,543 ft: 80 psi
 *   sunrise 06:41:41, low 14 °F (263.15) at 06:31:29; sunset the evening before 19:29:45;
 *   by the night's curve the air is 263.984 (15.50 °F), the tire 0.193 behind it since 04:45:
 *   T = 264.177, a = 76,595.0
 *   F = (80·6,894.757 + 76,595.0)/264.177 = 2,377.861 Pa/K
 *   as pressure at 68 °F, sea level: (2,377.861·293.15 − 101,325)/6,894.757 = 86.405 psi
 *
 * Warm-up: rated 3,520 lb, so 320/2,800 on the way from the small to the large tire
 *   R60 = 25 + 13·0.11429 = 26.486, τ rolling 17 + 13·0.11429 = 18.486 min, parked 46.143 min
 *   load: two axles weighed 9,800 lb together, an equal share + 10 %, 52.5 % on a side:
 *   9,800/2·1.10·0.525 = 2,829.75 lb, 0.80391 of the rated load
 *   at 50 mph R = 26.486·0.80391·(86.405/80)^−0.4·√(50/60) = 18.85
 *
 * Walsenburg, on arrival, 73 mi at 50 mph over La Veta Pass: 07:12:36 MDT, 6,171 ft
 *   sunrise 06:37:13, low 24 °F at 06:27:01, high 49 °F: by the day's curve 270.703 (27.60 °F)
 *   F = 2,377.824 after the air lost, a = 80,683.2
 *   settled (2,377.824·270.703 − 80,683.2)/6,894.757 = 81.66 psi
 *   tire 285.215, 14.512 over the air, since the air behind the pass warms: 86.66 psi
 *
 * Quanah, on arrival: 17:39:52 CDT, 1,568 ft
 *   between 98 °F at 16:00 and 92 °F at 19:00: 94.67 °F, 307.967
 *   F = 2,376.538, a = 95,714.2
 *   settled (2,376.538·307.967 − 95,714.2)/6,894.757 = 92.27 psi
 *   tire 325.431, 17.464 over the air: 98.29 psi
 *
 * Graham, cold check when leaving, 8 April 06:20 CDT (sunrise 07:13:15), 1,045 ft
 *   sunset 19:58:55, from 84 °F at its high to a low of 70 °F at 07:03:03: 294.245 (69.97 °F)
 *   F = 2,372.906, a = 97,556.9
 *   settled (2,372.906·294.245 − 97,556.9)/6,894.757 = 87.12 psi; tire 0.019 cooler: 87.11 psi
 * </pre>
 */
class WorkedExampleTest {

  private static final double SETTLED = 0.05;
  private static final double WARM = 0.1;

  private final List<TireAtStop> track = track();

  private static List<TireAtStop> track() {
    Trip trip = TripFile.read(Path.of("demo-data/spring-fleece-haul.dawngauge")).get();
    WheelPosition left =
        trip.rig().positions().stream()
            .filter(position -> trip.rig().shortForm(position).equals("t1l"))
            .findFirst()
            .orElseThrow();
    return Forecasts.forecaster(trip).track(left).orElseThrow().stops();
  }

  private static void assertPsi(double pascals, double expected, double digits) {
    assertThat(psi(pascals)).isCloseTo(expected, within(digits));
  }

  @Test
  void readAtAlamosa() {
    FillOrigin origin = known(track.get(0).leaving()).origin();

    assertThat(origin.airKelvins()).isCloseTo(263.984, within(0.05));
    assertThat(origin.tireKelvins()).isCloseTo(264.177, within(0.05));
    assertThat(origin.fill()).isCloseTo(2377.86, within(0.4));
  }

  @Test
  void walsenburgOnArrival() {
    Moment arrival = known(track.get(1).arrival());

    assertPsi(arrival.settled(), 81.66, SETTLED);
    assertPsi(arrival.reading(), 86.66, WARM);
  }

  @Test
  void quanahOnArrival() {
    Moment arrival = known(track.get(6).arrival());

    assertPsi(arrival.settled(), 92.27, SETTLED);
    assertPsi(arrival.reading(), 98.29, WARM);
  }

  @Test
  void grahamAtTheColdCheck() {
    Moment check = known(track.get(9).check());

    assertPsi(check.settled(), 87.12, SETTLED);
    assertPsi(check.reading(), 87.11, WARM);
  }
}
