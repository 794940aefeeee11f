package dawngauge.settings;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;

/**
 * Which weather services are asked, where and how: the program's own {@code feeds.properties}, and
 * before it, line by line, one in the user's folder.
 */
public final class FeedSettings {

  private static final String OWN = "/dawngauge/config/feeds.properties";
  private static final String FILE = "feeds.properties";

  private final Properties defaults;
  private final Properties users;

  private FeedSettings(Properties defaults, Properties users) {
    this.defaults = defaults;
    this.users = users;
  }

  /** The program's own. */
  public static FeedSettings defaults() {
    return new FeedSettings(own(), new Properties());
  }

  /** Those of a user, whose folder need not hold any; a file that cannot be read counts as none. */
  public static FeedSettings of(Path folder) {
    Properties users = new Properties();
    try (Reader reader = Files.newBufferedReader(folder.resolve(FILE))) {
      users.load(reader);
    } catch (IOException | IllegalArgumentException noneThatCanBeRead) {
      users.clear();
    }
    return new FeedSettings(own(), users);
  }

  private static Properties own() {
    Properties properties = new Properties();
    InputStream stream = FeedSettings.class.getResourceAsStream(OWN);
    if (stream == null) {
      throw new IllegalStateException("the program lacks its own " + OWN);
    }
    try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties;
  }

  /** Names of services in the order in which they are asked. */
  public List<String> order() {
    return Arrays.stream(text("order").split(",", -1)).map(String::strip).toList();
  }

  /** What stands there under a key; empty where nothing does. */
  public String text(String key) {
    String text = users.getProperty(key, defaults.getProperty(key));
    return text == null ? "" : text.strip();
  }

  /**
   * A whole number above zero; the program's own where the user's is none.
   *
   * @throws IllegalStateException where the program's own is none
   */
  public int number(String key) {
    for (String text : new String[] {users.getProperty(key), defaults.getProperty(key)}) {
      if (text != null && text.strip().matches("[1-9]\\d{0,8}")) {
        return Integer.parseInt(text.strip());
      }
    }
    throw new IllegalStateException(OWN + " lacks " + key);
  }
}
