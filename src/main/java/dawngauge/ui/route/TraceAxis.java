package dawngauge.ui.route;

import dawngauge.ledger.Trace;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * One axis across the trace, from whole steps below to whole steps above what is drawn.
 *
 * @param low figure at the left end, in the chosen units
 * @param high figure at the right end
 * @param left left end in pixels
 * @param right right end
 * @param step between two grid lines
 */
record TraceAxis(double low, double high, double left, double right, double step) {

  /** Figures of an axis stand no nearer to each other, in pixels. */
  private static final double ROOM_FOR_FIGURE = 22;

  /** The axis of one figure of the points. */
  static TraceAxis of(
      List<Trace.Point> points,
      ToDoubleFunction<Trace.Point> figure,
      double left,
      double right,
      double step) {
    double low = points.stream().mapToDouble(figure).filter(Double::isFinite).min().orElse(0);
    double high = points.stream().mapToDouble(figure).filter(Double::isFinite).max().orElse(1);
    return spanning(low, high, left, right, step);
  }

  /** The pressure axis, which takes in the range of readings and the limits. */
  static TraceAxis ofPressures(Trace trace, UnitSystem units, double left, double right) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Trace.Point point : trace.points()) {
      if (Double.isNaN(point.settled())) {
        continue;
      }
      low = Math.min(low, Double.isNaN(point.low()) ? point.settled() : point.low());
      high = Math.max(high, Double.isNaN(point.high()) ? point.settled() : point.high());
    }
    for (Trace.Floor floor : trace.floors()) {
      low = Math.min(low, floor.pressure());
    }
    for (Trace.Ceiling ceiling : trace.ceilings()) {
      high = Math.max(high, ceiling.pressure());
    }
    double step = units == UnitSystem.US ? 10 : 1;
    while ((high - low) / step * ROOM_FOR_FIGURE > right - left && right > left) {
      step *= 2;
    }
    return spanning(low, high, left, right, step);
  }

  private static TraceAxis spanning(
      double low, double high, double left, double right, double step) {
    double bottom = Math.floor(low / step) * step;
    return new TraceAxis(
        bottom, Math.max(Math.ceil(high / step) * step, bottom + step), left, right, step);
  }

  /** The part of the axis that is seen, with as many figures as there is room for. */
  TraceAxis seen(TraceZoom zoom, double least) {
    double span = (high - low) / zoom.factor();
    double from = low + zoom.from() * (high - low);
    double fine = step;
    while (fine / 2 >= least && span / (fine / 2) * ROOM_FOR_FIGURE <= right - left) {
      fine /= 2;
    }
    return new TraceAxis(from, from + span, left, right, fine);
  }

  /** The figures at which there is a grid line. */
  double[] lines() {
    double first = Math.ceil(low / step - 1e-9);
    int count = (int) (Math.floor(high / step + 1e-9) - first) + 1;
    return IntStream.range(0, Math.max(0, count)).mapToDouble(i -> (first + i) * step).toArray();
  }

  double x(double value) {
    return left + (value - low) / (high - low) * (right - left);
  }

  double middle() {
    return (left + right) / 2;
  }

  /** The number at a grid line. */
  static String number(double value, double step) {
    boolean whole = Math.abs(step - Math.rint(step)) < 1e-9;
    String form =
        step < 0.1 - 1e-9 || Math.abs(step * 10 - Math.rint(step * 10)) > 1e-9 ? "%.2f" : "%.1f";
    return whole ? String.valueOf(Math.round(value)) : String.format(Locale.ROOT, form, value);
  }
}
