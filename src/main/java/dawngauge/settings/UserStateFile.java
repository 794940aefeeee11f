package dawngauge.settings;

import dawngauge.quantity.UnitSystem;
import dawngauge.settings.UserState.Size;
import dawngauge.settings.UserState.Theme;
import dawngauge.settings.UserState.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Keeps {@link UserState} in the user's own folder. A file that is missing or broken is as good as
 * none, and a folder that cannot be written costs the memory only: nothing of a trip is in it.
 */
public final class UserStateFile {

  private static final double MOST = 20_000;

  private final OwnProperties file;

  /**
   * A state file.
   *
   * @param folder the user's own folder; made when something is written
   */
  public UserStateFile(Path folder) {
    this.file =
        new OwnProperties(
            folder.resolve("window.properties"), "What Dawngauge remembers; may be deleted");
  }

  /** What is remembered. */
  public UserState load() {
    Properties properties = file.read();
    return properties == null ? UserState.FIRST : state(properties);
  }

  private static UserState state(Properties properties) {
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
   * Remembers something else. The change is made to what stands in the file now: what another
   * window wrote since, a consent withdrawn above all, stays as it is.
   *
   * @return what is remembered now; empty where it could not be written
   */
  public Optional<UserState> change(UnaryOperator<UserState> change) {
    return file.change(properties -> properties(change.apply(state(properties))))
        .map(UserStateFile::state);
  }

  private static Properties properties(UserState state) {
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
    return properties;
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
