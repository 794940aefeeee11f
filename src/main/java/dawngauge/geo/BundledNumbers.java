package dawngauge.geo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.zip.GZIPInputStream;

/**
 * Reads the tables of whole numbers that come with the program. Under gzip each number is a row of
 * bytes of seven bits, the lowest first, the eighth bit set where another byte follows; 0, −1, 1,
 * −2, 2 stand as 0, 1, 2, 3, 4.
 */
public final class BundledNumbers {

  private final byte[] bytes;
  private int at;

  private BundledNumbers(byte[] bytes) {
    this.bytes = bytes;
  }

  /**
   * The numbers of a table, from its first.
   *
   * @param resource name, beside this class or absolute
   */
  public static BundledNumbers of(String resource) {
    try (InputStream stream = new GZIPInputStream(BundledLines.opened(resource))) {
      return new BundledNumbers(stream.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next number. */
  public int next() {
    int folded = 0;
    int shift = 0;
    byte part;
    do {
      part = bytes[at++];
      folded |= (part & 0x7F) << shift;
      shift += 7;
    } while (part < 0);
    return (folded >>> 1) ^ -(folded & 1);
  }

  /** The next column of a table, each number the step from the one before. */
  public int[] steps(int rows) {
    int[] column = next(rows);
    for (int i = 1; i < rows; i++) {
      column[i] += column[i - 1];
    }
    return column;
  }

  /** The next column of a table, each number as it is. */
  public int[] next(int rows) {
    int[] column = new int[rows];
    for (int i = 0; i < rows; i++) {
      column[i] = next();
    }
    return column;
  }

  /** Whether all numbers have been read. */
  public boolean isAtEnd() {
    return at == bytes.length;
  }
}
