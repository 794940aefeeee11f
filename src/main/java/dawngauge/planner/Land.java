package dawngauge.planner;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Estimate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.LegGround;
import dawngauge.geo.PassNear;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the ground that comes with the program says of a trip. */
public final class Land {

  private Land() {}

  /**
   * The ground under the straight line of a leg, and the passes by it that are not among its points
   * yet; empty where an end has no coordinates.
   *
   * @param leg index of the leg
   */
  public static Optional<LegGround> of(Trip trip, int leg) {
    Coordinate from = trip.route().stops().get(leg).coordinate();
    Coordinate to = trip.route().stops().get(leg + 1).coordinate();
    if (from == null || to == null || from.equals(to)) {
      return Optional.empty();
    }
    Leg known = trip.route().legs().get(leg);
    return LegGround.between(from, to)
        .map(
            ground ->
                new LegGround(
                    ground.lowest(),
                    ground.highest(),
                    ground.passes().stream()
                        .filter(pass -> !LegEdits.isOver(known, pass))
                        .toList()));
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
