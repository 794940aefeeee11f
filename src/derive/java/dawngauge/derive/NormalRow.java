package dawngauge.derive;

import dawngauge.geo.Coordinate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A row of the tables of typical air: two or three columns that say where, then twelve figures of
 * the low and twelve of the high, January first, a blank between.
 *
 * @param latitude north, in the table's part of a degree
 * @param longitude east, the same
 * @param elevation meter above mean sea level; 0 where the table has none
 * @param low of the twelve months, in tenths of a kelvin or of a degree Celsius
 * @param high the same
 */
record NormalRow(
    int latitude, int longitude, int elevation, List<Integer> low, List<Integer> high) {

  /** Copies the lists. */
  NormalRow {
    low = List.copyOf(low);
    high = List.copyOf(high);
  }

  /** The part of a degree in which places of typical air stand. */
  static final int STEPS_PER_DEGREE = 1000;

  static NormalRow of(String line) {
    String[] column = line.split("\t", -1);
    int figures = column.length - 2;
    return new NormalRow(
        Integer.parseInt(column[0]),
        Integer.parseInt(column[1]),
        figures == 2 ? 0 : Integer.parseInt(column[2]),
        months(column[figures]),
        months(column[figures + 1]));
  }

  private static List<Integer> months(String figures) {
    List<Integer> months = Stream.of(figures.split(" ")).map(Integer::valueOf).toList();
    if (months.size() != 12) {
      throw new IllegalArgumentException("not twelve months: " + figures);
    }
    return months;
  }

  Coordinate coordinate() {
    return new Coordinate(
        latitude / (double) STEPS_PER_DEGREE, longitude / (double) STEPS_PER_DEGREE);
  }

  int range(int month) {
    return high.get(month) - low.get(month);
  }

  /** The same with low and high of a month farther apart by twice as much, their mean unchanged. */
  NormalRow widened(int month, int half) {
    List<Integer> lower = new ArrayList<>(low);
    List<Integer> higher = new ArrayList<>(high);
    lower.set(month, low.get(month) - half);
    higher.set(month, high.get(month) + half);
    return new NormalRow(latitude, longitude, elevation, lower, higher);
  }
}
