package dawngauge.simulated;

import java.util.Random;

/**
 * By how much the air at a place differs from the forecast of the first morning. The spread by lead
 * is published (ASA Data Expo 2018: root mean square error of U.S. forecasts against stations);
 * what it consists of is inferred: a quarter of the variance stays with the place (station,
 * exposure, where the rig stands), half goes with the weather of the whole region and is forgotten
 * over 30 h, a quarter is the place's own and is forgotten over 3 h. So an error at one place keeps
 * 0.91 of itself over one hour, 0.47 over a day and 0.35 over two.
 */
final class ForecastErrors {

  /** Of the maximum by whole days of lead, in °F; ASA Data Expo 2018. */
  private static final double[] MAXIMUM = {3.54, 3.90, 4.34, 4.83, 5.36, 6.03, 6.72};

  /** Of the minimum; ASA Data Expo 2018. */
  private static final double[] MINIMUM = {5.14, 5.63, 5.62, 5.61, 5.66, 5.89, 5.96};

  /** Parts of the variance: place, region, the place's own weather; inferred. */
  private static final double PLACE = 0.25;

  private static final double REGION = 0.5;
  private static final double OWN = 0.25;

  /** Memory of the region's error, in seconds; inferred. */
  private static final double REGION_MEMORY = 30 * Units.HOUR;

  /** Memory of the place's own; inferred. */
  private static final double OWN_MEMORY = 3 * Units.HOUR;

  private final Memory region;
  private final Memory[] own;
  private final double[] place;

  /** Draws them for some places from a first to a last second. */
  ForecastErrors(Random random, int places, double from, double to) {
    region = new Memory(random, REGION_MEMORY, from, to, Units.HOUR);
    own = new Memory[places];
    place = new double[places];
    for (int i = 0; i < places; i++) {
      own[i] = new Memory(random, OWN_MEMORY, from, to, Units.HOUR / 4);
      place[i] = random.nextGaussian();
    }
  }

  /**
   * Spread in kelvin.
   *
   * @param lead whole days since the first morning; the first figure before it
   * @param dawn 1 at the day's low, 0 at its high, between them by the temperature
   */
  static double sigma(int lead, double dawn) {
    int days = Math.max(0, Math.min(MAXIMUM.length - 1, lead));
    return (MAXIMUM[days] + dawn * (MINIMUM[days] - MAXIMUM[days])) / 1.8;
  }

  /** The error in units of its spread, at a place. */
  double drawn(int at, double seconds) {
    return Math.sqrt(PLACE) * place[at]
        + Math.sqrt(REGION) * region.at(seconds)
        + Math.sqrt(OWN) * own[at].at(seconds);
  }

  /** What it keeps of itself at one place over a time: the closed form of the above. */
  static double kept(double seconds) {
    return PLACE
        + REGION * Math.exp(-seconds / REGION_MEMORY)
        + OWN * Math.exp(-seconds / OWN_MEMORY);
  }
}
