package dawngauge.ambient;

import java.util.function.IntToDoubleFunction;

/**
 * Figures of the twelve months joined over the year: through each month's figure at its middle, by
 * cubic pieces whose slope there is that between the months beside it (Catmull and Rom 1974).
 */
final class YearCurve {

  private static final int MONTHS = 12;

  private YearCurve() {}

  /**
   * The figure at a time of the year.
   *
   * @param month 1 in the middle of January to 12 in the middle of December, 0.5 and 12.5 at the
   *     turn of the year
   * @param figure of each month, January 0
   */
  static double at(double month, IntToDoubleFunction figure) {
    double since = month - 1;
    int before = (int) Math.floor(since);
    double t = since - before;
    double a = figure.applyAsDouble(Math.floorMod(before - 1, MONTHS));
    double b = figure.applyAsDouble(Math.floorMod(before, MONTHS));
    double c = figure.applyAsDouble(Math.floorMod(before + 1, MONTHS));
    double d = figure.applyAsDouble(Math.floorMod(before + 2, MONTHS));
    return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  }
}
