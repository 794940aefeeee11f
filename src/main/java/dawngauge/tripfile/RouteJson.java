package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.RouteFields;
import dawngauge.field.TimeCodecs;
import dawngauge.field.TripCodecs;
import dawngauge.field.WeightFields;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Air;
import dawngauge.trip.Leg;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The route as JSON: stops in order, each with the leg that leaves it. */
final class RouteJson {
  private static final Codec<Stop.Kind> KIND = Codec.choice(Stop.Kind.class, Stop.Kind::word);

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
    Air air = in.optional("air", TripCodecs.AIR);
    Stop stop =
        new Stop(
            in.required("id", Codec.NAME),
            in.required("place", Codec.TEXT),
            in.required("kind", KIND),
            in.value("at", TripCodecs.COORDINATE, false),
            in.known("elevation", RouteFields.HEIGHT),
            in.known("zone", TimeCodecs.ZONE),
            in.optional("stay", TimeCodecs.DURATION),
            in.optional("arrive", TimeCodecs.TIME),
            in.optional("leave", TimeCodecs.TIME),
            air == null ? Air.NONE : air,
            in.objects("loadChanges", each -> PartJson.read(each, WeightFields.LOAD_CHANGE)),
            in.isEstimate("elevation"),
            in.isEstimate("zone"),
            in.remarks());
    return new Departure(stop, in.object("leg", each -> PartJson.read(each, RouteFields.LEG)));
  }

  private static ObjectNode writeStop(Departure departure) {
    Stop stop = departure.stop;
    FieldWriter out =
        new FieldWriter()
            .put("id", Codec.NAME, stop.id())
            .put("place", Codec.TEXT, stop.place())
            .put("kind", KIND, stop.kind());
    out.value("at", TripCodecs.COORDINATE, stop.coordinate())
        .known("elevation", RouteFields.HEIGHT, stop.elevation(), stop.elevationEstimated())
        .known("zone", TimeCodecs.ZONE, stop.zone(), stop.zoneEstimated())
        .put("stay", TimeCodecs.DURATION, stop.stay())
        .put("arrive", TimeCodecs.TIME, stop.arrive())
        .put("leave", TimeCodecs.TIME, stop.leave())
        .put("air", TripCodecs.AIR, stop.air())
        .objects(
            "loadChanges",
            stop.loadChanges(),
            each -> PartJson.write(WeightFields.LOAD_CHANGE, each));
    ObjectNode node = out.with(stop.remarks());
    return departure.leg == null
        ? node
        : node.set("leg", PartJson.write(RouteFields.LEG, departure.leg));
  }
}
