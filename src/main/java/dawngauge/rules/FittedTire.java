package dawngauge.rules;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What does not change about a tire while it is fitted at a position: its figures, those of its
 * axle, and the parameters of its warm-up. Pressures are gauge pressures in pascal, loads in
 * kilogram; NaN where a figure is missing.
 */
public final class FittedTire {

  /** 49 CFR 571.110 S2: vehicles with a GVWR of 4,536 kg (10,000 lb) or less. */
  private static final double LIGHT_VEHICLE = Mass.of(4536, Unit.KILOGRAM).kilograms();

  /** Forgives rows and ratings rounded to whole units. */
  private static final double WHOLE_UNITS = 0.01;

  private final WheelPosition position;
  private final Tire tire;
  private final @Nullable TireSpec spec;
  private final Axle axle;
  private final Vehicle vehicle;
  private final @Nullable Capacity capacity;
  private final @Nullable LabelFitment label;
  private final boolean labelSpeaks;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> gaps = new ArrayList<>();

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
    double ceiling = ceilingPascals();
    if (label != null && labelPascals() > ceiling + LimitFinder.GRACE) {
      problems.add(label.above(new GaugePressure(ceiling), position.words()));
    }
  }

  private @Nullable Capacity findCapacity() {
    if (spec == null) {
      problems.add(Problem.of(ProblemCode.NO_TIRE_TYPE, position.words(), tire.id()));
      gaps.add(Problem.of(ProblemCode.NO_TIRE_TYPE, "", tire.id()));
      return null;
    }
    Fitment fitment = new Fitment(axle.dual(), vehicle.kind() != Vehicle.Kind.CAR);
    Outcome<Capacity> outcome = Capacity.of(spec, fitment, certifiedPoint());
    for (Problem problem : outcome.problems()) {
      gaps.add(problem);
      problems.add(problem.at(position.words()));
    }
    return outcome.valueOrNull();
  }

  /** The label as a second certified point, where it is of these tires. */
  private @Nullable CertifiedPoint certifiedPoint() {
    double share = certifiedKilograms();
    return label == null || Double.isNaN(share)
        ? null
        : new CertifiedPoint(label.coldPressure().value(), new Mass(share));
  }

  /**
   * The load for which the label's pressure is certified; NaN where the label is of another tire or
   * the axle has no rating. For a GVWR over 10,000 lb the tire's share of the GAWR (49 CFR 571.120
   * S5.3.1); at or under that the least of it and the axle's part of the GVWR (49 CFR 571.110
   * S4.3.4(c)), the hitch's share not taken off.
   */
  public double certifiedKilograms() {
    if (!labelSpeaks) {
      return Double.NaN;
    }
    double share = gawrShare();
    Entered<Mass> gvwr = vehicle.gvwr();
    double all = 0;
    for (Axle each : vehicle.axles()) {
      all += each.gawr() == null ? Double.NaN : each.gawr().value().kilograms();
    }
    if (gvwr == null || Double.isNaN(all) || gvwr.value().kilograms() > LIGHT_VEHICLE) {
      return share;
    }
    return Math.min(share, share * gvwr.value().kilograms() / all);
  }

  /**
   * Whether a tire at the label's pressure carries as certified: the label speaks for it, and rows,
   * where typed, give its share at that pressure.
   */
  boolean carriesAsCertified() {
    double share = certifiedKilograms();
    Capacity known = capacity;
    return known != null
        && !Double.isNaN(share)
        && known.likelyKilogramsAt(labelPascals()) >= share * (1 - WHOLE_UNITS);
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

  /** What is missing or assumed about its capacity, without its place. */
  public List<Problem> gaps() {
    return List.copyOf(gaps);
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

  /**
   * A cold pressure that something may not exceed.
   *
   * @param whose in words
   * @param pressure the limit
   */
  public record PressureLimit(String whose, GaugePressure pressure) {}

  /** Every cold pressure that may not be exceeded here, as far as known. */
  public List<PressureLimit> pressureLimits() {
    List<PressureLimit> limits = new ArrayList<>();
    GaugePressure sidewall = spec == null ? null : spec.sidewallLimit();
    if (sidewall != null) {
      limits.add(new PressureLimit("the tire's sidewall limit", sidewall));
    }
    Entered<GaugePressure> wheel = axle.wheelMaxPressure();
    if (wheel != null) {
      limits.add(new PressureLimit("the wheel's limit", wheel.value()));
    }
    Entered<GaugePressure> valve = axle.valveMaxPressure();
    if (valve != null) {
      limits.add(new PressureLimit("the valve's limit", valve.value()));
    }
    if (rimMayBeForOtherTire() && label != null) {
      limits.add(new PressureLimit("the label's pressure", label.coldPressure().value()));
    }
    return limits;
  }

  /** Highest cold pressure on the sidewall; NaN if not typed. */
  public double sidewallPascals() {
    GaugePressure limit = spec == null ? null : spec.sidewallLimit();
    return limit == null ? Double.NaN : limit.pascals();
  }

  /** The lowest of them; empty where none is known. */
  public Optional<PressureLimit> lowestLimit() {
    return pressureLimits().stream().min(Comparator.comparing(PressureLimit::pressure));
  }

  /** Pressure that no figure to set may exceed; NaN where no limit is known. */
  public double ceilingPascals() {
    return lowestLimit().map(limit -> limit.pressure().pascals()).orElse(Double.NaN);
  }

  /** Lowest limit of wheel and valve, which allow no band; infinite where neither is known. */
  public double rimPascals() {
    Entered<GaugePressure> wheel = axle.wheelMaxPressure();
    Entered<GaugePressure> valve = axle.valveMaxPressure();
    return Math.min(
        wheel == null ? Double.POSITIVE_INFINITY : wheel.value().pascals(),
        valve == null ? Double.POSITIVE_INFINITY : valve.value().pascals());
  }

  /**
   * Whether the label is of another tire and a limit of wheel or valve is missing: the wheel may be
   * rated for the label's tire only.
   */
  public boolean rimMayBeForOtherTire() {
    return label != null
        && !labelSpeaks
        && (axle.wheelMaxPressure() == null || axle.valveMaxPressure() == null);
  }

  /** The line of the label that speaks for it, else the first line, else null. */
  public @Nullable LabelFitment label() {
    return label;
  }

  /** The size as typed, else the name of the kind of tire. */
  public String sizeWords() {
    return spec == null ? tire.type() : spec.size() == null ? spec.name() : spec.size();
  }

  /** Whether it is on a trailer. */
  public boolean onTrailer() {
    return vehicle.kind() == Vehicle.Kind.TRAILER;
  }

  /** Whether it is on the front axle of a truck, where 49 CFR 393.75(b) asks for more tread. */
  public boolean steers() {
    return vehicle.kind() == Vehicle.Kind.TRUCK && position.axle().number() == 1;
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
