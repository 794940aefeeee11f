package dawngauge.trip;

import dawngauge.tire.TireSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A rig while parts of it come and go. */
final class RigDraft {

  private final Rig rig;
  final List<Vehicle> vehicles;
  final List<TireSpec> tireTypes;
  final List<Tire> tires;
  final List<Spare> spares;
  final List<Gauge> gauges;
  final List<ScaleTicket> tickets;
  @Nullable Hitch hitch;
  @Nullable Worksheet worksheet;

  RigDraft(Rig rig) {
    this.rig = rig;
    vehicles = new ArrayList<>(rig.vehicles());
    tireTypes = new ArrayList<>(rig.tireTypes());
    tires = new ArrayList<>(rig.tires());
    spares = new ArrayList<>(rig.spares());
    gauges = new ArrayList<>(rig.gauges());
    tickets = new ArrayList<>(rig.tickets());
    hitch = rig.hitch();
    worksheet = rig.worksheet();
  }

  Rig rig() {
    return new Rig(
        rig.name(),
        vehicles,
        tireTypes,
        tires,
        spares,
        gauges,
        rig.compressorTop(),
        rig.compressorFlow(),
        rig.compressorFlowAt(),
        hitch,
        tickets,
        worksheet,
        rig.remarks());
  }

  /** Puts a vehicle with other axles in the place of the one at an index. */
  void axles(int index, List<Axle> axles) {
    Vehicle old = vehicles.get(index);
    vehicles.set(index, old.withAxles(axles));
  }

  /** A tire with an id that none had, of a kind. */
  String freshTire(String type) {
    String id = FreshNames.numbered("T", 1, tires.stream().map(Tire::id).toList());
    tires.add(new Tire(id, type, null, null, 1, null, Set.of(), Remarks.NONE));
    return id;
  }

  /** The name of a kind of tire; one without any figure begins where none has that name. */
  String kind(String name) {
    if (tireTypes.stream().noneMatch(spec -> spec.name().equals(name))) {
      tireTypes.add(
          new TireSpec(
              name, null, null, null, null, null, null, null, null, null, null, null, null));
    }
    return name;
  }
}
