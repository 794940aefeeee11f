package dawngauge.derive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Reads one variable of floats from a file in netCDF classic format, version 1 ("The NetCDF Classic
 * Format Specification", Unidata): big-endian, names and values padded to four bytes.
 */
final class NetcdfGrid {

  private static final int DIMENSIONS = 10;
  private static final int VARIABLES = 11;
  private static final int ATTRIBUTES = 12;
  private static final int FLOAT = 5;

  /** Bytes of a value by its type: byte, char, short, int, float, double. */
  private static final int[] BYTES = {0, 1, 1, 2, 4, 4, 8};

  private final ByteBuffer file;

  private NetcdfGrid(ByteBuffer file) {
    this.file = file;
  }

  /** All values of a variable, the last dimension running fastest. */
  static float[] read(Path path, String variable) throws IOException {
    try (FileChannel channel = FileChannel.open(path)) {
      ByteBuffer all = channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size());
      return new NetcdfGrid(all).values(path, variable);
    }
  }

  private float[] values(Path path, String variable) throws IOException {
    if (file.getInt() != 0x43444601) { // "CDF", version 1
      throw new IOException(path + " is not in netCDF classic format");
    }
    file.getInt(); // records, of which there are none
    int[] lengths = new int[list(DIMENSIONS)];
    for (int i = 0; i < lengths.length; i++) {
      name();
      lengths[i] = file.getInt();
    }
    skipAttributes();
    for (int left = list(VARIABLES); left > 0; left--) {
      String name = name();
      int size = 1;
      for (int dimensions = file.getInt(); dimensions > 0; dimensions--) {
        size *= lengths[file.getInt()];
      }
      skipAttributes();
      int type = file.getInt();
      file.getInt(); // bytes, which follow from the dimensions
      int begin = file.getInt();
      if (name.equals(variable) && type == FLOAT) {
        float[] values = new float[size];
        file.position(begin);
        file.asFloatBuffer().get(values);
        return values;
      }
    }
    throw new IOException(path + " has no variable " + variable + " of floats");
  }

  /** The length of a list, of which an empty one has no tag. */
  private int list(int tag) throws IOException {
    int found = file.getInt();
    int length = file.getInt();
    if (found != tag && (found != 0 || length != 0)) {
      throw new IOException("a list of kind " + tag + " is missing");
    }
    return length;
  }

  private String name() {
    byte[] name = new byte[file.getInt()];
    file.get(name);
    pad(name.length);
    return new String(name, StandardCharsets.UTF_8);
  }

  private void skipAttributes() throws IOException {
    for (int left = list(ATTRIBUTES); left > 0; left--) {
      name();
      int bytes = BYTES[file.getInt()];
      int length = file.getInt() * bytes;
      file.position(file.position() + length);
      pad(length);
    }
  }

  private void pad(int length) {
    file.position(file.position() + (4 - length % 4) % 4);
  }
}
