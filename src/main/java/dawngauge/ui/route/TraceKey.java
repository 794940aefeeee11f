package dawngauge.ui.route;

import dawngauge.explain.Terms;
import dawngauge.ui.common.Palette;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

/** What the lines of the trace are: each drawn as it is there, its name beside it. */
final class TraceKey {

  private static final double HEIGHT = 12;
  private static final double MIDDLE = HEIGHT / 2;
  private static final double WIDE = 16;

  private final Line cold = line(MIDDLE, 1.8);
  private final Line reading = line(MIDDLE, 1.4);
  private final Rectangle band = new Rectangle(WIDE, HEIGHT - 2);
  private final Rectangle night = new Rectangle(WIDE, HEIGHT - 2);
  private final List<Shape> limits =
      List.of(
          drawn(5, 0, 5, HEIGHT),
          drawn(5, 0, 1, 4),
          drawn(5, 4, 1, 8),
          drawn(5, 8, 1, HEIGHT),
          drawn(7, 1, 2, 1, 2, HEIGHT - 1, 7, HEIGHT - 1));

  private final List<Label> entries;

  TraceKey() {
    List<Shape> hatch = limits.subList(0, 4);
    entries =
        List.of(
            entry(Terms.COLD_HERE, cold),
            entry("as read", band, reading),
            entry(Terms.LOWEST_SAFE, hatch.toArray(Shape[]::new)),
            entry(Terms.NEVER_OVER, limits.get(4)),
            entry("night", night));
    color(Palette.LIGHT);
  }

  /** The lines with their names. */
  List<Label> entries() {
    return entries;
  }

  private static Line line(double y, double thickness) {
    Line line = new Line(0, y, WIDE, y);
    line.setStrokeWidth(thickness);
    return line;
  }

  private static Shape drawn(double... points) {
    Polyline line = new Polyline(points);
    line.setStrokeWidth(1.6);
    line.setFill(Color.TRANSPARENT);
    return line;
  }

  private static Label entry(String name, Shape... shapes) {
    Label label = new Label(name, new Group(shapes));
    label.setGraphicTextGap(5);
    label.setMinWidth(Region.USE_PREF_SIZE);
    label.getStyleClass().add("lesser");
    return label;
  }

  /** Draws in the colours of the trace. */
  void color(Palette palette) {
    cold.setStroke(palette.settled());
    reading.setStroke(palette.warm());
    band.setFill(palette.band());
    night.setFill(palette.night());
    night.setStroke(palette.grid());
    limits.forEach(shape -> shape.setStroke(palette.limit()));
  }
}
