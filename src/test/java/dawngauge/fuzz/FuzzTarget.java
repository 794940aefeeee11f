package dawngauge.fuzz;

import java.io.IOException;
import java.nio.file.Path;

/** What the search calls: one reader, named by the first argument, and the bytes to read. */
public final class FuzzTarget {

  private static Reader reader = Reader.TRIP;
  private static Path folder = Path.of("");

  private FuzzTarget() {}

  /** Called once before all. */
  public static void fuzzerInitialize(String[] arguments) {
    reader = Reader.valueOf(arguments[0]);
    folder = Reader.temporary();
  }

  /** Called with each input. */
  public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
    reader.read(bytes, folder);
  }
}
