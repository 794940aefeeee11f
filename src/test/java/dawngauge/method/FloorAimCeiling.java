package dawngauge.method;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.Rig;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Section 10, for one tire and leg. Pascal. */
final class FloorAimCeiling {
  private static final double MPH = 0.44704;
  private static final double TEN_PSI = 68_947.57;

  private final Rig rig;
  private final Weights weights;

  FloorAimCeiling(Rig rig, Weights weights) {
    this.rig = rig;
    this.weights = weights;
  }

  double ceiling(WheelPosition position) {
    Axle axle = rig.axle(position.axle()).orElseThrow();
    TireSpec spec = rig.specOf(rig.fittedAt(position).orElseThrow()).orElseThrow();
    double sidewall =
        spec.maxColdPressure() == null
            ? Objects.requireNonNull(spec.ratedPressure()).value().pascals()
            : spec.maxColdPressure().value().pascals();
    double least =
        Math.min(sidewall, Math.min(or(axle.wheelMaxPressure()), or(axle.valveMaxPressure())));
    Curves curves = new Curves(rig, position);
    boolean known = axle.wheelMaxPressure() != null && axle.valveMaxPressure() != null;
    return curves.labelSpeaks || known ? least : Math.min(least, curves.label);
  }

  private static double or(@Nullable Entered<GaugePressure> limit) {
    return limit == null ? Double.POSITIVE_INFINITY : limit.value().pascals();
  }

  /** The highest of the axle's aims, each cut at its ceiling. */
  double aim(int stop, WheelPosition position, double top) {
    double highest = 0;
    boolean dual = rig.axle(position.axle()).orElseThrow().dual();
    for (WheelSlot slot : WheelSlot.values()) {
      if (dual == (slot.mate() != slot)) {
        WheelPosition mate = new WheelPosition(position.axle(), slot);
        double wanted = own(stop, mate) + forSpeed(stop, mate, top);
        highest = Math.max(highest, Math.min(wanted, ceiling(mate)));
      }
    }
    return Math.min(highest, ceiling(position));
  }

  private double own(int stop, WheelPosition position) {
    Curves curves = new Curves(rig, position);
    Weights.Load load = weights.of(stop, position);
    Entered<GaugePressure> target = rig.axle(position.axle()).orElseThrow().target();
    if (target != null && curves.rows && load.alone()) {
      double typed = target.value().pascals();
      if (typed >= 0.8 * curves.label && typed >= curves.needed(1.1 * load.mean())) {
        return typed;
      }
    }
    if (!curves.labelSpeaks) {
      double needs = curves.rows ? curves.needed(curves.gawrShare) : curves.ratedPressure;
      return Math.max(curves.label, needs);
    } else if (!load.weighed() || load.mean() <= 1.001 * curves.share) {
      return curves.label;
    }
    double needs = curves.needed(load.mean());
    return Math.max(curves.label, Double.isNaN(needs) ? curves.ratedPressure : needs);
  }

  /** What a special trailer tire without a speed symbol wants more, where that fits; to 75 mph. */
  double forSpeed(int stop, WheelPosition position, double top) {
    TireSpec spec = rig.specOf(rig.fittedAt(position).orElseThrow()).orElseThrow();
    boolean ruled = spec.tireClass() == TireClass.SPECIAL_TRAILER && spec.speedSymbol() == null;
    if (!ruled || top <= 65 * MPH + 1e-6) {
      return 0;
    } else if (top > 75 * MPH) {
      throw new IllegalArgumentException("no demo is so fast");
    }
    Curves curves = new Curves(rig, position);
    double load = weights.carried(stop, position).mean();
    double ceiling = ceiling(position);
    boolean fits =
        own(stop, position) + TEN_PSI <= ceiling && curves.needed(load) + TEN_PSI <= ceiling;
    return fits ? TEN_PSI : 0;
  }
}
