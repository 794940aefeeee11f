package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.ledger.Trace;
import dawngauge.ledger.Wording;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.ui.common.Palette;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Bounds;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/**
 * The trace of one tire, running downwards beside the ledger's rows so that a stop's line and its
 * pressures are one line: settled pressure, readings with their range, floor and ceiling where they
 * are judged, nights; air and elevation as two thin columns.
 */
public final class TracePane extends Pane {

  private static final double WIDTH = 336;
  private static final double LEFT = 14;
  private static final double PRESSURE_RIGHT = 214;
  private static final double AIR_LEFT = 244;
  private static final double AIR_RIGHT = 276;
  private static final double HEIGHT_LEFT = 298;
  private static final double HEIGHT_RIGHT = 324;
  private static final double INSET = 10;
  private static final Font SMALL = Font.font(10.5);

  private final Canvas canvas = new Canvas(WIDTH, 10);
  private final Tooltip tip = new Tooltip();
  private @Nullable Trace trace;
  private @Nullable Advice advice;
  private UnitSystem units = UnitSystem.US;
  private Palette palette = Palette.LIGHT;
  private List<Region> rows = List.of();

  private record Knot(double seconds, double y) {}

  /** An empty trace. */
  public TracePane() {
    getStyleClass().add("trace");
    getChildren().add(canvas);
    setMinWidth(WIDTH);
    setPrefWidth(WIDTH);
    setAccessibleText("Trace of the chosen tire; its figures stand in the ledger and the table");
    Tooltip.install(this, tip);
    setOnMouseMoved(event -> tip.setText(at(event.getY())));
  }

  /** Shows a trace beside the rows of the stops, which lie in the same coordinates. */
  public void show(
      Trace trace, Advice advice, UnitSystem units, Palette palette, List<Region> rows) {
    this.trace = trace;
    this.advice = advice;
    this.units = units;
    this.palette = palette;
    this.rows = rows;
    draw();
  }

  /** Draws anew, as after the rows moved. */
  public void draw() {
    Trace shown = trace;
    Advice known = advice;
    if (shown == null || known == null || rows.isEmpty()) {
      return;
    }
    double height = rows.get(rows.size() - 1).getBoundsInParent().getMaxY() + INSET;
    canvas.setHeight(Math.max(10, Math.min(height, 8000)));
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.setFill(palette.paper());
    g.fillRect(0, 0, WIDTH, canvas.getHeight());
    List<Knot> knots = knots(known);
    if (knots.isEmpty() || shown.points().isEmpty()) {
      return;
    }
    nights(g, shown, knots);
    Axis pressure = pressureAxis(shown);
    Axis air = Axis.of(shown.points(), Trace.Point::air, AIR_LEFT, AIR_RIGHT, 10);
    Axis ground = Axis.of(shown.points(), Trace.Point::elevation, HEIGHT_LEFT, HEIGHT_RIGHT, 500);
    axes(g, pressure, air, ground);
    limits(g, shown, knots, pressure);
    band(g, shown, knots, pressure);
    line(g, shown, knots, pressure, Trace.Point::reading, palette.warm(), 1.4, false);
    line(g, shown, knots, pressure, Trace.Point::settled, palette.settled(), 1.8, false);
    line(g, shown, knots, air, Trace.Point::air, palette.lesser(), 1.2, false);
    line(g, shown, knots, ground, Trace.Point::elevation, palette.lesser(), 1.2, true);
  }

  /** Times and heights at which the ledger's rows stand. */
  private List<Knot> knots(Advice known) {
    List<Knot> knots = new ArrayList<>();
    for (int i = 0; i < Math.min(rows.size(), known.stops().size()); i++) {
      Bounds bounds = rows.get(i).getBoundsInParent();
      Itinerary.Visit visit = known.stops().get(i).stop().visit();
      double top = bounds.getMinY() + INSET;
      double bottom = Math.max(top + 1, bounds.getMaxY() - INSET);
      if (visit.arrive().equals(visit.leave())) {
        knots.add(new Knot(seconds(visit.arrive()), (top + bottom) / 2));
      } else {
        knots.add(new Knot(seconds(visit.arrive()), top));
        knots.add(new Knot(seconds(visit.leave()), bottom));
      }
    }
    return knots;
  }

  private static double y(List<Knot> knots, double seconds) {
    for (int i = 1; i < knots.size(); i++) {
      Knot from = knots.get(i - 1);
      Knot to = knots.get(i);
      if (seconds <= to.seconds) {
        double part = (seconds - from.seconds) / Math.max(1, to.seconds - from.seconds);
        return from.y + Math.max(0, part) * (to.y - from.y);
      }
    }
    return knots.get(knots.size() - 1).y;
  }

  private static double seconds(Instant instant) {
    return instant.toEpochMilli() / 1000.0;
  }

  private record Axis(double low, double high, double left, double right, double step) {

    static Axis of(
        List<Trace.Point> points,
        ToDoubleFunction<Trace.Point> figure,
        double left,
        double right,
        double step) {
      double low = points.stream().mapToDouble(figure).filter(Double::isFinite).min().orElse(0);
      double high = points.stream().mapToDouble(figure).filter(Double::isFinite).max().orElse(1);
      return new Axis(
          Math.floor(low / step) * step,
          Math.max(Math.ceil(high / step), Math.floor(low / step) + 1) * step,
          left,
          right,
          step);
    }

    double x(double value) {
      return left + (value - low) / (high - low) * (right - left);
    }
  }

  private Axis pressureAxis(Trace shown) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Trace.Point point : shown.points()) {
      if (Double.isNaN(point.settled())) {
        continue;
      }
      low = Math.min(low, Double.isNaN(point.low()) ? point.settled() : point.low());
      high = Math.max(high, Double.isNaN(point.high()) ? point.settled() : point.high());
    }
    for (Trace.Floor floor : shown.floors()) {
      low = Math.min(low, floor.pressure());
    }
    for (Trace.Ceiling ceiling : shown.ceilings()) {
      high = Math.max(high, ceiling.pressure());
    }
    double step = units == UnitSystem.US ? 10 : 0.5;
    return new Axis(
        Math.floor(low / step) * step, Math.ceil(high / step) * step, LEFT, PRESSURE_RIGHT, step);
  }

  private void nights(GraphicsContext g, Trace shown, List<Knot> knots) {
    g.setFill(palette.night());
    for (Trace.Night night : shown.nights()) {
      double from = y(knots, seconds(night.sunset()));
      double to = y(knots, seconds(night.sunrise()));
      if (to > from) {
        g.fillRect(0, from, WIDTH, to - from);
      }
    }
  }

  private void axes(GraphicsContext g, Axis pressure, Axis air, Axis ground) {
    g.setFont(SMALL);
    g.setTextBaseline(VPos.TOP);
    g.setLineWidth(1);
    for (double value = pressure.low; value <= pressure.high + 1e-9; value += pressure.step) {
      double x = Math.rint(pressure.x(value)) + 0.5;
      g.setStroke(palette.grid());
      g.strokeLine(x, 0, x, canvas.getHeight());
    }
    for (double top : headings()) {
      g.setFill(palette.lesser());
      for (double value = pressure.low; value <= pressure.high + 1e-9; value += pressure.step) {
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(number(value, pressure.step), pressure.x(value), top);
      }
      ends(g, air, top, "air " + units.unitOf(QuantityKind.TEMPERATURE).symbol());
      ends(g, ground, top, units.unitOf(QuantityKind.ELEVATION).symbol());
      g.setTextAlign(TextAlignment.LEFT);
      g.fillText(units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol(), LEFT, top + 12);
    }
    g.setStroke(palette.grid());
    for (double x : new double[] {AIR_LEFT, AIR_RIGHT, HEIGHT_LEFT, HEIGHT_RIGHT}) {
      g.strokeLine(Math.rint(x) + 0.5, 0, Math.rint(x) + 0.5, canvas.getHeight());
    }
  }

  /** Where the axes are written: beside each day's heading, above its first stop. */
  private List<Double> headings() {
    List<Double> tops = new ArrayList<>();
    double before = -100;
    for (int i = 0; i < rows.size(); i++) {
      double top = rows.get(i).getBoundsInParent().getMinY();
      boolean first = i == 0;
      boolean newDay = rows.get(i).getUserData() instanceof Boolean day && day;
      if ((first || newDay) && top - before > 60) {
        tops.add(Math.max(0, top - 27));
        before = top;
      }
    }
    return tops;
  }

  /** The ends of a thin column, one above the other so that they never overlap. */
  private void ends(GraphicsContext g, Axis axis, double top, String name) {
    g.setTextAlign(TextAlignment.CENTER);
    double middle = (axis.left + axis.right) / 2;
    g.fillText(name, middle, top + 12);
    g.fillText(number(axis.low, axis.step) + "–" + number(axis.high, axis.step), middle, top);
  }

  private static String number(double value, double step) {
    return step < 1 ? String.format(Locale.ROOT, "%.1f", value) : String.valueOf(Math.round(value));
  }

  private void limits(GraphicsContext g, Trace shown, List<Knot> knots, Axis axis) {
    g.setStroke(palette.limit());
    g.setLineWidth(1.6);
    for (Trace.Floor floor : shown.floors()) {
      double x = axis.x(floor.pressure());
      double from = y(knots, seconds(floor.from()));
      double to = y(knots, seconds(floor.to()));
      g.strokeLine(x, from, x, to);
      for (double y = from; y < to; y += 7) {
        g.strokeLine(x, y, x - 4, y + 4);
      }
    }
    for (Trace.Ceiling ceiling : shown.ceilings()) {
      double x = axis.x(ceiling.pressure());
      double y = y(knots, seconds(ceiling.time()));
      g.strokeLine(x, y - 9, x, y + 9);
      g.strokeLine(x, y - 9, x + 5, y - 9);
      g.strokeLine(x, y + 9, x + 5, y + 9);
    }
  }

  private void band(GraphicsContext g, Trace shown, List<Knot> knots, Axis axis) {
    g.setFill(palette.band());
    List<Trace.Point> run = new ArrayList<>();
    for (Trace.Point point : shown.points()) {
      if (Double.isNaN(point.low())) {
        fill(g, run, knots, axis);
        run.clear();
      } else {
        run.add(point);
      }
    }
    fill(g, run, knots, axis);
  }

  private static void fill(GraphicsContext g, List<Trace.Point> run, List<Knot> knots, Axis axis) {
    if (run.size() < 2) {
      return;
    }
    g.beginPath();
    for (int i = 0; i < run.size(); i++) {
      double y = y(knots, seconds(run.get(i).time()));
      if (i == 0) {
        g.moveTo(axis.x(run.get(i).low()), y);
      } else {
        g.lineTo(axis.x(run.get(i).low()), y);
      }
    }
    for (int i = run.size() - 1; i >= 0; i--) {
      g.lineTo(axis.x(run.get(i).high()), y(knots, seconds(run.get(i).time())));
    }
    g.closePath();
    g.fill();
  }

  private void line(
      GraphicsContext g,
      Trace shown,
      List<Knot> knots,
      Axis axis,
      ToDoubleFunction<Trace.Point> figure,
      Color color,
      double width,
      boolean dashed) {
    g.setStroke(color);
    g.setLineWidth(width);
    g.setLineDashes(dashed ? new double[] {3, 3} : new double[0]);
    boolean drawing = false;
    g.beginPath();
    for (Trace.Point point : shown.points()) {
      double value = figure.applyAsDouble(point);
      if (Double.isNaN(value)) {
        drawing = false;
        continue;
      }
      double y = y(knots, seconds(point.time()));
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

  /** What stands at a height, in words. */
  private String at(double y) {
    Trace shown = trace;
    Advice known = advice;
    if (shown == null || known == null || shown.points().isEmpty()) {
      return "";
    }
    List<Knot> knots = knots(known);
    Trace.Point nearest = shown.points().get(0);
    for (Trace.Point point : shown.points()) {
      if (Math.abs(y(knots, seconds(point.time())) - y)
          < Math.abs(y(knots, seconds(nearest.time())) - y)) {
        nearest = point;
      }
    }
    String pressure = units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    int decimals = units == UnitSystem.US ? 0 : 2;
    String form = "%." + decimals + "f";
    return shown.position().words()
        + "\n"
        + Wording.clock(nearest.time(), known.stops().get(0).stop().visit().zone())
        + " by the start's clock"
        + "\nreads "
        + format(form, nearest.reading())
        + " "
        + pressure
        + " ("
        + format(form, nearest.low())
        + " to "
        + format(form, nearest.high())
        + ")\nsettled "
        + format(form, nearest.settled())
        + " "
        + pressure
        + "\nair "
        + Math.round(nearest.air())
        + " "
        + units.unitOf(QuantityKind.TEMPERATURE).symbol();
  }

  private static String format(String form, double value) {
    return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, form, value);
  }
}
