package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The map that comes with the program: known land, water and borders are where they are. */
class BaseMapTest {

  private static final BaseMap MAP = BaseMap.load();

  @Test
  void allLayersAreThere() {
    Map<MapLine.Kind, Integer> counts = new EnumMap<>(MapLine.Kind.class);
    MAP.lines().forEach(line -> counts.merge(line.kind(), 1, Integer::sum));
    assertThat(counts.keySet()).containsExactly(MapLine.Kind.values());
    assertThat(counts.get(MapLine.Kind.LAND)).isEqualTo(1437);
    assertThat(counts.get(MapLine.Kind.LAKE)).isEqualTo(320);
    assertThat(MAP.divisions()).hasSize(51 + 13);
    assertThat(MAP.lines()).allMatch(line -> line.size() > 1);
  }

  @ParameterizedTest
  @CsvSource({
    "39.74, -104.99, true, Denver",
    "51.05, -114.07, true, Calgary",
    "19.43, -99.13, true, Mexico City",
    "36, -140, false, Pacific off California",
    "27, -90, false, Gulf south of Louisiana",
    "48.86, 2.35, true, Paris: the coarser part",
    "-23.55, -46.63, true, Sao Paulo: south of the finer part",
    "2, -60, true, Guiana highlands: where the finer part has none",
    "60, -20, false, North Atlantic",
    "-34, 153, false, off Sydney",
    "64.15, 27, true, Finland",
    "66.5, -178, true, Chukotka: across the date line",
    "63.5, -170.3, true, St. Lawrence Island",
    "8.5, -80, true, Panama",
    "7, -75, true, Antioquia"
  })
  void landIsLandAndSeaIsSea(double latitude, double longitude, boolean land, String why) {
    assertThat(inside(MapLine.Kind.LAND, latitude, longitude)).as(why).isEqualTo(land);
  }

  @ParameterizedTest
  @CsvSource({
    "43.8, -87, true, Lake Michigan",
    "48, -88, true, Lake Superior",
    "41.2, -112.6, true, Great Salt Lake",
    "39.74, -104.99, false, Denver"
  })
  void lakes(double latitude, double longitude, boolean lake, String why) {
    assertThat(inside(MapLine.Kind.LAKE, latitude, longitude)).as(why).isEqualTo(lake);
  }

  @ParameterizedTest
  @CsvSource({
    // Corners of surveyed borders, a strait and a river at a city: common knowledge, from memory,
    // to a kilometer or two.
    "STATE, 36.999, -109.045, Four Corners",
    "STATE, 37.0, -103.0, Colorado's southeastern corner",
    "COUNTRY, 49.0, -110.0, 49th parallel between Montana and Alberta",
    "COUNTRY, 32.53, -117.12, Pacific end of the border with Mexico",
    "STATE, 54.0, -110.0, Alberta and Saskatchewan",
    "RIVER, 38.63, -90.18, Mississippi at St. Louis",
    "COAST, 37.8, -122.5, Golden Gate"
  })
  void knownLinesRunWhereTheyRun(MapLine.Kind kind, double latitude, double longitude, String why) {
    Coordinate at = new Coordinate(latitude, longitude);
    assertThat(away(kind, at)).as(why).isLessThan(6000);
  }

  @Test
  void theProjectionIsThePublishedOne() {
    // EPSG Guidance Note 7-2 (method 1024, Popular Visualisation Pseudo Mercator): 24°22'54.433" N
    // 100°20'00" W is easting -11169055.58, northing 2800000.00 on the radius of 6378137 m;
    // example quoted from memory.
    double half = Math.PI * 6378137;
    Coordinate at = new Coordinate(24 + 22 / 60.0 + 54.433 / 3600, -(100 + 20 / 60.0));
    Mercator on = Mercator.of(at);
    assertThat((on.x() * 2 - 1) * half).isEqualTo(-11169055.58, within(0.01));
    assertThat((1 - on.y() * 2) * half).isEqualTo(2800000.00, within(0.01));
    assertThat(on.coordinate().latitude()).isEqualTo(at.latitude(), within(1e-9));
    assertThat(on.coordinate().longitude()).isEqualTo(at.longitude(), within(1e-9));
  }

  @Test
  void beyondTheEdgeIsTheEdge() {
    assertThat(Mercator.EDGE).isEqualTo(85.0511287798, within(1e-9)); // OGC 17-083r2, from memory
    assertThat(Mercator.of(new Coordinate(90, 0)).y()).isEqualTo(0, within(1e-12));
    assertThat(Mercator.of(new Coordinate(-90, 0)).y()).isEqualTo(1, within(1e-12));
    assertThat(new Mercator(1.25, 0.5).coordinate().longitude()).isEqualTo(-90, within(1e-9));
  }

  @Test
  void namesComeByPopulation() {
    List<BaseMap.Name> places = MAP.places();
    for (int i = 1; i < places.size(); i++) {
      assertThat(places.get(i).population()).isLessThanOrEqualTo(places.get(i - 1).population());
    }
    assertThat(places).anyMatch(name -> name.text().equals("Alamosa"));
    assertThat(MAP.divisions()).anyMatch(name -> name.text().equals("Saskatchewan"));
  }

  @ParameterizedTest
  @CsvSource({"999, 500 m", "1000, 1 km", "4999, 2 km", "5000, 5 km", "123456, 100 km"})
  void aScaleIsRoundAndNoLongerThanItsRoom(double meters, String text) {
    ScaleBar bar = ScaleBar.within(new Distance(meters), Unit.KILOMETER);
    assertThat(bar.length().meters()).isLessThanOrEqualTo(meters).isGreaterThan(meters / 2.51);
    assertThat(bar.text()).isEqualTo(text.equals("500 m") ? "0.5 km" : text);
  }

  /** Even-odd over all rings of a kind, by the crossings of a ray to the east. */
  private static boolean inside(MapLine.Kind kind, double latitude, double longitude) {
    Mercator at = Mercator.of(new Coordinate(latitude, longitude));
    for (MapLine line : MAP.lines()) {
      boolean in = false;
      for (int i = 0, j = line.size() - 1; line.kind() == kind && i < line.size(); j = i++) {
        if ((line.y(i) > at.y()) != (line.y(j) > at.y())) {
          double part = (at.y() - line.y(i)) / (line.y(j) - line.y(i));
          in ^= at.x() < line.x(i) + part * (line.x(j) - line.x(i));
        }
      }
      if (in) {
        return true;
      }
    }
    return false;
  }

  /** Meters from a point to the nearest line of a kind. */
  private static double away(MapLine.Kind kind, Coordinate at) {
    Mercator on = Mercator.of(at);
    double least = Double.POSITIVE_INFINITY;
    for (MapLine line : MAP.lines()) {
      for (int i = 1; line.kind() == kind && i < line.size(); i++) {
        double dx = line.x(i) - line.x(i - 1);
        double dy = line.y(i) - line.y(i - 1);
        double along =
            ((on.x() - line.x(i - 1)) * dx + (on.y() - line.y(i - 1)) * dy) / (dx * dx + dy * dy);
        double part = Math.max(0, Math.min(1, along));
        double far =
            Math.hypot(on.x() - line.x(i - 1) - part * dx, on.y() - line.y(i - 1) - part * dy);
        least = Math.min(least, far);
      }
    }
    return least * 2 * Math.PI * 6371008.8 * Math.cos(Math.toRadians(at.latitude()));
  }
}
