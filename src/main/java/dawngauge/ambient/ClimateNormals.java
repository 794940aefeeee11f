package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.geo.NearestPoints;
import dawngauge.trip.Provenance;
import java.util.List;
import java.util.Optional;

/**
 * Typical days from the table of climate normals (level of 1991–2020; NOAA National Centers for
 * Environmental Information, U.S. Department of Agriculture): the mean of the twelve rows nearest
 * to a place, each carried to its height, by weights that fall with distance and height. The errors
 * here were measured with each station left out in turn; see {@code docs/accuracy.md}.
 */
final class ClimateNormals implements TypicalDays {

  static final Provenance PROVENANCE =
      new Provenance(Provenance.Kind.TYPICAL, "for the date, not a forecast", null);

  /** Rows stand a third of a degree apart or less; farther off there are none. */
  private static final double REACH_METERS = 40_000;

  private static final double STEPS_PER_DEGREE = 1000;
  private static final int ROWS = 12;
  private static final double SAME_METERS = 25_000;
  private static final double SAME_HEIGHT = 400;
  private static final double FALL = 8;
  private static final double SOFT = 0.01;

  /** How much colder the mean of low and high is higher up, K/km, January to December. */
  private static final double[] LAPSE = {
    4.5, 4.8, 5.3, 5.8, 6.0, 6.1, 6.0, 5.9, 5.6, 5.2, 4.8, 4.5
  };

  private static final double CELSIUS_ZERO = 273.15;

  /** Error of the lows, the larger ones, in kelvin: root mean square over stations left out. */
  private static final double ERROR = 1.2;

  /** The same west of 103° W (1.55) and in Mexico (1.6), here also all that lies south of 30° N. */
  private static final double ERROR_WEST_AND_SOUTH = 1.6;

  private static final double WEST = -103;
  private static final double SOUTH = 30;

  /** Where no row is near, basins and coasts can miss by 3 to 5 K. */
  private static final double NEAR_METERS = 8_000;

  private static final double ERROR_FAR = 3;

  /** Part of the disagreement of the rows around that counts as error; ours. */
  private static final double DISAGREEMENT = 0.5;

  /** Read at the first use. */
  private static final class Bundled {
    static final MonthTable TABLE =
        new MonthTable("/dawngauge/ambient/normals.gz", STEPS_PER_DEGREE, true);
  }

  private final int[] rows = new int[ROWS];
  private final double[] weights = new double[ROWS];
  private final double[] higher = new double[ROWS];
  private final double own;

  private ClimateNormals(Coordinate place, double elevation, List<NearestPoints.Near> around) {
    double sum = 0;
    for (int i = 0; i < ROWS; i++) {
      NearestPoints.Near near = around.get(i);
      rows[i] = near.index();
      higher[i] = elevation - Bundled.TABLE.elevation(near.index());
      double away = near.meters() / SAME_METERS;
      double up = higher[i] / SAME_HEIGHT;
      double u = away * away + up * up;
      weights[i] = Math.exp(-u / FALL) / (SOFT + u);
      sum += weights[i];
    }
    for (int i = 0; i < ROWS; i++) {
      weights[i] /= sum;
    }
    boolean wide = place.longitude() < WEST || place.latitude() < SOUTH;
    double measured = wide ? ERROR_WEST_AND_SOUTH : ERROR;
    own = around.get(0).meters() > NEAR_METERS ? ERROR_FAR : measured;
  }

  /**
   * The typical days of a place; empty beyond the table.
   *
   * @param elevationMeters height of the ground
   */
  static Optional<TypicalDays> of(Coordinate place, double elevationMeters) {
    List<NearestPoints.Near> around = Bundled.TABLE.around(place, ROWS);
    return around.get(0).meters() > REACH_METERS
        ? Optional.empty()
        : Optional.of(new ClimateNormals(place, elevationMeters, around));
  }

  @Override
  public LowHigh at(double month) {
    return new LowHigh(
        CELSIUS_ZERO + YearCurve.at(month, m -> mean(m, false)),
        CELSIUS_ZERO + YearCurve.at(month, m -> mean(m, true)));
  }

  /** The low or the high of a month at the place, °C. */
  private double mean(int month, boolean high) {
    double mean = 0;
    for (int i = 0; i < ROWS; i++) {
      mean += weights[i] * carried(i, month, high);
    }
    return mean;
  }

  private double carried(int i, int month, boolean high) {
    double there = high ? Bundled.TABLE.high(rows[i], month) : Bundled.TABLE.low(rows[i], month);
    return there - LAPSE[month] * higher[i] / 1000;
  }

  /** Own error of the table, and where the lows around disagree (basins, coasts) more. */
  @Override
  public double error(double month) {
    return Math.hypot(own, DISAGREEMENT * YearCurve.at(month, this::disagreement));
  }

  /** Standard deviation of the lows around, carried to the place. */
  private double disagreement(int month) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < ROWS; i++) {
      double low = carried(i, month, false);
      sum += low;
      squares += low * low;
    }
    double mean = sum / ROWS;
    return Math.sqrt(Math.max(0, squares / ROWS - mean * mean));
  }

  @Override
  public Provenance provenance() {
    return PROVENANCE;
  }
}
