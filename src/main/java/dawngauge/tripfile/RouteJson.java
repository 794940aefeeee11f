package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.TripCodecs;
import dawngauge.field.WeightFields;
import dawngauge.geo.Coordinate;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
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
  static final Codec<Entered<Elevation>> ELEVATION = Codec.figure(QuantityKind.ELEVATION);

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
        legs.add(Objects.requireNonNullElse(leg, LegJson.UNKNOWN));
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
      Leg leg = i < route.legs().size() ? route.legs().get(i) : LegJson.UNKNOWN;
      departures.add(new Departure(route.stops().get(i), leg.equals(LegJson.UNKNOWN) ? null : leg));
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
            readCoordinate(in),
            in.known("elevation", ELEVATION),
            in.known("zone", TimeForms.ZONE_FORM),
            in.optional("stay", TimeForms.DURATION_FORM),
            in.optionalOrStandIn("arrive", TimeForms.TIME_FORM),
            in.optionalOrStandIn("leave", TimeForms.TIME_FORM),
            air == null ? Air.NONE : air,
            in.objects("loadChanges", each -> PartJson.read(each, WeightFields.LOAD_CHANGE)),
            in.isEstimate("elevation"),
            in.isEstimate("zone"),
            in.remarks());
    return new Departure(stop, in.object("leg", LegJson::read));
  }

  private static ObjectNode writeStop(Departure departure) {
    Stop stop = departure.stop;
    FieldWriter out =
        new FieldWriter()
            .put("id", Codec.NAME, stop.id())
            .put("place", Codec.TEXT, stop.place())
            .put("kind", KIND, stop.kind());
    Coordinate coordinate = stop.coordinate();
    if (coordinate != null) {
      out.numbers("at", coordinate.latitude(), coordinate.longitude());
    }
    out.known("elevation", ELEVATION, stop.elevation(), stop.elevationEstimated())
        .known("zone", TimeForms.ZONE_FORM, stop.zone(), stop.zoneEstimated())
        .put("stay", TimeForms.DURATION_FORM, stop.stay())
        .put("arrive", TimeForms.TIME_FORM, stop.arrive())
        .put("leave", TimeForms.TIME_FORM, stop.leave())
        .put("air", TripCodecs.AIR, stop.air())
        .objects(
            "loadChanges",
            stop.loadChanges(),
            each -> PartJson.write(WeightFields.LOAD_CHANGE, each));
    ObjectNode node = out.with(stop.remarks());
    return departure.leg == null ? node : node.set("leg", LegJson.write(departure.leg));
  }

  private static @Nullable Coordinate readCoordinate(FieldReader in) {
    double[] pair = in.pair("at", 90, 180);
    return pair == null ? null : new Coordinate(pair[0], pair[1]);
  }

  /** A coordinate that must be there; where it is missing or wrong, a stand-in. */
  static Coordinate requiredCoordinate(FieldReader in) {
    in.requirePair("at");
    return Objects.requireNonNullElse(readCoordinate(in), new Coordinate(0, 0));
  }
}
