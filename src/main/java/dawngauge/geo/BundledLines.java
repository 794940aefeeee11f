package dawngauge.geo;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPInputStream;

/** Reads the lists that come with the program: UTF-8 lines under a header of "#" lines. */
public final class BundledLines {
  private BundledLines() {}

  /**
   * The lines behind the header.
   *
   * @param resource name, beside this class or absolute; one that ends with ".gz" is unpacked
   */
  public static List<String> of(String resource) {
    try (InputStream stream = opened(resource);
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(
                    resource.endsWith(".gz") ? new GZIPInputStream(stream) : stream,
                    StandardCharsets.UTF_8))) {
      return reader.lines().dropWhile(line -> line.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static InputStream opened(String resource) {
    InputStream stream = BundledLines.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new IllegalStateException("the program lacks its list " + resource);
    }
    return stream;
  }
}
