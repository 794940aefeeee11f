package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
 *   R60 = 38, τ rolling 17 + 13·0.11429 = 18.486 min, parked 46.143 min
 *   load: two axles weighed 9,800 lb together, likely an equal share, half of it on a side:
 *   9,800/4 = 2,450 lb, 0.69602 of the rated load
 *   in air of 20 °C at 50 mph R = 38·0.69602·(86.405/80)^−0.4·√(50/60) = 23.41
 *   in air of θ times e^(−K·(θ − 293.15)), K = 0.010 − 0.004·0.11429 = 0.009543, to 20 K off
 *
 * Walsenburg, on arrival, 73 mi at 50 mph over La Veta Pass: 07:12:36 MDT, 6,171 ft
 *   sunrise 06:37:13, low 24 °F at 06:27:01, high 49 °F: by the day's curve 270.703 (27.60 °F)
 *   F = 2,377.799 after the air lost, a = 80,683.2
 *   settled (2,377.799·270.703 − 80,683.2)/6,894.757 = 81.66 psi
 *   all the way the air is under 273.15, so R = 23.41·e^(0.009543·20) = 28.33
 *   tire 294.620, 23.917 over the air, since the air behind the pass warms: 89.90 psi
 *
 * Quanah, on arrival: 17:39:52 CDT, 1,568 ft
 *   between 98 °F at 16:00 and 92 °F at 19:00: 94.67 °F, 307.967
 *   F = 2,376.002, a = 95,714.2
 *   settled (2,376.002·307.967 − 95,714.2)/6,894.757 = 92.25 psi
 *   R at 55 mph 24.55·e^(−0.009543·14.817) = 21.32 at the end, 25.08 at the start
 *   tire 327.446, 19.478 over the air: 98.96 psi
 *
 * Graham, cold check when leaving, 8 April 06:20 CDT (sunrise 07:13:15), 1,045 ft
 *   sunset 19:58:55, from 84 °F at its high to a low of 70 °F at 07:03:03: 294.245 (69.97 °F)
 *   F = 2,371.549, a = 97,556.9
 *   settled (2,371.549·294.245 − 97,556.9)/6,894.757 = 87.06 psi; tire 0.019 cooler: 87.05 psi
 * </pre>
 *
 * <p>The same tire read 55 psi instead, so that its load is in question. F = (55·6,894.757 +
 * 76,595.0)/264.177 = 1,725.384; of what it loses above it loses 0.685 times as much, as its gauge
 * pressure is. One standard deviation of the settled pressure at T, in psi: with g = T/264.177 the
 * gauge's 0.5·g and 2/√3·g; the air's then and now, F·g·2.856 K (5.14 °F, the low at no lead) and
 * F·σ, of which e^(−t/12 h) is one error; 0.4 of what was lost; the weather's √(2·(0.3/√3)²·(1 −
 * e^(−t/24 h))). Load with √(5² + 2.5²) % and 1 % of the ticket's weight, a tire's half of the
 * axle.
 *
 * <pre>
 * leaving          Walsenburg 07:32:36   Quanah 18:29:52      Graham 8 April 06:20
 *   air            29.153 °F, 271.568    93.004 °F, 307.041   69.97 °F, 294.245
 *   its σ, K       2.856 (low, lead 0)   2 (typed hour)       3.122 (5.62 °F: low, lead 2)
 *   F              1,725.320             1,723.471            1,720.019
 *   settled        56.25 psi             62.87                59.26
 *   σ              1.368                 1.674                1.800
 *   judged at      56.23                 62.87                59.11
 *     1 °F·(1 − e^(−t/12 h)) on the cold side of a low: 0.025 and 0.136; at Graham 0.005 for the
 *     tire that is 0.019 cooler than the warming air
 *   likely load    2,450 lb ± 139.1      2,689.9 ± 153.6      the same
 *     with 41 % of 1,170 lb of goats, ± 8 % ("typical")
 *   q_l            0.0001                0.0073               0.0555
 *   q_c            0.4369                0.3270               0.6964
 * </pre>
 *
 * <p>q_l and q_c are means over 32 mid-quantiles L of the load of Φ((p(L) − judged)/σ), p(L) =
 * 80·(L/3,520)^(1/0.585) and 80·L/3,520, one over 3,520 lb. The label, 80 psi for 3,500 lb, lies
 * under that line.
 */
class WorkedExampleTest {

  private static final double SETTLED = 0.05;
  private static final double WARM = 0.1;

  private static final Path HAUL = Path.of("demo-data/spring-fleece-haul.dawngauge");

  private final List<TireAtStop> track = track();

  private static List<TireAtStop> track() {
    return track(TripFile.read(HAUL).get());
  }

  private static List<TireAtStop> track(Trip trip) {
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
    TireSnapshot arrival = known(track.get(1).arrival());

    assertPsi(arrival.settled(), 81.66, SETTLED);
    assertPsi(arrival.reading(), 89.90, WARM);
  }

  @Test
  void quanahOnArrival() {
    TireSnapshot arrival = known(track.get(6).arrival());

    assertPsi(arrival.settled(), 92.25, SETTLED);
    assertPsi(arrival.reading(), 98.96, WARM);
  }

  @Test
  void grahamAtTheColdCheck() {
    TireSnapshot check = known(track.get(9).check());

    assertPsi(check.settled(), 87.06, SETTLED);
    assertPsi(check.reading(), 87.05, WARM);
  }

  /** The same haul, the tire read at 55 psi instead of 80. */
  private static List<TireAtStop> lowTrack() throws IOException {
    String text = Files.readString(HAUL);
    String low = text.replaceFirst("(\"T1\",\\s*\"pressure\": )\"80 psi\"", "$1\"55 psi\"");
    assertThat(low).isNotEqualTo(text);
    return track(TripFile.parse(low).get());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "walsenburg, 1, 56.25, 1.368, 56.23, 0.0001, 0.4369",
    "quanah, 6, 62.87, 1.674, 62.87, 0.0073, 0.3270",
    "graham, 9, 59.26, 1.800, 59.11, 0.0555, 0.6964"
  })
  void chancesWhenLeavingWithALowTire(
      String stop,
      int visit,
      double settled,
      double sigma,
      double low,
      double under,
      double notShown)
      throws IOException {
    TireAtStop at = lowTrack().get(visit);
    TireSnapshot leaving = known(at.leaving());

    assertPsi(leaving.settled(), settled, 0.03);
    assertPsi(leaving.limitSigma(), sigma, 0.02);
    assertPsi(leaving.low(), low, 0.03);
    assertThat(at.leavingChance().underFloor()).isCloseTo(under, within(0.002));
    assertThat(at.leavingChance().notShown()).isCloseTo(notShown, within(0.006));
    assertThat(at.leavingChance().asCertified()).isFalse();
  }
}
