package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import dawngauge.tire.Capacity;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TrailerSpeedRule;
import org.jspecify.annotations.Nullable;

/** Finds floor, aim and ceiling of a tire for one leg. */
public final class LimitFinder {

  /** A chosen target is never below this part of the label's pressure; ours, no source. */
  public static final double LEAST_TARGET = 0.8;

  /** Grace for figures rounded in different units. */
  public static final double GRACE = GaugePressure.of(0.05, Unit.PSI).pascals();

  /** Forgives weights and ratings rounded to whole units. */
  private static final double WHOLE_UNITS = 0.001;

  private final double reserve;

  /** Finds limits; a chosen target must leave a part of the load as reserve. */
  public LimitFinder(double reserve) {
    this.reserve = reserve;
  }

  /** Limits of a tire that carries a load on a leg driven at a top speed, in m/s. */
  public Limits find(FittedTire fitted, Loads.TireLoad load, double topSpeed) {
    return find(fitted, load, load, topSpeed);
  }

  /**
   * The same where a flat tire leaves more to it.
   *
   * @param load what it carries now
   * @param even what it carries with all tires sound, for which it is set
   */
  Limits find(FittedTire fitted, Loads.TireLoad load, Loads.TireLoad even, double topSpeed) {
    Limits.SpeedVerdict verdict = symbolVerdict(fitted, topSpeed);
    if (!fitted.underTrailerSpeedRule() || verdict == Limits.SpeedVerdict.TOO_FAST) {
      return limits(fitted, load, even, 0, 1, verdict);
    }
    TrailerSpeedRule.Effect effect = TrailerSpeedRule.at(new Speed(topSpeed));
    if (!effect.allowed()) {
      return limits(fitted, load, even, 0, 1, Limits.SpeedVerdict.TOO_FAST);
    }
    if (effect.extraPascals() == 0) {
      return limits(fitted, load, even, 0, 1, Limits.SpeedVerdict.FINE);
    }
    Limits raised =
        limits(
            fitted,
            load,
            even,
            effect.extraPascals(),
            effect.loadFactor(),
            Limits.SpeedVerdict.RAISED);
    boolean fits =
        !raised.overloaded()
            && !(raised.floor() > raised.ceiling() + GRACE)
            && !(raised.aimFrom() == Limits.AimFrom.CEILING);
    return fits ? raised : limits(fitted, load, even, 0, 1, Limits.SpeedVerdict.KEEP_TO_65);
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

  private record Aim(double pascals, Limits.AimFrom from) {}

  private Limits limits(
      FittedTire fitted,
      Loads.TireLoad load,
      Loads.TireLoad even,
      double extraPascals,
      double loadFactor,
      Limits.SpeedVerdict verdict) {
    double ceiling = fitted.ceilingPascals();
    Capacity capacity = fitted.capacity();
    Carrying carrying =
        capacity == null || Double.isNaN(load.kilograms())
            ? null
            : new Carrying(capacity, load.spread(), loadFactor, extraPascals);
    Aim base = base(fitted, even, loadFactor);
    double reference =
        base.from == Limits.AimFrom.TARGET || !fitted.labelSpeaks()
            ? least(base.pascals, ceiling)
            : fitted.labelPascals();
    double wanted = base.pascals + extraPascals;
    boolean cut = wanted > ceiling + GRACE;
    return new Limits(
        load,
        carrying,
        least(wanted, ceiling),
        ceiling,
        reference,
        extraPascals == 0 && fitted.carriesAsCertified() && withinShare(fitted, load)
            ? fitted.labelPascals()
            : Double.NaN,
        cut ? Limits.AimFrom.CEILING : base.from,
        verdict);
  }

  /** The aim for a tire by itself, neither cut by its ceiling nor raised for speed. */
  private Aim base(FittedTire fitted, Loads.TireLoad load, double loadFactor) {
    double target = target(fitted, load, loadFactor);
    if (!Double.isNaN(target)) {
      return new Aim(target, Limits.AimFrom.TARGET);
    }
    Capacity capacity = fitted.capacity();
    double label = fitted.labelPascals();
    if (capacity == null) {
      return new Aim(label, Double.isNaN(label) ? Limits.AimFrom.UNKNOWN : Limits.AimFrom.LABEL);
    } else if (Double.isNaN(label)) {
      // Without a label a light load gives no licence to run less than the rated pressure.
      return new Aim(capacity.ratedPascals(), Limits.AimFrom.RATED);
    } else if (!fitted.labelSpeaks()) {
      double share = fitted.gawrShare();
      double byRows =
          capacity.fromRows() && !Double.isNaN(share) ? capacity.pascalsFor(share) : Double.NaN;
      double needs = Double.isNaN(byRows) ? capacity.ratedPascals() : byRows;
      return label >= needs
          ? new Aim(label, Limits.AimFrom.LABEL)
          : new Aim(needs, Limits.AimFrom.GAWR_SHARE);
    } else if (!load.axle().basis().weighed() || withinShare(fitted, load)) {
      return new Aim(label, Limits.AimFrom.LABEL);
    }
    double needed = capacity.pascalsFor(load.kilograms() / loadFactor);
    double byLoad = Double.isNaN(needed) ? capacity.ratedPascals() : needed;
    return byLoad > label
        ? new Aim(byLoad, Limits.AimFrom.LOAD)
        : new Aim(label, Limits.AimFrom.LABEL);
  }

  /** Whether a load is within what the label's pressure is certified for. */
  private static boolean withinShare(FittedTire fitted, Loads.TireLoad load) {
    return !(load.kilograms() > fitted.certifiedKilograms() * (1 + WHOLE_UNITS))
        && !Double.isNaN(fitted.certifiedKilograms());
  }

  /** Why a chosen target does not count; null where it does. */
  public @Nullable TargetFault targetFault(FittedTire fitted, Loads.TireLoad load) {
    Entered<GaugePressure> typed = fitted.axle().target();
    return typed == null ? null : fault(fitted, load, typed.value().pascals(), 1);
  }

  /** What a chosen target lacks, first things first. */
  public enum TargetFault {
    /** No maker's rows. */
    NO_ROWS("there are no maker's rows for the tire"),
    /** Neither wheel nor axle weighed alone. */
    NOT_WEIGHED("neither its wheels nor its axle alone were weighed"),
    /** No label to hold it against. */
    NO_LABEL("there is no label pressure"),
    /** Too far under the label. */
    UNDER_LABEL("it is under 80 % of the label's pressure"),
    /** Not enough for the load and the reserve. */
    NO_RESERVE("it leaves less than the reserve over its load");

    private final String words;

    TargetFault(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  private @Nullable TargetFault fault(
      FittedTire fitted, Loads.TireLoad load, double pascals, double loadFactor) {
    Capacity capacity = fitted.capacity();
    Loads.Basis basis = load.axle().basis();
    if (capacity == null || !capacity.fromRows()) {
      return TargetFault.NO_ROWS;
    } else if (basis != Loads.Basis.WHEEL && basis != Loads.Basis.AXLE) {
      return TargetFault.NOT_WEIGHED;
    } else if (Double.isNaN(fitted.labelPascals())) {
      return TargetFault.NO_LABEL;
    } else if (pascals < LEAST_TARGET * fitted.labelPascals() - GRACE) {
      return TargetFault.UNDER_LABEL;
    }
    double needed = capacity.pascalsFor(load.kilograms() / loadFactor * (1 + reserve));
    return pascals >= needed - GRACE ? null : TargetFault.NO_RESERVE;
  }

  private double target(FittedTire fitted, Loads.TireLoad load, double loadFactor) {
    Entered<GaugePressure> typed = fitted.axle().target();
    return typed == null || fault(fitted, load, typed.value().pascals(), loadFactor) != null
        ? Double.NaN
        : typed.value().pascals();
  }

  private static double least(double wanted, double ceiling) {
    return Double.isNaN(ceiling) ? wanted : Math.min(wanted, ceiling);
  }
}
