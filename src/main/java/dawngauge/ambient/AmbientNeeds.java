package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Where and when a forecast needs air temperatures: at every stop where the rig stands, and at the
 * points of a leg's profile.
 *
 * @param needs in the order of the route
 */
public record AmbientNeeds(List<Need> needs) {

  /**
   * One place and span of time.
   *
   * @param stop index of the stop, or of the stop before, for a point on a leg
   * @param along way from that stop in meter, on the leg that leaves it; NaN at the stop itself
   * @param point the profile's point there, or null
   * @param place its name, for messages
   * @param stopId id of the stop, or of the stop before
   * @param meters way from the start of the route
   * @param coordinate where it is, if known
   * @param elevationMeters height of the ground; NaN if not known
   * @param zone whose days count there
   * @param from first instant needed
   * @param to last instant needed
   * @param required whether the forecast is unknown there without an answer; else the air is taken
   *     between its neighbours
   */
  public record Need(
      int stop,
      double along,
      @Nullable ProfilePoint point,
      String place,
      String stopId,
      double meters,
      @Nullable Coordinate coordinate,
      double elevationMeters,
      ZoneId zone,
      Instant from,
      Instant to,
      boolean required) {

    /** Whether it is a stop, not a point on a leg. */
    public boolean isAtStop() {
      return Double.isNaN(along);
    }
  }

  /** Copies the list. */
  public AmbientNeeds {
    needs = List.copyOf(needs);
  }

  /** What a trip with known times needs. */
  public static AmbientNeeds of(Trip trip, Itinerary itinerary) {
    List<Need> needs = new ArrayList<>();
    for (Itinerary.Visit visit : itinerary.visits()) {
      boolean typed = trip.ambient().stream().anyMatch(e -> isAt(e, visit));
      boolean last = visit.index() == itinerary.visits().size() - 1;
      if (!visit.passes() || typed || last) {
        needs.add(stopNeed(visit));
      }
      if (!last) {
        addPoints(needs, trip, visit, itinerary.drives().get(visit.index()));
      }
    }
    return new AmbientNeeds(needs);
  }

  private static boolean isAt(AmbientEntry entry, Itinerary.Visit visit) {
    return entry.isAtStop() && entry.stop().equals(visit.stop().id());
  }

  private static Need stopNeed(Itinerary.Visit visit) {
    var elevation = visit.stop().elevation();
    return new Need(
        visit.index(),
        Double.NaN,
        null,
        visit.stop().place(),
        visit.stop().id(),
        visit.meters(),
        visit.stop().coordinate(),
        elevation == null ? Double.NaN : elevation.value().meters(),
        visit.zone(),
        visit.arrive(),
        visit.leave(),
        true);
  }

  /** Points of the leg's profile, and those for which air is given, in the order of the way. */
  private static void addPoints(
      List<Need> needs, Trip trip, Itinerary.Visit visit, Itinerary.Drive drive) {
    NavigableMap<Double, Need> points = new TreeMap<>();
    for (ProfilePoint point : drive.leg().profile()) {
      double along = point.distance().value().meters();
      String name = point.name() == null ? "after " + visit.stop().place() : point.name();
      points.put(
          along, onTheWay(visit, drive, along, point, name, point.elevation().value().meters()));
    }
    for (AmbientEntry entry : trip.ambient()) {
      Entered<Distance> along = entry.along();
      Entered<Elevation> elevation = entry.provenance().elevation();
      if (along != null && elevation != null && entry.stop().equals(visit.stop().id())) {
        double meters = along.value().meters();
        if (meters < drive.meters()) {
          points.putIfAbsent(
              meters,
              onTheWay(
                  visit,
                  drive,
                  meters,
                  null,
                  "after " + visit.stop().place(),
                  elevation.value().meters()));
        }
      }
    }
    needs.addAll(points.values());
  }

  private static Need onTheWay(
      Itinerary.Visit visit,
      Itinerary.Drive drive,
      double along,
      @Nullable ProfilePoint point,
      String name,
      double elevation) {
    double part = drive.meters() > 0 ? along / drive.meters() : 0;
    Instant when = visit.leave().plusMillis(Math.round(part * drive.seconds() * 1000));
    return new Need(
        visit.index(),
        along,
        point,
        name,
        visit.stop().id(),
        visit.meters() + along,
        null,
        elevation,
        visit.zone(),
        when,
        when,
        false);
  }
}
