package dawngauge.method;

/** Section 5, with the spread of section 11: one tire's temperature, and as it may be. Kelvin. */
final class Warmth {
  private static final double POUND = 0.45359237;

  private final double part;
  private double kelvins;
  private double slowRolling;
  private double slowStanding;
  private double byRise;
  private double byLoad;

  Warmth(double ratedSingle, double air) {
    double over = (ratedSingle - 3200 * POUND) / (2800 * POUND);
    part = Math.max(0, Math.min(1, over));
    kelvins = air;
    slowRolling = air;
    slowStanding = air;
  }

  /** Begins anew where its own temperature was noted. */
  void noted(double own) {
    kelvins = own;
    slowRolling = own;
    slowStanding = own;
    byRise = 0;
    byLoad = 0;
  }

  double kelvins() {
    return kelvins;
  }

  double sigma() {
    double rise = 0.25 * byRise;
    double rolling = slowRolling - kelvins;
    double standing = slowStanding - kelvins;
    return Math.sqrt(rise * rise + byLoad * byLoad + rolling * rolling + standing * standing);
  }

  double rise(double loadPart, double pressurePart, double speed, double heatFactor) {
    double r60 = 25 + 13 * part;
    return r60
        * loadPart
        * Math.pow(pressurePart, -0.4)
        * Math.sqrt(speed / (60 * 0.44704))
        * heatFactor;
  }

  /** Over a piece on which the air goes from one temperature to another. */
  void goOver(
      double from, double to, double seconds, boolean rolls, double rise, double loadSpread) {
    double rolling = 60 * (17 + 13 * part);
    double standing = 60 * (45 + 10 * part);
    double tau = rolls ? rolling : standing;
    double slow = tau * Math.exp(rolls ? 0.35 : 0.2);
    double brought = 1 - Math.exp(-seconds / tau);
    byRise += (rise - byRise) * brought;
    byLoad += (rise * loadSpread - byLoad) * brought;
    slowRolling = after(slowRolling, from, to, seconds, rise, rolls ? slow : tau);
    slowStanding = after(slowStanding, from, to, seconds, rise, rolls ? tau : slow);
    kelvins = after(kelvins, from, to, seconds, rise, tau);
  }

  private static double after(
      double now, double from, double to, double seconds, double rise, double tau) {
    double slope = (to - from) / seconds;
    double lead = rise - slope * tau;
    return to + lead + (now - from - lead) * Math.exp(-seconds / tau);
  }
}
