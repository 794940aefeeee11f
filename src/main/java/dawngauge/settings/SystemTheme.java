package dawngauge.settings;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * Whether the system is set to dark windows, as far as can be read without starting programs: from
 * GTK's environment and settings. Elsewhere light is taken, until the user chooses.
 */
public final class SystemTheme {

  private SystemTheme() {}

  /**
   * Whether windows are dark.
   *
   * @param environment the environment's variables
   * @param home the user's home folder
   */
  public static boolean isDark(Map<String, String> environment, Path home) {
    String theme = environment.getOrDefault("GTK_THEME", "");
    if (!theme.isEmpty()) {
      return named(theme);
    }
    String config = environment.getOrDefault("XDG_CONFIG_HOME", "");
    Path folder = config.isEmpty() ? home.resolve(".config") : Path.of(config);
    for (String version : List.of("gtk-4.0", "gtk-3.0")) {
      Properties settings = new Properties();
      try (Reader reader =
          Files.newBufferedReader(
              folder.resolve(version).resolve("settings.ini"), StandardCharsets.UTF_8)) {
        settings.load(reader);
      } catch (IOException | IllegalArgumentException unreadable) {
        continue;
      }
      String prefers = settings.getProperty("gtk-application-prefer-dark-theme", "").strip();
      if (prefers.equals("1") || prefers.equalsIgnoreCase("true")) {
        return true;
      } else if (settings.containsKey("gtk-theme-name")) {
        return named(settings.getProperty("gtk-theme-name"));
      }
    }
    return false;
  }

  private static boolean named(String theme) {
    return theme.toLowerCase(Locale.ROOT).strip().replace(':', '-').endsWith("-dark");
  }
}
