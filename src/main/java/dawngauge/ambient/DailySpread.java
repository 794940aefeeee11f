package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.geo.NearestPoints;
import java.util.List;

/**
 * How far single days lie from what is typical: standard deviations of lows and highs by month on a
 * grid of one degree over the 48 states; elsewhere a rough figure for all lands.
 */
final class DailySpread {

  private static final int AROUND = 4;

  /** Farther from the grid, in meter, it says nothing. */
  private static final double REACH_METERS = 150_000;

  /** Nearer than this, in meter, a point of the grid is the place. */
  private static final double SAME_METERS = 1000;

  /**
   * Beyond the grid: real days lie about 4 K (summer) to 8 K (winter) around the normal; from our
   * comparison with daily records, taken here as one standard deviation, which is the wide reading.
   */
  private static final double ROUGH_MEAN = 6;

  private static final double ROUGH_SWING = 2;

  /** Read at the first use. */
  private static final class Bundled {
    static final MonthTable TABLE = new MonthTable("/dawngauge/ambient/spread.gz", 1, false);
  }

  private DailySpread() {}

  /** One standard deviation in kelvin, of the low or of the high, whichever is more. */
  static double at(Coordinate place, double month) {
    List<NearestPoints.Near> around = Bundled.TABLE.around(place, AROUND);
    if (around.get(0).meters() > REACH_METERS) {
      return rough(month);
    }
    return Math.max(
        YearCurve.at(month, m -> mean(around, m, false)),
        YearCurve.at(month, m -> mean(around, m, true)));
  }

  /** Where the place is not known, or off the grid. */
  static double rough(double month) {
    return ROUGH_MEAN + ROUGH_SWING * Math.cos(2 * Math.PI * (month - 1) / 12);
  }

  /** Mean of the grid's points by inverse distance. */
  private static double mean(List<NearestPoints.Near> around, int month, boolean high) {
    double sum = 0;
    double weights = 0;
    for (NearestPoints.Near near : around) {
      double weight = 1 / Math.max(near.meters(), SAME_METERS);
      int row = near.index();
      sum += weight * (high ? Bundled.TABLE.high(row, month) : Bundled.TABLE.low(row, month));
      weights += weight;
    }
    return sum / weights;
  }
}
