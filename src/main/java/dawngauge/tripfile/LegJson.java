package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.TrackMark;
import java.util.List;

/** Legs and their profile points as JSON. */
final class LegJson {
  /** A leg of which nothing is typed yet. */
  static final Leg UNKNOWN = new Leg(null, null, null, null, List.of(), Remarks.NONE);

  static final Codec<Entered<Temperature>> TEMPERATURE = Codec.figure(QuantityKind.TEMPERATURE);

  private static final Codec<Entered<Distance>> DISTANCE = Codec.figure(QuantityKind.DISTANCE);
  private static final Codec<Entered<Speed>> SPEED = Codec.positive(QuantityKind.SPEED);

  private LegJson() {}

  static Leg read(FieldReader in) {
    return new Leg(
        in.known("distance", DISTANCE),
        in.optional("averageSpeed", SPEED),
        in.optional("duration", TimeForms.DURATION_FORM),
        in.optional("topSpeed", SPEED),
        in.objects("profile", LegJson::readPoint),
        in.objects("track", LegJson::readMark),
        in.isEstimate("distance"),
        in.remarks());
  }

  static ObjectNode write(Leg leg) {
    return new FieldWriter()
        .known("distance", DISTANCE, leg.distance(), leg.distanceEstimated())
        .put("averageSpeed", SPEED, leg.averageSpeed())
        .put("duration", TimeForms.DURATION_FORM, leg.duration())
        .put("topSpeed", SPEED, leg.topSpeed())
        .objects("profile", leg.profile(), LegJson::writePoint)
        .objects("track", leg.track(), LegJson::writeMark)
        .with(leg.remarks());
  }

  private static ProfilePoint readPoint(FieldReader in) {
    return new ProfilePoint(
        in.optional("name", Codec.TEXT),
        in.required("distance", DISTANCE),
        in.required("elevation", RouteJson.ELEVATION),
        in.optional("ambient", TEMPERATURE),
        in.remarks());
  }

  private static ObjectNode writePoint(ProfilePoint point) {
    return new FieldWriter()
        .put("name", Codec.TEXT, point.name())
        .put("distance", DISTANCE, point.distance())
        .put("elevation", RouteJson.ELEVATION, point.elevation())
        .put("ambient", TEMPERATURE, point.ambient())
        .with(point.remarks());
  }

  private static TrackMark readMark(FieldReader in) {
    return new TrackMark(
        RouteJson.requiredCoordinate(in), in.optional("elevation", RouteJson.ELEVATION));
  }

  private static ObjectNode writeMark(TrackMark mark) {
    return new FieldWriter()
        .numbers("at", mark.at().latitude(), mark.at().longitude())
        .put("elevation", RouteJson.ELEVATION, mark.elevation())
        .node();
  }
}
