package dawngauge.advice;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a tire must hold at the least just after each stop, as fills in pascal per kelvin by origin
 * and stop; see {@link TireWay}. Negative infinity where nothing is asked.
 */
final class Asked {

  /** How much of it is asked. */
  enum Degree {
    /** All of it, the aim at a day's start included. */
    ALL,
    /** The floor with the chosen confidence. */
    FLOOR,
    /** The floor as likely as not. */
    LIKELY,
    /** Nothing: it cannot be kept. */
    NOTHING;

    private Degree less() {
      return this == ALL ? FLOOR : this == FLOOR ? LIKELY : NOTHING;
    }
  }

  private final Map<Degree, double[][]> fills;

  /** Degree at each stop. */
  private final Degree[] degrees;

  private Asked(Map<Degree, double[][]> fills, Degree[] degrees) {
    this.fills = fills;
    this.degrees = degrees;
  }

  /** Nothing asked yet, for a number of stops. */
  Asked(int stops) {
    this(new EnumMap<>(Degree.class), new Degree[stops]);
    for (Degree degree : Degree.values()) {
      double[][] none = new double[stops + 1][stops];
      for (double[] origin : none) {
        Arrays.fill(origin, Double.NEGATIVE_INFINITY);
      }
      fills.put(degree, none);
    }
    Arrays.fill(degrees, Degree.ALL);
  }

  /** Asks for no less than this, and so does every higher degree. */
  void ask(Degree degree, int origin, int stop, double fill) {
    fills.forEach(
        (each, asked) -> {
          if (each.compareTo(degree) <= 0) {
            asked[origin][stop] = Math.max(asked[origin][stop], fill);
          }
        });
  }

  /** The least fill. */
  double least(int origin, int stop) {
    return fill(degrees[stop], origin, stop);
  }

  private double fill(Degree degree, int origin, int stop) {
    double[][] asked = fills.get(degree);
    return asked == null ? Double.NEGATIVE_INFINITY : asked[origin][stop];
  }

  /** How much is asked at a stop. */
  Degree degree(int stop) {
    return degrees[stop];
  }

  /** The same with the next lower degree at a stop that asks for less there. */
  Asked less(int stop) {
    Degree[] lower = degrees.clone();
    do {
      lower[stop] = lower[stop].less();
    } while (lower[stop] != Degree.NOTHING && same(stop, degrees[stop], lower[stop]));
    return new Asked(fills, lower);
  }

  private boolean same(int stop, Degree a, Degree b) {
    for (int origin = 0; origin <= degrees.length; origin++) {
      if (fill(a, origin, stop) != fill(b, origin, stop)) {
        return false;
      }
    }
    return true;
  }
}
