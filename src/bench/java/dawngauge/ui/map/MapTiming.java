package dawngauge.ui.map;

import dawngauge.advice.Mark;
import dawngauge.geo.Coordinate;
import dawngauge.quantity.Unit;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jxmapviewer.JXMapViewer;
import org.jxmapviewer.viewer.GeoPosition;

/** Times the map's paint by itself: 60 stops, 900 by 700 points, at every fourth scale. */
public final class MapTiming {

  private MapTiming() {}

  /** Paints and tells how long it takes. */
  public static String line() {
    List<MapStop> stops = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      stops.add(
          new MapStop(
              i, "Stop " + (i + 1), new Coordinate(37 - i * 0.08, -106 + i * 0.12), Mark.CLEAR));
    }
    MapPicture picture = new MapPicture(stops, 3, Unit.MILE, false);
    JXMapViewer viewer = new MapViewer();
    viewer.setSize(900, 700);
    MapPainter painter = new MapPainter();
    StringBuilder told = new StringBuilder("map's paint");
    for (int zoom = 0; zoom <= MapScales.STEPS; zoom += 4) {
      viewer.setZoom(zoom);
      viewer.setCenterPosition(new GeoPosition(35, -102));
      MapFrame frame = MapFrame.of(viewer);
      double[] ms = new double[100];
      for (int i = 0; i < 150; i++) {
        BufferedImage image = new BufferedImage(900, 700, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        long start = System.nanoTime();
        painter.paint(g, frame, picture, null);
        if (i >= 50) {
          ms[i - 50] = (System.nanoTime() - start) / 1e6;
        }
        g.dispose();
      }
      Arrays.sort(ms);
      told.append(
          String.format(Locale.ROOT, "; step %d: p50 %.1f ms, p99 %.1f ms", zoom, ms[50], ms[99]));
    }
    return told.toString();
  }
}
