package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One place for which a weather service is asked: a stop whose air is not typed, a point of a leg's
 * profile, or a point on a long leg.
 *
 * @param stopId id of the stop, or of the stop before
 * @param name what the place is called in messages
 * @param along way from that stop in meter; NaN at the stop itself
 * @param coordinate where; on a leg on the great circle between its ends, in proportion
 * @param elevationMeters height of the ground; NaN if not known
 * @param zone whose clock is written
 * @param from first instant wanted
 * @param to last instant wanted
 */
record WeatherPoint(
    String stopId,
    String name,
    double along,
    Coordinate coordinate,
    double elevationMeters,
    ZoneId zone,
    Instant from,
    Instant to) {

  /** On a leg a point every so far, in meter: 50 miles. */
  private static final double APART = 50 * 1609.344;

  /** A point this near to one of the profile, in meter, says nothing new. */
  private static final double NEAR = 15_000;

  /** So long before and after a stay the air is wanted too: the night before it counts. */
  static final Duration AROUND_STAY = Duration.ofHours(12);

  /** So long before and after a point is passed; a crew may run late. */
  private static final Duration AROUND_PASSING = Duration.ofHours(6);

  boolean isAtStop() {
    return Double.isNaN(along);
  }

  /** The question about this place. */
  WeatherQuery query() {
    return new WeatherQuery(coordinate, elevationMeters, from, to);
  }

  /** All places of a trip that want weather, in the order of the way. */
  static List<WeatherPoint> of(Trip trip, Itinerary itinerary, List<Problem> problems) {
    List<WeatherPoint> points = new ArrayList<>();
    List<Itinerary.Visit> visits = itinerary.visits();
    for (int i = 0; i < visits.size(); i++) {
      Itinerary.Visit visit = visits.get(i);
      Coordinate here = visit.stop().coordinate();
      if (here == null && !isTyped(trip, visit) && !visit.passes()) {
        problems.add(Problem.of(ProblemCode.NO_PLACE_FOR_WEATHER, visit.stop().place()));
      } else if (here != null && !isTyped(trip, visit)) {
        points.add(atStop(visit, here));
      }
      Coordinate next = i + 1 < visits.size() ? visits.get(i + 1).stop().coordinate() : null;
      if (here != null && next != null) {
        addOnLeg(points, visit, itinerary.drives().get(i), here, next);
      }
    }
    return points;
  }

  private static boolean isTyped(Trip trip, Itinerary.Visit visit) {
    return trip.ambient().stream()
        .filter(AmbientEntry::isAtStop)
        .filter(entry -> entry.stop().equals(visit.stop().id()))
        .anyMatch(entry -> entry.provenance().byHand());
  }

  private static WeatherPoint atStop(Itinerary.Visit visit, Coordinate here) {
    Entered<Elevation> elevation = visit.stop().elevation();
    return new WeatherPoint(
        visit.stop().id(),
        visit.stop().place(),
        Double.NaN,
        here,
        elevation == null ? Double.NaN : elevation.value().meters(),
        visit.zone(),
        visit.arrive().minus(AROUND_STAY),
        visit.leave().plus(AROUND_STAY));
  }

  private static void addOnLeg(
      List<WeatherPoint> points,
      Itinerary.Visit visit,
      Itinerary.Drive drive,
      Coordinate here,
      Coordinate next) {
    double length = drive.meters();
    List<WeatherPoint> found = new ArrayList<>();
    for (ProfilePoint point : drive.leg().profile()) {
      double along = point.distance().value().meters();
      if (point.ambient() == null && along > 0 && along < length) {
        found.add(
            onLeg(
                visit, drive, along, point.name(), point.elevation().value().meters(), here, next));
      }
    }
    int parts = (int) Math.ceil(length / APART);
    for (int k = 1; k < parts; k++) {
      double along = length * k / parts;
      boolean known =
          drive.leg().profile().stream()
              .anyMatch(p -> Math.abs(p.distance().value().meters() - along) < NEAR);
      if (!known) {
        found.add(onLeg(visit, drive, Math.rint(along), null, Double.NaN, here, next));
      }
    }
    found.sort((a, b) -> Double.compare(a.along, b.along));
    points.addAll(found);
  }

  private static WeatherPoint onLeg(
      Itinerary.Visit visit,
      Itinerary.Drive drive,
      double along,
      @Nullable String name,
      double elevation,
      Coordinate here,
      Coordinate next) {
    double part = along / drive.meters();
    Instant passed = visit.leave().plusMillis(Math.round(part * drive.seconds() * 1000));
    return new WeatherPoint(
        visit.stop().id(),
        name == null ? "after " + visit.stop().place() : name,
        along,
        GreatCircle.along(here, next, part),
        elevation,
        visit.zone(),
        passed.minus(AROUND_PASSING),
        passed.plus(AROUND_PASSING));
  }
}
