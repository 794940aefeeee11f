package dawngauge.ui.map;

import dawngauge.geo.Coordinate;
import java.awt.Cursor;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.jxmapviewer.JXMapViewer;
import org.jxmapviewer.input.PanMouseInputListener;

/**
 * Presses on the map: a stop is chosen and dragged, the ground between them moves the map, and a
 * press on it asks for a new stop where these are wanted. Touched on Swing's thread alone.
 */
final class MapMouse extends PanMouseInputListener {

  /** What the mouse asks for; places are in the viewer's pixels. */
  interface Listener {
    /** The picture as it is. */
    MapPicture picture();

    /** Shows a stop elsewhere while it is dragged; null where it is not. */
    void dragged(int stop, @Nullable Coordinate to);

    /** The mouse let go of a stop at another place. */
    void dropped(int stop, Coordinate at);

    /** A stop was pressed. */
    void pressed(int stop);

    /** The ground was pressed and let go at the same place. */
    void clicked(Coordinate at);
  }

  private static final int REACH = 11;

  /** A hand that shakes no more than this does not drag, pixels. */
  private static final int STILL = 4;

  private final JXMapViewer viewer;
  private final Listener listener;
  private @Nullable MapStop held;
  private boolean moved;
  private int fromX;
  private int fromY;

  MapMouse(JXMapViewer viewer, Listener listener) {
    super(viewer);
    this.viewer = viewer;
    this.listener = listener;
  }

  /** The stop under a point, the one painted last first. */
  private @Nullable MapStop stopAt(MouseEvent event) {
    MapFrame frame = MapFrame.of(viewer);
    MapStop nearest = null;
    double least = REACH;
    for (MapStop stop : listener.picture().stops()) {
      Point2D.Double at = frame.of(stop.at());
      double far = at.distance(event.getX(), event.getY());
      if (far <= least) {
        nearest = stop;
        least = far;
      }
    }
    return nearest;
  }

  @Override
  public void mousePressed(MouseEvent event) {
    if (!SwingUtilities.isLeftMouseButton(event)) {
      return;
    }
    held = stopAt(event);
    moved = false;
    fromX = event.getX();
    fromY = event.getY();
    if (held != null) {
      listener.pressed(held.index());
    } else {
      super.mousePressed(event);
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    if (!SwingUtilities.isLeftMouseButton(event)) {
      return;
    }
    moved |= Math.hypot(event.getX() - fromX, event.getY() - (double) fromY) > STILL;
    MapStop stop = held;
    if (stop == null) {
      super.mouseDragged(event);
    } else if (moved) {
      listener.dragged(stop.index(), MapFrame.of(viewer).at(event.getX(), event.getY()));
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (!SwingUtilities.isLeftMouseButton(event)) {
      return;
    }
    MapStop stop = held;
    held = null;
    Coordinate at = MapFrame.of(viewer).at(event.getX(), event.getY());
    if (stop == null) {
      super.mouseReleased(event);
      if (!moved) {
        listener.clicked(at);
      }
    } else if (moved && viewer.contains(event.getPoint())) {
      listener.dropped(stop.index(), at);
    } else {
      listener.dragged(stop.index(), null);
    }
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    int shape = stopAt(event) == null ? Cursor.DEFAULT_CURSOR : Cursor.HAND_CURSOR;
    viewer.setCursor(Cursor.getPredefinedCursor(shape));
  }
}
