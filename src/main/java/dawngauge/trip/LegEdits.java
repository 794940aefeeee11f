package dawngauge.trip;

import dawngauge.geo.PassNear;
import dawngauge.geo.Place;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Changes to one leg, and what must be asked of it. */
public final class LegEdits {

  /** An end at or above this may stand for a way through mountains; ours, no source. */
  private static final double HIGH = new Elevation(1200).meters();

  /** So do ends that differ by this much; ours, no source. */
  private static final double CLIMB = Elevation.of(1500, Unit.FOOT).meters();

  /** A point of a leg this near to a pass, in meter along and in height, is that pass; ours. */
  private static final double SAME_PASS_METERS = 25_000;

  private static final double SAME_PASS_HEIGHT = 150;

  private LegEdits() {}

  /** Whether a leg's distance was guessed. */
  public static boolean isGuessed(Leg leg) {
    return leg.distanceEstimated();
  }

  /** A leg with a typed distance, no longer guessed; its points must lie within it. */
  public static Outcome<Leg> withDistance(Leg leg, @Nullable Entered<Distance> distance) {
    for (ProfilePoint point : leg.profile()) {
      if (distance != null && point.distance().value().compareTo(distance.value()) > 0) {
        return Outcome.failed(
            Problem.of(
                ProblemCode.PROFILE_BEYOND_LEG, "", point.distance().text(), distance.text()));
      }
    }
    return Outcome.of(leg.withDistance(distance));
  }

  /** A leg with a further point along it. */
  public static Outcome<Leg> withPoint(Leg leg, ProfilePoint point) {
    return withPoint(leg, null, point);
  }

  /**
   * A leg with a point along it, in the place of another one or as a further one. It must lie
   * within the leg and where no other point does; the points stay in order.
   */
  public static Outcome<Leg> withPoint(Leg leg, @Nullable ProfilePoint old, ProfilePoint point) {
    Entered<Distance> length = leg.distance();
    Entered<Distance> along = point.distance();
    if (length == null && old == null) {
      return Outcome.failed(Problem.of(ProblemCode.PROFILE_WITHOUT_LENGTH, ""));
    } else if (length != null && along.value().compareTo(length.value()) > 0) {
      return Outcome.failed(
          Problem.of(ProblemCode.PROFILE_BEYOND_LEG, "", along.text(), length.text()));
    }
    List<ProfilePoint> points = new ArrayList<>(leg.profile());
    points.remove(old);
    if (points.stream().anyMatch(other -> other.distance().value().equals(along.value()))) {
      return Outcome.failed(Problem.of(ProblemCode.PROFILE_POINT_TAKEN, "", along.text()));
    }
    points.add(point);
    points.sort(Comparator.comparing(other -> other.distance().value()));
    return Outcome.of(leg.withProfile(points));
  }

  /**
   * A leg over a pass: a point of the pass's height where the straight line or the track runs by
   * it, both to be corrected.
   */
  public static Outcome<Leg> over(Leg leg, PassNear near) {
    Entered<Distance> length = leg.distance();
    if (length == null) {
      return Outcome.failed(Problem.of(ProblemCode.PROFILE_WITHOUT_LENGTH, ""));
    }
    boolean about = near.pass().kind() == Place.Kind.PASS_ABOUT;
    Distance along = new Distance(near.part() * length.value().meters());
    return withPoint(
        leg,
        new ProfilePoint(
            near.pass().name(),
            LegGuess.guessed(along, Unit.MILE, 1),
            LegGuess.guessed(near.pass().elevation(), Unit.FOOT, about ? 100 : 1),
            null,
            new Remarks(
                "where it lies on the leg is guessed" + (about ? ", its elevation about" : ""),
                Map.of())));
  }

  /** Whether a pass is among the points of a leg: by its name, or by place and height. */
  public static boolean isOver(Leg leg, PassNear near) {
    Entered<Distance> length = leg.distance();
    return leg.profile().stream()
        .anyMatch(
            point ->
                near.pass().name().equals(point.name())
                    || (length != null
                        && Math.abs(
                                point.distance().value().meters()
                                    - near.part() * length.value().meters())
                            < SAME_PASS_METERS
                        && Math.abs(
                                point.elevation().value().meters()
                                    - near.pass().elevation().meters())
                            < SAME_PASS_HEIGHT));
  }

  /** A leg without a point along it. */
  public static Leg withoutPoint(Leg leg, ProfilePoint point) {
    List<ProfilePoint> points = new ArrayList<>(leg.profile());
    points.remove(point);
    return leg.withProfile(points);
  }

  /**
   * Whether the highest point of a leg should be asked for: no point along it is known, its track
   * tells no heights, and an end lies at 1,200 m (about 4,000 ft) or higher, or the ends differ by
   * 1,500 ft or more. Nothing is guessed in its place: the nearest towns lie in the valleys.
   */
  public static boolean isTopUnknown(Stop from, Leg leg, Stop to) {
    Entered<Elevation> start = from.elevation();
    Entered<Elevation> end = to.elevation();
    if (!leg.profile().isEmpty() || leg.isHeightOfTrackKnown() || (start == null && end == null)) {
      return false;
    }
    double a = start == null ? Double.NaN : start.value().meters();
    double b = end == null ? Double.NaN : end.value().meters();
    return a >= HIGH || b >= HIGH || Math.abs(a - b) >= CLIMB;
  }
}
