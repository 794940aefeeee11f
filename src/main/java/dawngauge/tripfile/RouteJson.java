package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.RouteFields;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Leg;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The route as JSON: stops in order, each with the leg that leaves it. */
final class RouteJson {
  /** A stop and the leg that leaves it, which may not be written yet. */
  private record Departure(Stop stop, @Nullable Leg leg) {}

  private RouteJson() {}

  static Route read(FieldReader in) {
    List<Departure> departures = in.objects("stops", RouteJson::readStop);
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < departures.size(); i++) {
      Leg leg = departures.get(i).leg;
      if (i < departures.size() - 1) {
        legs.add(Objects.requireNonNullElse(leg, RouteFields.LEG.blank()));
      } else if (leg != null) {
        String place = in.at("stops") + "/" + i + "/leg";
        in.report(ProblemCode.LEG_AFTER_LAST_STOP, place, departures.get(i).stop.place());
      }
    }
    return new Route(departures.stream().map(Departure::stop).toList(), legs);
  }

  static ObjectNode write(Route route) {
    List<Departure> departures = new ArrayList<>();
    for (int i = 0; i < route.stops().size(); i++) {
      Leg leg = i < route.legs().size() ? route.legs().get(i) : RouteFields.LEG.blank();
      departures.add(
          new Departure(route.stops().get(i), leg.equals(RouteFields.LEG.blank()) ? null : leg));
    }
    return new FieldWriter().objects("stops", departures, RouteJson::writeStop).node();
  }

  private static Departure readStop(FieldReader in) {
    return new Departure(
        PartJson.read(in, RouteFields.STOP),
        in.object("leg", each -> PartJson.read(each, RouteFields.LEG)));
  }

  private static ObjectNode writeStop(Departure departure) {
    ObjectNode node = PartJson.write(RouteFields.STOP, departure.stop);
    return departure.leg == null
        ? node
        : node.set("leg", PartJson.write(RouteFields.LEG, departure.leg));
  }
}
