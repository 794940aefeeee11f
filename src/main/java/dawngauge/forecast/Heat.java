package dawngauge.forecast;

/**
 * Temperature of the air in one tire along the timeline, by the closed form of each piece, with
 * what is needed for its spread: the part driven by running, what an unsure load does to it, and
 * the temperature for longer time constants.
 */
final class Heat {

  private double kelvins;
  private double byRunning;
  private double byLoad;
  private double withSlowRolling;
  private double withSlowParking;
  private boolean warmthKnown;

  /** As warm as the air, since nothing else is known. */
  Heat(double airKelvins) {
    begin(airKelvins);
  }

  /** The same state, free to go its own way. */
  Heat(Heat other) {
    kelvins = other.kelvins;
    byRunning = other.byRunning;
    byLoad = other.byLoad;
    withSlowRolling = other.withSlowRolling;
    withSlowParking = other.withSlowParking;
    warmthKnown = other.warmthKnown;
  }

  /** Begins anew from a temperature that was measured. */
  void reset(double startKelvins) {
    begin(startKelvins);
    warmthKnown = true;
  }

  private void begin(double startKelvins) {
    kelvins = startKelvins;
    byRunning = 0;
    byLoad = 0;
    withSlowRolling = startKelvins;
    withSlowParking = startKelvins;
  }

  /** Temperature now. */
  double kelvins() {
    return kelvins;
  }

  /**
   * Whether something tells how much warmer than the air the tire is: it ran on this trip, or its
   * own temperature was noted. Where nothing does, a warm tire cannot be told from a cold one.
   */
  boolean tellsWarmth() {
    return warmthKnown;
  }

  /**
   * One standard deviation of how much warmer than the air the tire is.
   *
   * @param riseSpread of {@link HeatFit#riseSpread}
   */
  double warmSigma(double riseSpread) {
    double rise = riseSpread * byRunning;
    double rolling = withSlowRolling - kelvins;
    double parked = withSlowParking - kelvins;
    return Math.sqrt(rise * rise + byLoad * byLoad + rolling * rolling + parked * parked);
  }

  /**
   * Goes over pieces on all of which the rig rolls, or stands.
   *
   * @param decay of this kind of tire
   * @param from node where the first piece begins
   * @param to node where the last one ends
   * @param rolling whether it rolls
   * @param rise rise at equilibrium in air of 20 °C, in kelvin
   * @param loadSpread one standard deviation of the load, part of it: the rise goes with the load
   * @param course takes the temperature at each node from the first on, index 0 first
   */
  void goOver(
      Decay decay,
      int from,
      int to,
      boolean rolling,
      double rise,
      double loadSpread,
      double[] course) {
    double now = kelvins;
    double running = byRunning;
    double uneven = byLoad;
    // Either time constant is slow only where it acts.
    double slow = rolling ? withSlowRolling : withSlowParking;
    double other = rolling ? withSlowParking : withSlowRolling;
    double[] left = decay.plain.left;
    double[] byAir = decay.plain.byAir;
    double[] byRise = decay.plain.byRise;
    double[] slowByRise = decay.slow.byRise;
    double[] slowLeft = decay.slow.left;
    double[] slowByAir = decay.slow.byAir;
    course[0] = now;
    warmthKnown |= rolling && to > from;
    for (int node = from; node < to; node++) {
      double keep = left[node];
      double slowKeep = slowLeft[node];
      double lift = rise * byRise[node];
      now = now * keep + (byAir[node] + lift);
      other = other * keep + (byAir[node] + lift);
      running = running * keep + lift;
      uneven = uneven * keep + lift * loadSpread;
      slow = slow * slowKeep + (slowByAir[node] + rise * slowByRise[node]);
      course[node - from + 1] = now;
    }
    kelvins = now;
    byRunning = running;
    byLoad = uneven;
    withSlowRolling = rolling ? slow : other;
    withSlowParking = rolling ? other : slow;
  }
}
