package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.explain.Step;
import dawngauge.explain.Terms;
import dawngauge.forecast.Explanation;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.ledger.Trace;
import dawngauge.ledger.Wording;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.ui.common.Palette;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import org.jspecify.annotations.Nullable;

/**
 * The trace of one tire, running downwards beside the rows of the stops so that a stop's line and
 * its pressures are one line: pressure cold here, readings with their range, lowest safe and
 * never-over pressure where they are judged, nights; air and elevation as two thin columns.
 * Pointing at a height, or the arrow keys, put a line there; its figure explains itself. Ctrl and
 * the wheel, or plus and minus, stretch the pressure axis, dragging moves it, a double click or 0
 * shows all of it again.
 */
public final class TracePane extends Pane {

  private static final int BIG_STEP = 6;
  private static final double STRETCH = 1.25;

  private final Canvas canvas = new Canvas(10, 10);
  private final Tooltip tip = new Tooltip();
  private final BiConsumer<String, List<Step>> explained;
  private @Nullable Trace trace;
  private @Nullable Advice advice;
  private UnitSystem units = UnitSystem.US;
  private Palette palette = Palette.LIGHT;
  private @Nullable RowSpans rows;
  private double top;
  private double seen = 10;
  private double head;
  private String name = "";
  private TraceZoom zoom = TraceZoom.WHOLE;
  private double draggedAt;
  private int cursor = -1;

  /**
   * An empty trace.
   *
   * @param explained takes what a figure is and how it came about, when a height is asked for
   */
  public TracePane(BiConsumer<String, List<Step>> explained) {
    this.explained = explained;
    getStyleClass().add("trace");
    getChildren().add(canvas);
    canvas.setMouseTransparent(true);
    setFocusTraversable(true);
    setAccessibleText(
        "Trace of the chosen tire; the arrow keys go along the way and tell its figures");
    Tooltip.install(this, tip);
    setOnMouseMoved(event -> point(nearest(along(event))));
    setOnMouseExited(event -> point(-1));
    setOnMousePressed(
        event -> {
          requestFocus();
          draggedAt = event.getX();
          point(nearest(along(event)));
          explain();
        });
    setOnMouseDragged(
        event -> {
          zoom(zoom.panned((draggedAt - event.getX()) / Math.max(1, getWidth())));
          draggedAt = event.getX();
        });
    setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            zoom(TraceZoom.WHOLE);
          }
        });
    addEventHandler(
        ScrollEvent.SCROLL,
        event -> {
          if (event.isShortcutDown()) {
            double by = event.getDeltaY() > 0 ? STRETCH : 1 / STRETCH;
            zoom(zoom.stretched(by, event.getX() / Math.max(1, getWidth())));
            event.consume();
          }
        });
    setOnKeyPressed(this::keyed);
  }

  private void zoom(TraceZoom next) {
    zoom = next;
    requestLayout();
  }

  /** Which part of the pressure axis is seen. */
  TraceZoom zoom() {
    return zoom;
  }

  /** Stays where it is while the rows go by, under axes of its own at the top. */
  void stay(double headHeight) {
    head = headHeight;
    requestLayout();
  }

  /**
   * Shows a trace.
   *
   * @param name short form of its tire
   */
  void show(Trace trace, Advice advice, UnitSystem units, String name) {
    this.name = name;
    this.trace = trace;
    this.advice = advice;
    this.units = units;
    cursor = -1;
    requestLayout();
  }

  /** Colours to draw in. */
  void color(Palette other) {
    palette = other;
    requestLayout();
  }

  /** Shows none. */
  void clear() {
    trace = null;
    requestLayout();
  }

  /** Follows rows that lie elsewhere. */
  void beside(RowSpans moved) {
    rows = moved;
    requestLayout();
  }

  /** Tells which part is seen: only that is drawn. */
  public void see(double from, double height) {
    top = Math.max(0, from);
    seen = Math.max(10, height);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    draw();
  }

  /** How far below the top of the rows the mouse is. */
  private double along(MouseEvent event) {
    return head > 0 ? event.getY() - head + top : event.getY();
  }

  private void draw() {
    Trace shown = trace;
    Advice known = advice;
    RowSpans spans = rows;
    double width = getWidth();
    if (width < 1) {
      return;
    }
    double below = head > 0 || spans == null ? seen : Math.min(seen, spans.height() - top);
    double height = Math.max(10, below);
    canvas.setWidth(width);
    canvas.setHeight(height + head);
    canvas.setLayoutY(head > 0 ? 0 : top);
    var g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, width, height + head);
    if (shown == null || known == null || spans == null || shown.points().isEmpty()) {
      return;
    }
    TraceScale scale = new TraceScale(spans, known);
    if (scale.isEmpty()) {
      return;
    }
    TracePainter painter = new TracePainter(g, shown, scale, units, palette, width, name, zoom);
    g.save();
    g.translate(0, head);
    painter.paint(top, height);
    if (cursor >= 0 && cursor < shown.points().size()) {
      painter.cursor(top, shown.points().get(cursor));
    }
    g.restore();
    if (head > 0) {
      painter.head(head);
    }
  }

  private void keyed(KeyEvent event) {
    int by =
        switch (event.getCode()) {
          case PLUS, ADD, EQUALS -> stretch(STRETCH);
          case MINUS, SUBTRACT -> stretch(1 / STRETCH);
          case DIGIT0, NUMPAD0 -> stretch(0);
          case UP -> -1;
          case DOWN -> 1;
          case PAGE_UP -> -BIG_STEP;
          case PAGE_DOWN -> BIG_STEP;
          default -> 0;
        };
    Trace shown = trace;
    if (by != 0 && shown != null && !shown.points().isEmpty()) {
      int next = cursor < 0 ? nearest(top + 1) : cursor + by;
      point(Math.max(0, Math.min(shown.points().size() - 1, next)));
      explain();
      event.consume();
    }
  }

  /** The keyboard stretches about the middle; 0 shows the whole axis. */
  private int stretch(double by) {
    zoom(by > 0 ? zoom.stretched(by, 0.5) : TraceZoom.WHOLE);
    return 0;
  }

  private void point(int index) {
    cursor = index;
    tip.setText(index < 0 ? "" : brief(index));
    requestLayout();
  }

  /** The point of the trace whose height is nearest. */
  private int nearest(double y) {
    Trace shown = trace;
    Advice known = advice;
    RowSpans spans = rows;
    if (shown == null || known == null || spans == null) {
      return -1;
    }
    TraceScale scale = new TraceScale(spans, known);
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shown.points().size() && !scale.isEmpty(); i++) {
      double off = Math.abs(scale.y(shown.points().get(i).time()) - y);
      if (off < least && !Double.isNaN(shown.points().get(i).settled())) {
        least = off;
        nearest = i;
      }
    }
    return nearest;
  }

  /** Tells how the reading at the cursor came about. */
  private void explain() {
    Trace shown = trace;
    Advice known = advice;
    Track track = shown == null || known == null ? null : known.tracks().get(shown.position());
    if (shown == null || known == null || track == null || cursor < 0) {
      return;
    }
    Trace.Point point = shown.points().get(cursor);
    TireSnapshot found = null;
    for (TireSnapshot moment : track.course()) {
      if (Math.abs(moment.seconds() - point.time().toEpochMilli() / 1000.0) < 0.01) {
        found = moment;
      }
    }
    if (found != null) {
      explained.accept(brief(cursor), Explanation.ofReading(found));
    }
  }

  private String brief(int index) {
    Trace shown = trace;
    Advice known = advice;
    if (shown == null || known == null) {
      return "";
    }
    Trace.Point point = shown.points().get(index);
    String pressure = " " + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    String form = units == UnitSystem.US ? "%.0f" : "%.2f";
    StringBuilder text = new StringBuilder();
    text.append(shown.position().words()).append(", ").append(clock(known, point.time()));
    if (!Double.isNaN(point.reading())) {
      text.append("\nreads ").append(format(form, point.reading())).append(pressure);
      text.append(", 9 of 10 within ").append(format(form, point.low()));
      text.append(" to ").append(format(form, point.high()));
    }
    text.append('\n')
        .append(Terms.COLD_HERE)
        .append(' ')
        .append(format(form, point.settled()))
        .append(pressure);
    text.append(", air ").append(Math.round(point.air()));
    text.append(' ').append(units.unitOf(QuantityKind.TEMPERATURE).symbol());
    return text.toString();
  }

  /** The clock of the stop where the rig stands or which it left last. */
  private static String clock(Advice known, Instant time) {
    Itinerary.Visit at = known.stops().get(0).stop().visit();
    for (var stop : known.stops()) {
      if (!stop.stop().visit().arrive().isAfter(time)) {
        at = stop.stop().visit();
      }
    }
    return Wording.shortDay(time, at.zone())
        + " "
        + Wording.clock(time, at.zone())
        + " "
        + Wording.zone(time, at.zone());
  }

  private static String format(String form, double value) {
    return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, form, value);
  }
}
