package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One tire at a moment, between two, and as it would be at another. */
class TireSnapshotTest {

  /** 80 psi at 60 °F and sea level; three days at 100 °F and 5,000 ft. */
  private static final List<TireAtStop> TRACK =
      Forecasts.first(
          Trips.of(RigBuilder.trailer())
              .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F").measured())
              .leg("50 mi", "50 mph")
              .stop(
                  stop("b")
                      .elevation("5000 ft")
                      .stays(Duration.ofDays(3))
                      .steady("100 °F")
                      .measured())
              .read("2027-06-01T05:50Z", "T1", "80 psi")
              .trip());

  private static final TireSnapshot HOME = known(TRACK.get(0).leaving());
  private static final TireSnapshot THERE = known(TRACK.get(1).leaving());

  /**
   * By hand: 94.696 psi at 519.67 °R are 101.985 at 559.67; less 12.228 psi around at 5,000 ft
   * (U.S. Standard Atmosphere 1976) 89.757. At 68 °F and sea level 94.696 · 527.67/519.67 − 14.696
   * = 81.458.
   */
  @Test
  void theSameAirAtAnotherMoment() {
    TireSnapshot moved = HOME.inAirOf(THERE);
    assertThat(psi(moved.settled())).isCloseTo(89.757, within(0.002));
    assertThat(psi(moved.reading())).isCloseTo(89.757, within(0.01));
    assertThat(psi(moved.judged())).isCloseTo(89.757, within(0.01));
    assertThat(moved.seconds()).isEqualTo(THERE.seconds());
    assertThat(moved.fill()).isEqualTo(HOME.fill());
    assertThat(moved.limitSigma()).isEqualTo(HOME.limitSigma());
    assertThat(psi(HOME.atReference())).isCloseTo(81.458, within(0.001));
    // Warm on arriving: what is above the air is read, but not judged.
    TireSnapshot warm = known(TRACK.get(1).arrival());
    TireSnapshot asWarm = HOME.inAirOf(warm);
    assertThat(asWarm.buildUp()).isCloseTo(warm.buildUp(), within(1e-6));
    assertThat(asWarm.judged())
        .isCloseTo(asWarm.settled(), within(1e-6))
        .isLessThan(asWarm.reading());
  }

  /**
   * A quarter of the way each figure has gone a quarter of its difference; at each end all of it.
   */
  @Test
  void betweenTwoMomentsAllGoesEvenly() {
    TireSnapshot moment =
        HOME.towards(THERE, HOME.seconds() + (THERE.seconds() - HOME.seconds()) / 4);
    assertThat(psi(moment.settled()))
        .isCloseTo(80 + 0.25 * (psi(THERE.settled()) - 80), within(1e-6));
    assertThat(moment.elevation()).isCloseTo(1250 * 0.3048, within(1e-6)); // a foot: NIST SP 811
    assertThat(moment.airKelvins()).isCloseTo(288.7056 + 10 / 1.8, within(1e-4)); // 40 °F · ¼
    assertThat(moment.seconds()).isEqualTo((3 * HOME.seconds() + THERE.seconds()) / 4);
    assertThat(moment.fill()).isCloseTo(HOME.fill(), within(1e-9)); // a tight tire
    assertThat(moment.reading())
        .isCloseTo(0.75 * HOME.reading() + 0.25 * THERE.reading(), within(1e-6));
    assertThat(moment.judged())
        .isCloseTo(0.75 * HOME.judged() + 0.25 * THERE.judged(), within(1e-6));
    assertThat(moment.airPressure())
        .isCloseTo(0.75 * HOME.airPressure() + 0.25 * THERE.airPressure(), within(1e-6));
    assertThat(moment.tireKelvins())
        .isCloseTo(0.75 * HOME.tireKelvins() + 0.25 * THERE.tireKelvins(), within(1e-6));
    assertThat(spreads(moment))
        .zipSatisfy(
            List.of(0, 1, 2, 3, 4, 5, 6, 7),
            (spread, i) ->
                assertThat(spread)
                    .isCloseTo(
                        0.75 * spreads(HOME).get(i) + 0.25 * spreads(THERE).get(i), within(1e-6)));
    assertThat(spreads(HOME.towards(THERE, THERE.seconds()))).isEqualTo(spreads(THERE));
    assertThat(HOME.towards(THERE, HOME.seconds())).isEqualTo(HOME);
    assertThat(HOME.towards(HOME, HOME.seconds())).isEqualTo(HOME);
  }

  private static List<Double> spreads(TireSnapshot moment) {
    return List.of(
        moment.readingSigma(),
        moment.settledSigma(),
        moment.limitSigma(),
        moment.fineSigma(),
        moment.gaugeSigma(),
        moment.airSigma(),
        moment.coldSide(),
        moment.warmSigma());
  }

  /**
   * By hand: 2 K of the air when it was read make 2 · 94.696/288.706 K of 80 psi, times the warmer
   * air's 559.67/519.67: 0.7065 psi; 2 K three days later, forgotten by e^(−6), as much.
   */
  @Test
  void whatOfTheSpreadIsTheAirsThenAndNow() {
    assertThat(psi(THERE.airReadSigma())).isCloseTo(0.7065, within(0.001));
    assertThat(Math.hypot(THERE.airReadSigma(), THERE.airNowSigma()))
        .isCloseTo(THERE.airSigma(), within(1e-6));
    assertThat(psi(THERE.airNowSigma())).isCloseTo(2 * 94.696 / 288.706, within(0.06));
  }

  @Test
  void cooledItReadsWhatItSettlesAt() {
    TireSnapshot warm = known(TRACK.get(1).arrival());
    TireSnapshot cool = warm.cooled();
    assertThat(psi(warm.buildUp())).isGreaterThan(3);
    assertThat(cool.buildUp()).isZero();
    assertThat(cool.settled()).isEqualTo(warm.settled());
    assertThat(cool.judged()).isEqualTo(warm.settled());
    assertThat(cool.readingSigma()).isEqualTo(warm.settledSigma());
    assertThat(cool.warmSigma()).isZero();
    assertThat(cool.tireKelvins()).isEqualTo(warm.airKelvins());
    assertThat(cool.low()).isEqualTo(warm.settled() - warm.coldSide());
  }
}
