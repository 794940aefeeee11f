package dawngauge.ui.route;

import dawngauge.ledger.TireColumn;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import java.util.NavigableSet;

/** What the grid's user does, done to the document and shown on the route page. */
final class RouteHands implements GridHands {

  private final TripDocument document;
  private final StopActions actions;
  private final RouteView page;

  RouteHands(TripDocument document, StopActions actions, RouteView page) {
    this.document = document;
    this.actions = actions;
    this.page = page;
  }

  @Override
  public void choose(int row, NavigableSet<Integer> taken) {
    page.chose(row);
  }

  @Override
  public void trace(TireColumn column) {
    page.trace(column);
  }

  @Override
  public void unfold(String axle, boolean each) {
    page.unfold(axle, each);
  }

  @Override
  public void insertAfter(int row) {
    page.insertAfter(row);
  }

  @Override
  public void move(NavigableSet<Integer> rows, int before) {
    page.move(rows, before);
  }

  @Override
  public void remove(NavigableSet<Integer> rows) {
    actions.remove(rows);
  }

  @Override
  public void duplicate(NavigableSet<Integer> rows) {
    actions.duplicate(rows);
  }

  @Override
  public TypedCells typing() {
    return new TypedCells(document.trip(), document.units());
  }

  @Override
  public void write(Trip trip) {
    document.edit(trip);
  }

  @Override
  public void open() {
    page.open();
  }
}
