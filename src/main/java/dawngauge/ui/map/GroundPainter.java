package dawngauge.ui.map;

import dawngauge.geo.BaseMap;
import dawngauge.geo.MapLine;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** Paints sea, land, lakes, rivers and borders. */
final class GroundPainter {

  /** Points nearer to the one before, in pixels, are left out. */
  private static final double LEAST_STEP = 0.7;

  private final BaseMap map;

  GroundPainter(BaseMap map) {
    this.map = map;
  }

  void paint(Graphics2D g, MapFrame frame, MapColors colors) {
    g.setColor(colors.sea());
    g.fillRect(0, 0, (int) frame.width() + 1, (int) frame.height() + 1);
    double from = frame.left() / frame.world();
    double to = from + frame.width() / frame.world();
    for (double around = Math.floor(from); around < to; around++) {
      paint(g, frame, colors, around);
    }
  }

  /** Paints the earth once, so many times around. */
  private void paint(Graphics2D g, MapFrame frame, MapColors colors, double around) {
    double fromX = frame.left() / frame.world() - around;
    double fromY = frame.top() / frame.world();
    double toX = fromX + frame.width() / frame.world();
    double toY = fromY + frame.height() / frame.world();
    boolean near = frame.level() > 6;
    for (MapLine line : map.lines()) {
      if (!line.meets(fromX, fromY, toX, toY)) {
        continue;
      }
      Path2D path = path(line, frame, around);
      switch (line.kind()) {
        case LAND -> {
          g.setColor(colors.land());
          g.fill(path);
        }
        case LAKE -> {
          g.setColor(colors.sea());
          g.fill(path);
          stroke(g, path, colors.shore(), 0.8f);
        }
        case RIVER -> stroke(g, path, colors.shore(), near ? 1.1f : 0.6f);
        case COAST -> stroke(g, path, colors.shore(), 1f);
        case STATE -> {
          if (frame.level() > 2.5) {
            stroke(g, path, colors.border(), near ? 1f : 0.7f);
          }
        }
        case COUNTRY -> stroke(g, path, colors.border(), 1.8f);
      }
    }
  }

  private static void stroke(Graphics2D g, Path2D path, Color color, float width) {
    g.setColor(color);
    g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(path);
  }

  private static Path2D path(MapLine line, MapFrame frame, double around) {
    Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD, line.size());
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (int i = 0; i < line.size(); i++) {
      double x = frame.x(line.x(i) + around);
      double y = frame.y(line.y(i));
      if (i == 0) {
        path.moveTo(x, y);
      } else if (i < line.size() - 1
          && Math.abs(x - lastX) < LEAST_STEP
          && Math.abs(y - lastY) < LEAST_STEP) {
        continue;
      } else {
        path.lineTo(x, y);
      }
      lastX = x;
      lastY = y;
    }
    return path;
  }
}
