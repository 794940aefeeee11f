package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Speed;
import dawngauge.trip.Leg;
import dawngauge.trip.Stop;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** Stops and legs with one thing changed. */
final class Stops {

  private Stops() {}

  static Stop coordinate(Stop stop, @Nullable Coordinate coordinate) {
    return new Stop(
        stop.id(),
        stop.place(),
        stop.kind(),
        coordinate,
        stop.elevation(),
        stop.zone(),
        stop.stay(),
        stop.arrive(),
        stop.leave(),
        stop.air(),
        stop.loadChanges(),
        stop.remarks());
  }

  static Stop zone(Stop stop, @Nullable ZoneId zone) {
    return new Stop(
        stop.id(),
        stop.place(),
        stop.kind(),
        stop.coordinate(),
        stop.elevation(),
        zone,
        stop.stay(),
        stop.arrive(),
        stop.leave(),
        stop.air(),
        stop.loadChanges(),
        stop.remarks());
  }

  static Stop stay(Stop stop, @Nullable Duration stay) {
    return new Stop(
        stop.id(),
        stop.place(),
        stop.kind(),
        stop.coordinate(),
        stop.elevation(),
        stop.zone(),
        stay,
        stop.arrive(),
        stop.leave(),
        stop.air(),
        stop.loadChanges(),
        stop.remarks());
  }

  static Stop leave(Stop stop, @Nullable TypedTime leave) {
    return new Stop(
        stop.id(),
        stop.place(),
        stop.kind(),
        stop.coordinate(),
        stop.elevation(),
        stop.zone(),
        stop.stay(),
        stop.arrive(),
        leave,
        stop.air(),
        stop.loadChanges(),
        stop.remarks());
  }

  static Leg average(Leg leg, @Nullable Entered<Speed> speed) {
    return new Leg(
        leg.distance(), speed, leg.duration(), leg.topSpeed(), leg.profile(), leg.remarks());
  }

  static Leg top(Leg leg, @Nullable Entered<Speed> speed) {
    return new Leg(
        leg.distance(), leg.averageSpeed(), leg.duration(), speed, leg.profile(), leg.remarks());
  }
}
