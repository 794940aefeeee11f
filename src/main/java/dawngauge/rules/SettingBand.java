package dawngauge.rules;

/**
 * Within which pressures a cold tire is left as it is: what the gauge cannot tell is no reason to
 * add air or to let it out. It delays a word only; no figure to set is ever over the ceiling. Gauge
 * pressures in pascal.
 */
public final class SettingBand {
  private SettingBand() {}

  /** Under this a cold tire is low for its aim; NaN without an aim. */
  public static double lowUnder(Limits limits, GaugeErrors errors) {
    return limits.aim() - errors.deadBand(limits.aim());
  }

  /**
   * Over this a cold tire is to be let out: over the ceiling by more than the dead band, over a
   * limit of wheel or valve by more than a step; NaN where no limit is known.
   */
  public static double letOutAbove(Limits limits, FittedTire fitted, GaugeErrors errors) {
    double band = limits.ceiling() + errors.deadBand(limits.ceiling());
    return Math.min(band, fitted.rimPascals() + errors.step());
  }
}
