package dawngauge.settings;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Remembers what stands in which column of tables of readings, by the names of their columns, so
 * that it is said once. A file that is missing or broken is as good as none.
 */
public final class TableLayoutsFile {

  private static final int MOST = 50;

  private final OwnProperties file;

  /**
   * A file.
   *
   * @param folder the user's own folder; made when something is written
   */
  public TableLayoutsFile(Path folder) {
    this.file =
        new OwnProperties(
            folder.resolve("tables.properties"), "What stands in which column; may be deleted");
  }

  /** What was said of a table with such columns. */
  public Optional<String> layout(String columns) {
    return Optional.ofNullable(file.read()).map(known -> known.getProperty(columns));
  }

  /** Remembers what was said; whether it could be written. */
  public boolean keep(String columns, String layout) {
    return file.change(
            properties -> {
              if (properties.size() >= MOST) {
                properties.clear();
              }
              properties.setProperty(columns, layout);
              return properties;
            })
        .isPresent();
  }
}
