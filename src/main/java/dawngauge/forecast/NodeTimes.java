package dawngauge.forecast;

import java.util.Arrays;

/**
 * Gathers the times of a timeline's nodes: a fixed grid and, in any order, knots, between which the
 * air is a straight line too, and extras, which only need a figure. Epoch seconds.
 */
final class NodeTimes {

  /** A growing row of numbers, then read from its head. */
  private static final class Row {
    private double[] numbers = new double[64];
    private int count;
    private int read;

    void add(double number) {
      if (count == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * count);
      }
      numbers[count++] = number;
    }

    void sort() {
      Arrays.sort(numbers, 0, count);
    }

    boolean used() {
      return read == count;
    }

    double head() {
      return read < count ? numbers[read] : Double.POSITIVE_INFINITY;
    }

    void skip(double number) {
      while (read < count && numbers[read] <= number) {
        read++;
      }
    }
  }

  private final Row grid = new Row();
  private final Row knots = new Row();
  private final Row extras = new Row();

  NodeTimes(double start, double end, double spacing) {
    for (double t = Math.ceil(start / spacing) * spacing; t < end; t += spacing) {
      grid.add(t);
    }
  }

  void knot(double time) {
    knots.add(time);
  }

  void extra(double time) {
    extras.add(time);
  }

  /** Every time once, in order; a knot at the same time as an extra stays a knot. */
  Nodes inOrder() {
    knots.sort();
    extras.sort();
    double[] seconds = new double[grid.count + knots.count + extras.count];
    boolean[] extra = new boolean[seconds.length];
    int count = 0;
    while (!grid.used() || !knots.used() || !extras.used()) {
      double next = Math.min(grid.head(), knots.head());
      boolean knot = next <= extras.head();
      seconds[count] = knot ? next : extras.head();
      extra[count] = !knot;
      grid.skip(seconds[count]);
      knots.skip(seconds[count]);
      extras.skip(seconds[count]);
      count++;
    }
    return new Nodes(Arrays.copyOf(seconds, count), Arrays.copyOf(extra, count));
  }

  /** Times in order, and which of them are extras. */
  static final class Nodes {
    final double[] seconds;
    final boolean[] extra;

    Nodes(double[] seconds, boolean[] extra) {
      this.seconds = seconds;
      this.extra = extra;
    }

    /** Lays a figure of the extras on the straight lines between their neighbouring knots. */
    void straighten(double[] figure) {
      int before = -1;
      for (int after = 0; after < seconds.length; after++) {
        if (!extra[after]) {
          for (int node = before + 1; before >= 0 && node < after; node++) {
            double part = (seconds[node] - seconds[before]) / (seconds[after] - seconds[before]);
            figure[node] = figure[before] + part * (figure[after] - figure[before]);
          }
          before = after;
        }
      }
    }
  }
}
