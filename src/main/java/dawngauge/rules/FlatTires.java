package dawngauge.rules;

import dawngauge.trip.AxleRef;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which tires are flat where they stand, and which tire then carries for them: the mate of a dual
 * pair, on axles of single wheels that stand close the neighbor on that side. It takes the whole of
 * both; inferred, the cautious side.
 */
final class FlatTires {

  private final Rig rig;
  private final List<WheelPosition> flat = new ArrayList<>();

  /** Of a trip, wheels changed in its log counted. */
  FlatTires(Trip trip) {
    rig = trip.rig();
    Map<WheelPosition, String> changed = new HashMap<>();
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.TireChange change) {
        changed.put(change.position(), change.on());
      }
    }
    for (WheelPosition position : rig.positions()) {
      String other = changed.get(position);
      (other == null ? rig.fittedAt(position) : rig.tire(other))
          .filter(tire -> tire.damage().contains(Tire.Damage.FLAT))
          .ifPresent(tire -> flat.add(position));
    }
  }

  /** The flat tires whose load the tire at a position takes over. */
  List<WheelPosition> leftTo(WheelPosition position) {
    List<WheelPosition> found = new ArrayList<>();
    for (WheelPosition other : flat) {
      if (!flat.contains(position) && takesOver(position, other)) {
        found.add(other);
      }
    }
    return found;
  }

  private boolean takesOver(WheelPosition position, WheelPosition flatOne) {
    AxleRef axle = position.axle();
    AxleRef other = flatOne.axle();
    if (axle.equals(other)) {
      return position.slot().mate() == flatOne.slot() && position.slot() != flatOne.slot();
    }
    boolean dual = rig.axle(other).orElseThrow().dual();
    return !dual
        && axle.vehicle().equals(other.vehicle())
        && Math.abs(axle.number() - other.number()) == 1
        && position.slot().isLeft() == flatOne.slot().isLeft()
        && closeTo(axle)
        && closeTo(other);
  }

  /** Axles stand close on a trailer, and behind the front axle of a tow vehicle. */
  private boolean closeTo(AxleRef axle) {
    return axle.number() > 1
        || rig.vehicle(axle.vehicle())
            .filter(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER)
            .isPresent();
  }
}
