package dawngauge.fitness;

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
 * A tire at a place of the rig, with what its figures mean there.
 *
 * @param position the place
 * @param tire the tire
 * @param axle its axle
 * @param vehicle its vehicle
 * @param spec what its sidewall says, if known
 * @param label the line of the label that speaks of it, else the first line, else null
 * @param labelSpeaks whether that line is of this size, class and load range
 * @param capacity what it may carry there, if known
 * @param gaps what is missing or assumed about that
 */
record Wheel(
    WheelPosition position,
    Tire tire,
    Axle axle,
    Vehicle vehicle,
    @Nullable TireSpec spec,
    @Nullable LabelFitment label,
    boolean labelSpeaks,
    @Nullable Capacity capacity,
    List<Problem> gaps) {

  /** A chosen target is never below this part of the label's pressure; ours, no source. */
  static final double LEAST_TARGET = 0.8;

  /** Grace for pressures rounded in different units. */
  static final double GRACE = GaugePressure.of(0.05, Unit.PSI).pascals();

  /**
   * A cold pressure that something may not exceed.
   *
   * @param whose in words
   * @param pressure the limit
   */
  record Limit(String whose, GaugePressure pressure) {}

  /**
   * The cold pressure that would be set.
   *
   * @param whose in words
   * @param pressure not cut by any limit
   */
  record Aim(String whose, GaugePressure pressure) {}

  Wheel {
    gaps = List.copyOf(gaps);
  }

  /** A tire as it is, or would be, fitted at a position. */
  static Wheel of(Rig rig, WheelPosition position, Tire tire) {
    Axle axle = rig.axle(position.axle()).orElseThrow();
    Vehicle vehicle = rig.vehicle(position.axle().vehicle()).orElseThrow();
    TireSpec spec = rig.specOf(tire).orElse(null);
    LabelFitment same = spec == null ? null : axle.labelFor(spec).orElse(null);
    LabelFitment label = same != null || axle.label().isEmpty() ? same : axle.label().get(0);
    if (spec == null) {
      Problem gap = Problem.of(ProblemCode.NO_TIRE_TYPE, "", tire.id());
      return new Wheel(position, tire, axle, vehicle, null, label, false, null, List.of(gap));
    }
    Entered<Mass> gawr = axle.gawr();
    CertifiedPoint point =
        same == null || gawr == null
            ? null
            : new CertifiedPoint(same.coldPressure().value(), share(gawr, axle));
    Fitment fitment = new Fitment(axle.dual(), vehicle.kind() != Vehicle.Kind.CAR);
    Outcome<Capacity> capacity = Capacity.of(spec, fitment, point);
    return new Wheel(
        position,
        tire,
        axle,
        vehicle,
        spec,
        label,
        same != null,
        capacity.valueOrNull(),
        capacity.problems());
  }

  private static Mass share(Entered<Mass> gawr, Axle axle) {
    return gawr.value().times(0.5 / axle.tiresPerSide());
  }

  /** The size as typed, else the name of the kind of tire. */
  String sizeWords() {
    return spec == null ? tire.type() : spec.size() == null ? spec.name() : spec.size();
  }

  /** Whether it is on a trailer. */
  boolean onTrailer() {
    return vehicle.kind() == Vehicle.Kind.TRAILER;
  }

  /** Whether it is on the front axle of a truck, where 49 CFR 393.75(b) asks for more tread. */
  boolean steers() {
    return vehicle.kind() == Vehicle.Kind.TRUCK && position.axle().number() == 1;
  }

  /** Every cold pressure that may not be exceeded here, as far as known. */
  List<Limit> limits() {
    List<Limit> limits = new ArrayList<>();
    GaugePressure sidewall = spec == null ? null : spec.sidewallLimit();
    if (sidewall != null) {
      limits.add(new Limit("the tire's sidewall limit", sidewall));
    }
    Entered<GaugePressure> wheel = axle.wheelMaxPressure();
    if (wheel != null) {
      limits.add(new Limit("the wheel's limit", wheel.value()));
    }
    Entered<GaugePressure> valve = axle.valveMaxPressure();
    if (valve != null) {
      limits.add(new Limit("the valve's limit", valve.value()));
    }
    if (rimMayBeForOtherTire() && label != null) {
      // The wheel may be rated for the label's tire only.
      limits.add(new Limit("the label's pressure", label.coldPressure().value()));
    }
    return limits;
  }

  /** The lowest limit; empty where none is known. */
  Optional<Limit> lowestLimit() {
    return limits().stream().min(Comparator.comparing(Limit::pressure));
  }

  /** Highest cold pressure allowed here, in pascal; NaN where no limit is known. */
  double ceilingPascals() {
    return lowestLimit().map(limit -> limit.pressure().pascals()).orElse(Double.NaN);
  }

  /** Whether the label is of another tire and a limit of wheel or valve is missing. */
  boolean rimMayBeForOtherTire() {
    return label != null
        && !labelSpeaks
        && (axle.wheelMaxPressure() == null || axle.valveMaxPressure() == null);
  }

  /** Whether a chosen target counts: with maker's rows and a scale weight, not far below label. */
  boolean targetCounts(boolean weighed) {
    Entered<GaugePressure> target = axle.target();
    return target != null
        && weighed
        && capacity != null
        && capacity.fromRows()
        && label != null
        && target.value().pascals()
            >= LEAST_TARGET * label.coldPressure().value().pascals() - GRACE;
  }

  /**
   * The cold pressure that would be set whatever the load, not cut by any limit: the target where
   * it counts, else the label's, else what the tire needs for the axle's rating; null where nothing
   * says.
   */
  @Nullable Aim aim(boolean weighed) {
    Entered<GaugePressure> target = axle.target();
    if (target != null && targetCounts(weighed)) {
      return new Aim("the target you chose", target.value());
    }
    GaugePressure labelled = label == null ? null : label.coldPressure().value();
    if (labelled != null && (labelSpeaks || capacity == null)) {
      return new Aim("the label's cold pressure", labelled);
    } else if (capacity == null) {
      return null;
    }
    GaugePressure rated = new GaugePressure(capacity.ratedPascals());
    if (labelled == null) {
      return new Aim("the tire's rated pressure, for want of a label", rated);
    }
    Entered<Mass> gawr = axle.gawr();
    double byRows =
        capacity.fromRows() && gawr != null
            ? capacity.pascalsFor(share(gawr, axle).kilograms())
            : Double.NaN;
    GaugePressure needed = Double.isNaN(byRows) ? rated : new GaugePressure(byRows);
    return new Aim(
        "what the fitted tire needs for its share of the GAWR",
        GaugePressure.max(labelled, needed));
  }
}
