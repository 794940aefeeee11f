package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import dawngauge.tire.Capacity;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TrailerSpeedRule;

/** Finds floor, aim and ceiling of a tire for one leg. */
public final class LimitFinder {

  /** A chosen target is never below this part of the label's pressure; ours, no source. */
  private static final double LEAST_TARGET = 0.8;

  /** Grace for figures rounded in different units. */
  private static final double GRACE = GaugePressure.of(0.05, Unit.PSI).pascals();

  private final double reserve;

  /** Finds limits with a part of the load as reserve. */
  public LimitFinder(double reserve) {
    this.reserve = reserve;
  }

  /** Limits of a tire that carries a load on a leg driven at a top speed, in m/s. */
  public Limits find(FittedTire fitted, Loads.TireLoad load, double topSpeed) {
    double ceiling = fitted.ceilingPascals();
    Capacity capacity = fitted.capacity();
    if (capacity == null) {
      return withoutCapacity(fitted, load, topSpeed);
    }
    Limits.SpeedVerdict verdict = symbolVerdict(fitted, topSpeed);
    if (!fitted.underTrailerSpeedRule() || verdict == Limits.SpeedVerdict.TOO_FAST) {
      return limits(fitted, capacity, load, 0, 1, verdict);
    }
    TrailerSpeedRule.Effect effect = TrailerSpeedRule.at(new Speed(topSpeed));
    if (!effect.allowed()) {
      return limits(fitted, capacity, load, 0, 1, Limits.SpeedVerdict.TOO_FAST);
    }
    if (effect.extraPascals() == 0) {
      return limits(fitted, capacity, load, 0, 1, Limits.SpeedVerdict.FINE);
    }
    Limits raised =
        limits(
            fitted,
            capacity,
            load,
            effect.extraPascals(),
            effect.loadFactor(),
            Limits.SpeedVerdict.RAISED);
    boolean fits =
        !raised.overloaded()
            && !(raised.floor() > ceiling + GRACE)
            && wanted(fitted, capacity, load, effect) <= ceiling + GRACE;
    return fits ? raised : limits(fitted, capacity, load, 0, 1, Limits.SpeedVerdict.KEEP_TO_65);
  }

  /** What would be set at this speed if no ceiling stood in the way. */
  private double wanted(
      FittedTire fitted, Capacity capacity, Loads.TireLoad load, TrailerSpeedRule.Effect effect) {
    double byLoad = capacity.pascalsFor(load.kilograms() / effect.loadFactor() * (1 + reserve));
    double label = fitted.labelPascals();
    double base = Double.isNaN(byLoad) ? capacity.ratedPascals() : byLoad;
    return (Double.isNaN(label) ? base : Math.max(label, base)) + effect.extraPascals();
  }

  private static Limits.SpeedVerdict symbolVerdict(FittedTire fitted, double topSpeed) {
    TireSpec spec = fitted.spec();
    String symbol = spec == null ? null : spec.speedSymbol();
    if (symbol == null) {
      return Limits.SpeedVerdict.FINE;
    }
    double top = SpeedSymbol.top(symbol).map(Speed::metersPerSecond).orElse(Double.MAX_VALUE);
    return topSpeed > top + 0.01 ? Limits.SpeedVerdict.TOO_FAST : Limits.SpeedVerdict.FINE;
  }

  private static Limits withoutCapacity(FittedTire fitted, Loads.TireLoad load, double topSpeed) {
    double ceiling = fitted.ceilingPascals();
    double label = fitted.labelPascals();
    double aim = cut(label, ceiling);
    return new Limits(
        load,
        Double.NaN,
        aim,
        ceiling,
        Double.isNaN(label) ? Limits.AimFrom.UNKNOWN : Limits.AimFrom.LABEL,
        true,
        false,
        symbolVerdict(fitted, topSpeed));
  }

  private Limits limits(
      FittedTire fitted,
      Capacity capacity,
      Loads.TireLoad load,
      double extraPascals,
      double loadFactor,
      Limits.SpeedVerdict verdict) {
    double ceiling = fitted.ceilingPascals();
    double kilograms = load.kilograms() / loadFactor;
    boolean known = !Double.isNaN(kilograms);
    double needed = known ? capacity.pascalsFor(kilograms) : Double.NaN;
    double floor = needed + extraPascals;
    boolean overloaded =
        known
            && (Double.isNaN(needed)
                || (floor > ceiling + GRACE && verdict != Limits.SpeedVerdict.RAISED));
    double withReserve = known ? capacity.pascalsFor(kilograms * (1 + reserve)) : Double.NaN;
    if (known && Double.isNaN(withReserve)) {
      withReserve = capacity.ratedPascals();
    }
    double aim = withReserve + extraPascals;
    Limits.AimFrom from = Limits.AimFrom.LOAD;
    double label = fitted.labelPascals();
    if (Double.isNaN(label)) {
      // Without a label a light load gives no licence to run less than the rated pressure.
      if (!(aim > capacity.ratedPascals())) {
        from = Limits.AimFrom.RATED;
      }
      aim = larger(aim, capacity.ratedPascals());
    } else if (!fitted.labelSpeaks()) {
      double share = fitted.gawrShare();
      double forRating =
          capacity.fromRows() && !Double.isNaN(share) ? capacity.pascalsFor(share) : Double.NaN;
      double fittedNeeds = Double.isNaN(forRating) ? capacity.ratedPascals() : forRating;
      double unlabelled = larger(label, fittedNeeds);
      if (!(aim > unlabelled)) {
        from = label >= fittedNeeds ? Limits.AimFrom.LABEL : Limits.AimFrom.GAWR_SHARE;
      }
      aim = larger(aim, unlabelled);
    } else if (!(aim > label + extraPascals)) {
      aim = label + extraPascals;
      from = Limits.AimFrom.LABEL;
    }
    double target = target(fitted, capacity, load, floor);
    if (!Double.isNaN(target)) {
      aim = target;
      from = Limits.AimFrom.TARGET;
    }
    if (aim > ceiling + GRACE) {
      aim = ceiling;
      from = Limits.AimFrom.CEILING;
    }
    return new Limits(load, floor, aim, ceiling, from, capacity.estimated(), overloaded, verdict);
  }

  /**
   * The user's own target where it may be used: maker's rows typed, the axle weighed, at least 80 %
   * of the label, and enough for the load; else NaN.
   */
  private double target(FittedTire fitted, Capacity capacity, Loads.TireLoad load, double floor) {
    Entered<GaugePressure> typed = fitted.axle().target();
    if (typed == null || !capacity.fromRows()) {
      return Double.NaN;
    }
    boolean weighed =
        load.axle().source() == Loads.Source.WHEEL_SCALE
            || load.axle().source() == Loads.Source.AXLE_SCALE
            || load.axle().source() == Loads.Source.GROUP_SCALE;
    double pascals = typed.value().pascals();
    double label = fitted.labelPascals();
    boolean enough = pascals >= floor - GRACE && pascals >= LEAST_TARGET * label - GRACE;
    return weighed && enough ? pascals : Double.NaN;
  }

  private static double larger(double a, double b) {
    return Double.isNaN(a) ? b : Math.max(a, b);
  }

  private static double cut(double wanted, double ceiling) {
    return Double.isNaN(ceiling) ? wanted : Math.min(wanted, ceiling);
  }
}
