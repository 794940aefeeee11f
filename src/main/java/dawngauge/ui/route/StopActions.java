package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.trip.GroupEdits;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.RouteOfPlaces;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.function.IntConsumer;

/** Edits of the route's stops as a whole. Each says which stop is to be chosen after it. */
final class StopActions {

  private final TripDocument document;
  private final IntConsumer chosen;

  /**
   * Edits of a document.
   *
   * @param chosen told, before the edit, which stop is chosen after it, counted from 0
   */
  StopActions(TripDocument document, IntConsumer chosen) {
    this.document = document;
    this.chosen = chosen;
  }

  /** Puts a new stop behind one. */
  void insertAfter(int index) {
    insert(index, newStop("New stop"));
  }

  /** Puts a stop at a place on the map behind one. */
  void insertAt(int index, Coordinate at) {
    var spot = document.planner().places().spotAt(at);
    insert(index, StopEdits.at(newStop(spot.name()), spot));
  }

  private void insert(int index, Stop stop) {
    Trip trip = document.trip();
    int at = trip.route().stops().isEmpty() ? 0 : index + 1;
    chosen.accept(at);
    Trip grown = RouteEdits.insert(trip, at, stop);
    document.edit(
        stop.coordinate() == null ? grown : document.planner().temperatures().withoutGaps(grown));
  }

  private Stop newStop(String place) {
    return Stop.named(
            RouteEdits.freeId(document.trip(), place.toLowerCase(Locale.ROOT)),
            place,
            Stop.Kind.REST)
        .withStay(RouteOfPlaces.USUAL_STAY);
  }

  /** Puts stops together before another; whether that is an edit. */
  boolean move(NavigableSet<Integer> rows, int before) {
    Trip moved = GroupEdits.move(document.trip(), rows, before);
    boolean edit = !moved.equals(document.trip());
    if (edit) {
      chosen.accept(Math.max(0, before - rows.headSet(before).size()));
      document.edit(moved);
    }
    return edit;
  }

  /** Moves stops up or down by one. */
  void shift(NavigableSet<Integer> rows, int by) {
    if (!rows.isEmpty()) {
      move(rows, by < 0 ? rows.first() - 1 : rows.last() + 2);
    }
  }

  void remove(NavigableSet<Integer> rows) {
    if (!rows.isEmpty()) {
      Trip rest = GroupEdits.remove(document.trip(), rows);
      chosen.accept(Math.max(0, Math.min(rows.first(), rest.route().stops().size() - 1)));
      document.edit(rest);
    }
  }

  /** Puts copies of stops behind them. */
  void duplicate(NavigableSet<Integer> rows) {
    if (!rows.isEmpty()) {
      chosen.accept(rows.last() + 1);
      document.edit(GroupEdits.duplicate(document.trip(), rows));
    }
  }
}
