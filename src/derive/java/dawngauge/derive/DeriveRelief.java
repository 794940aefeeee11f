package dawngauge.derive;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.ReliefGrid;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Writes the coarse shape of the land, {@code relief.gz}, from {@code etopo5.cdf} of Debian's
 * package ferret-datasets, for the lands that the gazetteer's places cover. The same file and
 * places give the same bytes.
 */
public final class DeriveRelief {

  /** No land outside of the sea lies lower: the shore of the Dead Sea. */
  private static final int LOWEST_METERS = -430;

  /** Cells between the points at which it is asked whether a place is near. */
  private static final int SAMPLED = 3;

  private final float[] meters;
  private final BitSet sea;

  private DeriveRelief(float[] meters) {
    if (meters.length != ReliefGrid.ROWS * ReliefGrid.COLUMNS) {
      throw new IllegalArgumentException(meters.length + " cells");
    }
    this.meters = meters;
    this.sea = sea(meters);
  }

  /**
   * Derives.
   *
   * @param arguments the folder that holds the file, and the folder to write to
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("arguments: FOLDER-OF-THE-FILE TARGET-FOLDER");
    }
    Path from = Path.of(arguments[0]).resolve("etopo5.cdf");
    DeriveRelief relief = new DeriveRelief(NetcdfGrid.read(from, "ROSE"));
    relief.packed().write(Path.of(arguments[1]).resolve("relief.gz"));
    System.out.println("terrain written");
  }

  private PackedNumbers packed() {
    boolean[] near = new boolean[ReliefGrid.BLOCKS_NORTH * ReliefGrid.BLOCKS_EAST];
    for (int block = 0; block < near.length; block++) {
      near[block] = isNearPlaces(block);
    }
    PackedNumbers packed = new PackedNumbers();
    int corner = 0;
    for (int block = 0; block < near.length; block++) {
      int[] cells = cells(block);
      if (!isWanted(near, block) || IntStream.of(cells).allMatch(cell -> cell == 0)) {
        packed.add(0);
        continue;
      }
      packed.add(1);
      for (int i = 0; i < cells.length; i++) {
        int west = i % ReliefGrid.BLOCK;
        int before = i == 0 ? corner : cells[west == 0 ? i - ReliefGrid.BLOCK : i - 1];
        packed.add(cells[i] - before);
      }
      corner = cells[0];
    }
    return packed;
  }

  private static boolean isNearPlaces(int block) {
    for (int i = 0; i < ReliefGrid.BLOCK; i += SAMPLED) {
      for (int k = 0; k < ReliefGrid.BLOCK; k += SAMPLED) {
        Coordinate middle = ReliefGrid.middle(row(block) + i, column(block) + k);
        if (Gazetteer.load().nearest(middle).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether it or one beside it is near places: between cells of two blocks both are needed. */
  private static boolean isWanted(boolean[] near, int block) {
    int north = block / ReliefGrid.BLOCKS_EAST;
    int east = block % ReliefGrid.BLOCKS_EAST;
    for (int i = Math.max(0, north - 1);
        i <= Math.min(ReliefGrid.BLOCKS_NORTH - 1, north + 1);
        i++) {
      for (int k = -1; k <= 1; k++) {
        if (near[i * ReliefGrid.BLOCKS_EAST + Math.floorMod(east + k, ReliefGrid.BLOCKS_EAST)]) {
          return true;
        }
      }
    }
    return false;
  }

  private static int row(int block) {
    return block / ReliefGrid.BLOCKS_EAST * ReliefGrid.BLOCK;
  }

  private static int column(int block) {
    return block % ReliefGrid.BLOCKS_EAST * ReliefGrid.BLOCK;
  }

  /** The cells of a block in steps of height; the sea, and what is beyond the last row, is 0. */
  private int[] cells(int block) {
    int[] cells = new int[ReliefGrid.BLOCK * ReliefGrid.BLOCK];
    for (int i = 0; i < cells.length; i++) {
      int row = row(block) + i / ReliefGrid.BLOCK;
      int cell = row * ReliefGrid.COLUMNS + column(block) + i % ReliefGrid.BLOCK;
      if (row < ReliefGrid.ROWS && !sea.get(cell)) {
        double land = Math.max(LOWEST_METERS, meters[cell]);
        cells[i] = (int) Math.round(land / ReliefGrid.STEP_METERS);
      }
    }
    return cells;
  }

  /** What is below 0 m and joined to the middle of the Pacific. */
  private static BitSet sea(float[] meters) {
    BitSet sea = new BitSet(meters.length);
    ArrayDeque<Integer> open = new ArrayDeque<>();
    open.add(ReliefGrid.ROWS / 2 * ReliefGrid.COLUMNS + ReliefGrid.COLUMNS / 2);
    while (!open.isEmpty()) {
      int cell = open.remove();
      if (meters[cell] >= 0 || sea.get(cell)) {
        continue;
      }
      sea.set(cell);
      int row = cell / ReliefGrid.COLUMNS;
      int column = cell % ReliefGrid.COLUMNS;
      open.add(row * ReliefGrid.COLUMNS + Math.floorMod(column - 1, ReliefGrid.COLUMNS));
      open.add(row * ReliefGrid.COLUMNS + (column + 1) % ReliefGrid.COLUMNS);
      if (row > 0) {
        open.add(cell - ReliefGrid.COLUMNS);
      }
      if (row + 1 < ReliefGrid.ROWS) {
        open.add(cell + ReliefGrid.COLUMNS);
      }
    }
    return sea;
  }
}
