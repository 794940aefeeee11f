package dawngauge.forecast;

import dawngauge.physics.WarmUp;

/**
 * Temperature of the air in one tire along the timeline, by the closed form of each piece, with
 * what is needed for its spread: the part driven by running, and the temperature for longer time
 * constants.
 */
final class Heat {

  private double kelvins;
  private double byRunning;
  private double withSlowRolling;
  private double withSlowParking;

  Heat(double startKelvins) {
    reset(startKelvins);
  }

  /** The same state, free to go its own way. */
  Heat copy() {
    Heat other = new Heat(kelvins);
    other.byRunning = byRunning;
    other.withSlowRolling = withSlowRolling;
    other.withSlowParking = withSlowParking;
    return other;
  }

  /** Begins anew from a temperature. */
  void reset(double startKelvins) {
    kelvins = startKelvins;
    byRunning = 0;
    withSlowRolling = startKelvins;
    withSlowParking = startKelvins;
  }

  /** Temperature now. */
  double kelvins() {
    return kelvins;
  }

  /** One standard deviation of how much warmer than the air the tire is. */
  double warmSigma() {
    double rise = WarmUp.RISE_SPREAD * byRunning;
    double rolling = withSlowRolling - kelvins;
    double parked = withSlowParking - kelvins;
    return Math.sqrt(rise * rise + rolling * rolling + parked * parked);
  }

  /**
   * Goes over one piece.
   *
   * @param timeline the trip
   * @param node where the piece begins
   * @param rise rise at equilibrium, in kelvin
   * @param decay decays of the pieces
   */
  void step(Timeline timeline, int node, double rise, Decay decay) {
    double seconds = timeline.seconds[node + 1] - timeline.seconds[node];
    if (seconds <= 0) {
      return;
    }
    double air = timeline.air[node];
    double slope = (timeline.air[node + 1] - air) / seconds;
    boolean rolling = timeline.drive[node] >= 0;
    double tau = rolling ? decay.rolling : decay.parked;
    double slowTau = tau * (rolling ? Decay.SLOW_ROLLING : Decay.SLOW_PARKED);
    double keep = decay.plain[node];
    double slowKeep = decay.slow[node];
    kelvins = WarmUp.temperatureAfterWithDecay(kelvins, air, slope, rise, tau, seconds, keep);
    byRunning = rise + (byRunning - rise) * keep;
    withSlowRolling =
        WarmUp.temperatureAfterWithDecay(
            withSlowRolling,
            air,
            slope,
            rise,
            rolling ? slowTau : tau,
            seconds,
            rolling ? slowKeep : keep);
    withSlowParking =
        WarmUp.temperatureAfterWithDecay(
            withSlowParking,
            air,
            slope,
            rise,
            rolling ? tau : slowTau,
            seconds,
            rolling ? keep : slowKeep);
  }
}
