package dawngauge.geo;

/**
 * How the cells of the coarse shape of the land lie: every five minutes of arc, rows from south to
 * north, columns eastwards, in blocks of a degree. The source stands half a cell off its labels.
 */
public final class ReliefGrid {

  private static final int PER_DEGREE = 12;

  /** Row of the equator's cell. */
  private static final double EQUATOR = 90 * PER_DEGREE + 0.5;

  /** Column of 0° east; before the first column comes the last. */
  private static final double GREENWICH = -1.5;

  /** Rows of cells. */
  public static final int ROWS = 180 * PER_DEGREE + 1;

  /** Columns of cells. */
  public static final int COLUMNS = 360 * PER_DEGREE;

  /** Heights are whole numbers of this, in meter. */
  public static final int STEP_METERS = 10;

  /** Rows and columns of a block. */
  public static final int BLOCK = PER_DEGREE;

  /** Blocks in a row of blocks. */
  public static final int BLOCKS_EAST = COLUMNS / BLOCK;

  /** Rows of blocks; the last is not full. */
  public static final int BLOCKS_NORTH = (ROWS + BLOCK - 1) / BLOCK;

  private ReliefGrid() {}

  /** Row of a place, between two cells. */
  static double row(Coordinate place) {
    return place.latitude() * PER_DEGREE + EQUATOR;
  }

  /** Column of a place, between two cells; may be outside of 0 to the number of columns. */
  static double column(Coordinate place) {
    return place.longitude() * PER_DEGREE + GREENWICH;
  }

  /** The middle of a cell, at a pole that itself. */
  public static Coordinate middle(int row, int column) {
    double latitude = (row - EQUATOR) / PER_DEGREE;
    double longitude = (column - GREENWICH) / PER_DEGREE;
    return new Coordinate(
        Math.max(-90, Math.min(90, latitude)), Math.IEEEremainder(longitude, 360));
  }
}
