package dawngauge.ui.route;

import dawngauge.explain.Terms;
import dawngauge.ledger.Trace;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * Draws the part of a trace that is seen. Heights are those of the rows beside it. Where there is
 * little room, air and elevation are left out: they stand in the rows.
 */
final class TracePainter {

  private static final double LEFT = 14;

  /** Narrower than this only pressures are drawn. */
  private static final double ROOM_FOR_ALL = 250;

  private static final double THIN = 18;
  private static final double AIR_FROM_RIGHT = 98;
  private static final double GROUND_FROM_RIGHT = 34;
  private static final double LEAST_PSI = 1;
  private static final double LEAST_BAR = 0.05;
  private static final Font SMALL = Font.font(10.5);

  private final GraphicsContext g;
  private final Trace trace;
  private final TraceScale scale;
  private final UnitSystem units;
  private final Palette palette;
  private final double width;
  private final String name;
  private final boolean wide;
  private final TraceAxis pressure;
  private final TraceAxis air;
  private final TraceAxis ground;

  TracePainter(
      GraphicsContext g,
      Trace trace,
      TraceScale scale,
      UnitSystem units,
      Palette palette,
      double width,
      String name,
      TraceZoom zoom) {
    this.name = name;
    this.g = g;
    this.trace = trace;
    this.scale = scale;
    this.units = units;
    this.palette = palette;
    this.width = width;
    this.wide = width >= ROOM_FOR_ALL;
    double right = wide ? AIR_FROM_RIGHT + THIN + LEFT + 10 : LEFT;
    TraceAxis whole = TraceAxis.ofPressures(trace, units, LEFT, width - right);
    double least = units == UnitSystem.US ? LEAST_PSI : LEAST_BAR;
    this.pressure = zoom.factor() > 1 ? whole.seen(zoom, least) : whole;
    this.air = thin(Trace.Point::air, AIR_FROM_RIGHT, 10);
    this.ground = thin(Trace.Point::elevation, GROUND_FROM_RIGHT, 500);
  }

  private TraceAxis thin(ToDoubleFunction<Trace.Point> figure, double fromRight, double step) {
    double middle = width - fromRight;
    return TraceAxis.of(trace.points(), figure, middle - THIN, middle + THIN, step);
  }

  /**
   * Draws.
   *
   * @param top height of the first line of pixels
   * @param height how many there are
   */
  void paint(double top, double height) {
    g.save();
    g.setFill(palette.paper());
    g.fillRect(0, 0, width, height);
    g.translate(0, -top);
    nights();
    axes(top, top + height);
    g.save();
    g.beginPath();
    g.rect(0, top, pressure.right() + LEFT, height);
    g.clip();
    limits();
    band();
    line(pressure, Trace.Point::reading, palette.warm(), 1.4, false);
    line(pressure, Trace.Point::settled, palette.settled(), 1.8, false);
    g.restore();
    if (wide) {
      line(air, Trace.Point::air, palette.lesser(), 1.2, false);
      line(ground, Trace.Point::elevation, palette.lesser(), 1.2, true);
    }
    g.restore();
  }

  /** Draws the axes' figures above all, on ground of its own. */
  void head(double height) {
    g.setFill(palette.paper());
    g.fillRect(0, 0, width, height);
    g.setFont(SMALL);
    g.setTextBaseline(VPos.TOP);
    figures(height - 28);
    g.setStroke(palette.ink());
    g.setLineWidth(1);
    g.strokeLine(0, height - 0.5, width, height - 0.5);
  }

  /** A line across at a height, with its ends at what is meant. */
  void cursor(double top, Trace.Point point) {
    double y = Math.rint(scale.y(point.time()) - top) + 0.5;
    g.setStroke(palette.limit());
    g.setLineWidth(1);
    g.strokeLine(0, y, width, y);
    for (double value : new double[] {point.settled(), point.reading()}) {
      if (!Double.isNaN(value)) {
        g.strokeOval(pressure.x(value) - 3.5, y - 3.5, 7, 7);
      }
    }
  }

  private void nights() {
    g.setFill(palette.night());
    for (Trace.Night night : trace.nights()) {
      double from = scale.y(night.sunset());
      double to = scale.y(night.sunrise());
      if (to > from) {
        g.fillRect(0, from, width, to - from);
      }
    }
  }

  private void axes(double top, double bottom) {
    g.setFont(SMALL);
    g.setTextBaseline(VPos.TOP);
    g.setLineWidth(1);
    g.setStroke(palette.grid());
    for (double value : pressure.lines()) {
      upright(pressure.x(value), top, bottom);
    }
    if (wide) {
      for (double x : new double[] {air.left(), air.right(), ground.left(), ground.right()}) {
        upright(x, top, bottom);
      }
    }
    scale.headings().forEach(this::figures);
  }

  /** What the axes say, in two lines. */
  private void figures(double at) {
    g.setFill(palette.lesser());
    g.setTextAlign(TextAlignment.CENTER);
    for (double value : pressure.lines()) {
      g.fillText(TraceAxis.number(value, pressure.step()), pressure.x(value), at);
    }
    g.fillText(
        name + ", " + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol(),
        pressure.middle(),
        at + 12);
    if (wide) {
      ends(air, at, "air " + units.unitOf(QuantityKind.TEMPERATURE).symbol());
      ends(ground, at, Terms.ELEVATION + " " + units.unitOf(QuantityKind.ELEVATION).symbol());
    }
  }

  private void upright(double x, double top, double bottom) {
    g.strokeLine(Math.rint(x) + 0.5, top, Math.rint(x) + 0.5, bottom);
  }

  private void ends(TraceAxis axis, double at, String name) {
    g.setTextAlign(TextAlignment.CENTER);
    String low = TraceAxis.number(axis.low(), axis.step());
    g.fillText(low + "–" + TraceAxis.number(axis.high(), axis.step()), axis.middle(), at);
    g.fillText(name, axis.middle(), at + 12);
  }

  private void limits() {
    g.setStroke(palette.limit());
    g.setLineWidth(1.6);
    for (Trace.Floor floor : trace.floors()) {
      double x = pressure.x(floor.pressure());
      double from = scale.y(floor.from());
      double to = scale.y(floor.to());
      g.strokeLine(x, from, x, to);
      for (double y = from; y < to; y += 7) {
        g.strokeLine(x, y, x - 4, y + 4);
      }
    }
    for (Trace.Ceiling ceiling : trace.ceilings()) {
      double x = pressure.x(ceiling.pressure());
      double y = scale.y(ceiling.time());
      g.strokeLine(x, y - 9, x, y + 9);
      g.strokeLine(x, y - 9, x + 5, y - 9);
      g.strokeLine(x, y + 9, x + 5, y + 9);
    }
  }

  private void band() {
    g.setFill(palette.band());
    List<Trace.Point> run = new ArrayList<>();
    for (Trace.Point point : trace.points()) {
      if (Double.isNaN(point.low())) {
        fill(run);
        run.clear();
      } else {
        run.add(point);
      }
    }
    fill(run);
  }

  private void fill(List<Trace.Point> run) {
    if (run.size() < 2) {
      return;
    }
    g.beginPath();
    for (Trace.Point point : run) {
      g.lineTo(pressure.x(point.low()), scale.y(point.time()));
    }
    for (int i = run.size() - 1; i >= 0; i--) {
      g.lineTo(pressure.x(run.get(i).high()), scale.y(run.get(i).time()));
    }
    g.closePath();
    g.fill();
  }

  private void line(
      TraceAxis axis,
      ToDoubleFunction<Trace.Point> figure,
      Color color,
      double thickness,
      boolean dashed) {
    g.setStroke(color);
    g.setLineWidth(thickness);
    g.setLineDashes(dashed ? new double[] {3, 3} : new double[0]);
    boolean drawing = false;
    g.beginPath();
    for (Trace.Point point : trace.points()) {
      double value = figure.applyAsDouble(point);
      if (Double.isNaN(value)) {
        drawing = false;
        continue;
      }
      double y = scale.y(point.time());
      if (drawing) {
        g.lineTo(axis.x(value), y);
      } else {
        g.moveTo(axis.x(value), y);
      }
      drawing = true;
    }
    g.stroke();
    g.setLineDashes(null);
  }
}
