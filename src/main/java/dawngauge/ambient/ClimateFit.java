package dawngauge.ambient;

import dawngauge.geo.BundledLines;
import dawngauge.geo.Coordinate;
import java.util.List;

/**
 * Typical low and high of a date at a place in the 48 states: our own least-squares fit to NOAA
 * climate normals; formula, coefficients and errors stand in the table {@code typical.tsv}.
 */
final class ClimateFit {

  /** Degrees latitude and longitude between which the fit holds. */
  private static final double SOUTH = 24.5;

  private static final double NORTH = 49.5;
  private static final double WEST = -125;
  private static final double EAST = -66.5;

  /** Shift of the means to the normals of 1991–2020, in kelvin. */
  private static final double OFFSET = 0.261;

  private static final double CELSIUS_ZERO = 273.15;
  private static final List<double[]> ROWS = read();

  /**
   * Typical temperatures, in kelvin.
   *
   * @param low about sunrise
   * @param high in the afternoon
   */
  record LowHigh(double low, double high) {}

  private ClimateFit() {}

  /** Whether the fit holds at a place. */
  static boolean covers(Coordinate place) {
    return place.latitude() >= SOUTH
        && place.latitude() <= NORTH
        && place.longitude() >= WEST
        && place.longitude() <= EAST;
  }

  /**
   * The typical day.
   *
   * @param place where, inside the area
   * @param elevationMeters height of the ground
   * @param month of the year, 1 in the middle of January to 12 in the middle of December
   */
  static LowHigh at(Coordinate place, double elevationMeters, double month) {
    double x = (place.latitude() - 37) / 12;
    double y = (place.longitude() + 96) / 29;
    double z = elevationMeters / 1000;
    double t = 2 * Math.PI * (month - 0.5) / 12;
    double mean = OFFSET;
    double annual = 0;
    double january = 0;
    for (double[] row : ROWS) {
      double term = Math.pow(x, row[0]) * Math.pow(y, row[1]) * Math.pow(z, row[2]);
      mean +=
          term
              * (row[3]
                  + row[4] * Math.cos(t)
                  + row[5] * Math.sin(t)
                  + row[6] * Math.cos(2 * t)
                  + row[7] * Math.sin(2 * t));
      annual += term * row[8];
      january += term * row[9];
    }
    double range = annual + (january - annual) * Math.cos(2 * Math.PI * (month - 1) / 12);
    double half = Math.max(0, range / 2);
    return new LowHigh(CELSIUS_ZERO + mean - half, CELSIUS_ZERO + mean + half);
  }

  private static List<double[]> read() {
    return BundledLines.of("/dawngauge/ambient/typical.tsv").stream()
        .skip(1)
        .map(ClimateFit::numbers)
        .toList();
  }

  private static double[] numbers(String line) {
    String[] cells = line.split("\t", -1);
    double[] numbers = new double[cells.length];
    for (int i = 0; i < cells.length; i++) {
      numbers[i] = Double.parseDouble(cells[i]);
    }
    return numbers;
  }
}
