package dawngauge.ui;

import dawngauge.settings.UserState;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Gives a window its place, its size and the most it may get, all before it is shown. */
final class Opening {

  private final Stage stage;
  private final Scene scene;

  private final WindowPlace place;

  private Opening(Stage stage, Scene scene, WindowPlace place) {
    this.stage = stage;
    this.scene = scene;
    this.place = place;
  }

  /**
   * Fills a window: one that is not shown yet gets its place and its size, one that is keeps them.
   *
   * @param stage the window
   * @param root what it shows
   * @param wanted where it was, or should be; what does not fit on the screens is brought inside
   */
  static Scene of(Stage stage, Parent root, UserState.Window wanted) {
    Scene there = stage.getScene();
    if (there != null) {
      there.setRoot(root);
      return there;
    }
    WindowPlace place = WindowPlace.of(wanted, screens());
    Scene scene = new Scene(root, place.width(), place.height());
    Opening opening = new Opening(stage, scene, place);
    opening.put();
    stage.setMaxWidth(place.mostWidth());
    stage.setMaxHeight(place.mostHeight());
    stage.setMaximized(place.maximized());
    stage.setScene(scene);
    opening.keepSize();
    opening.keepMost();
    return scene;
  }

  private void put() {
    if (Double.isNaN(place.x())) {
      stage.centerOnScreen();
    } else {
      stage.setX(place.x());
      stage.setY(place.y());
    }
  }

  /**
   * On Linux the toolkit learns the width of the frame only after it has shown its first window,
   * and then asks for the size, sometimes also the place, that the window had before it was given
   * one. So at that moment, and not at any guessed time, the window is given both once more. Where
   * there is no frame the toolkit makes no such mistake. It makes it again when the window stops
   * filling the screen.
   */
  private void keepSize() {
    scene
        .yProperty()
        .addListener(
            new InvalidationListener() {
              @Override
              public void invalidated(Observable frame) {
                if (scene.getY() > 0 && !stage.isMaximized()) {
                  scene.yProperty().removeListener(this);
                  stage.sizeToScene();
                  put();
                }
              }
            });
  }

  /** The most a window may get changes when a screen comes or goes. */
  private void keepMost() {
    InvalidationListener changed =
        screens -> {
          Rectangle2D all = WindowPlace.across(screens());
          stage.setMaxWidth(all.getWidth());
          stage.setMaxHeight(all.getHeight());
        };
    stage.setOnShown(shown -> Screen.getScreens().addListener(changed));
    stage.setOnHidden(hidden -> Screen.getScreens().removeListener(changed));
  }

  /** What windows may cover of each screen, the main one first. */
  static List<Rectangle2D> screens() {
    List<Rectangle2D> screens = new ArrayList<>();
    screens.add(Screen.getPrimary().getVisualBounds());
    Screen.getScreens().forEach(screen -> screens.add(screen.getVisualBounds()));
    return screens;
  }
}
