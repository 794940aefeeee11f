package dawngauge.rules;

import dawngauge.tire.Capacity;
import org.jspecify.annotations.Nullable;

/**
 * The figures between which a tire's cold pressure belongs on one leg. Gauge pressures in pascal;
 * NaN where unknown.
 *
 * @param load what the tire carries and how that is known
 * @param carrying whether it carries it; null where load or capacity are not known
 * @param aim what is set when cold, never above the ceiling
 * @param ceiling lowest of the tire's, wheel's and valve's maximum cold pressure
 * @param reference what 80 % is taken of where it ran low: the own target where it counts, else the
 *     label's pressure where it speaks, else the aim
 * @param certified the label's pressure where the tire carries as certified at it; else NaN
 * @param aimFrom where the aim comes from
 * @param speed what the leg's top speed asks for
 */
public record Limits(
    Loads.TireLoad load,
    @Nullable Carrying carrying,
    double aim,
    double ceiling,
    double reference,
    double certified,
    AimFrom aimFrom,
    SpeedVerdict speed) {

  /** A dual mate that takes over more than this part of a tire's load is not as certified. */
  private static final double EVEN_ENOUGH = 1.025;

  /** Lowest pressure that may carry the likely load; NaN where none does or none is known. */
  public double floor() {
    return carrying == null ? Double.NaN : carrying.floor();
  }

  /** Load margin at a gauge pressure in pascal: at or above zero just from the floor on. */
  public double marginAt(double gaugePascals) {
    return carrying == null ? Double.NaN : carrying.marginAt(gaugePascals);
  }

  /** What the floor rests on; null where it is not known. */
  public Capacity.@Nullable Basis capacityBasis() {
    return carrying == null ? null : carrying.basis();
  }

  /** Whether the floor rests on an estimated curve. */
  public boolean estimated() {
    return capacityBasis() != Capacity.Basis.ROWS;
  }

  /** Whether no allowed pressure carries the load, likelier than not: air is no cure. */
  public boolean overloaded() {
    double top = Double.isNaN(ceiling) ? Double.POSITIVE_INFINITY : ceiling;
    return carrying != null && carrying.underFloor(top, 0) > 0.5;
  }

  /** The most that a tire likely carries at any allowed pressure, in kilogram. */
  public double mostKilograms(Capacity capacity) {
    return Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.likelyKilogramsAt(ceiling);
  }

  /** Whether a cold gauge pressure in pascal is the label's, under it by no more than the band. */
  private boolean asCertified(double pascals, GaugeErrors errors) {
    return pascals >= certified - errors.deadBand(certified);
  }

  /**
   * Chance that a tire has too little for its load by a cold reading alone, 0 to 1: 0 where it is
   * as certified, where no air is a cure, and where load or capacity are not known.
   *
   * @param pascals what the gauge showed
   */
  public double tooLittle(double pascals, GaugeErrors errors) {
    return carrying == null || asCertified(pascals, errors) || overloaded()
        ? 0
        : carrying.underFloor(pascals, errors.sigma());
  }

  /** The same for a tire that carries more or less than an even part, beside a dual mate. */
  public Limits sharing(double part) {
    if (part == 1) {
      return this;
    }
    return new Limits(
        load.times(part),
        carrying == null ? null : carrying.times(part),
        aim,
        ceiling,
        reference,
        part > EVEN_ENOUGH ? Double.NaN : certified,
        aimFrom,
        speed);
  }

  /** The same with the aim of another tire of its axle, as far as the ceiling allows. */
  Limits aimingAt(double other, AimFrom from) {
    double cut = Double.isNaN(ceiling) ? other : Math.min(other, ceiling);
    return cut > aim
        ? new Limits(load, carrying, cut, ceiling, reference, certified, from, speed)
        : this;
  }

  /** Where an aim comes from. */
  public enum AimFrom {
    /** The certification label. */
    LABEL("the certification label's cold pressure"),
    /** The load, weighed over the label's share. */
    LOAD("what its weighed load needs, more than the label's share"),
    /** A load-based target that the user chose. */
    TARGET("the load-based target you chose"),
    /** The ceiling, which is below what would be wanted. */
    CEILING("its limit, below what label or load would want"),
    /** The axle's rating share from the fitted tire, since the label is not of these tires. */
    GAWR_SHARE("what the fitted tire needs for its share of the GAWR"),
    /** The rated pressure, for want of a label. */
    RATED("the tire's rated pressure, for want of a label"),
    /** Nothing known. */
    UNKNOWN("not known");

    private final String words;

    AimFrom(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** What a leg's top speed asks for. */
  public enum SpeedVerdict {
    /** Nothing. */
    FINE,
    /** Special trailer tire: 10 psi more were added to floor and aim. */
    RAISED,
    /** Special trailer tire: 10 psi more would pass the ceiling, so 65 mph or less. */
    KEEP_TO_65,
    /** Above what the tire is made for. */
    TOO_FAST
  }
}
