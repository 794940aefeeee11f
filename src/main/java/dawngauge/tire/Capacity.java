package dawngauge.tire;

import dawngauge.explain.Step;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one tire may carry at a cold gauge pressure, and which pressure a load needs, as the tire is
 * fitted. Loads in kilogram, pressures in pascal above the air around; no correction for height, as
 * makers' tables have none.
 *
 * <p>Two curves. The <em>cautious</em> one is what is shown: the maker's rows as typed, straight
 * between them and from nothing to the first; without rows the upper concave hull of nothing, the
 * certification label's point and the rated pair, the most cautious published form (Tire Society
 * paper, 2009) raised by what the label vouches for. The <em>likely</em> one is the larger of that
 * and load ∝ pressure^n from the label's point and the rated pair, n of the tire's class; with rows
 * it is the rows. A chord proves that a tire carries, never that it does not: so a tire is told to
 * be overloaded by the likely curve, and sound by the cautious one. Never above the rated load.
 * Heat of running and speed are not in it ({@link TrailerSpeedRule}).
 */
public final class Capacity {

  /** Forgives figures that were rounded to whole units on sidewall, label and table. */
  private static final double WHOLE_UNITS = 0.01;

  /** A label over the likely figure of its class by more than this is a slip; inferred. */
  private static final double LABEL_OVER = 0.05;

  /** What a capacity rests on. */
  public enum Basis {
    /** The maker's rows. */
    ROWS("rows"),
    /** The sidewall's rated pair and the certification label. */
    LABEL("label"),
    /** The sidewall's rated pair alone. */
    SIDEWALL("sidewall");

    private final String word;

    Basis(String word) {
      this.word = word;
    }

    /** Its word in machine output. */
    public String word() {
      return word;
    }
  }

  private final Rating rating;
  private final LoadCurve curve;
  private final Basis basis;
  private final @Nullable CertifiedPoint label;
  private final TireSpec spec;
  private final double exponent;

  private Capacity(
      Rating rating, LoadCurve curve, Basis basis, @Nullable CertifiedPoint label, TireSpec spec) {
    this.rating = rating;
    this.curve = curve;
    this.basis = basis;
    this.label = label;
    this.spec = spec;
    this.exponent = LoadExponent.of(spec).value();
  }

  /**
   * The capacity of a tire.
   *
   * @param spec what the tire says of itself
   * @param fitment how it is fitted
   * @param label what the certification label vouches for, only where the tire is as on the label
   * @return no value and the gaps where rated load or pressure are not known; else the capacity,
   *     with notes on what was assumed
   */
  public static Outcome<Capacity> of(
      TireSpec spec, Fitment fitment, @Nullable CertifiedPoint label) {
    Outcome<Rating> rated = Rating.of(spec, fitment);
    if (!rated.hasValue()) {
      return Outcome.failed(rated.problems());
    }
    Rating rating = rated.get();
    List<Problem> notes = new ArrayList<>(rated.problems());
    LoadInflationTable table = spec.rows();
    LoadCurve rows =
        table == null
            ? null
            : LoadCurve.ofRows(table, fitment.dual(), rating.divisor(), rating.load().kilograms());
    if (table != null && rows != null) {
      noteEarlyEnd(spec, table, rating, notes);
      return Outcome.of(new Capacity(rating, rows, Basis.ROWS, null, spec), notes);
    }
    CertifiedPoint point = label != null && fits(label, rating, spec) ? label : null;
    if (label != null && point == null) {
      notes.add(
          Problem.of(
              ProblemCode.LABEL_POINT_NOT_USED,
              "",
              spec.name(),
              BothSystems.both(label.load()),
              BothSystems.both(label.coldPressure()),
              BothSystems.both(rating.load())));
    }
    Basis basis = point != null && LoadCurve.raises(rating, point) ? Basis.LABEL : Basis.SIDEWALL;
    return Outcome.of(
        new Capacity(
            rating,
            LoadCurve.certified(rating, point),
            basis,
            basis == Basis.LABEL ? point : null,
            spec),
        notes);
  }

  /** Whether a label's point is not over what its class likely carries at that pressure. */
  private static boolean fits(CertifiedPoint label, Rating rating, TireSpec spec) {
    double part = Math.min(1, label.coldPressure().pascals() / rating.pressure().pascals());
    double likely = rating.load().kilograms() * Math.pow(part, LoadExponent.of(spec).value());
    return part > 0
        && label.load().kilograms() > 0
        && label.load().kilograms() <= likely * (1 + LABEL_OVER);
  }

  private static void noteEarlyEnd(
      TireSpec spec, LoadInflationTable table, Rating rating, List<Problem> notes) {
    GaugePressure last = table.rows().get(table.rows().size() - 1).pressure().value();
    if (last.pascals() < rating.pressure().pascals() * (1 - WHOLE_UNITS)) {
      notes.add(
          Problem.of(
              ProblemCode.ROWS_END_EARLY,
              "",
              spec.name(),
              BothSystems.both(last),
              BothSystems.both(rating.pressure())));
    }
  }

  /** Load the tire may carry at a cold gauge pressure; nothing at or under zero. */
  public double kilogramsAt(double gaugePascals) {
    return curve.kilogramsAt(gaugePascals);
  }

  /** Load the tire likely carries at a cold gauge pressure, never less than it may. */
  public double likelyKilogramsAt(double gaugePascals) {
    double cautious = curve.kilogramsAt(gaugePascals);
    if (basis == Basis.ROWS || !(gaugePascals > 0)) {
      return cautious;
    }
    double likely = cautious;
    if (gaugePascals <= ratedPascals()) {
      likely = ratedKilograms() * Math.pow(gaugePascals / ratedPascals(), exponent);
    }
    CertifiedPoint point = label;
    if (point != null && gaugePascals <= point.coldPressure().pascals()) {
      double part = gaugePascals / point.coldPressure().pascals();
      likely = Math.max(likely, labelKilograms(point) * Math.pow(part, exponent));
    }
    return Math.max(cautious, likely);
  }

  private double labelKilograms(CertifiedPoint point) {
    return Math.min(ratedKilograms(), point.load().kilograms());
  }

  /**
   * Lowest cold gauge pressure at which the tire may carry a load; NaN where it may at none. Zero
   * or less for no load.
   */
  public double pascalsFor(double kilograms) {
    return curve.pascalsFor(kilograms);
  }

  /**
   * Lowest cold gauge pressure at which the tire likely carries a load, never above {@link
   * #pascalsFor}; NaN where that is.
   */
  public double likelyPascalsFor(double kilograms) {
    double pascals = curve.pascalsFor(kilograms);
    if (basis == Basis.ROWS || !(pascals > 0)) {
      return pascals;
    }
    double part = Math.min(1, kilograms / ratedKilograms());
    pascals = Math.min(pascals, ratedPascals() * Math.pow(part, 1 / exponent));
    CertifiedPoint point = label;
    if (point != null && kilograms <= labelKilograms(point)) {
      double ofLabel = Math.pow(kilograms / labelKilograms(point), 1 / exponent);
      pascals = Math.min(pascals, point.coldPressure().pascals() * ofLabel);
    }
    return pascals;
  }

  /** Rated load as fitted: dual where dual, divided by 1.10 where that rule holds. */
  public double ratedKilograms() {
    return rating.load().kilograms();
  }

  /** Cold gauge pressure at which the rated load holds. */
  public double ratedPascals() {
    return rating.pressure().pascals();
  }

  /** Most the tire may carry at any pressure: the rated load, or less where rows end early. */
  public double mostKilograms() {
    return curve.mostKilograms();
  }

  /** What the figures rest on. */
  public Basis basis() {
    return basis;
  }

  /** Whether the figures come from the maker's rows; else they are estimated. */
  public boolean fromRows() {
    return basis == Basis.ROWS;
  }

  /**
   * How the load at a pressure comes about; the last step holds it, or the figure that is in its
   * way.
   */
  public List<Step> stepsAt(GaugePressure pressure) {
    return new CapacitySteps(this, rating, LoadExponent.of(spec)).at(pressure);
  }

  /** How the pressure for a load comes about; the last step holds it, or the figure in its way. */
  public List<Step> stepsFor(Mass load) {
    return new CapacitySteps(this, rating, LoadExponent.of(spec)).forLoad(load);
  }
}
