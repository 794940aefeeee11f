package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.settings.UserState;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A window opens inside one of today's screens, wherever it was before. */
class WindowPlaceTest {

  private static final Rectangle2D WIDE = new Rectangle2D(0, 0, 1920, 1080);
  private static final Rectangle2D LEFT = new Rectangle2D(-1280, 24, 1280, 776);
  private static final Rectangle2D SMALL = new Rectangle2D(0, 0, 640, 360);

  static Stream<List<Rectangle2D>> screens() {
    return Stream.of(
        List.of(WIDE), List.of(LEFT), List.of(SMALL), List.of(WIDE, LEFT), List.of(LEFT, WIDE));
  }

  @ParameterizedTest
  @MethodSource("screens")
  void allOfItIsOnOneScreen(List<Rectangle2D> screens) {
    double[] edges = {Double.NaN, -9000, -1281, -640, -1, 0, 300, 1900, 9000};
    double[] sizes = {360, 640, 820, 1280, 1905, 4490, 9000};
    for (double x : edges) {
      for (double y : edges) {
        for (double width : sizes) {
          for (double height : sizes) {
            inside(new UserState.Window(x, y, width, height, false), screens);
          }
        }
      }
    }
  }

  private static void inside(UserState.Window wanted, List<Rectangle2D> screens) {
    WindowPlace place = WindowPlace.of(wanted, screens);
    double width = place.width() + WindowPlace.FRAME_WIDTH;
    double height = place.height() + WindowPlace.FRAME_HEIGHT;
    if (Double.isNaN(wanted.x()) || Double.isNaN(wanted.y())) {
      assertThat(place.x()).as("the middle of the screen").isNaN();
      assertThat(place.y()).as("the middle of the screen").isNaN();
      assertThat(width).isLessThanOrEqualTo(screens.get(0).getWidth());
      assertThat(height).isLessThanOrEqualTo(screens.get(0).getHeight());
    } else {
      Rectangle2D window = new Rectangle2D(place.x(), place.y(), width, height);
      assertThat(screens).as("%s opens at %s", wanted, window).anyMatch(s -> s.contains(window));
    }
    assertThat(place.width()).isPositive().isLessThanOrEqualTo(wanted.width());
    assertThat(place.height()).isPositive().isLessThanOrEqualTo(wanted.height());
    assertThat(width).isLessThanOrEqualTo(place.mostWidth());
    assertThat(height).isLessThanOrEqualTo(place.mostHeight());
  }

  @Test
  void whatFitsStaysWhereItWas() {
    UserState.Window there = new UserState.Window(-1200, 100, 900, 600, true);
    assertThat(WindowPlace.of(there, List.of(WIDE, LEFT)))
        .isEqualTo(new WindowPlace(-1200, 100, 900, 600, 3200, 1080, true));
  }

  @Test
  void ofAScreenThatIsGoneItComesToTheMainOne() {
    UserState.Window there = new UserState.Window(-1200, 100, 900, 600, false);
    assertThat(WindowPlace.of(there, List.of(WIDE)))
        .isEqualTo(new WindowPlace(0, 100, 900, 600, 1920, 1080, false));
  }

  @Test
  void betweenTwoScreensItComesToTheOneWithMoreOfIt() {
    UserState.Window right = new UserState.Window(-200, 100, 900, 600, false);
    assertThat(WindowPlace.of(right, List.of(LEFT, WIDE)).x()).isZero();
    UserState.Window left = new UserState.Window(-800, 100, 900, 600, false);
    assertThat(WindowPlace.of(left, List.of(WIDE, LEFT)).x())
        .isEqualTo(-900 - WindowPlace.FRAME_WIDTH);
  }

  @Test
  void theFirstWindowFitsOnASmallScreen() {
    WindowPlace place =
        WindowPlace.of(UserState.Window.FIRST, List.of(new Rectangle2D(0, 0, 1280, 800)));
    assertThat(place.width()).isEqualTo(1264);
    assertThat(place.height()).isEqualTo(760);
  }
}
