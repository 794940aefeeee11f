package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** How sure a figure is. */
class BandsTest {

  /** Pressure of 80 psi at 60 °F over absolute temperature: what a kelvin makes, in psi. */
  private static final double PSI_PER_KELVIN = (80 + 14.696) / 288.706;

  private static Trip parked(String gauge, ReadingState state, StopBuilder first) {
    return Trips.of(RigBuilder.trailer())
        .stop(first.leaves("2027-06-01T06:00Z"))
        .leg("50 mi", "50 mph")
        .stop(stop("b").stays(Duration.ofDays(3)).steady("60 °F").measured())
        .read("2027-06-01T05:50Z", "T1", "80 psi", gauge, state)
        .trip();
  }

  private static List<TireAtStop> track(String gauge) {
    return Forecasts.first(parked(gauge, ReadingState.COLD, stop("a").steady("60 °F").measured()));
  }

  /** The offset of one gauge cancels in its own readings, not against a limit. */
  @Test
  void aReadingWithTheSameGaugeIsSurerThanALimit() {
    TireSnapshot leaving = known(track("hand").get(0).leaving());

    // repeatability 0.5 psi (half a division of 1 psi), twice: reading and reading again
    assertThat(psi(leaving.settledSigma())).isCloseTo(0.5 * Math.sqrt(2), within(0.05));
    // 2 % of 100 psi as an even spread: 2/√3 = 1.155 (ASME B40.100 grade as a limit of error)
    assertThat(psi(leaving.limitSigma()))
        .isCloseTo(Math.hypot(0.5, 2 / Math.sqrt(3)), within(0.05));
    assertThat(leaving.settledSigma()).isLessThan(leaving.limitSigma());
  }

  /** A coarse gauge: half a division of 5 psi. */
  @Test
  void aCoarseGaugeRepeatsWorse() {
    TireSnapshot fine = known(track("hand").get(0).leaving());
    TireSnapshot coarse = known(track("coarse").get(0).leaving());

    assertThat(psi(coarse.settledSigma())).isCloseTo(2.5 * Math.sqrt(2), within(0.05));
    assertThat(coarse.limitSigma()).isGreaterThan(fine.limitSigma());
    assertThat(psi(coarse.limitSigma())).isCloseTo(Math.hypot(2.5, 2 / Math.sqrt(3)), within(0.05));
  }

  /**
   * Right after a cold reading the air's error is that of the reading and cancels; it fades in
   * (e^(−t/12 h), inferred): after days both errors, 2 K each, count in full.
   */
  @Test
  void theSpreadGrowsAsTheAirForgets() {
    List<TireAtStop> track = track("hand");
    double soon = psi(known(track.get(0).leaving()).settledSigma());
    double hour = psi(known(track.get(1).arrival()).settledSigma());
    double days = psi(known(track.get(1).leaving()).settledSigma());

    assertThat(soon).isLessThan(hour);
    assertThat(hour).isLessThan(days);
    double air = 2 * PSI_PER_KELVIN;
    double barometer = 0.3 / Math.sqrt(3);
    double all = Math.sqrt(2 * 0.25 + 2 * air * air + 2 * barometer * barometer);
    assertThat(days).isCloseTo(all, within(0.02));
  }

  /** Warmth adds its own spread: R by a quarter, time constants by 0.35 and 0.2 (inferred). */
  @Test
  void aWarmReadingIsLessSure() {
    TireSnapshot arrival = known(track("hand").get(1).arrival());

    assertThat(arrival.readingSigma()).isGreaterThan(arrival.settledSigma());
    assertThat(psi(arrival.warmSigma())).isBetween(0.25 * psi(arrival.buildUp()), 3.0);
    assertThat(arrival.readingSigma())
        .isCloseTo(Math.hypot(arrival.settledSigma(), arrival.warmSigma()), within(1e-6));
  }

  /** Parked long enough, only what is spread about the parked time constant is left: nothing. */
  @Test
  void warmthIsSureAgainWhenTheTireIsCold() {
    assertThat(psi(known(track("hand").get(1).leaving()).warmSigma())).isLessThan(0.001);
  }

  /**
   * In the sun the tire is 0 to 15 K above the air (inferred), one-sided: the cold equivalent lies
   * 7.5 K lower with an even spread, 15/√12 K.
   */
  @Test
  void aReadingInTheSunMeansLess() {
    Trip trip = parked("hand", ReadingState.COLD_IN_SUN, stop("a").steady("60 °F").measured());
    ReadingCheck check = Forecasts.first(trip).get(0).readings().get(0);

    double lower = 7.5 * (80 + 14.696) / (288.706 + 7.5);
    assertThat(psi(check.coldEquivalent())).isCloseTo(80 - lower, within(0.01));
    assertThat(psi(check.coldSigma()))
        .isCloseTo(
            288.706 / 296.206 * Math.hypot(0.5, 15 / Math.sqrt(12) * 94.696 / 296.206),
            within(0.005));
    assertThat(psi(check.coldEquivalent() + 1.75 * check.coldSigma())).isGreaterThan(79.9);
  }

  /**
   * Dawn decides: by a typed low of the day the spread of an 80 psi tire is about 1 psi more than
   * by its repeatability, and 1 °F further on the low side once the air has forgotten the reading.
   */
  @Test
  void theErrorOfTheLowAndItsBiasCount() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("a")
                    .at(38.54, -106.93, "America/Denver")
                    .leaves("2027-03-08T06:00-07:00[America/Denver]")
                    .lowHigh("2027-03-08", "10 °F", "50 °F"))
            .leg("50 mi", "50 mph")
            .stop(
                stop("b")
                    .at(38.54, -106.93, "America/Denver")
                    .leaves("2027-03-10T06:00-07:00[America/Denver]")
                    .lowHigh("2027-03-10", "10 °F", "50 °F"))
            .stop(stop("c").steady("40 °F"))
            .read("2027-03-08T05:50-07:00[America/Denver]", "T1", "80 psi")
            .trip();

    TireSnapshot dawn = known(Forecasts.first(trip).get(1).leaving());
    double perKelvin = psi(dawn.fill());
    double memory = Math.exp(-48.0 / 12);
    double then = 5.14 * 5 / 9 * perKelvin;
    double now = 5.62 * 5 / 9 * perKelvin;
    double barometer = 2 * 0.03 * (1 - Math.exp(-2));

    // minimum's error at lead 0 and 2 days (ASA Data Expo 2018)
    assertThat(psi(dawn.settledSigma()))
        .isCloseTo(
            Math.sqrt(0.5 + then * then + now * now - 2 * memory * then * now + barometer),
            within(0.02));
    assertThat(psi(dawn.coldSide())).isCloseTo(5.0 / 9 * perKelvin * (1 - memory), within(0.005));
  }

  /** A spread typed beside a temperature takes the place of the assumed 2 K. */
  @Test
  void aTypedSpreadOfTheAirCounts() {
    TireSnapshot vague =
        known(
            Forecasts.first(
                    parked(
                        "hand",
                        ReadingState.COLD,
                        stop("a").steady("60 °F").measured().give("8 °C")))
                .get(1)
                .leaving());
    TireSnapshot sure = known(track("hand").get(1).leaving());

    assertThat(vague.settledSigma()).isGreaterThan(sure.settledSigma());
    assertThat(psi(vague.settledSigma()))
        .isCloseTo(Math.sqrt(0.5 + 68 * PSI_PER_KELVIN * PSI_PER_KELVIN + 2 * 0.03), within(0.05));
  }

  /**
   * Air measured beside the tire (1 K) makes the fill surer, but its error is not that of the
   * expected air (2 K), so nothing cancels in what is expected right afterwards.
   */
  @Test
  void measuredAirSharesNoErrorWithTheExpectedOne() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F").measured())
            .stop(stop("b").steady("60 °F").measured())
            .readIn("60 °F", "2027-06-01T05:59Z", "T1", "80 psi")
            .trip();

    TireSnapshot leaving = known(Forecasts.first(trip).get(0).leaving());

    assertThat(psi(leaving.settled())).isCloseTo(80, within(1e-9));
    assertThat(psi(leaving.settledSigma()))
        .isCloseTo(Math.sqrt(0.5 + 5 * PSI_PER_KELVIN * PSI_PER_KELVIN), within(0.01));
  }

  /** A typed leak may be off by 40 % (ours): after three days at 2 psi a day by 2.3 psi. */
  @Test
  void whatIsLostIsNotSure() {
    TireSnapshot tight = known(track("hand").get(1).leaving());
    Trip leaking =
        Trips.of(RigBuilder.trailer().losing("2 psi"))
            .stop(stop("a").steady("60 °F").measured().leaves("2027-06-01T06:00Z"))
            .leg("50 mi", "50 mph")
            .stop(stop("b").stays(Duration.ofDays(3)).steady("60 °F").measured())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .trip();
    TireSnapshot leaky = known(Forecasts.first(leaking).get(1).leaving());

    double lost = psi(tight.settled() - leaky.settled());
    double more = Math.sqrt(sq(psi(leaky.settledSigma())) - sq(psi(tight.settledSigma())));
    assertThat(lost).isCloseTo(5.8, within(0.2));
    assertThat(more).isCloseTo(0.4 * lost, within(0.05));
  }

  private static double sq(double number) {
    return number * number;
  }

  /**
   * A scale is right to 1 % (ours, no source), a side to 2.5 % of its load (inferred): together
   * 2.69 %, so the floor of 64 psi is sure to 64·0.0269 = 1.723 psi by the straight cautious curve.
   * At 66 psi Φ(−2/√(1.258² + 1.723²)) = 17.43 %; the mean over 32 quantiles in its place, by
   * Python's NormalDist, 17.41 %.
   */
  @Test
  void theLoadsSpreadIsInTheChance() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").steady("60 °F").measured().leaves("2027-06-01T06:00Z"))
            .stop(stop("b").steady("60 °F").measured())
            .read("2027-06-01T06:00Z", "T1", "66 psi")
            .trip();
    TireAtStop at = Forecasts.first(trip).get(0);

    double sigma = Math.hypot(psi(known(at.leaving()).limitSigma()), 64 * Math.hypot(0.01, 0.025));
    double expected = new NormalDistribution().cumulativeProbability((64.0 - 66) / sigma);
    assertThat(expected).isCloseTo(0.1743, within(0.0005));
    assertThat(at.leavingChance().notShown()).isCloseTo(expected, within(0.0005));
    // the likely curve asks for 54.63 psi: 66 psi are 11.4 psi over that, with a spread of 2.8
    assertThat(at.leavingChance().underFloor()).isLessThan(0.0001);
  }

  /**
   * By hand, in air of 20 °C: rated 3,500 lb the tire is 300/2,800 on the way from small to large,
   * so τ is 17 + 13 · 0.10714 = 18.393 min rolling, 46.071 parked. After an hour it is 0.96170 of
   * its rise warm; with τ e^0.35 times as long 0.89962, 6.455 % less. Half an hour parked leaves
   * e^(−30 / 46.071) = 0.52146 of that, with τ e^0.2 times as long 0.58677, 12.525 % more. The rise
   * itself is unsure by a quarter and by what the load is.
   */
  @Test
  void whatOfTheSpreadIsTheTimeItTakes() {
    List<TireAtStop> track =
        Forecasts.first(
            Trips.of(RigBuilder.trailer())
                .stop(stop("a").leaves("2027-06-01T06:00Z").steady("20 °C").measured())
                .leg("50 mi", "50 mph")
                .stop(stop("b").stays(Duration.ofMinutes(30)).steady("20 °C").measured())
                .stop(stop("c").steady("20 °C").measured())
                .read("2027-06-01T05:50Z", "T1", "80 psi")
                .trip());
    double load = track.get(0).limits().load().sigma() / track.get(0).limits().load().kilograms();
    assertThat(load).isGreaterThan(0.02);
    TireSnapshot arrival = known(track.get(1).arrival());
    TireSnapshot leaving = known(track.get(1).leaving());
    assertThat(arrival.warmSigma() / arrival.buildUp())
        .isCloseTo(Math.sqrt(0.0625 + load * load + 0.06455 * 0.06455), within(2e-4));
    assertThat(leaving.buildUp() / arrival.buildUp()).isCloseTo(0.52146, within(1e-4));
    assertThat(leaving.warmSigma() / leaving.buildUp())
        .isCloseTo(
            Math.sqrt(0.0625 + load * load + 0.06455 * 0.06455 + 0.12525 * 0.12525), within(2e-4));
  }
}
