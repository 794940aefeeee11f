package dawngauge.ui.map;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Writes names where no other stands; one that finds no room is left out. */
final class Labels {

  private final Graphics2D g;
  private final Rectangle2D seen;
  private final Color halo;
  private final List<Rectangle2D> taken = new ArrayList<>();

  Labels(Graphics2D g, MapFrame frame, Color halo) {
    this.g = g;
    this.seen = new Rectangle2D.Double(0, 0, frame.width(), frame.height());
    this.halo = halo;
  }

  /** Keeps room free. */
  void take(double x, double y, double width, double height) {
    taken.add(new Rectangle2D.Double(x, y, width, height));
  }

  /**
   * Writes beside a point, to the right if there is room, else to the left, above or below.
   *
   * @param gap pixels between the point and the name
   */
  boolean beside(String text, double x, double y, double gap, Font font, Color color) {
    FontMetrics size = g.getFontMetrics(font);
    double wide = size.stringWidth(text);
    double high = size.getAscent() + size.getDescent();
    double[][] corners = {
      {x + gap, y - high / 2},
      {x - gap - wide, y - high / 2},
      {x - wide / 2, y - gap - high},
      {x - wide / 2, y + gap}
    };
    for (double[] corner : corners) {
      if (written(text, corner[0], corner[1], font, color)) {
        return true;
      }
    }
    return false;
  }

  /** Writes with its middle on a point, if there is room. */
  boolean on(String text, double x, double y, Font font, Color color) {
    FontMetrics size = g.getFontMetrics(font);
    return written(
        text,
        x - size.stringWidth(text) / 2.0,
        y - (size.getAscent() + size.getDescent()) / 2.0,
        font,
        color);
  }

  private boolean written(String text, double x, double y, Font font, Color color) {
    FontMetrics size = g.getFontMetrics(font);
    Rectangle2D room =
        new Rectangle2D.Double(
            x, y, size.stringWidth(text), size.getAscent() + (double) size.getDescent());
    if (!seen.contains(room) || taken.stream().anyMatch(room::intersects)) {
      return false;
    }
    taken.add(room);
    g.setFont(font);
    float base = (float) (y + size.getAscent());
    g.setColor(halo);
    for (int i = 0; i < 4; i++) {
      g.drawString(text, (float) x + (i % 2 == 0 ? -1 : 1), base + (i < 2 ? -1 : 1));
    }
    g.setColor(color);
    g.drawString(text, (float) x, base);
    return true;
  }
}
