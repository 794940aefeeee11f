package dawngauge.ui.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.testdata.Contrast;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.jxmapviewer.viewer.GeoPosition;

/** Where places lie in the view, against the viewer's own projection; colors. */
class MapFrameTest {

  private static MapViewer viewer(int zoom, double latitude, double longitude) {
    MapViewer viewer = new MapViewer();
    viewer.setSize(640, 400);
    viewer.setZoom(zoom);
    viewer.setCenterPosition(new GeoPosition(latitude, longitude));
    return viewer;
  }

  @Test
  void placesLieWhereTheViewerPutsThem() {
    Random random = new Random(20261127);
    for (int i = 0; i < 2000; i++) {
      int zoom = random.nextInt(MapScales.STEPS + 1);
      double latitude = random.nextDouble(-75, 75);
      double longitude = random.nextDouble(-179, 179);
      MapViewer viewer = viewer(zoom, latitude, longitude);
      MapFrame frame = MapFrame.of(viewer);
      Coordinate near = frame.at(random.nextDouble(0, 640), random.nextDouble(0, 400));
      Point2D.Double ours = frame.of(near);
      Point2D theirs =
          viewer.convertGeoPositionToPoint(new GeoPosition(near.latitude(), near.longitude()));
      double around = Math.rint((ours.x - theirs.getX()) / frame.world()) * frame.world();
      assertThat(ours.x - around).as("x at zoom %s", zoom).isEqualTo(theirs.getX(), within(1.01));
      assertThat(ours.y).as("y at zoom %s", zoom).isEqualTo(theirs.getY(), within(1.01));
    }
  }

  @Test
  void aPointAndBackIsTheSamePoint() {
    MapFrame frame = MapFrame.of(viewer(12, 37.5, -105.9));
    for (double x = 0; x <= 640; x += 80) {
      for (double y = 0; y <= 400; y += 50) {
        Point2D.Double back = frame.of(frame.at(x, y));
        assertThat(back.x).isEqualTo(x, within(1e-6));
        assertThat(back.y).isEqualTo(y, within(1e-6));
      }
    }
  }

  @Test
  void acrossTheDateLineAPlaceLiesOnTheNearSide() {
    MapFrame frame = MapFrame.of(viewer(22, 60, 179));
    double east = frame.of(new Coordinate(60, -179)).x;
    double west = frame.of(new Coordinate(60, 177)).x;
    assertThat(east - 320).isEqualTo(320 - west, within(1.01)).isPositive();
  }

  @Test
  void twoStepsDoubleTheScale() {
    Coordinate a = new Coordinate(40, -100);
    Coordinate b = new Coordinate(40, -99);
    for (int zoom = 2; zoom <= MapScales.STEPS; zoom++) {
      MapFrame far = MapFrame.of(viewer(zoom, 40, -100));
      MapFrame near = MapFrame.of(viewer(zoom - 2, 40, -100));
      assertThat(near.of(b).x - near.of(a).x)
          .isEqualTo(2 * (far.of(b).x - far.of(a).x), within(0.01));
    }
  }

  @Test
  void metersAPixelAreThePublishedOnes() {
    // OGC "Two Dimensional Tile Matrix Set" (17-083r2), WebMercatorQuad: 156543.034 m a pixel at
    // level 0 on the equator, by the equatorial radius of 6378137 m (from memory); ours is the mean
    // radius.
    MapFrame frame = MapFrame.of(viewer(16, 0, 0));
    assertThat(frame.level()).isEqualTo(8, within(1e-9));
    double pixel =
        GreatCircle.between(frame.at(300, 200), frame.at(301, 200)).meters()
            * (6378137.0 / 6371008.8);
    assertThat(pixel).isEqualTo(156543.034 / 256, within(0.01));
  }

  static List<MapColors> themes() {
    return List.of(MapColors.LIGHT, MapColors.DARK);
  }

  @ParameterizedTest
  @MethodSource("themes")
  void namesAndMarksStandOutFromTheGround(MapColors colors) {
    for (Color ground : List.of(colors.land(), colors.sea())) {
      for (Color text : List.of(colors.name(), colors.route(), colors.adjust(), colors.hold())) {
        assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(4.5); // WCAG 2.1, 1.4.3
      }
      assertThat(contrast(colors.chosen(), ground)).isGreaterThanOrEqualTo(3); // 1.4.11
    }
  }

  private static double contrast(Color a, Color b) {
    return Contrast.of(a.getRGB() & 0xffffff, b.getRGB() & 0xffffff);
  }
}
