package dawngauge.planner;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Estimate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.Place;
import dawngauge.geo.PlaceList;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Outcome;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Places by name and by where they lie, as stops of a trip. */
public final class Places {

  /** Nearer to the middle of a place than this, in meters, a point is in it; ours. */
  private static final double IN_PLACE = 3000;

  Places() {}

  /**
   * Places by name, best first.
   *
   * @param text what was typed
   * @param near a place on the route, or null; nearer ones come first
   * @param most how many at the most
   */
  public List<Place> search(String text, @Nullable Coordinate near, int most) {
    return Gazetteer.load().search(text, near, most);
  }

  /** Reads a list of places, one a line; see {@link PlaceList#read}. */
  public Outcome<PlaceList> list(String text, @Nullable Coordinate near, Map<String, Spot> chosen) {
    return PlaceList.read(Gazetteer.load(), text, near, chosen);
  }

  /** The points of a line that could become stops, named after the nearest place where nameless. */
  public List<Spot> spots(TrackLine line, List<TrackLine.Offer> offers) {
    List<Spot> spots = new ArrayList<>();
    for (TrackLine.Offer offer : offers) {
      TrackPoint point = line.points().get(offer.index());
      Spot spot = spotAt(point.at());
      spots.add(
          point.name().isEmpty()
              ? spot
              : new Spot(point.name(), spot.at(), spot.elevation(), spot.zone()));
    }
    return spots;
  }

  /** A point as a stop: named after the nearest place, with height and zone as estimates. */
  public Spot spotAt(Coordinate at) {
    Optional<Estimate> estimate = estimateAt(at);
    String name =
        estimate
            .map(near -> (near.away().meters() < IN_PLACE ? "" : "near ") + near.nearest().label())
            .orElse("a point on the way");
    return Spot.of(name, at, estimate);
  }

  /** A trip with one stop elsewhere; one that was named after its point is named anew. */
  public Trip movedTo(Trip trip, int index, Coordinate to) {
    Stop stop = trip.route().stops().get(index);
    Coordinate before = stop.coordinate();
    boolean named = before != null && spotAt(before).name().equals(stop.place());
    Stop moved = StopEdits.at(stop, to, estimateAt(to));
    return RouteEdits.at(trip, index, named ? moved.withPlace(spotAt(to).name()) : moved);
  }

  /** Rough elevation and time zone of a place, to be shown as an estimate. */
  public Optional<Estimate> estimateAt(Coordinate place) {
    return Gazetteer.load().estimateAt(place);
  }
}
