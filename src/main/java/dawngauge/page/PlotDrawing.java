package dawngauge.page;

import dawngauge.page.PlotCanvas.Anchor;
import dawngauge.page.PlotCanvas.Ink;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Lays a plot out on a canvas: figures at the left, days below, numbers of the stops above. */
public final class PlotDrawing {

  private static final double FRAME = 0.8;
  private static final double THIN = 0.8;
  private static final double THICK = 1.5;

  private final Plot plot;
  private final PlotCanvas canvas;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;
  private final double begin;
  private final double end;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  private PlotDrawing(Plot plot, PlotCanvas canvas, double width, double height) {
    this.plot = plot;
    this.canvas = canvas;
    double letter = canvas.letter();
    this.left = letter * 3;
    this.right = width - 2;
    this.top = letter * 1.4;
    this.bottom = height - letter * 1.5;
    List<Plot.Point> known =
        plot.points().stream().filter(point -> !Double.isNaN(point.thick())).toList();
    this.begin = seconds(known.get(0).time());
    this.end = Math.max(begin + 1, seconds(known.get(known.size() - 1).time()));
    for (Plot.Point point : known) {
      reach(point.thick());
      reach(point.low());
      reach(point.high());
    }
    plot.dots().forEach(dot -> reach(dot.figure()));
    plot.lowest().forEach(level -> reach(level.figure()));
    plot.highest().forEach(limit -> reach(limit.figure()));
  }

  /** Draws a plot; nothing where nothing of it is known. */
  public static void draw(Plot plot, PlotCanvas canvas, double width, double height) {
    if (plot.isKnown()) {
      new PlotDrawing(plot, canvas, width, height).draw();
    }
  }

  private void reach(double figure) {
    if (!Double.isNaN(figure)) {
      low = Math.min(low, figure);
      high = Math.max(high, figure);
    }
  }

  private static double seconds(Instant time) {
    return time.toEpochMilli() / 1000.0;
  }

  private double x(Instant time) {
    double part = (seconds(time) - begin) / (end - begin);
    return left + Math.max(0, Math.min(1, part)) * (right - left);
  }

  private double y(double figure) {
    return bottom - (figure - low) / (high - low) * (bottom - top);
  }

  private void draw() {
    double step = step(high - low);
    low = Math.floor((low - step * 0.2) / step) * step;
    high = Math.ceil((high + step * 0.2) / step) * step;
    for (Plot.Span night : plot.nights()) {
      double from = x(night.from());
      double to = x(night.to());
      canvas.fill(
          Ink.NIGHT, new double[] {from, to, to, from}, new double[] {top, top, bottom, bottom});
    }
    range();
    grid(step);
    days();
    stops();
    line(Ink.THIN, THIN, Plot.Point::thin);
    line(Ink.MAIN, THICK, Plot.Point::thick);
    for (Plot.Level level : plot.lowest()) {
      double height = y(level.figure());
      stroke(Ink.MAIN, THICK, true, x(level.from()), height, x(level.to()), height);
    }
    for (Plot.Tick limit : plot.highest()) {
      double at = x(limit.time());
      double height = y(limit.figure());
      canvas.line(
          Ink.MAIN,
          THICK,
          false,
          new double[] {at - 4, at - 4, at + 4, at + 4},
          new double[] {height + 3, height, height, height + 3});
    }
    for (Plot.Dot dot : plot.dots()) {
      canvas.dot(x(dot.time()), y(dot.figure()), canvas.letter() * 0.3, dot.filled());
    }
    canvas.line(
        Ink.MAIN,
        FRAME,
        false,
        new double[] {left, right, right, left, left},
        new double[] {top, top, bottom, bottom, top});
  }

  private void stroke(
      Ink ink, double wide, boolean dashed, double x1, double y1, double x2, double y2) {
    canvas.line(ink, wide, dashed, new double[] {x1, x2}, new double[] {y1, y2});
  }

  /** A step of the axis that gives four to nine lines. */
  private static double step(double span) {
    double least = Math.max(span, 1e-3);
    double step = Math.pow(10, Math.floor(Math.log10(least)));
    return least / step < 2 ? step / 5 : least / step < 5 ? step / 2 : step;
  }

  private void grid(double step) {
    int decimals = step < 0.1 ? 2 : step < 1 ? 1 : 0;
    for (double value = low; value <= high + step / 2; value += step) {
      stroke(Ink.GRID, FRAME / 2, false, left, y(value), right, y(value));
      String figure = String.format(Locale.ROOT, "%." + decimals + "f", value);
      canvas.text(figure, left - 3, y(value) + canvas.letter() * 0.35, Anchor.RIGHT);
    }
  }

  /** Names in the middle of their days where there is room, a line at each beginning. */
  private void days() {
    double taken = left;
    double line = bottom + canvas.letter() * 1.2;
    for (int i = 0; i < plot.days().size(); i++) {
      Plot.Named day = plot.days().get(i);
      double from = x(day.time());
      double to = i + 1 < plot.days().size() ? x(plot.days().get(i + 1).time()) : right;
      if (seconds(day.time()) > begin && seconds(day.time()) < end) {
        stroke(Ink.MAIN, FRAME, false, from, bottom, from, bottom + 4);
      }
      double wide = canvas.wide(day.name());
      double at = (from + to - wide) / 2;
      if (at >= taken && at + wide <= right) {
        canvas.text(day.name(), at, line, Anchor.LEFT);
        taken = at + wide + canvas.letter();
      }
    }
  }

  /** Numbers of the stops; of those too close together the later one is left out. */
  private void stops() {
    double taken = 0;
    for (Plot.Named stop : plot.stops()) {
      double at = x(stop.time());
      stroke(Ink.MAIN, FRAME, false, at, top - 3, at, top);
      double wide = canvas.wide(stop.name());
      if (at - wide / 2 >= taken && at + wide / 2 <= right + 2) {
        canvas.text(stop.name(), at, top - 4, Anchor.MIDDLE);
        taken = at + wide / 2 + 2;
      }
    }
  }

  private void line(Ink ink, double wide, ToDoubleFunction<Plot.Point> figure) {
    for (List<Plot.Point> piece : pieces(figure)) {
      canvas.line(
          ink,
          wide,
          false,
          piece.stream().mapToDouble(point -> x(point.time())).toArray(),
          piece.stream().mapToDouble(point -> y(figure.applyAsDouble(point))).toArray());
    }
  }

  /** The range, piece by piece where it is known. */
  private void range() {
    for (List<Plot.Point> piece : pieces(point -> point.low() + point.high())) {
      int count = piece.size();
      double[] xs = new double[2 * count];
      double[] ys = new double[2 * count];
      for (int i = 0; i < count; i++) {
        xs[i] = x(piece.get(i).time());
        ys[i] = y(piece.get(i).high());
        xs[2 * count - 1 - i] = xs[i];
        ys[2 * count - 1 - i] = y(piece.get(i).low());
      }
      canvas.fill(Ink.RANGE, xs, ys);
    }
  }

  /** The points between which a figure is known, two or more each. */
  private List<List<Plot.Point>> pieces(ToDoubleFunction<Plot.Point> figure) {
    List<List<Plot.Point>> pieces = new ArrayList<>();
    List<Plot.Point> piece = new ArrayList<>();
    for (Plot.Point point : plot.points()) {
      if (Double.isNaN(figure.applyAsDouble(point))) {
        pieces.add(List.copyOf(piece));
        piece.clear();
      } else {
        piece.add(point);
      }
    }
    pieces.add(List.copyOf(piece));
    pieces.removeIf(found -> found.size() < 2);
    return pieces;
  }
}
