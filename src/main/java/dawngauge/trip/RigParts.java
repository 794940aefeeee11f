package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireSpec;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Parts of a rig that come and go, each change giving a new trip. What comes has no figure that
 * nobody typed, but for the step of a gauge. What refers to a part that goes, goes with it.
 */
public final class RigParts {

  private RigParts() {}

  /**
   * A trip from whose rig a part went.
   *
   * @param trip the trip
   * @param lost what went with the part, each in words
   */
  public record Changed(Trip trip, List<String> lost) {

    /** Copies the list. */
    public Changed {
      lost = List.copyOf(lost);
    }
  }

  /** Whether there is a letter left for another vehicle. */
  public static boolean canAddVehicle(Rig rig) {
    return FreshNames.letter("", rig.vehicles()).isPresent();
  }

  /**
   * Adds a vehicle without axles: a trailer at the end, another before all trailers. The trip stays
   * the same where no letter is left.
   */
  public static Trip withNewVehicle(Trip trip, Vehicle.Kind kind) {
    RigDraft draft = new RigDraft(trip.rig());
    List<String> names = draft.vehicles.stream().map(Vehicle::name).toList();
    String name = FreshNames.name(kind.word(), names);
    Optional<String> letter = FreshNames.letter(name, draft.vehicles);
    if (letter.isEmpty()) {
      return trip;
    }
    int trailers =
        (int) draft.vehicles.stream().takeWhile(v -> v.kind() != Vehicle.Kind.TRAILER).count();
    draft.vehicles.add(
        kind == Vehicle.Kind.TRAILER ? draft.vehicles.size() : trailers,
        new Vehicle(name, letter.get(), kind, null, List.of(), Remarks.NONE));
    return trip.withRig(draft.rig());
  }

  /** Takes a vehicle out, its tires too. */
  public static Changed withoutVehicle(Trip trip, int index) {
    RigDraft draft = new RigDraft(trip.rig());
    Vehicle vehicle = draft.vehicles.remove(index);
    vehicle.axles().forEach(axle -> removeTires(draft, axle.fitted().values()));
    return ReferenceCleanup.ofAxles(
        trip,
        draft,
        ref -> ref.vehicle().equals(vehicle.name()) ? Optional.empty() : Optional.of(ref));
  }

  /**
   * Adds an axle behind the others of a vehicle, with a new tire at each place. Kind of tire, GAWR
   * and label are those of the axle before it if that has as many wheels.
   */
  public static Trip withNewAxle(Trip trip, int vehicleIndex, boolean dual) {
    RigDraft draft = new RigDraft(trip.rig());
    Vehicle vehicle = draft.vehicles.get(vehicleIndex);
    List<Axle> axles = new ArrayList<>(vehicle.axles());
    Axle last = axles.isEmpty() ? null : axles.get(axles.size() - 1);
    boolean alike = last != null && last.dual() == dual;
    String type = last == null ? newKind(draft, vehicle) : kindOn(draft, vehicle, last);
    Map<WheelSlot, String> fitted = new HashMap<>();
    WheelSlot.of(dual).forEach(slot -> fitted.put(slot, draft.freshTire(type)));
    axles.add(
        new Axle(
            dual,
            alike && last != null ? last.gawr() : null,
            alike && last != null ? last.label() : List.of(),
            null,
            null,
            null,
            null,
            null,
            fitted,
            Remarks.NONE));
    draft.axles(vehicleIndex, axles);
    return trip.withRig(draft.rig());
  }

  /** Takes an axle out, its tires too; those behind it move up. */
  public static Changed withoutAxle(Trip trip, AxleRef gone) {
    RigDraft draft = new RigDraft(trip.rig());
    int index = indexOf(trip.rig(), gone);
    List<Axle> axles = new ArrayList<>(draft.vehicles.get(index).axles());
    Axle axle = axles.remove(gone.number() - 1);
    draft.axles(index, axles);
    removeTires(draft, axle.fitted().values());
    return ReferenceCleanup.ofAxles(
        trip,
        draft,
        ref -> {
          if (!ref.vehicle().equals(gone.vehicle()) || ref.number() < gone.number()) {
            return Optional.of(ref);
          }
          return ref.number() == gone.number()
              ? Optional.empty()
              : Optional.of(new AxleRef(ref.vehicle(), ref.number() - 1));
        });
  }

  /**
   * Gives an axle pairs of wheels or single ones. The outer tires of pairs are the ones that stay;
   * inner ones come as new tires of the same kind, or go.
   */
  public static Changed withDual(Trip trip, AxleRef ref, boolean dual) {
    RigDraft draft = new RigDraft(trip.rig());
    int index = indexOf(trip.rig(), ref);
    Vehicle vehicle = draft.vehicles.get(index);
    List<Axle> axles = new ArrayList<>(vehicle.axles());
    Axle old = axles.get(ref.number() - 1);
    if (old.dual() == dual) {
      return new Changed(trip, List.of());
    }
    String type = kindOn(draft, vehicle, old);
    Map<WheelSlot, String> fitted = new HashMap<>();
    old.fitted().forEach((slot, id) -> slotNow(slot, dual).ifPresent(now -> fitted.put(now, id)));
    removeTires(
        draft, old.fitted().values().stream().filter(id -> !fitted.containsValue(id)).toList());
    if (dual) {
      for (WheelSlot slot : List.of(WheelSlot.LEFT_INNER, WheelSlot.RIGHT_INNER)) {
        fitted.put(slot, draft.freshTire(type));
      }
    }
    axles.set(ref.number() - 1, old.withDual(dual).withFitted(fitted));
    draft.axles(index, axles);
    return ReferenceCleanup.ofPlaces(
        trip,
        draft,
        at ->
            at.axle().equals(ref)
                ? slotNow(at.slot(), dual).map(slot -> new WheelPosition(ref, slot))
                : Optional.of(at));
  }

  /** Adds a kind of tire without any figure. */
  public static Trip withNewKind(Trip trip) {
    RigDraft draft = new RigDraft(trip.rig());
    draft.kind(FreshNames.name("tires", draft.tireTypes.stream().map(TireSpec::name).toList()));
    return trip.withRig(draft.rig());
  }

  /** Whether a kind of tire may go: no tire is of it. */
  public static boolean canRemoveKind(Rig rig, int index) {
    String name = rig.tireTypes().get(index).name();
    return rig.tires().stream().noneMatch(tire -> tire.type().equals(name));
  }

  /** Takes a kind of tire out; one that a tire has stays. */
  public static Changed withoutKind(Trip trip, int index) {
    if (!canRemoveKind(trip.rig(), index)) {
      return new Changed(trip, List.of());
    }
    RigDraft draft = new RigDraft(trip.rig());
    draft.tireTypes.remove(index);
    return ReferenceCleanup.ofParts(trip, draft);
  }

  /** Adds a gauge that is open to the air and read to 1 psi. */
  public static Trip withNewGauge(Trip trip) {
    RigDraft draft = new RigDraft(trip.rig());
    String name = FreshNames.name("gauge", draft.gauges.stream().map(Gauge::name).toList());
    draft.gauges.add(
        new Gauge(
            name,
            Gauge.Kind.OPEN,
            null,
            null,
            Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi"),
            Remarks.NONE));
    return trip.withRig(draft.rig());
  }

  /** Takes a gauge out, and what was read with it. */
  public static Changed withoutGauge(Trip trip, int index) {
    RigDraft draft = new RigDraft(trip.rig());
    draft.gauges.remove(index);
    return ReferenceCleanup.ofParts(trip, draft);
  }

  /** Adds a spare of the kind that the last axle has; it is meant for every single wheel. */
  public static Trip withNewSpare(Trip trip) {
    RigDraft draft = new RigDraft(trip.rig());
    String type = "";
    for (Vehicle vehicle : trip.rig().vehicles()) {
      int axles = vehicle.axles().size();
      if (axles > 0) {
        type = kindOn(draft, vehicle, vehicle.axles().get(axles - 1));
      }
    }
    String kind = type.isEmpty() ? draft.kind("spare tires") : type;
    draft.spares.add(new Spare(draft.freshTire(kind), List.of(), null, null, Remarks.NONE));
    return trip.withRig(draft.rig());
  }

  /** Takes out a tire that is on no axle, as a spare or otherwise; one on an axle stays. */
  public static Changed withoutLooseTire(Trip trip, String id) {
    RigDraft draft = new RigDraft(trip.rig());
    boolean fitted =
        draft.vehicles.stream()
            .flatMap(vehicle -> vehicle.axles().stream())
            .anyMatch(axle -> axle.fitted().containsValue(id));
    if (fitted) {
      return new Changed(trip, List.of());
    }
    draft.spares.removeIf(spare -> spare.tire().equals(id));
    removeTires(draft, List.of(id));
    return ReferenceCleanup.ofParts(trip, draft);
  }

  private static Optional<WheelSlot> slotNow(WheelSlot slot, boolean dual) {
    return switch (slot) {
      case LEFT, LEFT_OUTER -> Optional.of(dual ? WheelSlot.LEFT_OUTER : WheelSlot.LEFT);
      case RIGHT, RIGHT_OUTER -> Optional.of(dual ? WheelSlot.RIGHT_OUTER : WheelSlot.RIGHT);
      case LEFT_INNER, RIGHT_INNER -> Optional.empty();
    };
  }

  private static void removeTires(RigDraft draft, Collection<String> ids) {
    draft.tires.removeIf(tire -> ids.contains(tire.id()));
  }

  private static String newKind(RigDraft draft, Vehicle vehicle) {
    return draft.kind(vehicle.name() + " tires");
  }

  /** The kind of the first tire of an axle in walking order. */
  private static String kindOn(RigDraft draft, Vehicle vehicle, Axle axle) {
    return WheelSlot.of(axle.dual()).stream()
        .flatMap(slot -> Optional.ofNullable(axle.fitted().get(slot)).stream())
        .flatMap(id -> draft.tires.stream().filter(tire -> tire.id().equals(id)))
        .map(Tire::type)
        .findFirst()
        .orElseGet(() -> newKind(draft, vehicle));
  }

  private static int indexOf(Rig rig, AxleRef ref) {
    for (int i = 0; i < rig.vehicles().size(); i++) {
      Vehicle vehicle = rig.vehicles().get(i);
      if (vehicle.name().equals(ref.vehicle())
          && ref.number() >= 1
          && ref.number() <= vehicle.axles().size()) {
        return i;
      }
    }
    throw new IllegalArgumentException("no " + ref.words());
  }
}
