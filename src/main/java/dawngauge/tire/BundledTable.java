package dawngauge.tire;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the tables that come with the program: tab-separated rows under a header of "#" lines. */
final class BundledTable {
  private BundledTable() {}

  /** The rows by their first column; each row keeps all its columns. */
  static Map<String, List<String>> byFirstColumn(String resource) {
    try (InputStream stream = opened(resource);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> List.of(line.split("\t", -1)))
          .collect(Collectors.toUnmodifiableMap(row -> row.get(0), Function.identity()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream opened(String resource) {
    InputStream stream = BundledTable.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new IllegalStateException("the program lacks its table " + resource);
    }
    return stream;
  }
}
