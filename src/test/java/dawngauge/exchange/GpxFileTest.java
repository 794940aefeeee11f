package dawngauge.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.Unit;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Leg;
import dawngauge.trip.RouteOfTrack;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Routes from GPX files, good and bad (topografix.com/GPX/1/0 and /1/1). */
class GpxFileTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static String gpx(String version, String inside) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\""
        + version
        + "\" creator=\"invented\" xmlns=\"http://www.topografix.com/GPX/"
        + version.replace('.', '/')
        + "\">\n"
        + inside
        + "\n</gpx>\n";
  }

  private static Outcome<List<TrackLine>> read(String text) {
    return GpxFile.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String point(String tag, double latitude, double longitude, String inside) {
    return "<"
        + tag
        + " lat=\""
        + latitude
        + "\" lon=\""
        + longitude
        + "\">"
        + inside
        + "</"
        + tag
        + ">\n";
  }

  /** Along the equator, where a degree is 111.195 km on the sphere; over a pass in its middle. */
  private static String pass() {
    StringBuilder points = new StringBuilder("<trk><name>Over the pass</name><trkseg>\n");
    for (int i = 0; i <= 40; i++) {
      double height = i <= 20 ? 1000 + 50 * i : 2000 - 50 * (i - 20);
      points.append(point("trkpt", 0, i / 20.0, "<ele>" + height + "</ele>"));
    }
    return gpx("1.1", points + "</trkseg></trk>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.0", "1.1"})
  void tracksRoutesAndWaypointsAreReadFromBothVersions(String version) {
    String text =
        gpx(
            version,
            point("wpt", 37.5, -105.9, "<name>Barn</name>")
                + point("wpt", 36.9, -104.4, "<name>Vet</name>")
                + "<rte><name>There</name>"
                + point("rtept", 37.5, -105.9, "<ele>2299</ele><name>Alamosa</name>")
                + point("rtept", 36.06, -102.52, "<name> Dalhart </name>")
                + "</rte>\n<trk><trkseg>"
                + point("trkpt", 37.5, -105.9, "")
                + "</trkseg><trkseg>"
                + point("trkpt", 36.06, -102.52, "")
                + "</trkseg></trk>");
    List<TrackLine> lines = read(text).get();
    assertThat(lines)
        .extracting(TrackLine::kind)
        .containsExactly(TrackLine.Kind.TRACK, TrackLine.Kind.ROUTE, TrackLine.Kind.WAYPOINTS);
    assertThat(lines.get(0).points()).as("segments are joined").hasSize(2);
    assertThat(lines.get(1).name()).isEqualTo("There");
    assertThat(lines.get(1).points().get(1).name()).isEqualTo("Dalhart");
    assertThat(lines.get(1).points().get(0).elevation()).isNotNull();
    assertThat(lines.get(1).points().get(1).elevation()).isNull();
  }

  /** A way round a corner in the points' extensions: 0.1 degrees north, then as much east. */
  @Test
  void theWayInARoutesExtensionsIsTheLeg() {
    String shape =
        "<extensions><s:way xmlns:s=\"urn:invented\"><s:p lat=\"40.1\" lon=\"-100\"/></s:way></extensions>";
    Outcome<List<TrackLine>> read =
        read(
            gpx(
                "1.1",
                "<rte>"
                    + point("rtept", 40, -100, "<name>Barn</name>" + shape)
                    + point("rtept", 40.1, -99.9, "")
                    + point("rtept", 40.2, -99.9, "<name>Fair</name>")
                    + "</rte>"));
    TrackLine line = read.get().get(0);
    assertThat(line.kind()).isEqualTo(TrackLine.Kind.ROUTE_WAY);
    assertThat(line.isWay()).isTrue();
    assertThat(line.points()).hasSize(4);
    assertThat(line.offers())
        .extracting(offer -> line.points().get(offer.index()).name())
        .containsExactly("Barn", "route point 2", "Fair");
    double straight =
        GreatCircle.between(line.points().get(0).at(), line.points().get(2).at()).meters();
    assertThat(line.meters()[2]).isGreaterThan(straight + 4000);
  }

  @Test
  void aRouteOfManyNearPointsIsAWayAndOnlyItsNamesAreStops() {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= 40; i++) {
      String name = i == 20 ? "<name>Ford</name>" : "";
      points.append(point("rtept", 40 + 0.005 * i, -100, name));
    }
    TrackLine line = read(gpx("1.1", "<rte>" + points + "</rte>")).get().get(0);
    assertThat(line.isWay()).isTrue();
    assertThat(line.offers()).extracting(TrackLine.Offer::index).containsExactly(0, 20, 40);
  }

  @Test
  void aTracksLengthAndHeightsBecomeTheLeg() {
    TrackLine track = read(pass()).get().get(0);
    // 2° of the equator on the sphere of 6,371.0 km: 2 · π/180 · 6,371.0 = 222.39 km = 138.2 mi.
    assertThat(track.meters()[40]).isCloseTo(222_390, within(300.0));
    List<RouteOfTrack.OnLine> ends = List.of(onLine(track, 0, "West"), onLine(track, 40, "East"));
    Trip trip = RouteOfTrack.replace(PLANNER.store().starterTrip().get(), track, ends);
    assertThat(trip.route().stops()).extracting(Stop::place).containsExactly("West", "East");
    Leg leg = trip.route().legs().get(0);
    assertThat(leg.distance()).isNotNull();
    if (leg.distance() != null) {
      assertThat(leg.distance().value().in(Unit.MILE)).isCloseTo(138.2, within(0.2));
    }
    // One point is kept: the pass, 2,000 m at half the way; everything else is straight.
    assertThat(leg.profile()).hasSize(1);
    assertThat(leg.profile().get(0).elevation().value().meters()).isCloseTo(2000, within(0.5));
    assertThat(leg.profile().get(0).distance().value().in(Unit.MILE)).isCloseTo(69.1, within(0.2));
    assertThat(trip.route().stops().get(0).elevation()).isNotNull();
  }

  private static RouteOfTrack.OnLine onLine(TrackLine line, int index, String name) {
    Coordinate at = line.points().get(index).at();
    return new RouteOfTrack.OnLine(index, Spot.of(name, at, Optional.empty()));
  }

  @Test
  void pointsThatAreNoPlaceAreLeftOutAndTold() {
    String text =
        gpx(
            "1.1",
            "<trk><trkseg>\n"
                + point("trkpt", 37.5, -105.9, "")
                + point("trkpt", 97.5, -105.9, "")
                + "<trkpt lat=\"37.4\"></trkpt>\n"
                + "<trkpt lat=\"north\" lon=\"1\"></trkpt>\n"
                + point("trkpt", 37.3, -105.7, "")
                + "</trkseg></trk>");
    Outcome<List<TrackLine>> read = read(text);
    assertThat(read.get().get(0).points()).hasSize(2);
    assertThat(read.problems())
        .extracting(Problem::message)
        .containsExactly(
            "line 5: left out: lat 97.5, lon -105.9 is no place on the earth",
            "line 6: left out: lat 37.4, no lon is no place on the earth",
            "line 7: left out: lat north, lon 1 is no place on the earth");
  }

  @Test
  void entitiesAreNeverFollowed(@TempDir Path folder) throws java.io.IOException {
    Path secret = folder.resolve("secret.txt");
    Files.writeString(secret, "very secret");
    String outside =
        "<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY x SYSTEM \""
            + secret.toUri()
            + "\">]>"
            + gpx("1.1", "<rte><name>&x;</name></rte>").replaceFirst("<\\?xml.*?\\?>", "");
    StringBuilder laughs = new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE gpx [");
    laughs.append("<!ENTITY a0 \"ha\">");
    for (int i = 1; i < 20; i++) {
      laughs.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
    }
    laughs.append("]><gpx><name>&a19;</name></gpx>");
    for (String text : List.of(outside, laughs.toString())) {
      assertThat(read(text).problems())
          .singleElement()
          .extracting(Problem::message)
          .asString()
          .contains("document type")
          .doesNotContain("secret");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no file of any kind",
        "<html></html>",
        "<gpx version=\"1.1\" creator=\"x\" xmlns=\"http://www.topografix.com/GPX/1/1\"></gpx>",
        "<gpx version=\"1.1\" creator=\"x\"><trk><trkseg>"
      })
  void whatHoldsNoRouteSaysWhy(String text) {
    assertThat(read(text).problems()).hasSize(1);
    assertThat(read(text).problems().get(0).message()).startsWith("no route can be taken from");
  }

  @Test
  void deepNestingIsRefused() {
    String deep = "<gpx>" + "<a>".repeat(5000) + "</a>".repeat(5000) + "</gpx>";
    assertThat(read(deep).problems().get(0).message()).contains("nested too deeply");
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    Trip demo = PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
    List<TrackLine> lines = read(GpxFile.write(demo)).get();
    assertThat(lines).hasSize(1);
    TrackLine route = lines.get(0);
    assertThat(route.kind()).isEqualTo(TrackLine.Kind.ROUTE);
    assertThat(route.name()).isEqualTo("Spring fleece haul");
    assertThat(route.points()).hasSameSizeAs(demo.route().stops());
    for (int i = 0; i < route.points().size(); i++) {
      Stop stop = demo.route().stops().get(i);
      Coordinate at = stop.coordinate();
      assertThat(route.points().get(i).name()).isEqualTo(stop.place());
      assertThat(at).isNotNull();
      if (at != null) {
        assertThat(route.points().get(i).at().latitude()).isCloseTo(at.latitude(), within(1e-5));
        assertThat(route.points().get(i).at().longitude()).isCloseTo(at.longitude(), within(1e-5));
      }
    }
  }

  @Test
  void namesThatXmlCannotHoldDoNotBreakTheFile() {
    Trip demo = PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
    Trip odd =
        demo.withRoute(
            new dawngauge.trip.Route(
                demo.route().stops().stream()
                    .map(stop -> stop.withPlace("<&>\u0001\"\ud83d\udc0e\u0000"))
                    .toList(),
                demo.route().legs()));
    assertThat(read(GpxFile.write(odd)).get().get(0).points().get(0).name())
        .isEqualTo("<&>\"\ud83d\udc0e");
  }

  @Test
  void ofATrackEndsAndNamesAndSomePointsAreOffered() {
    TrackLine track = read(pass()).get().get(0);
    assertThat(track.offers()).extracting(TrackLine.Offer::index).containsExactly(0, 40);
    StringBuilder points = new StringBuilder("<trk><trkseg>\n");
    for (int i = 0; i <= 100; i++) {
      points.append(point("trkpt", 0, i / 20.0, i == 33 ? "<name>Fuel</name>" : ""));
    }
    TrackLine longer = read(gpx("1.1", points + "</trkseg></trk>")).get().get(0);
    // 5.56 km a point: every 160 km is point 29 after the last offered one.
    assertThat(longer.offers())
        .extracting(TrackLine.Offer::index)
        .containsExactly(0, 29, 33, 62, 100);
    assertThat(longer.offers())
        .filteredOn(TrackLine.Offer::usual)
        .extracting(TrackLine.Offer::index)
        .containsExactly(0, 33, 100);
  }
}
