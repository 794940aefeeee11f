package dawngauge.ui.route;

import java.util.List;

/** Where the rows of the stops are, from the top, in pixels; what stands beside them follows. */
interface RowSpans {

  /** Number of the stops. */
  int count();

  /** Where a stop's line begins. */
  double top(int row);

  /** Where it ends. */
  double bottom(int row);

  /** Height of all rows. */
  double height();

  /** Where axes are written again, besides above all; from the top. */
  List<Double> headings();
}
