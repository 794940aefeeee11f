package dawngauge.rules;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.tire.Capacity;
import dawngauge.tire.CertifiedPoint;
import dawngauge.tire.Fitment;
import dawngauge.tire.LoadIndex;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What does not change about a tire while it is fitted at a position: its figures, those of its
 * axle, and the parameters of its warm-up. Pressures are gauge pressures in pascal, loads in
 * kilogram; NaN where a figure is missing.
 */
public final class FittedTire {

  private final WheelPosition position;
  private final Tire tire;
  private final @Nullable TireSpec spec;
  private final Axle axle;
  private final Vehicle vehicle;
  private final @Nullable Capacity capacity;
  private final @Nullable LabelFitment label;
  private final boolean labelSpeaks;
  private final List<Problem> problems = new ArrayList<>();

  /** A tire of a rig at a position. */
  public FittedTire(Rig rig, WheelPosition position, Tire tire) {
    this.position = position;
    this.tire = tire;
    this.axle = rig.axle(position.axle()).orElseThrow();
    this.vehicle = rig.vehicle(position.axle().vehicle()).orElseThrow();
    this.spec = rig.specOf(tire).orElse(null);
    LabelFitment same = spec == null ? null : axle.labelFor(spec).orElse(null);
    this.labelSpeaks = same != null;
    this.label = same != null ? same : axle.label().isEmpty() ? null : axle.label().get(0);
    this.capacity = findCapacity();
    if (label == null) {
      problems.add(Problem.of(ProblemCode.NO_LABEL_PRESSURE, position.words()));
    } else if (!labelSpeaks && spec != null) {
      problems.add(
          Problem.of(
              ProblemCode.LABEL_DOES_NOT_SPEAK,
              position.words(),
              described(label.size(), label.tireClass(), label.loadRange()),
              described(
                  spec.size() == null ? spec.name() : spec.size(),
                  spec.tireClass(),
                  spec.loadRange())));
    }
  }

  private @Nullable Capacity findCapacity() {
    if (spec == null) {
      problems.add(Problem.of(ProblemCode.NO_TIRE_TYPE, position.words(), tire.id()));
      return null;
    }
    Fitment fitment = new Fitment(axle.dual(), vehicle.kind() != Vehicle.Kind.CAR);
    Outcome<Capacity> outcome = Capacity.of(spec, fitment, certifiedPoint());
    for (Problem problem : outcome.problems()) {
      problems.add(problem.at(position.words()));
    }
    return outcome.valueOrNull();
  }

  /** The label as a second certified point (49 CFR 571.120 S5.3.1), where it is of these tires. */
  private @Nullable CertifiedPoint certifiedPoint() {
    double share = gawrShare();
    return label == null || !labelSpeaks || Double.isNaN(share)
        ? null
        : new CertifiedPoint(label.coldPressure().value(), new Mass(share));
  }

  private static String described(
      String size, @Nullable TireClass tireClass, @Nullable String loadRange) {
    return size
        + (tireClass == null ? "" : " " + tireClass.word())
        + (loadRange == null ? "" : " load range " + loadRange);
  }

  /** Where it is fitted. */
  public WheelPosition position() {
    return position;
  }

  /** The tire. */
  public Tire tire() {
    return tire;
  }

  /** What its sidewall says, if known. */
  public @Nullable TireSpec spec() {
    return spec;
  }

  /** Its axle. */
  public Axle axle() {
    return axle;
  }

  /** Its vehicle. */
  public Vehicle vehicle() {
    return vehicle;
  }

  /** What it may carry, if known. */
  public @Nullable Capacity capacity() {
    return capacity;
  }

  /** What is missing or assumed about it. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Cold pressure on the certification label; NaN without a label. */
  public double labelPascals() {
    return label == null ? Double.NaN : label.coldPressure().value().pascals();
  }

  /** Whether size, class and load range are those of the label. */
  public boolean labelSpeaks() {
    return labelSpeaks;
  }

  /** This tire's part of the axle's rating; NaN without a rating. */
  public double gawrShare() {
    Entered<Mass> gawr = axle.gawr();
    return gawr == null ? Double.NaN : gawr.value().kilograms() / 2 / axle.tiresPerSide();
  }

  /** Pressure that no figure to set may exceed; NaN where no limit is known. */
  public double ceilingPascals() {
    double ceiling = sidewallPascals();
    ceiling = lower(ceiling, axle.wheelMaxPressure());
    ceiling = lower(ceiling, axle.valveMaxPressure());
    boolean rimUnknown = axle.wheelMaxPressure() == null || axle.valveMaxPressure() == null;
    if (label != null && !labelSpeaks && rimUnknown) {
      // The wheel may be rated for the label's tire only.
      ceiling = lower(ceiling, label.coldPressure());
    }
    return ceiling;
  }

  /** Highest cold pressure on the sidewall; NaN if not typed. */
  public double sidewallPascals() {
    GaugePressure limit = spec == null ? null : spec.sidewallLimit();
    return limit == null ? Double.NaN : limit.pascals();
  }

  private static double lower(double limit, @Nullable Entered<GaugePressure> other) {
    if (other == null) {
      return limit;
    }
    double pascals = other.value().pascals();
    return Double.isNaN(limit) ? pascals : Math.min(limit, pascals);
  }

  /** Rated load when fitted alone, which scales the warm-up; NaN if not known. */
  public double ratedSingleKilograms() {
    if (spec == null) {
      return Double.NaN;
    }
    if (spec.ratedLoadSingle() != null) {
      return spec.ratedLoadSingle().value().kilograms();
    }
    Integer index = spec.loadIndexSingle();
    if (index != null) {
      return LoadIndex.mass(index).map(Mass::kilograms).orElse(Double.NaN);
    }
    return capacity == null ? Double.NaN : capacity.ratedKilograms();
  }

  /** Whether the special rule for trailer tires without a speed symbol holds. */
  boolean underTrailerSpeedRule() {
    return spec != null
        && spec.classOrFromSize() == TireClass.SPECIAL_TRAILER
        && spec.speedSymbol() == null;
  }
}
