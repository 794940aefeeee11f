package dawngauge.derive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Writes what is derived, plain or packed: the same content gives the same bytes. */
final class Bytes {
  private Bytes() {}

  static void writeText(Path file, String header, Collection<String> lines) throws IOException {
    Files.write(file, text(header, lines));
  }

  static void writePacked(Path file, String header, Collection<String> lines) throws IOException {
    writePacked(file, text(header, lines));
  }

  static void writePacked(Path file, byte[] bytes) throws IOException {
    try (OutputStream packed = new Gzip(Files.newOutputStream(file))) {
      packed.write(bytes);
    }
  }

  private static byte[] text(String header, Collection<String> lines) {
    return (header + "\n" + String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /** Packs as small as it can; Java's own header holds no time. */
  private static final class Gzip extends GZIPOutputStream {
    Gzip(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_COMPRESSION);
    }
  }
}
