package dawngauge.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/**
 * A text that only grows at its end, for its owner's eyes. Several programs may write to it. Once
 * it has its full size it is moved beside, in the place of the one before, and begun anew: of what
 * was written last at least the full size is kept, at most twice that.
 */
public final class GrowingFile {

  private final Path file;
  private final Path earlier;
  private final int full;

  /**
   * A text.
   *
   * @param file its file; its folder is made when something is written
   * @param full size in bytes at which it is begun anew
   */
  public GrowingFile(Path file, int full) {
    this.file = file;
    this.earlier = file.resolveSibling(file.getFileName() + ".1");
    this.full = full;
  }

  /** Writes at its end. */
  public synchronized void append(String text) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    if (Files.exists(file) && Files.size(file) >= full) {
      Files.move(file, earlier, StandardCopyOption.ATOMIC_MOVE);
    }
    // In one write, so that what two programs write does not mix.
    ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
    try (SeekableByteChannel channel =
        Files.newByteChannel(
            file,
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.APPEND),
            AsideFile.ownerOnly(folder))) {
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
    }
  }

  /** What is kept, oldest first; empty where there is nothing that can be read. */
  public synchronized String text() {
    return read(earlier) + read(file);
  }

  private static String read(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException none) {
      return "";
    }
  }
}
