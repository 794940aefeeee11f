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
 * <p>With the maker's rows: straight between the rows, flat above the last, no figure below the
 * first. Without: the most cautious published form, the straight line through the rated pair (Tire
 * Society paper, 2009), raised by the certification label where that vouches for more; no figure
 * below 60 % of the rated pressure unless the label's own pressure is lower. Never above the rated
 * load. Heat of running and speed are not in it ({@link TrailerSpeedRule}).
 */
public final class Capacity {

  /** Nothing is estimated below this part of the rated pressure; this project's choice. */
  static final double LEAST_PART = 0.6;

  /** Forgives figures that were rounded to whole units on sidewall, label and table. */
  private static final double WHOLE_UNITS = 0.01;

  /** Forgives the rounding of unit conversions, relative. */
  private static final double ROUNDING = 1e-9;

  private final Rating rating;
  private final LoadCurve curve;
  private final boolean fromRows;
  private final TireSpec spec;

  private Capacity(Rating rating, LoadCurve curve, boolean fromRows, TireSpec spec) {
    this.rating = rating;
    this.curve = curve;
    this.fromRows = fromRows;
    this.spec = spec;
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
      return Outcome.of(new Capacity(rating, rows, true, spec), notes);
    }
    double least = LEAST_PART * rating.pressure().pascals();
    CertifiedPoint point = label != null && fits(label, rating) ? label : null;
    if (label != null && point == null) {
      notes.add(
          Problem.of(
              ProblemCode.LABEL_POINT_NOT_USED,
              "",
              spec.name(),
              Figures.both(label.load()),
              Figures.both(label.coldPressure()),
              Figures.both(rating.load())));
    }
    return Outcome.of(
        new Capacity(rating, LoadCurve.estimated(rating, least, point), false, spec), notes);
  }

  private static boolean fits(CertifiedPoint label, Rating rating) {
    return label.coldPressure().pascals() > 0
        && label.load().kilograms() > 0
        && label.load().kilograms() <= rating.load().kilograms() * (1 + WHOLE_UNITS);
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
              Figures.both(last),
              Figures.both(rating.pressure())));
    }
  }

  /** Load the tire may carry at a cold gauge pressure; NaN where there is no figure. */
  public double kilogramsAt(double gaugePascals) {
    return curve.kilogramsAt(gaugePascals);
  }

  /**
   * Load the tire likely carries by the exponent of its class, never less than {@link
   * #kilogramsAt}; to be shown beside it, never to set air by. With rows the same as that; NaN
   * where that is.
   */
  public double likelyKilogramsAt(double gaugePascals) {
    double cautious = curve.kilogramsAt(gaugePascals);
    double part = gaugePascals / ratedPascals();
    if (fromRows || !(part >= LEAST_PART * (1 - ROUNDING))) {
      return cautious;
    }
    return Math.max(cautious, ratedKilograms() * Math.pow(Math.min(1, part), exponent().value()));
  }

  /**
   * Lowest cold gauge pressure whose capacity covers a load, not below {@link #lowestPascals}; NaN
   * where the load is above what the tire may carry at any pressure.
   */
  public double pascalsFor(double kilograms) {
    return curve.pascalsFor(kilograms);
  }

  /**
   * The pressure by the exponent of the class, never above {@link #pascalsFor}; to be shown only.
   */
  public double likelyPascalsFor(double kilograms) {
    double cautious = curve.pascalsFor(kilograms);
    if (fromRows || Double.isNaN(cautious)) {
      return cautious;
    }
    double part = Math.pow(Math.max(0, kilograms) / ratedKilograms(), 1 / exponent().value());
    return Math.min(cautious, ratedPascals() * Math.max(LEAST_PART, part));
  }

  /** Only asked for when a figure is to be shown: it reads the size text. */
  private LoadExponent exponent() {
    return LoadExponent.of(spec);
  }

  /** Rated load as fitted: dual where dual, divided by 1.10 where that rule holds. */
  public double ratedKilograms() {
    return rating.load().kilograms();
  }

  /** Cold gauge pressure at which the rated load holds. */
  public double ratedPascals() {
    return rating.pressure().pascals();
  }

  /** Lowest cold gauge pressure for which there is a figure. */
  public double lowestPascals() {
    return curve.lowestPascals();
  }

  /** Most the tire may carry at any pressure: the rated load, or less where rows end early. */
  public double mostKilograms() {
    return curve.mostKilograms();
  }

  /** Whether the figures between the rated ones are estimated: true unless rows are typed. */
  public boolean estimated() {
    return !fromRows;
  }

  /** Whether the figures come from the maker's rows. */
  public boolean fromRows() {
    return fromRows;
  }

  /**
   * How the load at a pressure comes about; the last step holds it, or the figure that is in its
   * way.
   */
  public List<Step> stepsAt(GaugePressure pressure) {
    return new CapacitySteps(this, rating, exponent()).at(pressure);
  }

  /** How the pressure for a load comes about; the last step holds it, or the figure in its way. */
  public List<Step> stepsFor(Mass load) {
    return new CapacitySteps(this, rating, exponent()).forLoad(load);
  }
}
