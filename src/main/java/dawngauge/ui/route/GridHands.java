package dawngauge.ui.route;

import dawngauge.ledger.TireColumn;
import dawngauge.trip.Trip;
import java.util.NavigableSet;

/** What is done with the rows of the grid; rows are counted from 0. */
interface GridHands {

  /** The chosen row, and all that are taken with it, itself among them. */
  void choose(int row, NavigableSet<Integer> taken);

  /** The trace of a column is wanted. */
  void trace(TireColumn column);

  /** The tires of an axle are wanted in a column each, or all in one again. */
  void unfold(String axle, boolean each);

  /** A stop is wanted after a row. */
  void insertAfter(int row);

  /** Rows are to stand together before a row, or at the end where that is their number. */
  void move(NavigableSet<Integer> rows, int before);

  /** Rows are to go. */
  void remove(NavigableSet<Integer> rows);

  /** Copies of rows are wanted behind them. */
  void duplicate(NavigableSet<Integer> rows);

  /** What can be typed into the cells as they are now. */
  TypedCells typing();

  /** The trip with what was typed into cells. */
  void write(Trip trip);

  /** The fields of the chosen row are wanted. */
  void open();
}
