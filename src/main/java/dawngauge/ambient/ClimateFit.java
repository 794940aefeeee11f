package dawngauge.ambient;

import dawngauge.geo.BundledLines;
import dawngauge.geo.Coordinate;
import dawngauge.trip.Provenance;
import java.util.List;
import java.util.Optional;

/**
 * Typical low and high of a date where the table of normals has no rows: our own least-squares fit
 * to NOAA climate normals of the 48 states; formula and coefficients stand in the table {@code
 * typical.tsv}.
 */
final class ClimateFit implements TypicalDays {

  /** What is said of it wherever it is shown, and by which it is known again in a file. */
  static final String SOURCE =
      "for the date, not a forecast; rough here, at coasts and in basins up to 11 K (20 °F) off";

  private static final Provenance PROVENANCE =
      new Provenance(Provenance.Kind.TYPICAL, SOURCE, null);

  /** In kelvin; ours: 2.1 was measured in the west of its own area, and it misses by up to 11. */
  private static final double ERROR = 3;

  /** Degrees latitude and longitude between which the fit holds. */
  private static final double SOUTH = 24.5;

  private static final double NORTH = 49.5;
  private static final double WEST = -125;
  private static final double EAST = -66.5;

  /** Shift of the means to the normals of 1991–2020, in kelvin. */
  private static final double OFFSET = 0.261;

  private static final double CELSIUS_ZERO = 273.15;
  private static final List<double[]> ROWS = read();

  private final Coordinate place;
  private final double elevation;

  private ClimateFit(Coordinate place, double elevation) {
    this.place = place;
    this.elevation = elevation;
  }

  /**
   * The typical days of a place; empty where the fit does not hold.
   *
   * @param elevationMeters height of the ground
   */
  static Optional<TypicalDays> of(Coordinate place, double elevationMeters) {
    return covers(place) ? Optional.of(new ClimateFit(place, elevationMeters)) : Optional.empty();
  }

  private static boolean covers(Coordinate place) {
    return place.latitude() >= SOUTH
        && place.latitude() <= NORTH
        && place.longitude() >= WEST
        && place.longitude() <= EAST;
  }

  @Override
  public double error(double month) {
    return ERROR;
  }

  @Override
  public Provenance provenance() {
    return PROVENANCE;
  }

  @Override
  public LowHigh at(double month) {
    double x = (place.latitude() - 37) / 12;
    double y = (place.longitude() + 96) / 29;
    double z = elevation / 1000;
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
