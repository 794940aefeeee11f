package dawngauge.ui.common;

import java.net.URL;
import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Scene;

/**
 * The style sheets of the program's windows. Colours belong to the toolkit's theme, which reaches
 * every window: dialogs, menus, tips and lists are windows of their own and have nothing from the
 * one that they belong to.
 */
public final class Look {

  private static final String RULES = sheet("planner.css");
  private static final String LIGHT_COLOURS = sheet("light.css");
  private static final String LIGHT = sheet("theme-light.css");
  private static final String DARK = sheet("theme-dark.css");

  private Look() {}

  /** Shows all windows, those that are open too, in a theme. */
  public static void show(boolean dark) {
    Application.setUserAgentStylesheet(dark ? DARK : LIGHT);
  }

  /** Gives a window the program's rules. */
  public static void rule(Scene scene) {
    scene.getStylesheets().setAll(RULES);
  }

  /** Gives a page that is printed the program's rules, and light colours whatever is shown. */
  public static void ruleOnPaper(Scene page) {
    page.getStylesheets().addAll(LIGHT_COLOURS, RULES);
  }

  private static String sheet(String name) {
    URL found = Look.class.getResource("/dawngauge/ui/" + name);
    return Objects.requireNonNull(found, name).toExternalForm();
  }
}
