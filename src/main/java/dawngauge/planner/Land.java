package dawngauge.planner;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Estimate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.LegGround;
import dawngauge.geo.PassNear;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.TrackMark;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the ground that comes with the program says of a trip. */
public final class Land {

  private Land() {}

  /** A track counts that begins and ends this near to the stops of its leg, in meter; ours. */
  private static final double TRACK_ENDS_METERS = 5000;

  /**
   * The ground of a leg, see {@link #under}, without the passes that are among its points already.
   *
   * @param leg index of the leg
   */
  public static Optional<LegGround> of(Trip trip, int leg) {
    Leg known = trip.route().legs().get(leg);
    return under(trip.route().stops().get(leg), known, trip.route().stops().get(leg + 1))
        .map(ground -> offered(ground, known));
  }

  /** The ground of a leg without the passes that are among its points already. */
  public static LegGround offered(LegGround ground, Leg leg) {
    return new LegGround(
        ground.under(),
        ground.estimated(),
        ground.lowest(),
        ground.highest(),
        ground.passes().stream().filter(pass -> !LegEdits.isOver(leg, pass)).toList());
  }

  /**
   * The ground under a leg's track where it has one that leads from stop to stop, else under the
   * straight line between the stops; and the passes by it. Empty where an end has no coordinates.
   */
  public static Optional<LegGround> under(Stop from, Leg leg, Stop to) {
    Coordinate start = from.coordinate();
    Coordinate end = to.coordinate();
    if (start == null || end == null) {
      return Optional.empty();
    }
    List<TrackMark> track = leg.track();
    if (track.size() > 1
        && isNear(track.get(0), start)
        && isNear(track.get(track.size() - 1), end)) {
      boolean heights = leg.isHeightOfTrackKnown();
      return LegGround.along(track.stream().map(mark -> point(mark, heights)).toList());
    }
    return start.equals(end) ? Optional.empty() : LegGround.between(start, end);
  }

  private static boolean isNear(TrackMark mark, Coordinate stop) {
    return GreatCircle.between(mark.at(), stop).meters() <= TRACK_ENDS_METERS;
  }

  private static TrackPoint point(TrackMark mark, boolean heights) {
    Entered<Elevation> height = heights ? mark.elevation() : null;
    return new TrackPoint(mark.at(), height == null ? null : height.value(), "");
  }

  /** A trip whose leg goes over a pass; as it is where the leg has no length. */
  public static Trip over(Trip trip, int leg, PassNear pass) {
    return LegEdits.over(trip.route().legs().get(leg), pass)
        .value()
        .map(over -> RouteEdits.withLeg(trip, leg, over))
        .orElse(trip);
  }

  /** Stops whose height cannot well be that of the ground where they lie. */
  public static List<Problem> doubts(Trip trip) {
    List<Problem> doubts = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      Coordinate at = stop.coordinate();
      Entered<Elevation> height = stop.elevation();
      if (at != null && height != null && !Estimate.fits(at, height.value())) {
        Gazetteer.load()
            .estimateAt(at)
            .filter(ground -> ground.doubts(height.value()))
            .ifPresent(ground -> doubts.add(doubt(stop, height, ground)));
      }
    }
    return doubts;
  }

  private static Problem doubt(Stop stop, Entered<Elevation> height, Estimate ground) {
    return Problem.of(
        ProblemCode.ELEVATION_DOUBTED,
        stop.place(),
        height.text(),
        Heights.words(ground.elevation().meters()),
        Heights.words(ground.doubt().meters()));
  }
}
