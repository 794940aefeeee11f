package dawngauge.tire;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Load over cold gauge pressure: straight between points, no figure below the first, flat above the
 * last and never above a ceiling. Two points at one pressure make a step; the pressure itself then
 * has the higher load.
 */
final class LoadCurve {
  /** Forgives the rounding of unit conversions, relative. */
  private static final double ROUNDING = 1e-9;

  private final double[] pascals;
  private final double[] kilograms;
  private final double most;

  private LoadCurve(double[] pascals, double[] kilograms, double ceiling) {
    this.pascals = pascals;
    this.kilograms = kilograms;
    this.most = Math.min(ceiling, kilograms[kilograms.length - 1]);
  }

  /**
   * The curve through a maker's rows; null where the tire is one of a dual pair and a row lacks its
   * dual load.
   *
   * @param divisor what the loads are divided by
   * @param ceilingKilograms most that the tire may carry at any pressure
   */
  static @Nullable LoadCurve ofRows(
      LoadInflationTable table, boolean dual, double divisor, double ceilingKilograms) {
    Builder builder = new Builder();
    for (LoadInflationTable.Row row : table.rows()) {
      Entered<Mass> load = dual ? row.dual() : row.single();
      if (load == null) {
        return null;
      }
      builder.point(row.pressure().value().pascals(), load.value().kilograms() / divisor);
    }
    return builder.upTo(ceilingKilograms);
  }

  /**
   * The most cautious published form: the straight line from nothing to the rated pair, from a
   * least pressure on. The certified point raises it: up to the label's pressure by the line from
   * nothing to that point, above it by the point's load until the other line is higher. Where the
   * label's pressure is under the least pressure, the curve begins there instead.
   */
  static LoadCurve estimated(Rating rating, double leastPascals, @Nullable CertifiedPoint point) {
    double rated = rating.load().kilograms();
    double ratedPascals = rating.pressure().pascals();
    double perPascal = rated / ratedPascals;
    Builder builder = new Builder();
    if (point == null) {
      return builder
          .point(leastPascals, perPascal * leastPascals)
          .point(ratedPascals, rated)
          .upTo(rated);
    }
    double label = Math.min(point.load().kilograms(), rated);
    double labelPascals = point.coldPressure().pascals();
    boolean early = labelPascals < leastPascals;
    boolean raises = label > perPascal * Math.max(labelPascals, leastPascals) * (1 + ROUNDING);
    if (early) {
      builder.point(labelPascals, label).point(leastPascals, label);
    } else if (raises) {
      builder
          .point(leastPascals, Math.min(label, label * (leastPascals / labelPascals)))
          .point(labelPascals, label);
    }
    if (raises) {
      builder.point(Math.min(label / perPascal, ratedPascals), label);
    } else {
      builder.point(leastPascals, Math.max(perPascal * leastPascals, early ? label : 0));
    }
    return builder.point(ratedPascals, rated).upTo(rated);
  }

  /** Lowest pressure with a figure, in pascal. */
  double lowestPascals() {
    return pascals[0];
  }

  /** Most that is carried at any pressure, in kilogram. */
  double mostKilograms() {
    return most;
  }

  /** Load carried at a pressure; NaN below the first point. */
  double kilogramsAt(double gaugePascals) {
    if (!(gaugePascals >= pascals[0] * (1 - ROUNDING))) {
      return Double.NaN;
    }
    int last = pascals.length - 1;
    int i = last;
    while (i > 0 && pascals[i] > gaugePascals) {
      i--;
    }
    if (i == last) {
      return most;
    }
    double part = Math.max(0, gaugePascals - pascals[i]) / (pascals[i + 1] - pascals[i]);
    return Math.min(most, kilograms[i] + part * (kilograms[i + 1] - kilograms[i]));
  }

  /** Lowest pressure whose load is at least the given one; NaN if there is none. */
  double pascalsFor(double load) {
    if (!(load <= most * (1 + ROUNDING))) {
      return Double.NaN;
    }
    double wanted = Math.min(load, most);
    int i = 0;
    while (kilograms[i] < wanted) {
      i++;
    }
    if (i == 0) {
      return pascals[0];
    }
    double part = (wanted - kilograms[i - 1]) / (kilograms[i] - kilograms[i - 1]);
    return pascals[i - 1] + part * (pascals[i] - pascals[i - 1]);
  }

  /** Gathers the points of a curve in rising order. */
  static final class Builder {
    private final List<double[]> points = new ArrayList<>();

    /** Adds a point; neither figure may be lower than before. */
    Builder point(double pascals, double kilograms) {
      if (!points.isEmpty()) {
        double[] before = points.get(points.size() - 1);
        if (pascals < before[0] || kilograms < before[1]) {
          throw new IllegalArgumentException("a load curve must not fall");
        }
      }
      points.add(new double[] {pascals, kilograms});
      return this;
    }

    /** The curve, never above a load. */
    LoadCurve upTo(double ceilingKilograms) {
      return new LoadCurve(
          points.stream().mapToDouble(point -> point[0]).toArray(),
          points.stream().mapToDouble(point -> point[1]).toArray(),
          ceilingKilograms);
    }
  }
}
