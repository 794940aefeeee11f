package dawngauge.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The simulator's own physics of a tire, against closed forms and published anchors. */
class TireHeatTest {

  private static final double MPH = Units.MILE / Units.HOUR;

  /** With the inside tied to the body: one node, T = θ + Q/G · (1 − exp(−G t / C)). */
  @Test
  void coupledStifflyItIsOneNode() {
    TwoNodes nodes = new TwoNodes(30_000, 4_000, 280);
    TwoNodes.Ways ways = new TwoNodes.Ways(50, 50_000, 0);
    double seconds = 0.05; // well under 4,000 / 50,000 s
    int steps = (int) Math.round(900 / seconds);
    for (int i = 0; i < steps; i++) {
      nodes.step(ways, body -> 2000, 0, 280, seconds);
    }
    double closed = 280 + 40 * (1 - Math.exp(-50.0 * 900 / 34_000));
    assertThat(nodes.body()).isCloseTo(closed, within(0.01));
    assertThat(nodes.inside()).isCloseTo(closed, within(0.02));
  }

  /** Cut off from the body the inside cools by itself: T = θ + (T₀ − θ) · exp(−W t / C). */
  @Test
  void theInsideAloneCoolsThroughTheWheel() {
    TwoNodes nodes = new TwoNodes(30_000, 4_000, 320);
    for (int i = 0; i < 30; i++) {
      nodes.step(new TwoNodes.Ways(0, 0, 5), body -> 0, 0, 280, 60);
    }
    assertThat(nodes.inside()).isCloseTo(280 + 40 * Math.exp(-5 * 1800.0 / 4000), within(1e-5));
    assertThat(nodes.body()).isEqualTo(320);
  }

  /** What was brought in is stored or given off; steps of a minute are short enough. */
  @Test
  void heatIsKept() {
    TwoNodes.Ways ways = Film.rolling(TireKind.TRAILER, 60 * MPH, 1);
    TwoNodes minutes = new TwoNodes(35_000, 4_000, 290);
    TwoNodes seconds = new TwoNodes(35_000, 4_000, 290);
    double given = 0;
    for (int i = 0; i < 40; i++) {
      minutes.step(ways, body -> 2500, 100, 290, 60);
    }
    for (int i = 0; i < 2400; i++) {
      double body = seconds.body();
      double inside = seconds.inside();
      seconds.step(ways, b -> 2500, 100, 290, 1);
      given += ways.outer() * ((body + seconds.body()) / 2 - 290);
      given += ways.wheel() * ((inside + seconds.inside()) / 2 - 290);
    }
    double stored = 35_000 * (seconds.body() - 290) + 4_000 * (seconds.inside() - 290);
    assertThat(given + stored).isCloseTo(2600 * 2400, within(500.0));
    assertThat(minutes.inside()).isCloseTo(seconds.inside(), within(0.01));
  }

  @Test
  void endsInItsSteadyState() {
    for (TireKind kind : List.of(TireKind.TRAILER, TireKind.LIGHT_TRUCK, TireKind.TRUCK)) {
      TwoNodes.Ways ways = Film.rolling(kind, 60 * MPH, 1);
      TireKind.Heat heat = kind.heatAt(0.85 * kind.ratedLoad(), kind.ratedPressure(), 60 * MPH);
      TwoNodes nodes = new TwoNodes(kind.bodyCapacity(), kind.insideCapacity(), 293);
      for (int i = 0; i < 600; i++) {
        nodes.step(ways, heat::at, 0, 293, 60);
      }
      double rise = nodes.body() - 293;
      assertThat(rise).isCloseTo(ways.rise(heat.at(nodes.body())), within(1e-6));
      assertThat(nodes.inside() - 293).isCloseTo(rise * ways.insidePart(), within(1e-6));
    }
  }

  /** From 68 °F and 100 psi a truck tire gains 10 to 15 psi in the trade's words; here 12.5. */
  @Test
  void aTruckTireBuildsUpAsTheTradeTells() {
    double rise = insideRise(TireKind.TRUCK, 0.85, 293.15);
    assertThat(rise / 293.15 * (100 + 14.7)).isBetween(10.0, 15.0);
  }

  /**
   * A passenger car's tire at 35 psi and 80 % of its load, the limit of its class in UN R117 (10.5
   * N/kN, 0.008 a kelvin): 4.7 psi. 49 CFR 393.75(i)(2) reckons with 5 psi for tires to 4,000 lb.
   */
  @Test
  void aCarsTireBuildsUpAsTheRegulationReckons() {
    TireKind car =
        new TireKind(
            1500 * Units.POUND,
            35 * Units.PSI,
            1500 * Units.POUND,
            0.5,
            0.0105,
            0.008,
            0.66,
            0.16,
            0.381,
            8.5,
            1.5,
            9,
            0.035);
    double rise = insideRise(car, 0.8, 293.15);
    assertThat(rise / 293.15 * (35 + 14.7)).isBetween(3.0, 6.0);
  }

  /** By UN R117 Annex 6 rolling resistance falls 1 % and 0.6 % a kelvin about 25 °C once steady. */
  @Test
  void theResistanceFallsWithTheAirAsPublished() {
    for (TireKind kind : List.of(TireKind.TRAILER, TireKind.TRUCK)) {
      double warm = bodyRise(kind, 0.85, 303.15, 80 / 3.6);
      double cool = bodyRise(kind, 0.85, 293.15, 80 / 3.6);
      assertThat(Math.log(cool / warm) / 10).isCloseTo(kind.fall(), within(0.0002));
      assertThat(bodyRise(kind, 0.85, 298.15, 80 / 3.6)).isCloseTo(kind.testRise(), within(1e-3));
    }
  }

  private static double insideRise(TireKind kind, double part, double air) {
    TwoNodes.Ways ways = Film.rolling(kind, 60 * MPH, 1);
    return ways.insidePart() * bodyRise(kind, part, air, 60 * MPH);
  }

  private static double bodyRise(TireKind kind, double part, double air, double speed) {
    TwoNodes.Ways ways = Film.rolling(kind, speed, 1);
    TireKind.Heat heat = kind.heatAt(part * kind.ratedLoad(), kind.ratedPressure(), speed);
    double rise = 20;
    for (int i = 0; i < 200; i++) {
      rise = (rise + ways.rise(heat.at(air + rise))) / 2;
    }
    return rise;
  }

  /** 80 psi at 20 °C: at 0 °C F · 273.15 − a, F = (80 + 14.696) / 293.15 (OpenStax, gas law). */
  @Test
  void theAirFollowsTheGasLaw() {
    SimulatedHaul haul = haul(1);
    double[] cold = new double[haul.rig().tires()];
    Arrays.fill(cold, 80 * Units.PSI);
    TireRun run = new TireRun(haul, cold);
    double air = run.minutes().air(0);
    double around = run.minutes().pressure(0);
    assertThat(run.gauge(0)).isCloseTo(80 * Units.PSI, within(1e-6));
    double warmer = (80 * Units.PSI + around) * (air + 20) / air - around;
    assertThat(run.warmedBy(0, 20)).isCloseTo(warmer, within(1e-6));
    run.set(0, 70 * Units.PSI);
    assertThat(run.gauge(0)).isCloseTo(70 * Units.PSI, within(1e-6));
  }

  /** A month of standing costs one to three percent, as ASTM F1112 finds, most of the time. */
  @Test
  void aTireLosesLittleAir() {
    double most = 0;
    for (int seed = 0; seed < 20; seed++) {
      SimulatedHaul haul = haul(seed);
      TireRun run = Round.run(haul, haul.rig().label() * Units.PSI);
      double kelvins = run.minutes().air(0) + run.warmth(0);
      double before = (run.gauge(0) + run.minutes().pressure(0)) / kelvins;
      run.to(5 * Units.DAY);
      double after =
          (run.gauge(0) + run.minutes().pressure(run.now()))
              / (run.minutes().air(run.now()) + run.warmth(0));
      assertThat(after).isLessThan(before);
      most = Math.max(most, 1 - after / before);
    }
    assertThat(most).isBetween(0.0015, 0.03); // five days of up to 3 % a month, times 3 where warm
  }

  @Test
  void dualsShareByTheirPressures() {
    SimulatedRig rig = dualRig();
    assertThat(rig.load(0, 80 * Units.PSI, 80 * Units.PSI))
        .isEqualTo(rig.load(1, 80 * Units.PSI, 80 * Units.PSI));
    double both = 2 * rig.load(0, 80 * Units.PSI, 80 * Units.PSI);
    assertThat(rig.load(0, 80 * Units.PSI, 50 * Units.PSI))
        .isCloseTo(both * 95 / 160, within(1e-6)); // (80 + 15) / (80 + 15 + 50 + 15)
    assertThat(rig.mate(2)).isEqualTo(3);
    assertThat(rig.inner(1) && rig.inner(2) && !rig.inner(0) && !rig.inner(3)).isTrue();
    assertThat(rig.left(1) && !rig.left(2)).isTrue();
  }

  private static SimulatedRig dualRig() {
    Random random = new Random(5);
    SimulatedRig rig = new SimulatedRig(random, SimulatedRig.Loads.LIKELY);
    while (!rig.dual()) {
      rig = new SimulatedRig(random, SimulatedRig.Loads.LIKELY);
    }
    return rig;
  }

  /** 84.61 % of the rated load with n 0.585 needs 0.8461^(1 / 0.585) = 75.15 % of its pressure. */
  @Test
  void whatALoadNeeds() {
    TireKind kind = TireKind.TRAILER;
    assertThat(kind.need(kind.ratedLoad(), false)).isEqualTo(kind.ratedPressure());
    assertThat(kind.need(0.8461 * kind.ratedLoad(), false) / kind.ratedPressure())
        .isCloseTo(0.7515, within(1e-3));
    assertThat(kind.need(1.01 * kind.ratedLoad(), false)).isInfinite();
  }

  private static SimulatedHaul haul(long seed) {
    return new SimulatedHaul(
        new Random(seed), SimulatedHaul.World.PLAIN, SimulatedRig.Loads.LIKELY, 5, 0.5);
  }
}
