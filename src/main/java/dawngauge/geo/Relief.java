package dawngauge.geo;

import org.jspecify.annotations.Nullable;

/**
 * The coarse shape of the land, every five minutes of arc, in steps of 10 m, of all lands that the
 * places cover; the sea is 0 m (ETOPO5, public domain; see {@code docs/data.md}). Peaks and valleys
 * narrower than 9 km are flattened, so it is used together with known heights.
 */
final class Relief {

  /** Read at the first use. */
  private static final class Bundled {
    static final Relief ONE = new Relief(BundledNumbers.of("relief.gz"));
  }

  private final short[] @Nullable [] blocks =
      new short[ReliefGrid.BLOCKS_NORTH * ReliefGrid.BLOCKS_EAST][];

  /**
   * In each block a 1 where it is there; then each figure as the step from the one west of it, at
   * the block's edge south of it, at its corner from the corner of the block before.
   */
  private Relief(BundledNumbers numbers) {
    int corner = 0;
    for (int i = 0; i < blocks.length; i++) {
      if (numbers.next() == 0) {
        continue;
      }
      short[] block = new short[ReliefGrid.BLOCK * ReliefGrid.BLOCK];
      for (int cell = 0; cell < block.length; cell++) {
        int before =
            cell == 0
                ? corner
                : cell % ReliefGrid.BLOCK == 0 ? block[cell - ReliefGrid.BLOCK] : block[cell - 1];
        block[cell] = (short) (before + numbers.next());
      }
      corner = block[0];
      blocks[i] = block;
    }
  }

  static Relief load() {
    return Bundled.ONE;
  }

  /**
   * Height of the land, in meter: straight between the four cells around.
   *
   * @return 0 on the sea and far from any place
   */
  double at(Coordinate place) {
    double row = ReliefGrid.row(place);
    double column = ReliefGrid.column(place);
    int south = (int) Math.floor(row);
    int west = (int) Math.floor(column);
    double north = row - south;
    double east = column - west;
    return (1 - north) * ((1 - east) * cell(south, west) + east * cell(south, west + 1))
        + north * ((1 - east) * cell(south + 1, west) + east * cell(south + 1, west + 1));
  }

  /** How far the cells within about 14 km lie apart, lowest to highest, in meter. */
  double span(Coordinate place) {
    int row = (int) Math.floor(ReliefGrid.row(place));
    int column = (int) Math.floor(ReliefGrid.column(place));
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = -1; i <= 2; i++) {
      for (int k = -1; k <= 2; k++) {
        double cell = cell(row + i, column + k);
        lowest = Math.min(lowest, cell);
        highest = Math.max(highest, cell);
      }
    }
    return highest - lowest;
  }

  private double cell(int row, int column) {
    int north = Math.max(0, Math.min(ReliefGrid.ROWS - 1, row));
    int east = Math.floorMod(column, ReliefGrid.COLUMNS);
    short[] block =
        blocks[north / ReliefGrid.BLOCK * ReliefGrid.BLOCKS_EAST + east / ReliefGrid.BLOCK];
    return block == null
        ? 0
        : (double) ReliefGrid.STEP_METERS
            * block[north % ReliefGrid.BLOCK * ReliefGrid.BLOCK + east % ReliefGrid.BLOCK];
  }
}
