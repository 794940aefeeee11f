package dawngauge.ui.map;

import java.awt.Graphics;
import java.awt.Rectangle;
import org.jxmapviewer.JXMapViewer;

/** The viewer with its own scales and no tiles. */
final class MapViewer extends JXMapViewer {

  private static final long serialVersionUID = 1;

  MapViewer() {
    setFocusable(false);
    setTileFactory(MapScales.factory());
    setZoom(MapScales.STEPS - 6);
  }

  @Override
  protected void drawMapTiles(Graphics g, int zoom, Rectangle seen) {
    // the ground is painted with all else
  }
}
