package dawngauge.tripfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files beside the tests. */
final class Samples {
  private Samples() {}

  /** A file that uses every field, with invented figures. */
  static String full() {
    return text("full.dawngauge");
  }

  static String text(String name) {
    try (InputStream in = Samples.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no sample " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
