package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.UserDesk;
import dawngauge.settings.UserState;
import dawngauge.testdata.FakeWeatherDesk;
import dawngauge.ui.common.TripDocument;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;

/** What a window has before it is shown, and keeps after. */
class OpeningWindowTest extends WindowTest {

  private static final UserState.Window FAR_AND_LARGE =
      new UserState.Window(7000, -5000, 9000, 8000, false);

  @Test
  void placeAndSizeAreSetBeforeTheWindowIsShown() {
    UserDesk desk = desk(1);
    desk.remember(state -> state.withWindow(FAR_AND_LARGE));
    Stage stage = OpenWindow.onToolkit(() -> planner(desk));
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
    UserDesk desk = desk(1);
    desk.remember(state -> state.withWindow(FAR_AND_LARGE));
    OpenWindow open = open(demo(), desk);
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

  /** What windows may cover of the screen; the display of the tests has one. */
  private static Rectangle2D screen() {
    return OpenWindow.onToolkit(() -> Screen.getPrimary().getVisualBounds());
  }

  private static Stage planner(UserDesk desk) {
    Stage stage = new Stage();
    TripDocument document = new TripDocument(planner(), demo());
    new PlannerWindow(
        stage, planner(), desk, new FakeWeatherDesk(), document, new FakeAsker(), false);
    return stage;
  }
}
