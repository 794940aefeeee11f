package dawngauge.geo;

import java.util.Locale;

/** A line or the edge of an area of the base map, with its points on the {@link Mercator} map. */
public final class MapLine {

  /** What a line is. */
  public enum Kind {
    /** Edge of an area of land, where it is on the coast and where the map was cut. */
    LAND,
    /** Where land meets sea. */
    COAST,
    /** Edge of a lake. */
    LAKE,
    /** A river. */
    RIVER,
    /** Between two countries. */
    COUNTRY,
    /** Between two states or provinces. */
    STATE
  }

  private static final double STEPS_PER_DEGREE = 10_000;

  private final Kind kind;
  private final double[] x;
  private final double[] y;
  private double west = Double.POSITIVE_INFINITY;
  private double east = Double.NEGATIVE_INFINITY;
  private double north = Double.POSITIVE_INFINITY;
  private double south = Double.NEGATIVE_INFINITY;

  private MapLine(Kind kind, int size) {
    this.kind = kind;
    x = new double[size];
    y = new double[size];
  }

  /** A row: kind, tab, latitude and longitude in 1e-4 degree, then steps; see docs/data.md. */
  static MapLine parse(String row) {
    int tab = row.indexOf('\t');
    String[] numbers = row.substring(tab + 1).split(" ", -1);
    Kind kind = Kind.valueOf(row.substring(0, tab).toUpperCase(Locale.ROOT));
    MapLine line = new MapLine(kind, numbers.length / 2);
    int latitude = 0;
    int longitude = 0;
    for (int i = 0; i < line.size(); i++) {
      latitude += Integer.parseInt(numbers[2 * i]);
      longitude += Integer.parseInt(numbers[2 * i + 1]);
      line.set(
          i, Mercator.x(longitude / STEPS_PER_DEGREE), Mercator.y(latitude / STEPS_PER_DEGREE));
    }
    return line;
  }

  private void set(int i, double toX, double toY) {
    x[i] = toX;
    y[i] = toY;
    west = Math.min(west, toX);
    east = Math.max(east, toX);
    north = Math.min(north, toY);
    south = Math.max(south, toY);
  }

  /** What it is. */
  public Kind kind() {
    return kind;
  }

  /** Number of points. */
  public int size() {
    return x.length;
  }

  /** Part of the map's width at a point. */
  public double x(int i) {
    return x[i];
  }

  /** Part of the map's height at a point. */
  public double y(int i) {
    return y[i];
  }

  /** Whether it may be seen in a part of the map. */
  public boolean meets(double fromX, double fromY, double toX, double toY) {
    return west <= toX && east >= fromX && north <= toY && south >= fromY;
  }
}
