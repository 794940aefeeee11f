package dawngauge.ui.map;

import java.awt.geom.Point2D;
import org.jxmapviewer.viewer.Tile;
import org.jxmapviewer.viewer.TileFactory;
import org.jxmapviewer.viewer.TileFactoryInfo;

/**
 * The scales of the map: two steps double it, so that a route fills its sheet. There are no tiles;
 * the ground is painted as a whole.
 */
final class MapScales extends TileFactoryInfo {

  /** Doublings of the earth on 256 pixels, at the nearest: about 2 m a pixel at the equator. */
  private static final int NEAREST = 16;

  /** Steps from the nearest scale to the farthest, at which the earth is 512 pixels wide. */
  static final int STEPS = 30;

  private MapScales() {
    super(0, STEPS, NEAREST, 1, true, true, "", "x", "y", "z");
  }

  /** Places on the earth and their pixels at each scale; zoom 0 is the nearest. */
  static TileFactory factory() {
    return new NoTiles(new MapScales());
  }

  @Override
  public int getMapWidthInTilesAtZoom(int zoom) {
    return (int) Math.rint(256 * Math.pow(2, NEAREST - zoom / 2.0));
  }

  @Override
  public Point2D getMapCenterInPixelsAtZoom(int zoom) {
    double middle = getMapWidthInTilesAtZoom(zoom) / 2.0;
    return new Point2D.Double(middle, middle);
  }

  @Override
  public double getLongitudeDegreeWidthInPixels(int zoom) {
    return getMapWidthInTilesAtZoom(zoom) / 360.0;
  }

  @Override
  public double getLongitudeRadianWidthInPixels(int zoom) {
    return getMapWidthInTilesAtZoom(zoom) / (2 * Math.PI);
  }

  private static final class NoTiles extends TileFactory {
    NoTiles(TileFactoryInfo info) {
      super(info);
    }

    @Override
    public Tile getTile(int x, int y, int zoom) {
      throw new UnsupportedOperationException("there are no tiles");
    }

    @Override
    public void dispose() {
      // holds nothing
    }

    @Override
    protected void startLoading(Tile tile) {
      throw new UnsupportedOperationException("there are no tiles");
    }
  }
}
