package dawngauge.ambient;

import dawngauge.geo.BundledNumbers;
import dawngauge.geo.Coordinate;
import dawngauge.geo.NearestPoints;
import java.util.List;

/**
 * A table that comes with the program: for each of many places a figure of the day's low and one of
 * its high for every month.
 */
final class MonthTable {

  private static final int MONTHS = 12;
  private static final double TENTHS = 10;

  private final int[] latitudes;
  private final int[] longitudes;
  private final int[] elevations;
  private final double stepsPerDegree;

  /** Tenths, row by row: twelve lows, twelve highs. */
  private final short[] figures;

  private final NearestPoints points;

  /**
   * Reads a table.
   *
   * @param resource its name
   * @param stepsPerDegree the part of a degree in which its places stand
   * @param heights whether it has a column of elevations
   */
  MonthTable(String resource, double stepsPerDegree, boolean heights) {
    BundledNumbers numbers = BundledNumbers.of(resource);
    int size = numbers.next();
    this.stepsPerDegree = stepsPerDegree;
    latitudes = numbers.steps(size);
    longitudes = numbers.steps(size);
    elevations = heights ? numbers.next(size) : new int[size];
    figures = new short[size * 2 * MONTHS];
    for (int month = 0; month < MONTHS; month++) {
      int[] steps = numbers.next(size);
      for (int row = 0; row < size; row++) {
        int before = month == 0 ? 0 : figures[lowAt(row, month - 1)];
        figures[lowAt(row, month)] = (short) (before + steps[row]);
      }
    }
    int[] range = new int[size];
    for (int month = 0; month < MONTHS; month++) {
      int[] steps = numbers.next(size);
      for (int row = 0; row < size; row++) {
        range[row] += steps[row];
        figures[lowAt(row, month) + MONTHS] = (short) (figures[lowAt(row, month)] + range[row]);
      }
    }
    points = new NearestPoints(size, this::coordinate);
  }

  private static int lowAt(int row, int month) {
    return row * 2 * MONTHS + month;
  }

  private Coordinate coordinate(int row) {
    return new Coordinate(latitudes[row] / stepsPerDegree, longitudes[row] / stepsPerDegree);
  }

  List<NearestPoints.Near> around(Coordinate place, int count) {
    return points.around(place, count);
  }

  /** Meter above mean sea level. */
  int elevation(int row) {
    return elevations[row];
  }

  /** The low's figure in a month, January 0. */
  double low(int row, int month) {
    return figures[lowAt(row, month)] / TENTHS;
  }

  /** The high's. */
  double high(int row, int month) {
    return figures[lowAt(row, month) + MONTHS] / TENTHS;
  }
}
