package dawngauge.ui.route;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollBar;

/** Scrolls the rows of the grid; seen where there are more of them than room. */
final class GridBar extends ScrollBar {

  GridBar() {
    setOrientation(Orientation.VERTICAL);
  }

  /** Width that it takes, where rows can go up by so much. */
  double room(double over) {
    return over > 0 ? Math.ceil(prefWidth(-1)) : 0;
  }

  /** Stands at the right of grid and trace, below the heading. */
  void place(GridFrame frame, double over, double x, double head) {
    double seen = frame.seen();
    setVisible(over > 0);
    setMax(over);
    setVisibleAmount(over > 0 ? over * seen / frame.rows().height() : 0);
    setUnitIncrement(frame.sizes().row());
    setBlockIncrement(seen);
    setValue(frame.scroll());
    resizeRelocate(x, head, room(over), seen);
  }
}
