package dawngauge.ui.map;

import dawngauge.geo.Coordinate;
import dawngauge.geo.Mercator;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import org.jxmapviewer.JXMapViewer;

/**
 * The part of the {@link Mercator} map that is seen.
 *
 * @param world width and height of the whole map in pixels
 * @param left pixels of the map left of the view
 * @param top pixels of the map above the view
 * @param width of the view in pixels
 * @param height of the view in pixels
 */
record MapFrame(double world, double left, double top, double width, double height) {

  static MapFrame of(JXMapViewer viewer) {
    Rectangle seen = viewer.getViewportBounds();
    int zoom = viewer.getZoom();
    double world = viewer.getTileFactory().getInfo().getMapWidthInTilesAtZoom(zoom);
    return new MapFrame(world, seen.x, seen.y, seen.width, seen.height);
  }

  /** How many times the map was doubled from 256 pixels. */
  double level() {
    return Math.log(world / 256) / Math.log(2);
  }

  double x(double mercatorX) {
    return mercatorX * world - left;
  }

  double y(double mercatorY) {
    return mercatorY * world - top;
  }

  /** Where a place lies in the view; around the earth on the side on which the middle is nearer. */
  Point2D.Double of(Coordinate at) {
    Mercator on = Mercator.of(at);
    double middle = (left + width / 2) / world;
    double near = on.x() + Math.rint(middle - on.x());
    return new Point2D.Double(x(near), y(on.y()));
  }

  /** The place at a point of the view. */
  Coordinate at(double x, double y) {
    return new Mercator((x + left) / world, (y + top) / world).coordinate();
  }
}
