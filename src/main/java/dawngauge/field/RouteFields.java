package dawngauge.field;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.TrackMark;
import java.time.Duration;
import java.util.List;

/** What legs have, with the points along them. */
public final class RouteFields {

  /** Height of the ground. */
  public static final Codec<Entered<Elevation>> HEIGHT = Codec.figure(QuantityKind.ELEVATION);

  /** Temperature of the air. */
  public static final Codec<Entered<Temperature>> TEMPERATURE =
      Codec.figure(QuantityKind.TEMPERATURE);

  private static final Codec<Entered<Distance>> WAY = Codec.figure(QuantityKind.DISTANCE);
  private static final Codec<Entered<Speed>> SPEED = Codec.positive(QuantityKind.SPEED);
  private static final String MAP = "map";

  /** Name of a point. */
  public static final Field<ProfilePoint, String> POINT_NAME =
      Field.optional(
          "name",
          "Name",
          "as the crew calls it",
          Codec.TEXT,
          ProfilePoint::name,
          ProfilePoint::withName);

  /** Where a point lies on its leg. */
  public static final Field<ProfilePoint, Entered<Distance>> POINT_DISTANCE =
      Field.required(
          "distance",
          "Distance",
          "from the start of the leg",
          WAY,
          ProfilePoint::distance,
          ProfilePoint::withDistance);

  /** Height of a point. */
  public static final Field<ProfilePoint, Entered<Elevation>> POINT_ELEVATION =
      Field.required(
          "elevation",
          "Elevation",
          "map or sign",
          HEIGHT,
          ProfilePoint::elevation,
          ProfilePoint::withElevation);

  /** Air at a point. */
  public static final Field<ProfilePoint, Entered<Temperature>> POINT_AIR =
      Field.optional(
          "ambient",
          "Air",
          "expected when the rig passes",
          TEMPERATURE,
          ProfilePoint::ambient,
          ProfilePoint::withAmbient);

  /** A point along a leg, such as a pass. */
  public static final Part<ProfilePoint> PROFILE_POINT =
      Part.of(
          "profile point",
          "profilePoint",
          new ProfilePoint(null, WAY.standIn(), HEIGHT.standIn(), null, Remarks.NONE),
          ProfilePoint::remarks,
          ProfilePoint::withRemarks,
          List.<Member<ProfilePoint>>of(POINT_NAME, POINT_DISTANCE, POINT_ELEVATION, POINT_AIR));

  /** Where a point of a track is. */
  public static final Field<TrackMark, Coordinate> MARK_AT =
      Field.required(
          "at",
          "Lat, lon",
          "track",
          TripCodecs.COORDINATE,
          TrackMark::at,
          (mark, at) -> new TrackMark(at, mark.elevation()));

  /** How high a point of a track is. */
  public static final Field<TrackMark, Entered<Elevation>> MARK_ELEVATION =
      Field.optional(
          "elevation",
          "Elevation",
          "track",
          HEIGHT,
          TrackMark::elevation,
          (mark, height) -> new TrackMark(mark.at(), height));

  /** A point of the track that a leg was taken from. */
  public static final Part<TrackMark> TRACK_MARK =
      Part.bare(
          "track mark",
          "trackMark",
          new TrackMark(TripCodecs.COORDINATE.standIn(), null),
          List.<Member<TrackMark>>of(MARK_AT, MARK_ELEVATION));

  /** Length of a leg. */
  public static final Estimable<Leg, Entered<Distance>> LEG_DISTANCE =
      new Estimable<>(
          Field.optional("distance", "Distance", MAP, WAY, Leg::distance, Leg::withDistance),
          Leg::distanceEstimated,
          leg -> leg.withDistanceEstimated(true));

  /** Average speed on a leg. */
  public static final Field<Leg, Entered<Speed>> LEG_AVERAGE_SPEED =
      Field.optional(
          "averageSpeed",
          "Average speed",
          "while moving",
          SPEED,
          Leg::averageSpeed,
          Leg::withAverageSpeed);

  /** Driving time of a leg. */
  public static final Field<Leg, Duration> LEG_DURATION =
      Field.optional(
          "duration",
          "Driving time",
          "wins over distance and speed",
          TimeCodecs.DURATION,
          Leg::duration,
          Leg::withDuration);

  /** Highest speed on a leg. */
  public static final Field<Leg, Entered<Speed>> LEG_TOP_SPEED =
      Field.optional("topSpeed", "Top speed", "as driven", SPEED, Leg::topSpeed, Leg::withTopSpeed);

  /** Points along a leg. */
  public static final Parts<Leg, ProfilePoint> LEG_PROFILE =
      new Parts<>("profile", "Points", PROFILE_POINT, Leg::profile, Leg::withProfile);

  /** Points of the track of a leg. */
  public static final Parts<Leg, TrackMark> LEG_TRACK =
      new Parts<>("track", "Track", TRACK_MARK, Leg::track, Leg::withTrack);

  /** A leg. */
  public static final Part<Leg> LEG =
      Part.of(
          "leg",
          "leg",
          new Leg(null, null, null, null, List.of(), Remarks.NONE),
          Leg::remarks,
          Leg::withRemarks,
          List.<Member<Leg>>of(
              LEG_DISTANCE,
              LEG_AVERAGE_SPEED,
              LEG_DURATION,
              LEG_TOP_SPEED,
              LEG_PROFILE,
              LEG_TRACK));

  private RouteFields() {}
}
