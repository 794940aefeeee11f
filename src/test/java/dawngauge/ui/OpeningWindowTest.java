package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.UserFolder;
import dawngauge.settings.UserState;
import dawngauge.testdata.FakeWeatherAccess;
import dawngauge.trip.Stop;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What a window has before it is shown, and keeps after. */
class OpeningWindowTest extends WindowTest {

  private static final UserState.Window FAR_AND_LARGE =
      new UserState.Window(7000, -5000, 9000, 8000, false);

  @Test
  void placeAndSizeAreSetBeforeTheWindowIsShown() {
    UserFolder userFolder = userFolder(1);
    userFolder.remember(state -> state.withWindow(FAR_AND_LARGE));
    Stage stage = OpenWindow.onToolkit(() -> planner(userFolder));
    Rectangle2D screen = screen();
    assertThat(stage.isShowing()).isFalse();
    Scene scene = stage.getScene();
    assertThat(scene.getWidth()).isEqualTo(screen.getWidth() - WindowPlace.FRAME_WIDTH);
    assertThat(scene.getHeight()).isEqualTo(screen.getHeight() - WindowPlace.FRAME_HEIGHT);
    assertThat(stage.getX()).isEqualTo(screen.getMinX());
    assertThat(stage.getY()).isEqualTo(screen.getMinY());
    assertThat(stage.getMaxWidth()).isEqualTo(screen.getWidth());
    assertThat(stage.getMaxHeight()).isEqualTo(screen.getHeight());
    assertThat(stage.getMinWidth()).isLessThanOrEqualTo(stage.getMaxWidth());
    assertThat(stage.getMinHeight()).isLessThanOrEqualTo(stage.getMaxHeight());
  }

  @Test
  void aRememberedWindowLargerThanTheScreenIsBroughtInside() {
    UserFolder userFolder = userFolder(1);
    userFolder.remember(state -> state.withWindow(FAR_AND_LARGE));
    OpenWindow open = open(demo(), userFolder);
    Rectangle2D screen = screen();
    open.until("it is laid out", () -> open.stops() > 0);
    open.run(
        () -> {
          assertThat(open.stage.getWidth()).isLessThanOrEqualTo(screen.getWidth());
          assertThat(open.stage.getHeight()).isLessThanOrEqualTo(screen.getHeight());
        });
  }

  @Test
  void helpFitsOnTheScreenToo() {
    OpenWindow open = open(demo());
    open.run(open.window::help);
    Rectangle2D screen = screen();
    Stage help =
        OpenWindow.onToolkit(
            () ->
                Stage.getWindows().stream()
                    .filter(window -> window instanceof Stage)
                    .map(Stage.class::cast)
                    .filter(stage -> stage.getTitle().startsWith("Help"))
                    .findFirst()
                    .orElseThrow());
    assertThat(help.getScene().getHeight())
        .isEqualTo(Math.min(620, screen.getHeight() - WindowPlace.FRAME_HEIGHT));
    assertThat(help.getMaxHeight()).isEqualTo(screen.getHeight());
    open.run(help::close);
  }

  @Test
  void theFrameNamesTheStopsAndGivesWayToThePage() {
    UserFolder userFolder = userFolder(1);
    List<String> seen = new ArrayList<>();
    Stage stage =
        OpenWindow.onToolkit(
            () -> {
              Stage made = new Stage();
              Runnable fill =
                  () -> {
                    made.getScene()
                        .getRoot()
                        .lookupAll(".label")
                        .forEach(label -> seen.add(((Label) label).getText()));
                    fill(made, userFolder);
                  };
              OpeningFrame.show(made, demo(), userFolder.state().window(), fill);
              assertThat(made.isShowing()).isTrue();
              return made;
            });
    Scene scene = stage.getScene();
    until("the page is there", () -> scene.getRoot().lookup(".stop-grid") != null);
    assertThat(seen).contains(demo().name());
    assertThat(seen).containsAll(demo().route().stops().stream().map(Stop::place).toList());
    assertThat(stage.getScene()).isSameAs(scene);
    assertThat(scene.getStylesheets()).hasSize(1);
    OpenWindow.onToolkit(
        () -> {
          stage.close();
          return true;
        });
  }

  private static void until(String what, Callable<Boolean> condition) {
    try {
      WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> OpenWindow.onToolkit(condition));
    } catch (TimeoutException late) {
      throw new AssertionError("waited in vain until " + what, late);
    }
  }

  /** What windows may cover of the screen; the display of the tests has one. */
  private static Rectangle2D screen() {
    return OpenWindow.onToolkit(() -> Screen.getPrimary().getVisualBounds());
  }

  private static Stage planner(UserFolder userFolder) {
    Stage stage = new Stage();
    fill(stage, userFolder);
    return stage;
  }

  private static void fill(Stage stage, UserFolder userFolder) {
    TripDocument document = new TripDocument(planner(), demo());
    new PlannerWindow(
        stage, planner(), userFolder, new FakeWeatherAccess(), document, new FakeAsker(), false);
  }
}
