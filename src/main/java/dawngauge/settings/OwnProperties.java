package dawngauge.settings;

import dawngauge.disk.AsideFile;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Properties;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Properties in the user's own folder, which several programs may change: each change is made to
 * what stands there then, one after the other, and the file is whole at every moment.
 */
final class OwnProperties {

  private final Path file;
  private final String comment;

  /**
   * A file.
   *
   * @param comment its first line
   */
  OwnProperties(Path file, String comment) {
    this.file = file;
    this.comment = comment;
  }

  /** What stands there; null where there is nothing that can be read. */
  @Nullable Properties read() {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      properties.load(reader);
      return properties;
    } catch (IOException | IllegalArgumentException unreadable) {
      return null;
    }
  }

  /**
   * Changes what stands there.
   *
   * @param change gets what can be read, else nothing
   * @return what stands there now; empty where it could not be written
   */
  Optional<Properties> change(UnaryOperator<Properties> change) {
    Path folder = file.toAbsolutePath().getParent();
    try {
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Path turn = file.resolveSibling("." + file.getFileName() + ".lock");
      synchronized (OwnProperties.class) {
        try (FileChannel channel =
                FileChannel.open(turn, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock held = channel.lock()) {
          Properties known = read();
          Properties next = change.apply(known == null ? new Properties() : known);
          write(next);
          return held.isValid() ? Optional.of(next) : Optional.empty();
        }
      }
    } catch (IOException | OverlappingFileLockException failure) {
      return Optional.empty();
    }
  }

  private void write(Properties properties) throws IOException {
    StringWriter text = new StringWriter();
    properties.store(text, comment);
    AsideFile.write(
        ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8)),
        file,
        AsideFile.Readers.OWNER);
  }
}
