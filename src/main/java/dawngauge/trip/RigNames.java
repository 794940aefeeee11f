package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Ratio;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Lets everything that refers to a vehicle or a gauge follow its new name. */
final class RigNames {

  private RigNames() {}

  static Trip vehicle(Trip trip, String old, String name) {
    if (old.equals(name)) {
      return trip;
    }
    Rig rig = trip.rig();
    List<Spare> spares =
        rig.spares().stream()
            .map(spare -> spare.withServes(axles(spare.serves(), old, name)))
            .toList();
    List<ScaleTicket> tickets =
        rig.tickets().stream().map(ticket -> ticket(ticket, old, name)).toList();
    Rig renamed =
        rig.withSpares(spares)
            .withTickets(tickets)
            .withWorksheet(worksheet(rig.worksheet(), old, name));
    List<Stop> stops = trip.route().stops().stream().map(stop -> stop(stop, old, name)).toList();
    List<LogEvent> log = trip.log().stream().map(event -> moved(event, old, name)).toList();
    return trip.withRig(renamed).withRoute(new Route(stops, trip.route().legs())).withLog(log);
  }

  static Trip gauge(Trip trip, String old, String name) {
    return old.equals(name)
        ? trip
        : trip.withLog(trip.log().stream().map(event -> gauged(event, old, name)).toList());
  }

  private static AxleRef axle(AxleRef ref, String old, String name) {
    return ref.vehicle().equals(old) ? new AxleRef(name, ref.number()) : ref;
  }

  private static List<AxleRef> axles(List<AxleRef> refs, String old, String name) {
    return refs.stream().map(ref -> axle(ref, old, name)).toList();
  }

  private static ScaleTicket ticket(ScaleTicket ticket, String old, String name) {
    return ticket
        .withPlatforms(
            ticket.platforms().stream()
                .map(
                    platform ->
                        new ScaleTicket.Platform(
                            axles(platform.axles(), old, name), platform.weight()))
                .toList())
        .withWheels(
            ticket.wheels().stream()
                .map(
                    wheel ->
                        new ScaleTicket.WheelWeight(
                            axle(wheel.axle(), old, name), wheel.left(), wheel.weight()))
                .toList());
  }

  private static @Nullable Worksheet worksheet(@Nullable Worksheet sheet, String old, String name) {
    return sheet == null
        ? null
        : sheet
            .withEmpty(sheet.empty().stream().map(ticket -> ticket(ticket, old, name)).toList())
            .withLoads(
                sheet.loads().stream()
                    .map(load -> load.vehicle().equals(old) ? load.withVehicle(name) : load)
                    .toList());
  }

  private static Stop stop(Stop stop, String old, String name) {
    return stop.withLoadChanges(
        stop.loadChanges().stream().map(change -> load(change, old, name)).toList());
  }

  private static LoadChange load(LoadChange change, String old, String name) {
    Map<AxleRef, Entered<Ratio>> parts = new LinkedHashMap<>();
    change.axles().forEach((ref, part) -> parts.put(axle(ref, old, name), part));
    return change.withAxles(parts);
  }

  private static LogEvent moved(LogEvent event, String old, String name) {
    if (event instanceof LogEvent.TireChange change) {
      WheelPosition position =
          new WheelPosition(axle(change.position().axle(), old, name), change.position().slot());
      return new LogEvent.TireChange(
          change.time(), position, change.off(), change.on(), change.remarks());
    }
    return event;
  }

  private static LogEvent gauged(LogEvent event, String old, String name) {
    if (event instanceof LogEvent.Reading reading && reading.gauge().equals(old)) {
      return new LogEvent.Reading(
          reading.time(),
          reading.tire(),
          reading.pressure(),
          name,
          reading.state(),
          reading.air(),
          reading.tireTemperature(),
          reading.remarks());
    } else if (event instanceof LogEvent.Adjustment adjustment && adjustment.gauge().equals(old)) {
      return new LogEvent.Adjustment(
          adjustment.time(),
          adjustment.tire(),
          adjustment.from(),
          adjustment.to(),
          name,
          adjustment.remarks());
    }
    return event;
  }
}
