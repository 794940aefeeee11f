package dawngauge.ui.map;

import dawngauge.advice.Mark;
import dawngauge.geo.BaseMap;
import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.ScaleBar;
import dawngauge.quantity.Distance;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Paints the map: ground, legs, marks, names, scale and credit. */
final class MapPainter {

  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 11);
  private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 12);
  private static final Font DIVISION = new Font(Font.SANS_SERIF, Font.ITALIC, 11);

  private static final String OWN_CREDIT = "Natural Earth, U.S. Census Bureau, GeoNames; no roads";

  /** Inhabitants from which on a place is named while a continent fills the map; ours. */
  private static final double NAMED_ON_A_CONTINENT = 1.5e6;

  private static final double RADIUS = 6;

  /** How far the chosen stop's ring is from its mark. */
  private static final double RING = 4;

  /** Names on the map at the most. */
  private static final int MOST_NAMES = 60;

  private final BaseMap map = BaseMap.load();
  private final GroundPainter ground = new GroundPainter(map);

  /**
   * Paints.
   *
   * @param tiles an online map, over the ground; null for the ground alone
   */
  void paint(Graphics2D g, MapFrame frame, MapPicture picture, @Nullable TileStore tiles) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    MapColors colors = picture.dark() ? MapColors.DARK : MapColors.LIGHT;
    ground.paint(g, frame, colors);
    if (tiles != null) {
      tiles.paint(g, frame, g.getTransform().getScaleX());
    }
    List<Point2D.Double> points =
        picture.stops().stream().map(stop -> frame.of(stop.at())).toList();
    legs(g, frame, picture, colors);
    Labels labels = new Labels(g, frame, colors.land());
    for (Point2D.Double point : points) {
      labels.take(point.x - RADIUS, point.y - RADIUS, 2 * RADIUS, 2 * RADIUS);
    }
    for (int i = 0; i < points.size(); i++) {
      mark(g, points.get(i), picture.stops().get(i), picture.chosen(), colors);
    }
    edge(g, frame, picture, colors, labels, tiles == null ? OWN_CREDIT : tiles.credit());
    stops(picture, points, colors, labels);
    if (tiles == null) {
      names(frame, colors, labels);
    }
  }

  private static void legs(Graphics2D g, MapFrame frame, MapPicture picture, MapColors colors) {
    g.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(colors.route());
    for (int i = 1; i < picture.stops().size(); i++) {
      leg(g, frame, picture.stops().get(i - 1).at(), picture.stops().get(i).at());
    }
  }

  /** The straight way over the ground, bent as the map bends it. */
  private static void leg(Graphics2D g, MapFrame frame, Coordinate from, Coordinate to) {
    int pieces = 1 + (int) (GreatCircle.between(from, to).meters() / 200_000);
    Path2D.Double path = new Path2D.Double();
    double before = Double.NaN;
    for (int i = 0; i <= pieces; i++) {
      Point2D.Double point = frame.of(GreatCircle.along(from, to, (double) i / pieces));
      if (i == 0) {
        path.moveTo(point.x, point.y);
        before = point.x;
      } else {
        double near = before + Math.IEEEremainder(point.x - before, frame.world());
        path.lineTo(near, point.y);
        before = near;
      }
    }
    g.draw(path);
  }

  /** The shape of a mark as it stands in the ledger. */
  private static void mark(
      Graphics2D g, Point2D.Double at, MapStop stop, int chosen, MapColors colors) {
    double x = at.x;
    double y = at.y;
    if (stop.index() == chosen) {
      g.setColor(colors.chosen());
      g.setStroke(new BasicStroke(2.4f));
      g.draw(circle(x, y, RADIUS + RING));
    }
    g.setColor(colors.land());
    g.fill(circle(x, y, RADIUS + 1.5));
    g.setStroke(new BasicStroke(2f));
    g.setColor(color(stop.mark(), colors));
    switch (stop.mark()) {
      case CLEAR -> g.draw(circle(x, y, RADIUS - 1));
      case RECHECK -> {
        g.draw(circle(x, y, RADIUS - 1));
        g.fill(circle(x, y, 2.2));
      }
      case ADJUST -> {
        Path2D.Double lozenge = new Path2D.Double();
        lozenge.moveTo(x, y - RADIUS - 1);
        lozenge.lineTo(x + RADIUS + 1, y);
        lozenge.lineTo(x, y + RADIUS + 1);
        lozenge.lineTo(x - RADIUS - 1, y);
        lozenge.closePath();
        g.fill(lozenge);
      }
      case HOLD -> {
        double half = RADIUS - 0.5;
        g.draw(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
        g.draw(new Line2D.Double(x - half, y + half, x + half, y - half));
      }
      case UNKNOWN -> g.draw(new Line2D.Double(x - 4, y, x + 4, y));
    }
  }

  private static Color color(Mark mark, MapColors colors) {
    return switch (mark) {
      case ADJUST -> colors.adjust();
      case HOLD -> colors.hold();
      default -> colors.route();
    };
  }

  private static Ellipse2D circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private static void stops(
      MapPicture picture, List<Point2D.Double> points, MapColors colors, Labels labels) {
    // The chosen stop's name first, then the strongest marks: these are not to be dropped.
    List<Integer> order =
        IntStream.range(0, points.size())
            .boxed()
            .sorted(
                Comparator.comparing((Integer i) -> chosen(picture, i))
                    .thenComparing(i -> picture.stops().get(i).mark())
                    .reversed())
            .toList();
    for (int i : order) {
      MapStop stop = picture.stops().get(i);
      Point2D.Double at = points.get(i);
      Color color = color(stop.mark(), colors);
      double gap = RADIUS + (stop.index() == picture.chosen() ? RING + 2 : 3);
      boolean whole = labels.beside(stop.label(), at.x, at.y, gap, BOLD, color);
      if (!whole) {
        labels.beside(String.valueOf(stop.index() + 1), at.x, at.y, gap, BOLD, color);
      }
    }
  }

  private static boolean chosen(MapPicture picture, int at) {
    return picture.stops().get(at).index() == picture.chosen();
  }

  private void names(MapFrame frame, MapColors colors, Labels labels) {
    double level = frame.level();
    if (level > 3.5 && level < 8) {
      for (BaseMap.Name name : map.divisions()) {
        labels.on(
            name.text(), frame.x(name.at().x()), frame.y(name.at().y()), DIVISION, colors.name());
      }
    }
    double least = NAMED_ON_A_CONTINENT / Math.pow(8, (level - 4) / 2);
    int written = 0;
    for (BaseMap.Name name : map.places()) {
      if (name.population() < least || written == MOST_NAMES) {
        break;
      }
      double x = frame.x(name.at().x());
      double y = frame.y(name.at().y());
      if (x > 0 && y > 0 && x < frame.width() && y < frame.height()) {
        written += labels.on(name.text(), x, y, PLAIN, colors.name()) ? 1 : 0;
      }
    }
  }

  /** Scale and credit, along the lower edge. */
  private static void edge(
      Graphics2D g,
      MapFrame frame,
      MapPicture picture,
      MapColors colors,
      Labels labels,
      String credit) {
    Coordinate left = frame.at(frame.width() / 2 - 50, frame.height() / 2);
    Coordinate right = frame.at(frame.width() / 2 + 50, frame.height() / 2);
    double pixel = GreatCircle.between(left, right).meters() / 100;
    ScaleBar bar = ScaleBar.within(new Distance(100 * pixel), picture.unit());
    double wide = bar.length().meters() / pixel;
    FontMetrics size = g.getFontMetrics(PLAIN);
    float from = (float) (frame.width() - size.stringWidth(credit) - 6);
    double low = frame.height() - (from < wide + 30 ? 26 : 7);
    g.setColor(colors.land());
    g.fill(
        new Rectangle2D.Double(
            0, low - 18, Math.max(wide, size.stringWidth(bar.text())) + 14, frame.height()));
    g.setColor(colors.route());
    g.setStroke(new BasicStroke(2f));
    g.draw(new Line2D.Double(8, low, 8 + wide, low));
    g.setFont(PLAIN);
    g.drawString(bar.text(), 8, (float) low - 5);
    labels.take(0, low - 20, Math.max(wide, 60) + 16, 27);
    g.setColor(colors.land());
    g.fill(
        new Rectangle2D.Double(
            from - 4, frame.height() - size.getHeight() - 2, frame.width(), size.getHeight() + 2));
    g.setColor(colors.name());
    g.drawString(credit, from, (float) frame.height() - 5);
    labels.take(from - 4, frame.height() - 20, frame.width(), 20);
  }
}
