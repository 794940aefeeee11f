package dawngauge.ui;

import dawngauge.settings.UserState;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.Rectangle2D;

/**
 * Where a window opens and how large, so that all of it is on one screen, whatever was remembered
 * from other screens. All in the toolkit's pixels.
 *
 * @param x left edge of the window with its frame; NaN for the middle of the screen
 * @param y upper edge; NaN likewise
 * @param width of what is inside the frame
 * @param height of what is inside the frame
 * @param mostWidth the widest that the window may get with its frame: all screens together
 * @param mostHeight the highest
 * @param maximized whether it fills the screen
 */
record WindowPlace(
    double x,
    double y,
    double width,
    double height,
    double mostWidth,
    double mostHeight,
    boolean maximized) {

  /** At least what a window's own frame takes of the screen's width, both sides together. */
  static final double FRAME_WIDTH = 16;

  /** At least what a window's own frame takes of the screen's height, the title bar with it. */
  static final double FRAME_HEIGHT = 40;

  /**
   * The place nearest to the wanted one.
   *
   * @param wanted where it was, or should be
   * @param screens what windows may cover of each screen, the main one first; at least one
   */
  static WindowPlace of(UserState.Window wanted, List<Rectangle2D> screens) {
    boolean placed = !Double.isNaN(wanted.x()) && !Double.isNaN(wanted.y());
    Rectangle2D screen =
        placed
            ? screens.stream()
                .max(Comparator.comparingDouble(one -> shared(wanted, one)))
                .filter(most -> shared(wanted, most) > 0)
                .orElse(screens.get(0))
            : screens.get(0);
    double width = Math.min(wanted.width(), screen.getWidth() - FRAME_WIDTH);
    double height = Math.min(wanted.height(), screen.getHeight() - FRAME_HEIGHT);
    double right = screen.getMaxX() - width - FRAME_WIDTH;
    double lower = screen.getMaxY() - height - FRAME_HEIGHT;
    Rectangle2D all = across(screens);
    return new WindowPlace(
        placed ? within(wanted.x(), screen.getMinX(), right) : Double.NaN,
        placed ? within(wanted.y(), screen.getMinY(), lower) : Double.NaN,
        width,
        height,
        all.getWidth(),
        all.getHeight(),
        wanted.maximized());
  }

  /** The area that a window has in common with a screen. */
  private static double shared(UserState.Window window, Rectangle2D screen) {
    double across =
        Math.min(window.x() + window.width(), screen.getMaxX())
            - Math.max(window.x(), screen.getMinX());
    double down =
        Math.min(window.y() + window.height(), screen.getMaxY())
            - Math.max(window.y(), screen.getMinY());
    return Math.max(across, 0) * Math.max(down, 0);
  }

  private static double within(double edge, double least, double most) {
    return Math.max(least, Math.min(edge, most));
  }

  /** The smallest rectangle around all screens. */
  static Rectangle2D across(List<Rectangle2D> screens) {
    double left = screens.stream().mapToDouble(Rectangle2D::getMinX).min().orElse(0);
    double top = screens.stream().mapToDouble(Rectangle2D::getMinY).min().orElse(0);
    double right = screens.stream().mapToDouble(Rectangle2D::getMaxX).max().orElse(0);
    double bottom = screens.stream().mapToDouble(Rectangle2D::getMaxY).max().orElse(0);
    return new Rectangle2D(left, top, right - left, bottom - top);
  }
}
