package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ui.common.Palette;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** Draws the shapes of the marks; they are those of {@link dawngauge.ui.common.MarkShape}. */
final class MarkPainter {

  private MarkPainter() {}

  /**
   * Draws a shape.
   *
   * @param size its height and width
   */
  static void draw(GraphicsContext g, Mark mark, Palette palette, double x, double y, double size) {
    double half = size / 2;
    Color color =
        switch (mark) {
          case ADJUST -> palette.accent();
          case HOLD -> palette.hold();
          case CLEAR, UNKNOWN -> palette.lesser();
          case RECHECK -> palette.ink();
        };
    g.setStroke(color);
    g.setFill(color);
    g.setLineWidth(1.6);
    switch (mark) {
      case CLEAR -> ring(g, x, y, half);
      case RECHECK -> {
        ring(g, x, y, half);
        double dot = size * 0.16;
        g.fillOval(x - dot, y - dot, 2 * dot, 2 * dot);
      }
      case ADJUST ->
          g.fillPolygon(
              new double[] {x, x + half, x, x - half}, new double[] {y - half, y, y + half, y}, 4);
      case HOLD -> {
        double side = half - 1;
        g.strokeRect(x - side, y - side, 2 * side, 2 * side);
        g.strokeLine(x - side, y + side, x + side, y - side);
      }
      case UNKNOWN -> g.strokeLine(x - size * 0.28, y, x + size * 0.28, y);
    }
  }

  private static void ring(GraphicsContext g, double x, double y, double half) {
    double radius = half - 1;
    g.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
  }
}
