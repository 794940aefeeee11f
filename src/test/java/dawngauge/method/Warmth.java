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

  private final double riseSpread;

  /**
   * @param record of earlier trips, such as "1.2 ± 0.08"; empty without one
   */
  Warmth(double ratedSingle, double air, String record, double heatFactor) {
    String[] known = record.split(" ± ", -1);
    double spread = 0.25;
    if (known.length == 2) {
      double f = Double.parseDouble(known[0]);
      double told = Math.min(0.25, Math.hypot(Double.parseDouble(known[1]) / f, 0.1));
      spread = Math.abs(heatFactor - f) <= 2 * told * f ? told : 0.25;
    }
    riseSpread = spread;
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
    double rise = riseSpread * byRise;
    double rolling = slowRolling - kelvins;
    double standing = slowStanding - kelvins;
    return Math.sqrt(rise * rise + byLoad * byLoad + rolling * rolling + standing * standing);
  }

  double rise(double loadPart, double pressurePart, double speed, double heatFactor) {
    return 38
        * loadPart
        * Math.pow(pressurePart, -0.4)
        * Math.sqrt(speed / (60 * 0.44704))
        * heatFactor;
  }

  /** How much more it warms in air other than of 20 °C. */
  double byAir(double air) {
    return Math.exp(-(0.010 - 0.004 * part) * Math.max(-20, Math.min(20, air - 293.15)));
  }

  /** Over a piece on which the air goes from one temperature to another, and so does the rise. */
  void goOver(
      double from,
      double to,
      double seconds,
      boolean rolls,
      double rise,
      double riseAfter,
      double loadSpread) {
    double rolling = 60 * (17 + 13 * part);
    double standing = 60 * (45 + 10 * part);
    double tau = rolls ? rolling : standing;
    double slow = tau * Math.exp(rolls ? 0.35 : 0.2);
    byRise = after(byRise, rise, riseAfter, seconds, tau);
    byLoad = after(byLoad, rise * loadSpread, riseAfter * loadSpread, seconds, tau);
    double begins = from + rise;
    double ends = to + riseAfter;
    slowRolling = after(slowRolling, begins, ends, seconds, rolls ? slow : tau);
    slowStanding = after(slowStanding, begins, ends, seconds, rolls ? tau : slow);
    kelvins = after(kelvins, begins, ends, seconds, tau);
  }

  private static double after(double now, double from, double to, double seconds, double tau) {
    double slope = (to - from) / seconds;
    return to - slope * tau + (now - from + slope * tau) * Math.exp(-seconds / tau);
  }
}
