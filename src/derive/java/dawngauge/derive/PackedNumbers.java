package dawngauge.derive;

import dawngauge.geo.BundledNumbers;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;

/** Whole numbers as {@link BundledNumbers} reads them. */
final class PackedNumbers {

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  /** Adds a number. */
  void add(int number) {
    int folded = (number << 1) ^ (number >> 31);
    while ((folded & ~0x7F) != 0) {
      bytes.write((folded & 0x7F) | 0x80);
      folded >>>= 7;
    }
    bytes.write(folded);
  }

  /** Adds a column as it is. */
  void addAll(int[] column) {
    for (int number : column) {
      add(number);
    }
  }

  /** Adds a column, each number as the step from the one before. */
  void addSteps(int[] column) {
    int before = 0;
    for (int number : column) {
      add(number - before);
      before = number;
    }
  }

  void write(Path file) throws IOException {
    Bytes.writePacked(file, bytes.toByteArray());
  }
}
