package dawngauge.settings;

import dawngauge.quantity.UnitSystem;
import dawngauge.settings.UserState.Size;
import dawngauge.settings.UserState.Theme;
import dawngauge.settings.UserState.Window;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/**
 * Keeps {@link UserState} in the user's own folder. A file that is missing or broken is as good as
 * none, and a folder that cannot be written costs the memory only: nothing of a trip is in it.
 */
public final class UserStateFile {

  private static final double MOST = 20_000;

  private final Path file;

  /**
   * A state file.
   *
   * @param folder the user's own folder; made when something is written
   */
  public UserStateFile(Path folder) {
    this.file = folder.resolve("window.properties");
  }

  /** What is remembered. */
  public UserState load() {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException | IllegalArgumentException unreadable) {
      return UserState.FIRST;
    }
    List<String> recent = new ArrayList<>();
    for (int i = 0; i < UserState.MOST_RECENT; i++) {
      String name = properties.getProperty("recent." + i, "");
      if (!name.isEmpty()) {
        recent.add(name);
      }
    }
    UserState first = UserState.FIRST;
    return new UserState(
        new Window(
            number(properties, "x", -MOST, MOST, first.window().x()),
            number(properties, "y", -MOST, MOST, first.window().y()),
            number(properties, "width", Window.LEAST_WIDTH, MOST, first.window().width()),
            number(properties, "height", Window.LEAST_HEIGHT, MOST, first.window().height()),
            Boolean.parseBoolean(properties.getProperty("maximized"))),
        choice(UnitSystem.values(), properties.getProperty("units"), first.units()),
        choice(Theme.values(), properties.getProperty("theme"), first.theme()),
        choice(Size.values(), properties.getProperty("size"), first.size()),
        properties.getProperty("place", ""),
        recent,
        Boolean.parseBoolean(properties.getProperty("cautionsSeen")),
        properties.getProperty("contact", ""),
        properties.getProperty("mapContact", ""));
  }

  /**
   * Remembers.
   *
   * @return whether it could be written
   */
  public boolean save(UserState state) {
    Properties properties = new Properties();
    properties.setProperty("x", "" + state.window().x());
    properties.setProperty("y", "" + state.window().y());
    properties.setProperty("width", "" + state.window().width());
    properties.setProperty("height", "" + state.window().height());
    properties.setProperty("maximized", "" + state.window().maximized());
    properties.setProperty("units", state.units().name());
    properties.setProperty("theme", state.theme().name());
    properties.setProperty("size", state.size().name());
    properties.setProperty("place", state.place());
    for (int i = 0; i < state.recent().size(); i++) {
      properties.setProperty("recent." + i, state.recent().get(i));
    }
    properties.setProperty("cautionsSeen", "" + state.cautionsSeen());
    properties.setProperty("contact", state.contact());
    properties.setProperty("mapContact", state.mapContact());
    try {
      StringWriter text = new StringWriter();
      properties.store(text, "What Dawngauge remembers; may be deleted");
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Path aside = file.resolveSibling("window.properties.new");
      Files.writeString(aside, text.toString());
      Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
      return true;
    } catch (IOException failure) {
      return false;
    }
  }

  private static double number(
      Properties properties, String key, double least, double most, double otherwise) {
    try {
      double number = Double.parseDouble(properties.getProperty(key, ""));
      return number >= least && number <= most ? number : otherwise;
    } catch (NumberFormatException broken) {
      return otherwise;
    }
  }

  private static <E extends Enum<E>> E choice(E[] all, @Nullable String name, E otherwise) {
    return Arrays.stream(all).filter(e -> e.name().equals(name)).findFirst().orElse(otherwise);
  }
}
