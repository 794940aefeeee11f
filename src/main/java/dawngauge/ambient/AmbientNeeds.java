package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
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
   * @param point the point on the leg, or null at the stop itself
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
      @Nullable ProfilePoint point,
      String place,
      String stopId,
      double meters,
      @Nullable Coordinate coordinate,
      double elevationMeters,
      ZoneId zone,
      Instant from,
      Instant to,
      boolean required) {}

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
        addPoints(needs, visit, itinerary.drives().get(visit.index()));
      }
    }
    return new AmbientNeeds(needs);
  }

  private static boolean isAt(AmbientEntry entry, Itinerary.Visit visit) {
    return entry.stop().equals(visit.stop().id());
  }

  private static Need stopNeed(Itinerary.Visit visit) {
    var elevation = visit.stop().elevation();
    return new Need(
        visit.index(),
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

  private static void addPoints(List<Need> needs, Itinerary.Visit visit, Itinerary.Drive drive) {
    for (ProfilePoint point : drive.leg().profile()) {
      double along = point.distance().value().meters();
      double part = drive.meters() > 0 ? along / drive.meters() : 0;
      Instant when = visit.leave().plusMillis(Math.round(part * drive.seconds() * 1000));
      String name = point.name() == null ? "after " + visit.stop().place() : point.name();
      needs.add(
          new Need(
              visit.index(),
              point,
              name,
              visit.stop().id(),
              visit.meters() + along,
              null,
              point.elevation().value().meters(),
              visit.zone(),
              when,
              when,
              false));
    }
  }
}
