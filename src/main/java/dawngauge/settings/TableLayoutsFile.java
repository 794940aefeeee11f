package dawngauge.settings;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;

/**
 * Remembers what stands in which column of tables of readings, by the names of their columns, so
 * that it is said once. A file that is missing or broken is as good as none.
 */
public final class TableLayoutsFile {

  private static final int MOST = 50;

  private final Path file;

  /**
   * A file.
   *
   * @param folder the user's own folder; made when something is written
   */
  public TableLayoutsFile(Path folder) {
    this.file = folder.resolve("tables.properties");
  }

  private Properties load() {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException | IllegalArgumentException unreadable) {
      properties.clear();
    }
    return properties;
  }

  /** What was said of a table with such columns. */
  public Optional<String> layout(String columns) {
    return Optional.ofNullable(load().getProperty(columns));
  }

  /** Remembers what was said; whether it could be written. */
  public boolean keep(String columns, String layout) {
    Properties properties = load();
    if (properties.size() >= MOST) {
      properties.clear();
    }
    properties.setProperty(columns, layout);
    try {
      StringWriter text = new StringWriter();
      properties.store(text, "What stands in which column; may be deleted");
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Path aside = file.resolveSibling("tables.properties.new");
      Files.writeString(aside, text.toString());
      Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
      return true;
    } catch (IOException failure) {
      return false;
    }
  }
}
