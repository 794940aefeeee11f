package dawngauge.ui.route;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Writes on a canvas. */
record GridPen(GraphicsContext graphics) {

  /** A text that begins at a place. */
  void text(String text, double x, double y, Font font, Color color) {
    write(text, x, y, font, color, TextAlignment.LEFT);
  }

  /** A text that ends at a place. */
  void right(String text, double x, double y, Font font, Color color) {
    write(text, x, y, font, color, TextAlignment.RIGHT);
  }

  private void write(
      String text, double x, double y, Font font, Color color, TextAlignment alignment) {
    if (!text.isEmpty()) {
      graphics.setTextAlign(alignment);
      graphics.setFont(font);
      graphics.setFill(color);
      graphics.fillText(text, Math.rint(x), y);
    }
  }
}
