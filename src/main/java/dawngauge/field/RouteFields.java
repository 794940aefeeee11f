package dawngauge.field;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Air;
import dawngauge.trip.Leg;
import dawngauge.trip.LoadChange;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.Stop;
import dawngauge.trip.TrackMark;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/** What stops and legs have. */
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

  /** How others refer to a stop. */
  public static final Field<Stop, String> STOP_ID =
      Field.name("id", "Id", "as air and log refer to it", Codec.NAME, Stop::id, Stop::withId);

  /** Name of a stop. */
  public static final Field<Stop, String> STOP_PLACE =
      Field.required(
          "place", "Place", "as the crew calls it", Codec.TEXT, Stop::place, Stop::withPlace);

  /** Kind of a stop. */
  public static final Field<Stop, Stop.Kind> STOP_KIND =
      Field.required(
          "kind",
          "Kind of stop",
          "what it is for",
          Codec.choice(Stop.Kind.class, Stop.Kind::word),
          Stop::kind,
          Stop::withKind);

  /** Where a stop is. */
  public static final Field<Stop, Coordinate> STOP_AT =
      Field.optional(
          "at", "Lat, lon", MAP, TripCodecs.COORDINATE, Stop::coordinate, Stop::withCoordinate);

  /** Height of a stop. */
  public static final Estimable<Stop, Entered<Elevation>> STOP_ELEVATION =
      new Estimable<>(
          Field.optional(
              "elevation",
              "Elevation",
              "map or sign; else of the places near",
              HEIGHT,
              Stop::elevation,
              Stop::withElevation),
          Stop::elevationEstimated,
          stop -> stop.withElevationEstimated(true));

  /** Time zone of a stop. */
  public static final Estimable<Stop, ZoneId> STOP_ZONE =
      new Estimable<>(
          Field.optional(
              "zone",
              "Time zone",
              "region; else that of the stop before",
              TimeCodecs.ZONE,
              Stop::zone,
              Stop::withZone),
          Stop::zoneEstimated,
          stop -> stop.withZoneEstimated(true));

  /** How long the rig stands. */
  public static final Field<Stop, Duration> STOP_STAY =
      Field.optional("stay", "Stay", "as planned", TimeCodecs.DURATION, Stop::stay, Stop::withStay);

  /** Typed arrival. */
  public static final Field<Stop, TypedTime> STOP_ARRIVE =
      Field.optional(
          "arrive",
          "Arrival time",
          "where it is fixed; else computed",
          TimeCodecs.TIME,
          Stop::arrive,
          Stop::withArrive);

  /** Typed departure. */
  public static final Field<Stop, TypedTime> STOP_LEAVE =
      Field.optional(
          "leave",
          "Leaving time",
          "where it is fixed; needed at the start",
          TimeCodecs.TIME,
          Stop::leave,
          Stop::withLeave);

  /** Whether air is to be had; none is written too. */
  public static final Field<Stop, Air> STOP_AIR =
      Field.optional(
          "air",
          "Air hose",
          "at the place: none, yes, or up to 100 psi",
          TripCodecs.AIR,
          Stop::air,
          (stop, air) -> stop.withAir(Objects.requireNonNullElse(air, Air.NONE)));

  /** Loads taken on or set down at a stop. */
  public static final Parts<Stop, LoadChange> STOP_LOADS =
      new Parts<>(
          "loadChanges",
          "Loads",
          WeightFields.LOAD_CHANGE,
          Stop::loadChanges,
          Stop::withLoadChanges);

  /** A stop; in the file the leg that leaves it stands inside it. */
  public static final Part<Stop> STOP =
      Part.of(
          "stop",
          "stop",
          Stop.named("", "", Stop.Kind.START),
          Stop::remarks,
          Stop::withRemarks,
          List.<Member<Stop>>of(
              STOP_ID,
              STOP_PLACE,
              STOP_KIND,
              STOP_AT,
              STOP_ELEVATION,
              STOP_ZONE,
              STOP_STAY,
              STOP_ARRIVE,
              STOP_LEAVE,
              STOP_AIR,
              STOP_LOADS));

  private RouteFields() {}
}
