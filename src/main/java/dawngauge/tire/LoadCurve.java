package dawngauge.tire;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Load over cold gauge pressure: straight from nothing to the first point and between points, flat
 * above the last and never above a ceiling. Continuous; it never falls.
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
   * The most cautious curve that the certified points prove: the upper concave hull of nothing, the
   * label's point and the rated pair. A chord proves that a tire carries, never that it does not. A
   * label's point under the straight line to the rated pair drops out.
   */
  static LoadCurve certified(Rating rating, @Nullable CertifiedPoint point) {
    double rated = rating.load().kilograms();
    double ratedPascals = rating.pressure().pascals();
    Builder builder = new Builder();
    if (point != null && raises(rating, point)) {
      builder.point(point.coldPressure().pascals(), Math.min(rated, point.load().kilograms()));
    }
    return builder.point(ratedPascals, rated).upTo(rated);
  }

  /** Whether the label's point lies above the straight line to the rated pair. */
  static boolean raises(Rating rating, CertifiedPoint point) {
    double labelPascals = point.coldPressure().pascals();
    double straight = rating.load().kilograms() * labelPascals / rating.pressure().pascals();
    return labelPascals < rating.pressure().pascals()
        && point.load().kilograms() > straight * (1 + ROUNDING);
  }

  /** Most that is carried at any pressure, in kilogram. */
  double mostKilograms() {
    return most;
  }

  /** Load carried at a pressure; nothing at or under zero, NaN for NaN. */
  double kilogramsAt(double gaugePascals) {
    double below = 0;
    double load = 0;
    for (int i = 0; i < pascals.length; i++) {
      if (gaugePascals < pascals[i]) {
        double part = Math.max(0, gaugePascals - below) / (pascals[i] - below);
        return Math.min(most, load + part * (kilograms[i] - load));
      }
      below = pascals[i];
      load = kilograms[i];
    }
    return Double.isNaN(gaugePascals) ? Double.NaN : most;
  }

  /** Lowest pressure whose load is at least the given one; NaN if there is none. */
  double pascalsFor(double load) {
    if (!(load <= most * (1 + ROUNDING))) {
      return Double.NaN;
    }
    double wanted = Math.max(0, Math.min(load, most));
    double below = 0;
    double carried = 0;
    for (int i = 0; i < pascals.length; i++) {
      if (wanted <= kilograms[i]) {
        double rise = kilograms[i] - carried;
        return rise > 0 ? below + (wanted - carried) / rise * (pascals[i] - below) : below;
      }
      below = pascals[i];
      carried = kilograms[i];
    }
    return below;
  }

  /** Gathers the points of a curve in rising order. */
  static final class Builder {
    private final List<double[]> points = new ArrayList<>();

    /** Adds a point; its pressure must be higher than before, its load no lower. */
    Builder point(double pascals, double kilograms) {
      double[] before = points.isEmpty() ? new double[2] : points.get(points.size() - 1);
      if (pascals <= before[0] || kilograms < before[1]) {
        throw new IllegalArgumentException("a load curve must not fall");
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
