package dawngauge.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Every tire read at a stop.
 *
 * @param stop index of the stop
 * @param seconds when
 * @param cold whether the rig stood all night
 * @param psi what was noted of each tire, in whole psi
 * @param airKelvins true temperature of the air
 */
record Round(int stop, double seconds, boolean cold, List<Double> psi, double airKelvins) {

  /** Copies the list. */
  Round {
    psi = List.copyOf(psi);
  }

  private static final double MINUTE = 60;

  /** In the sun a tire is up to so much warmer than the air; inferred. */
  private static final double SUN = 12;

  /** What each tire is set to before the haul: about the label, one spread for all; inferred. */
  private static final double TIRE_APART = 0.02;

  /**
   * All rounds of a haul, nothing set on the way: at each dawn but the last stop's, and within ten
   * minutes of each arrival.
   *
   * @param least least part of the label's pressure to which the rig is set before
   * @param most most part of it
   */
  static List<Round> all(SimulatedHaul haul, double least, double most) {
    double part = least + (most - least) * haul.random().nextDouble();
    TireRun run = run(haul, part * haul.rig().label() * Units.PSI);
    List<Round> rounds = new ArrayList<>(List.of(first(haul, run)));
    for (int stop = 1; stop < haul.stops().size(); stop++) {
      SimulatedHaul.Stop here = haul.stops().get(stop);
      double warm = here.arrive() + (3 + haul.random().nextInt(8)) * MINUTE;
      rounds.add(read(haul, run, stop, warm, false));
      if (!Double.isNaN(here.plannedLeave())) {
        rounds.add(read(haul, run, stop, beforeLeaving(haul.random(), here), true));
      }
    }
    return rounds;
  }

  /** The tires of a haul, each set to about a gauge pressure in pascal before it. */
  static TireRun run(SimulatedHaul haul, double pascals) {
    double[] cold = new double[haul.rig().tires()];
    for (int tire = 0; tire < cold.length; tire++) {
      cold[tire] = pascals * (1 + TIRE_APART * haul.random().nextGaussian());
    }
    return new TireRun(haul, cold);
  }

  /** The first round, before the haul begins. */
  static Round first(SimulatedHaul haul, TireRun run) {
    SimulatedHaul.Stop start = haul.stops().get(0);
    return read(haul, run, 0, beforeLeaving(haul.random(), start), true);
  }

  private static double beforeLeaving(Random random, SimulatedHaul.Stop stop) {
    return stop.plannedLeave() - (10 + random.nextInt(31)) * MINUTE;
  }

  private static Round read(
      SimulatedHaul haul, TireRun run, int stop, double seconds, boolean cold) {
    run.to(seconds);
    double air = run.minutes().air(run.now());
    List<Double> psi = new ArrayList<>();
    boolean sun = haul.world() == SimulatedHaul.World.SUN_NOT_NOTED && cold;
    for (int tire = 0; tire < haul.rig().tires(); tire++) {
      double warmer = sun && haul.rig().left(tire) ? SUN * haul.random().nextDouble() : 0;
      psi.add(haul.gauge().reads(run.warmedBy(tire, warmer), air, seconds) / Units.PSI);
    }
    return new Round(stop, seconds, cold, psi, air);
  }
}
