package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.tire.Capacity;
import dawngauge.tire.DateCode;
import dawngauge.tire.TireSize;
import dawngauge.tire.TireSpec;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelPosition;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Whether a spare can serve at a place: size, what tire and wheel may carry, and what pressure they
 * may take. What is not known does not speak against it here.
 *
 * @param spare the spare
 * @param place its tire as if fitted there
 */
public record SpareFit(Spare spare, FittedTire place) {

  /** Kilogram by which figures rounded in different units may differ. */
  public static final double ROUNDING = 0.5;

  /** A spare at a place; empty where the rig has no such tire. */
  public static Optional<SpareFit> of(Rig rig, Spare spare, WheelPosition position) {
    return rig.tire(spare.tire())
        .map(tire -> new SpareFit(spare, new FittedTire(rig, position, tire)));
  }

  /** What speaks against a spare. */
  public enum Fault {
    /** Meant for other axles, or for single wheels. */
    NOT_MEANT("it is not meant for this axle"),
    /** Another size. */
    SIZE("it is of another size"),
    /** Damaged. */
    DAMAGED("it is damaged"),
    /** Too old. */
    OLD("by its date code it is ten years old or more, or of an unknown decade"),
    /** Too weak. */
    TOO_WEAK("tire and wheel may not carry the load there"),
    /** Too little pressure. */
    PRESSURE("tire and wheel may not take the pressure that is asked for there");

    private final String words;

    Fault(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * What speaks against it; empty where it can serve.
   *
   * @param kilograms load there; NaN where not known
   * @param pascals pressure that a tire there is to have; NaN where not known
   * @param date of the trip; null where not known
   */
  public List<Fault> faults(Rig rig, double kilograms, double pascals, @Nullable LocalDate date) {
    List<Fault> faults = new ArrayList<>();
    boolean meant =
        spare.serves().isEmpty()
            ? !place.axle().dual()
            : spare.serves().contains(place.position().axle());
    add(faults, !meant, Fault.NOT_MEANT);
    add(faults, !sizeFits(rig), Fault.SIZE);
    add(faults, !sound(), Fault.DAMAGED);
    add(faults, date != null && old(date), Fault.OLD);
    add(faults, !carries(kilograms), Fault.TOO_WEAK);
    add(faults, !takesTheLabel() || pascals > ceilingPascals() + LimitFinder.GRACE, Fault.PRESSURE);
    return faults;
  }

  private static void add(List<Fault> faults, boolean holds, Fault fault) {
    if (holds) {
      faults.add(fault);
    }
  }

  /**
   * A spare of the rig that can serve at a place; empty where there is none.
   *
   * @param kilograms load there
   * @param pascals pressure that a tire there is to have; NaN where not known
   * @param date of the trip; null where not known
   */
  public static Optional<Spare> fitFor(
      Rig rig, WheelPosition position, double kilograms, double pascals, @Nullable LocalDate date) {
    return rig.spares().stream()
        .filter(
            spare ->
                of(rig, spare, position)
                    .filter(fit -> fit.faults(rig, kilograms, pascals, date).isEmpty())
                    .isPresent())
        .findFirst();
  }

  /** Whether it is of a size that the axle's label names or that is fitted on the axle. */
  public boolean sizeFits(Rig rig) {
    TireSpec spec = place.spec();
    String text = spec == null ? null : spec.size();
    if (text == null) {
      return true; // not known: said beside
    }
    String size = TireSize.plain(text);
    boolean labelled =
        place.axle().label().stream()
            .map(LabelFitment::size)
            .anyMatch(line -> TireSize.plain(line).equals(size));
    return labelled
        || place.axle().fitted().values().stream()
            .flatMap(id -> rig.tire(id).stream())
            .flatMap(tire -> rig.specOf(tire).stream())
            .flatMap(fitted -> Stream.ofNullable(fitted.size()))
            .anyMatch(fitted -> TireSize.plain(fitted).equals(size));
  }

  /** Whether its tire is not damaged. */
  private boolean sound() {
    Tire tire = place.tire();
    return tire.damage().isEmpty();
  }

  /** Whether it is so old that makers advise to replace it, whatever its tread. */
  private boolean old(LocalDate date) {
    String code = place.tire().dateCode();
    return code != null
        && DateCode.parse(code)
            .value()
            .filter(read -> !read.decadeKnown() || read.yearsOn(date) >= DateCode.MOST_YEARS)
            .isPresent();
  }

  /** Whether tire and wheel may carry a load, in kilogram; true where something is not known. */
  public boolean carries(double kilograms) {
    return !(kilograms > mostKilograms() + ROUNDING);
  }

  /** Whether its tire and wheel may take the label's pressure. */
  public boolean takesTheLabel() {
    return !(place.labelPascals() > ceilingPascals() + LimitFinder.GRACE);
  }

  /** Highest cold pressure that its tire and wheel may take, in pascal; NaN if not known. */
  public double ceilingPascals() {
    double sidewall = place.sidewallPascals();
    Entered<GaugePressure> rim = spare.wheelMaxPressure();
    if (rim == null) {
      return sidewall;
    }
    return Double.isNaN(sidewall)
        ? rim.value().pascals()
        : Math.min(sidewall, rim.value().pascals());
  }

  /** What tire and wheel may carry there within their pressure limits; NaN if not known. */
  public double mostKilograms() {
    Capacity capacity = place.capacity();
    double ceiling = ceilingPascals();
    double most =
        capacity == null
            ? Double.NaN
            : Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.kilogramsAt(ceiling);
    Entered<Mass> rim = spare.wheelMaxLoad();
    if (rim == null) {
      return most;
    }
    double rimMost = rim.value().kilograms();
    return Double.isNaN(most) ? rimMost : Math.min(most, rimMost);
  }
}
