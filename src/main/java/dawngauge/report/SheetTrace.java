package dawngauge.report;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfTemplate;
import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.ledger.ReadingsTrace;
import dawngauge.ledger.Trace;
import dawngauge.ledger.Wording;
import dawngauge.trip.Itinerary;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The trace of one tire over the trip as a plot: settled pressure, expected reading with its range,
 * floor, cold limit where it is judged, nights shaded; stops by number above, days below.
 */
final class SheetTrace {

  private static final float DOT = 2.6f;

  private final SheetPen pen;
  private final Trace trace;
  private final List<ReadingsTrace.Dot> dots;
  private final Advice advice;
  private final PdfTemplate plot;
  private final float left;
  private final float right;
  private final float bottom;
  private final float top;
  private final double begin;
  private final double end;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  private SheetTrace(
      SheetPen pen,
      Trace trace,
      List<ReadingsTrace.Dot> dots,
      Advice advice,
      float width,
      float height) {
    this.pen = pen;
    this.dots = dots;
    this.trace = trace;
    this.advice = advice;
    this.plot = pen.writer.getDirectContent().createTemplate(width, height);
    float label = pen.size * 0.9f;
    this.left = label * 2.6f;
    this.right = width - 2;
    this.bottom = label * 1.5f;
    this.top = height - label * 1.4f;
    List<StopAdvice> stops = advice.stops();
    this.begin =
        trace.points().stream()
            .filter(point -> !Double.isNaN(point.settled()))
            .mapToDouble(point -> seconds(point.time()))
            .findFirst()
            .orElse(seconds(stops.get(0).stop().visit().leave()));
    this.end = Math.max(begin + 1, seconds(stops.get(stops.size() - 1).stop().visit().leave()));
    for (Trace.Point point : trace.points()) {
      for (double value : new double[] {point.settled(), point.low(), point.high()}) {
        if (!Double.isNaN(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
    }
    for (ReadingsTrace.Dot dot : dots) {
      low = Math.min(low, dot.read());
      high = Math.max(high, dot.read());
    }
    for (Trace.Floor floor : trace.floors()) {
      low = Math.min(low, floor.pressure());
    }
    for (Trace.Ceiling ceiling : trace.ceilings()) {
      high = Math.max(high, ceiling.pressure());
    }
  }

  /** Whether a trace has anything to draw. */
  static boolean draws(Trace trace) {
    return trace.points().stream().anyMatch(point -> !Double.isNaN(point.settled()));
  }

  static PdfTemplate of(SheetPen pen, Trace trace, Advice advice, float width, float height) {
    return of(pen, trace, List.of(), advice, width, height);
  }

  /** The same with readings as dots, filled where they were cold. */
  static PdfTemplate of(
      SheetPen pen,
      Trace trace,
      List<ReadingsTrace.Dot> dots,
      Advice advice,
      float width,
      float height) {
    SheetTrace drawing = new SheetTrace(pen, trace, dots, advice, width, height);
    drawing.draw();
    return drawing.plot;
  }

  private static double seconds(Instant time) {
    return time.toEpochMilli() / 1000.0;
  }

  private float x(Instant time) {
    double part = (seconds(time) - begin) / (end - begin);
    return left + (float) (Math.max(0, Math.min(1, part)) * (right - left));
  }

  private float y(double pressure) {
    return bottom + (float) ((pressure - low) / (high - low) * (top - bottom));
  }

  private void draw() {
    double step = step();
    low = Math.floor((low - step * 0.2) / step) * step;
    high = Math.ceil((high + step * 0.2) / step) * step;
    plot.setGrayFill(0.88f);
    for (Trace.Night night : trace.nights()) {
      float from = x(night.sunset());
      plot.rectangle(from, bottom, Math.max(0, x(night.sunrise()) - from), top - bottom);
      plot.fill();
    }
    range();
    grid(step);
    days();
    stops();
    plot.setGrayStroke(0.35f);
    plot.setLineWidth(0.8f);
    line(Trace.Point::reading);
    plot.setGrayStroke(0);
    plot.setLineWidth(1.4f);
    line(Trace.Point::settled);
    plot.setLineWidth(1.6f);
    plot.setLineDash(4, 2, 0);
    for (Trace.Floor floor : trace.floors()) {
      plot.moveTo(x(floor.from()), y(floor.pressure()));
      plot.lineTo(x(floor.to()), y(floor.pressure()));
      plot.stroke();
    }
    plot.setLineDash(0);
    for (Trace.Ceiling ceiling : trace.ceilings()) {
      float at = x(ceiling.time());
      float height = y(ceiling.pressure());
      plot.moveTo(at - 4, height - 3);
      plot.lineTo(at - 4, height);
      plot.lineTo(at + 4, height);
      plot.lineTo(at + 4, height - 3);
      plot.stroke();
    }
    plot.setLineWidth(0.8f);
    for (ReadingsTrace.Dot dot : dots) {
      plot.setGrayFill(dot.cold() ? 0 : 1);
      plot.circle(x(dot.time()), y(dot.read()), DOT);
      plot.fillStroke();
    }
    plot.rectangle(left, bottom, right - left, top - bottom);
    plot.stroke();
  }

  /** A step of the axis that gives four to nine lines. */
  private double step() {
    double span = Math.max(high - low, 1e-3);
    double step = Math.pow(10, Math.floor(Math.log10(span)));
    if (span / step < 2) {
      step /= 5;
    } else if (span / step < 5) {
      step /= 2;
    }
    return step;
  }

  private void grid(double step) {
    plot.setLineWidth(0.3f);
    plot.setGrayStroke(0.6f);
    plot.setGrayFill(0);
    int decimals = step < 0.1 ? 2 : step < 1 ? 1 : 0;
    for (double value = low; value <= high + step / 2; value += step) {
      plot.moveTo(left, y(value));
      plot.lineTo(right, y(value));
      plot.stroke();
      text(
          String.format(Locale.ROOT, "%." + decimals + "f", value),
          left - 3,
          y(value) - pen.size * 0.3f,
          PdfTemplate.ALIGN_RIGHT);
    }
  }

  /** Dates at their noon where there is room, a line at each midnight. */
  private void days() {
    List<StopAdvice> stops = advice.stops();
    Itinerary.Visit first = stops.get(0).stop().visit();
    LocalDate date = first.leave().atZone(first.zone()).toLocalDate();
    float taken = left;
    for (; seconds(date.atStartOfDay(first.zone()).toInstant()) < end; date = date.plusDays(1)) {
      Instant midnight = date.atStartOfDay(first.zone()).toInstant();
      Instant next = date.plusDays(1).atStartOfDay(first.zone()).toInstant();
      if (seconds(midnight) > begin) {
        plot.moveTo(x(midnight), bottom);
        plot.lineTo(x(midnight), bottom - 4);
        plot.stroke();
      }
      String name = Wording.shortDay(midnight, first.zone());
      float width = width(name);
      float from = (x(midnight) + x(next) - width) / 2;
      if (from >= taken && from + width <= right) {
        text(name, from, bottom - pen.size * 1.15f, PdfTemplate.ALIGN_LEFT);
        taken = from + width + pen.size;
      }
    }
  }

  /** Numbers of the stops; of those too close together the later one is left out. */
  private void stops() {
    float taken = 0;
    for (StopAdvice stop : advice.stops()) {
      Itinerary.Visit visit = stop.stop().visit();
      float at = x(visit.index() == 0 ? visit.leave() : visit.arrive());
      plot.moveTo(at, top);
      plot.lineTo(at, top + 3);
      plot.stroke();
      String number = String.valueOf(visit.index() + 1);
      float width = width(number);
      if (at - width / 2 >= taken && at + width / 2 <= right + 2) {
        text(number, at - width / 2, top + 4, PdfTemplate.ALIGN_LEFT);
        taken = at + width / 2 + 2;
      }
    }
  }

  private float width(String text) {
    return pen.plainFont.getWidthPoint(text, pen.size * 0.9f);
  }

  private void text(String text, float x, float y, int align) {
    BaseFont font = pen.plainFont;
    plot.beginText();
    plot.setFontAndSize(font, pen.size * 0.9f);
    plot.showTextAligned(align, text, x, y, 0);
    plot.endText();
  }

  private void line(ToDoubleFunction<Trace.Point> value) {
    boolean on = false;
    for (Trace.Point point : trace.points()) {
      double here = value.applyAsDouble(point);
      if (Double.isNaN(here)) {
        on = false;
        continue;
      }
      if (on) {
        plot.lineTo(x(point.time()), y(here));
      } else {
        plot.moveTo(x(point.time()), y(here));
      }
      on = true;
    }
    plot.stroke();
  }

  /** The range of readings, filled piece by piece where it is known. */
  private void range() {
    plot.setGrayFill(0.76f);
    List<Trace.Point> piece = new ArrayList<>();
    for (Trace.Point point : trace.points()) {
      if (Double.isNaN(point.low())) {
        fill(piece);
        piece.clear();
      } else {
        piece.add(point);
      }
    }
    fill(piece);
  }

  private void fill(List<Trace.Point> piece) {
    if (piece.size() < 2) {
      return;
    }
    plot.moveTo(x(piece.get(0).time()), y(piece.get(0).high()));
    piece.forEach(point -> plot.lineTo(x(point.time()), y(point.high())));
    for (int i = piece.size() - 1; i >= 0; i--) {
      plot.lineTo(x(piece.get(i).time()), y(piece.get(i).low()));
    }
    plot.closePath();
    plot.fill();
  }
}
