package dawngauge.method;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.tire.Construction;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Section 9: what a tire carries, by two curves. Pascal and kilogram. */
final class Curves {

  /** Rated loads by load index, ISO 4000-1, as far as the demos need them. */
  private static final Map<Integer, Double> INDEX =
      Map.of(113, 1150.0, 116, 1250.0, 118, 1320.0, 121, 1450.0, 134, 2120.0, 136, 2240.0);

  final double ratedSingle;
  final double rated;
  final double ratedPressure;
  final boolean rows;

  /** Label's pressure; NaN without one. */
  final double label;

  final boolean labelSpeaks;

  /** Load for which the label's pressure is certified; NaN where it does not speak. */
  final double share;

  /** The tire's part of the axle's rating. */
  final double gawrShare;

  private final TreeMap<Double, Double> points = new TreeMap<>();
  private final double exponent;
  private double labelLoad = Double.NaN;

  Curves(Rig rig, WheelPosition position) {
    TireSpec spec = rig.specOf(rig.fittedAt(position).orElseThrow()).orElseThrow();
    Axle axle = rig.axle(position.axle()).orElseThrow();
    Vehicle vehicle = rig.vehicle(position.axle().vehicle()).orElseThrow();
    TireClass kind = Objects.requireNonNull(spec.tireClass());
    boolean byRule = kind == TireClass.PASSENGER && vehicle.kind() != Vehicle.Kind.CAR;
    double divisor = byRule ? 1.10 : 1;
    ratedPressure = Objects.requireNonNull(spec.ratedPressure()).value().pascals();
    ratedSingle = load(spec.ratedLoadSingle(), spec.loadIndexSingle());
    double dual = load(spec.ratedLoadDual(), spec.loadIndexDual());
    dual = Double.isNaN(dual) ? 0.91 * ratedSingle : dual; // light truck, see the page
    rated = (axle.dual() ? dual : ratedSingle) / divisor;
    exponent = exponent(spec, kind);
    points.put(0.0, 0.0);
    rows = spec.rows() != null;
    for (LoadInflationTable.Row row : rowsOf(spec)) {
      Mass typed = Objects.requireNonNull(axle.dual() ? row.dual() : row.single()).value();
      points.put(row.pressure().value().pascals(), Math.min(rated, typed.kilograms() / divisor));
    }
    LabelFitment speaking = null;
    for (LabelFitment line : axle.label()) {
      speaking = speaking == null && speaks(line, spec) ? line : speaking;
    }
    labelSpeaks = speaking != null;
    LabelFitment shown = speaking == null ? axle.label().get(0) : speaking;
    label = shown.coldPressure().value().pascals();
    double tires = axle.dual() ? 4 : 2;
    gawrShare = Objects.requireNonNull(axle.gawr()).value().kilograms() / tires;
    share = labelSpeaks ? Math.min(1, light(vehicle)) * gawrShare : Double.NaN;
    if (!rows) {
      byLabel();
      points.put(ratedPressure, rated);
    }
  }

  private static List<LoadInflationTable.Row> rowsOf(TireSpec spec) {
    LoadInflationTable table = spec.rows();
    return table == null ? List.of() : table.rows();
  }

  private static double exponent(TireSpec spec, TireClass kind) {
    if (spec.construction() == Construction.BIAS) {
      return 1;
    }
    return switch (kind) {
      case PASSENGER -> 0.5;
      case LIGHT_TRUCK -> 0.70;
      case SPECIAL_TRAILER -> 0.585;
      case COMMERCIAL -> 1;
    };
  }

  private static double load(@Nullable Entered<Mass> typed, @Nullable Integer index) {
    if (typed != null) {
      return typed.value().kilograms();
    }
    return index == null ? Double.NaN : Objects.requireNonNull(INDEX.get(index));
  }

  private static boolean speaks(LabelFitment line, TireSpec spec) {
    return line.size().equals(spec.size())
        && (line.tireClass() == null || line.tireClass() == spec.tireClass())
        && (line.loadRange() == null
            || spec.loadRange() == null
            || line.loadRange().equals(spec.loadRange()));
  }

  /** GVWR over the sum of all GAWR for a vehicle at or under 4,536 kg, else more than one. */
  private static double light(Vehicle vehicle) {
    double gvwr = Objects.requireNonNull(vehicle.gvwr()).value().kilograms();
    double all = 0;
    for (Axle axle : vehicle.axles()) {
      all += Objects.requireNonNull(axle.gawr()).value().kilograms();
    }
    return gvwr > 4536 ? 2 : gvwr / all;
  }

  private void byLabel() {
    double part = Math.min(1, label / ratedPressure);
    boolean slip = share > rated * Math.pow(part, exponent) * 1.05;
    if (labelSpeaks && !slip && label < ratedPressure && share > rated * part) {
      labelLoad = Math.min(rated, share);
      points.put(label, labelLoad);
    }
  }

  /** By the cautious curve. */
  double carriedAt(double pascals) {
    Map.Entry<Double, Double> before = points.floorEntry(Math.max(0, pascals));
    Map.Entry<Double, Double> after = points.higherEntry(Math.max(0, pascals));
    if (after == null) {
      return points.lastEntry().getValue();
    }
    double part = (Math.max(0, pascals) - before.getKey()) / (after.getKey() - before.getKey());
    return before.getValue() + part * (after.getValue() - before.getValue());
  }

  /** What the cautious curve needs; NaN where it carries a load at no pressure. */
  double needed(double kilograms) {
    Map.Entry<Double, Double> before = points.firstEntry();
    for (Map.Entry<Double, Double> point : points.entrySet()) {
      if (kilograms <= point.getValue()) {
        double rise = point.getValue() - before.getValue();
        double part = rise > 0 ? (kilograms - before.getValue()) / rise : 0;
        return before.getKey() + part * (point.getKey() - before.getKey());
      }
      before = point;
    }
    return kilograms <= before.getValue() * (1 + 1e-9) ? before.getKey() : Double.NaN;
  }

  /** What the likely curve needs; NaN where it carries a load at no pressure. */
  double likelyNeeded(double kilograms) {
    double least = needed(kilograms);
    if (rows || Double.isNaN(least)) {
      return least;
    }
    least = Math.min(least, ratedPressure * Math.pow(kilograms / rated, 1 / exponent));
    return kilograms <= labelLoad
        ? Math.min(least, label * Math.pow(kilograms / labelLoad, 1 / exponent))
        : least;
  }
}
