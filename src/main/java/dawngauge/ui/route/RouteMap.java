package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.geo.Coordinate;
import dawngauge.planner.Plan;
import dawngauge.planner.TileSource;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.map.MapHands;
import dawngauge.ui.map.MapPicture;
import dawngauge.ui.map.MapStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** What the map shows of a trip, and what is done to the trip on it. */
final class RouteMap implements MapHands {

  private final TripDocument document;
  private final IntConsumer chosen;
  private final Consumer<Coordinate> added;
  private final Supplier<Optional<TileSource>> online;

  /**
   * The map of a document.
   *
   * @param chosen told which stop was pressed, counted from 0
   * @param added told where a stop is wanted
   * @param online asks for an online map
   */
  RouteMap(
      TripDocument document,
      IntConsumer chosen,
      Consumer<Coordinate> added,
      Supplier<Optional<TileSource>> online) {
    this.document = document;
    this.chosen = chosen;
    this.added = added;
    this.online = online;
  }

  /** The stops as they are now, one of them ringed. */
  MapPicture picture(int ringed, boolean dark) {
    Plan planned = document.shown();
    Advice advice = planned.advice();
    List<Stop> stops = planned.trip().route().stops();
    List<MapStop> shown = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      Coordinate at = stops.get(i).coordinate();
      if (at != null) {
        boolean known = advice != null && i < advice.stops().size();
        Mark mark = known && advice != null ? advice.stops().get(i).mark() : Mark.UNKNOWN;
        shown.add(new MapStop(i, Texts.shortened(stops.get(i).place()), at, mark));
      }
    }
    return new MapPicture(shown, ringed, document.units().unitOf(QuantityKind.DISTANCE), dark);
  }

  @Override
  public void chooseOnMap(int stop) {
    chosen.accept(stop);
  }

  @Override
  public void moveOnMap(int stop, Coordinate to) {
    Trip trip = document.trip();
    if (stop < trip.route().stops().size()) {
      document.edit(document.planner().places().movedTo(trip, stop, to));
    }
  }

  @Override
  public Optional<TileSource> onlineMap() {
    return online.get();
  }

  @Override
  public void addOnMap(Coordinate at) {
    added.accept(at);
  }
}
