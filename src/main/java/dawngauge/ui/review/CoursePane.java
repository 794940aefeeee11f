package dawngauge.ui.review;

import dawngauge.ledger.ReadingsTrace;
import dawngauge.ledger.Trace;
import dawngauge.ui.common.Palette;
import java.time.Instant;
import java.util.function.ToDoubleFunction;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/**
 * What a tire read over the trip, as dots on what a sound one would have read. All of it stands as
 * a table below it too.
 */
final class CoursePane extends Region {

  private static final double HEIGHT = 210;
  private static final double LEFT = 44;
  private static final double BOTTOM = 22;
  private static final double DOT = 4;

  private final Canvas canvas = new Canvas();
  private final ObservableBooleanValue dark;
  private @Nullable ReadingsTrace course;
  private double begin;
  private double end;
  private double low;
  private double high;

  CoursePane(ObservableBooleanValue dark) {
    this.dark = dark;
    getChildren().add(canvas);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    dark.addListener(change -> draw());
    widthProperty().addListener(change -> draw());
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** Shows a course; null, or one of which nothing is known, shows nothing. */
  void show(@Nullable ReadingsTrace shown) {
    boolean known =
        shown != null
            && shown.trace().points().stream().anyMatch(point -> !Double.isNaN(point.settled()));
    course = known ? shown : null;
    setVisible(known);
    setAccessibleText(known ? "Plot of the readings in the table below" : "No plot");
    draw();
  }

  private void measure(ReadingsTrace shown) {
    begin = Double.POSITIVE_INFINITY;
    end = Double.NEGATIVE_INFINITY;
    low = Double.POSITIVE_INFINITY;
    high = Double.NEGATIVE_INFINITY;
    for (Trace.Point point : shown.trace().points()) {
      if (!Double.isNaN(point.settled())) {
        begin = Math.min(begin, seconds(point.time()));
        end = Math.max(end, seconds(point.time()));
        for (double value : new double[] {point.settled(), point.low(), point.high()}) {
          reach(value);
        }
      }
    }
    for (ReadingsTrace.Dot dot : shown.dots()) {
      reach(dot.read());
    }
    shown.trace().floors().forEach(floor -> reach(floor.pressure()));
    end = Math.max(end, begin + 1);
  }

  private void reach(double value) {
    if (!Double.isNaN(value)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }

  private static double seconds(Instant time) {
    return time.toEpochMilli() / 1000.0;
  }

  private double x(Instant time) {
    double part = Math.max(0, Math.min(1, (seconds(time) - begin) / (end - begin)));
    return LEFT + part * (getWidth() - LEFT - 8);
  }

  private double y(double pressure) {
    return HEIGHT - BOTTOM - (pressure - low) / (high - low) * (HEIGHT - BOTTOM - 8);
  }

  private void draw() {
    canvas.setWidth(getWidth());
    canvas.setHeight(HEIGHT);
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, getWidth(), HEIGHT);
    ReadingsTrace shown = course;
    if (shown == null || getWidth() < 3 * LEFT) {
      return;
    }
    measure(shown);
    double step = step(high - low);
    low = Math.floor(low / step) * step;
    high = Math.ceil(high / step) * step;
    Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
    for (Trace.Night night : shown.trace().nights()) {
      g.setFill(palette.night());
      g.fillRect(x(night.sunset()), 8, x(night.sunrise()) - x(night.sunset()), HEIGHT - BOTTOM - 8);
    }
    grid(g, palette, shown, step);
    range(g, palette, shown);
    g.setStroke(palette.ink());
    g.setLineWidth(1);
    line(g, shown, Trace.Point::reading);
    g.setLineWidth(2);
    line(g, shown, Trace.Point::settled);
    g.setLineDashes(6, 3);
    for (Trace.Floor floor : shown.trace().floors()) {
      g.strokeLine(x(floor.from()), y(floor.pressure()), x(floor.to()), y(floor.pressure()));
    }
    g.setLineDashes();
    g.setLineWidth(1.5);
    for (Trace.Ceiling ceiling : shown.trace().ceilings()) {
      double at = x(ceiling.time());
      double height = y(Math.min(high, ceiling.pressure()));
      g.strokePolyline(
          new double[] {at - 5, at - 5, at + 5, at + 5},
          new double[] {height + 4, height, height, height + 4},
          4);
    }
    for (ReadingsTrace.Dot dot : shown.dots()) {
      g.setFill(dot.cold() ? palette.ink() : palette.paper());
      g.fillOval(x(dot.time()) - DOT, y(dot.read()) - DOT, 2 * DOT, 2 * DOT);
      g.strokeOval(x(dot.time()) - DOT, y(dot.read()) - DOT, 2 * DOT, 2 * DOT);
    }
  }

  /** Four to nine lines. */
  private static double step(double span) {
    double step = Math.pow(10, Math.floor(Math.log10(Math.max(span, 1e-3))));
    return span / step < 2 ? step / 5 : span / step < 5 ? step / 2 : step;
  }

  private void grid(GraphicsContext g, Palette palette, ReadingsTrace shown, double step) {
    g.setFont(Font.font(11));
    g.setFill(palette.ink());
    g.setStroke(palette.grid());
    g.setLineWidth(1);
    g.setTextAlign(TextAlignment.RIGHT);
    for (double value = low; value <= high + step / 2; value += step) {
      g.strokeLine(LEFT, y(value), getWidth() - 8, y(value));
      g.fillText(shown.axis(value, step), LEFT - 5, y(value) + 4);
    }
    g.setTextAlign(TextAlignment.CENTER);
    double taken = LEFT;
    for (ReadingsTrace.Dot dot : shown.dots()) {
      double at = Math.min(x(dot.time()), getWidth() - 50);
      if (at - 46 >= taken || taken == LEFT) {
        double middle = Math.max(at, LEFT + 46);
        g.fillText(dot.when(), middle, HEIGHT - 5, 92);
        taken = middle + 48;
      }
    }
    g.setTextAlign(TextAlignment.LEFT);
  }

  private void range(GraphicsContext g, Palette palette, ReadingsTrace shown) {
    g.setFill(palette.band());
    Trace.Point before = null;
    for (Trace.Point point : shown.trace().points()) {
      boolean known = !Double.isNaN(point.low()) && !Double.isNaN(point.high());
      if (known && before != null) {
        double from = x(before.time());
        double to = x(point.time());
        g.fillPolygon(
            new double[] {from, to, to, from},
            new double[] {y(before.high()), y(point.high()), y(point.low()), y(before.low())},
            4);
      }
      before = known ? point : null;
    }
  }

  private void line(GraphicsContext g, ReadingsTrace shown, ToDoubleFunction<Trace.Point> value) {
    boolean on = false;
    g.beginPath();
    for (Trace.Point point : shown.trace().points()) {
      double here = value.applyAsDouble(point);
      if (Double.isNaN(here)) {
        on = false;
      } else if (on) {
        g.lineTo(x(point.time()), y(here));
      } else {
        g.moveTo(x(point.time()), y(here));
        on = true;
      }
    }
    g.stroke();
  }
}
