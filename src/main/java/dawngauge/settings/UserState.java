package dawngauge.settings;

import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * What the program remembers of its user between two runs. It holds no trip and nothing that a
 * forecast rests on.
 *
 * @param window where the window stood
 * @param units the units shown
 * @param theme light, dark or as the system
 * @param size how large everything is shown
 * @param place which place was shown, by its name
 * @param recent trip files opened or saved last, newest first
 * @param cautionsSeen whether the cautions were shown once
 * @param contact what weather services are told to reach the user; empty without the user's consent
 * @param mapContact what a map server is told to reach the user; empty without the user's consent
 */
public record UserState(
    Window window,
    UnitSystem units,
    Theme theme,
    Size size,
    String place,
    List<String> recent,
    boolean cautionsSeen,
    String contact,
    String mapContact) {

  /** As many trip files are remembered. */
  public static final int MOST_RECENT = 10;

  /** Before anything is known. */
  public static final UserState FIRST =
      new UserState(
          Window.FIRST, UnitSystem.US, Theme.SYSTEM, Size.SYSTEM, "", List.of(), false, "", "");

  /** Which colours are shown. */
  public enum Theme {
    /** As the system is set. */
    SYSTEM,
    /** Dark on light. */
    LIGHT,
    /** Light on dark. */
    DARK;

    /** Whether windows are dark, where the system's are or are not. */
    public boolean dark(boolean systemDark) {
      return this == DARK || (this == SYSTEM && systemDark);
    }
  }

  /** How large everything is shown: text and all around it. */
  public enum Size {
    /** As the system is set. */
    SYSTEM(0),
    /** As it was drawn. */
    PLAIN(100),
    /** A quarter larger. */
    LARGER(125),
    /** Half as large again. */
    LARGE(150),
    /** Three quarters larger. */
    VERY_LARGE(175),
    /** Twice as large. */
    DOUBLE(200);

    private final int percent;

    Size(int percent) {
      this.percent = percent;
    }

    /** In percent; 0 where the system decides. */
    public int percent() {
      return percent;
    }
  }

  /**
   * A window's place in pixels.
   *
   * @param x left edge; NaN where the system chooses
   * @param y upper edge; NaN likewise
   * @param width its width
   * @param height its height
   * @param maximized whether it filled the screen
   */
  public record Window(double x, double y, double width, double height, boolean maximized) {

    /** Narrowest: on 1280 pixels all of it is still seen at twice its size. */
    public static final double LEAST_WIDTH = 640;

    /** Lowest. */
    public static final double LEAST_HEIGHT = 360;

    /** Before anything is known. */
    public static final Window FIRST = new Window(Double.NaN, Double.NaN, 1280, 820, false);
  }

  /** Copies the list. */
  public UserState {
    recent = List.copyOf(recent);
  }

  /** The same with the window elsewhere. */
  public UserState withWindow(Window other) {
    return new UserState(
        other, units, theme, size, place, recent, cautionsSeen, contact, mapContact);
  }

  /** The same with other units. */
  public UserState withUnits(UnitSystem other) {
    return new UserState(
        window, other, theme, size, place, recent, cautionsSeen, contact, mapContact);
  }

  /** The same with another theme. */
  public UserState withTheme(Theme other) {
    return new UserState(
        window, units, other, size, place, recent, cautionsSeen, contact, mapContact);
  }

  /** The same with everything in another size. */
  public UserState withSize(Size other) {
    return new UserState(
        window, units, theme, other, place, recent, cautionsSeen, contact, mapContact);
  }

  /** The same with another place shown. */
  public UserState withPlace(String other) {
    return new UserState(
        window, units, theme, size, other, recent, cautionsSeen, contact, mapContact);
  }

  /** The same once the cautions were shown. */
  public UserState withCautionsSeen() {
    return new UserState(window, units, theme, size, place, recent, true, contact, mapContact);
  }

  /** The same with another contact; empty to withdraw consent. */
  public UserState withContact(String other) {
    return new UserState(
        window, units, theme, size, place, recent, cautionsSeen, other, mapContact);
  }

  /** The same with another contact for a map server; empty to withdraw consent. */
  public UserState withMapContact(String other) {
    return new UserState(window, units, theme, size, place, recent, cautionsSeen, contact, other);
  }

  /** The same with a trip file as the newest. */
  public UserState withRecent(String file) {
    List<String> files = new ArrayList<>(recent);
    files.remove(file);
    files.add(0, file);
    return withFiles(files.subList(0, Math.min(MOST_RECENT, files.size())));
  }

  /** The same without a trip file, as one that is gone. */
  public UserState withoutRecent(String file) {
    return withFiles(recent.stream().filter(known -> !known.equals(file)).toList());
  }

  private UserState withFiles(List<String> files) {
    return new UserState(
        window, units, theme, size, place, files, cautionsSeen, contact, mapContact);
  }
}
