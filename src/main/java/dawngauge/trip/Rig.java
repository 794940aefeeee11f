package dawngauge.trip;

import dawngauge.quantity.AirFlow;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.TireSpec;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything that rolls, and the gauges and hoses that go with it.
 *
 * @param name what the crew calls it
 * @param vehicles tow vehicle first, then trailers
 * @param tireTypes what the sidewalls say, once per kind of tire
 * @param tires each tire, spares too
 * @param spares tires carried as spares
 * @param gauges the gauges in the cab
 * @param compressorTop highest gauge pressure the crew's own compressor reaches, or null if there
 *     is none aboard; it makes air available at every stop
 * @param compressorFlow free air that it delivers, or null if not known
 * @param compressorFlowAt gauge pressure at which it delivers that, or null if not known
 * @param hitch how the trailer is carried, or null
 * @param tickets scale tickets; the last one that weighed an axle speaks for it
 * @param worksheet what it weighs empty and what is loaded where, or null
 * @param remarks note and extras
 */
@RecordBuilder
public record Rig(
    String name,
    List<Vehicle> vehicles,
    List<TireSpec> tireTypes,
    List<Tire> tires,
    List<Spare> spares,
    List<Gauge> gauges,
    @Nullable Entered<GaugePressure> compressorTop,
    @Nullable Entered<AirFlow> compressorFlow,
    @Nullable Entered<GaugePressure> compressorFlowAt,
    @Nullable Hitch hitch,
    List<ScaleTicket> tickets,
    @Nullable Worksheet worksheet,
    Remarks remarks)
    implements RigBuilder.With {

  /** Copies the lists. */
  public Rig {
    vehicles = List.copyOf(vehicles);
    tireTypes = List.copyOf(tireTypes);
    tires = List.copyOf(tires);
    spares = List.copyOf(spares);
    gauges = List.copyOf(gauges);
    tickets = List.copyOf(tickets);
  }

  /** A rig without a worksheet, of whose compressor no more is known than what it reaches. */
  public Rig(
      String name,
      List<Vehicle> vehicles,
      List<TireSpec> tireTypes,
      List<Tire> tires,
      List<Spare> spares,
      List<Gauge> gauges,
      @Nullable Entered<GaugePressure> compressorTop,
      @Nullable Hitch hitch,
      List<ScaleTicket> tickets,
      Remarks remarks) {
    this(
        name,
        vehicles,
        tireTypes,
        tires,
        spares,
        gauges,
        compressorTop,
        null,
        null,
        hitch,
        tickets,
        null,
        remarks);
  }

  /** The tire with an id. */
  public Optional<Tire> tire(String id) {
    return tires.stream().filter(tire -> tire.id().equals(id)).findFirst();
  }

  /** The kind of a tire. */
  public Optional<TireSpec> specOf(Tire tire) {
    return tireTypes.stream().filter(spec -> spec.name().equals(tire.type())).findFirst();
  }

  /** The gauge with a name. */
  public Optional<Gauge> gauge(String gaugeName) {
    return gauges.stream().filter(gauge -> gauge.name().equals(gaugeName)).findFirst();
  }

  /** The axle a reference means. */
  public Optional<Axle> axle(AxleRef ref) {
    return vehicles.stream()
        .filter(vehicle -> vehicle.name().equals(ref.vehicle()))
        .flatMap(
            vehicle ->
                ref.number() >= 1 && ref.number() <= vehicle.axles().size()
                    ? Stream.of(vehicle.axles().get(ref.number() - 1))
                    : Stream.empty())
        .findFirst();
  }

  /** The vehicle with a name. */
  public Optional<Vehicle> vehicle(String vehicleName) {
    return vehicles.stream().filter(vehicle -> vehicle.name().equals(vehicleName)).findFirst();
  }

  /** Every wheel position in walking order: vehicle by vehicle, axle by axle, left to right. */
  public List<WheelPosition> positions() {
    List<WheelPosition> all = new ArrayList<>();
    for (Vehicle vehicle : vehicles) {
      for (int number = 1; number <= vehicle.axles().size(); number++) {
        AxleRef ref = new AxleRef(vehicle.name(), number);
        for (WheelSlot slot : WheelSlot.of(vehicle.axles().get(number - 1).dual())) {
          all.add(new WheelPosition(ref, slot));
        }
      }
    }
    return all;
  }

  /** The tire fitted at a position when the trip starts. */
  public Optional<Tire> fittedAt(WheelPosition position) {
    return axle(position.axle())
        .map(axle -> axle.fitted().get(position.slot()))
        .flatMap(this::tire);
  }

  /** The short form of a position, such as "t2l": vehicle's letter, axle, slot. */
  public String shortForm(WheelPosition position) {
    String letter = vehicle(position.axle().vehicle()).map(Vehicle::letter).orElse("?");
    return letter + position.axle().number() + position.slot().letters();
  }
}
