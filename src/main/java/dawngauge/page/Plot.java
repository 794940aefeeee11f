package dawngauge.page;

import java.time.Instant;
import java.util.List;

/**
 * A figure over the time: two lines, a range around the thin one, limits and single dots. Figures
 * are in one unit; NaN where one is not known. What it shows stands as a table beside it.
 *
 * @param spoken what it shows, in one line
 * @param points of the lines, in time order
 * @param lowest lower limits, each over a span
 * @param highest upper limits, each at a time
 * @param dots single figures
 * @param nights shaded
 * @param days beginnings of days with their names, below
 * @param stops with their numbers, above
 */
public record Plot(
    String spoken,
    List<Point> points,
    List<Level> lowest,
    List<Tick> highest,
    List<Dot> dots,
    List<Span> nights,
    List<Named> days,
    List<Named> stops)
    implements Block {

  /**
   * A point of the lines.
   *
   * @param time when
   * @param thick figure of the thick line
   * @param thin of the thin one
   * @param low lower end of its range
   * @param high upper end
   */
  public record Point(Instant time, double thick, double thin, double low, double high) {}

  /**
   * A limit over a span.
   *
   * @param from begin
   * @param to end
   * @param figure the limit
   */
  public record Level(Instant from, Instant to, double figure) {}

  /**
   * A limit at a time.
   *
   * @param time when
   * @param figure the limit
   */
  public record Tick(Instant time, double figure) {}

  /**
   * A single figure.
   *
   * @param time when
   * @param figure the figure
   * @param filled whether its dot is filled
   */
  public record Dot(Instant time, double figure, boolean filled) {}

  /**
   * A span.
   *
   * @param from begin
   * @param to end
   */
  public record Span(Instant from, Instant to) {}

  /**
   * A name at a time.
   *
   * @param time when
   * @param name its name
   */
  public record Named(Instant time, String name) {}

  /** Copies the lists. */
  public Plot {
    points = List.copyOf(points);
    lowest = List.copyOf(lowest);
    highest = List.copyOf(highest);
    dots = List.copyOf(dots);
    nights = List.copyOf(nights);
    days = List.copyOf(days);
    stops = List.copyOf(stops);
  }

  /** Whether there is anything to draw. */
  public boolean isKnown() {
    return points.stream().anyMatch(point -> !Double.isNaN(point.thick()));
  }

  @Override
  public void draw(PageRenderer renderer) {
    renderer.plot(this);
  }
}
