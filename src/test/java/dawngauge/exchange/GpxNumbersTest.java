package dawngauge.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in GPX files, and lines of which too little is left. */
class GpxNumbersTest {

  private static final String SOUND = "<trkpt lat=\"37.5\" lon=\"-105.9\"/>\n";
  private static final String OTHER = "<trkpt lat=\"37.3\" lon=\"-105.7\"/>\n";

  private static Outcome<List<TrackLine>> read(String inside) {
    String text =
        "<gpx version=\"1.1\" creator=\"invented\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n"
            + inside
            + "</gpx>\n";
    return GpxFile.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> messages(Outcome<List<TrackLine>> read) {
    return read.problems().stream().map(Problem::message).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"NaN", "Infinity", "-Infinity", "0x1p4", "37.4d", "37.4f", "37,4", "1e9", "", "."})
  void whatIsNoDecimalNumberIsNoPlace(String latitude) {
    Outcome<List<TrackLine>> read =
        read(
            "<trk><trkseg>\n"
                + SOUND
                + "<trkpt lat=\""
                + latitude
                + "\" lon=\"-105.8\"/>\n"
                + OTHER
                + "</trkseg></trk>\n");
    assertThat(read.get().get(0).points()).hasSize(2);
    assertThat(messages(read))
        .containsExactly(
            "line 4: left out: lat " + latitude + ", lon -105.8 is no place on the earth");
  }

  @ParameterizedTest
  @CsvSource({
    "37.4, 37.4",
    "+37.4, 37.4",
    "' 37.4 ', 37.4",
    ".5, 0.5",
    "5., 5",
    "1.5E-5, 0.000015"
  })
  void decimalNumbersAreRead(String said, double latitude) {
    Outcome<List<TrackLine>> read =
        read("<rte><rtept lat=\"" + said + "\" lon=\"1\"/><rtept lat=\"2\" lon=\"1\"/></rte>\n");
    assertThat(read.problems()).isEmpty();
    assertThat(read.get().get(0).points().get(0).at().latitude()).isEqualTo(latitude);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "0x1p4", "12d", "-9999", "9000.5", "high"})
  void aHeightThatIsNoneIsLeftOutAndToldAndThePointStays(String height) {
    Outcome<List<TrackLine>> read =
        read(
            "<trk><trkseg>\n"
                + SOUND
                + "<trkpt lat=\"37.4\" lon=\"-105.8\">\n<ele>"
                + height
                + "</ele></trkpt>\n</trkseg></trk>\n");
    assertThat(read.get().get(0).points()).hasSize(2).allMatch(p -> p.elevation() == null);
    assertThat(messages(read))
        .singleElement()
        .asString()
        .startsWith("line 5: elevation left out: \"" + height + "\" is no elevation of the ground");
  }

  @Test
  void linesOfTooFewPointsAreTold() {
    Outcome<List<TrackLine>> read =
        read(
            "<trk><name>Short</name><trkseg>"
                + SOUND
                + "</trkseg></trk>\n<trk><name>None</name></trk>\n<rte/>\n"
                + "<trk><name>Way</name>\n<trkseg/>\n<trkseg>"
                + SOUND
                + OTHER
                + "</trkseg></trk>\n<rte><rtept lat=\"NaN\" lon=\"1\"/></rte>\n");
    assertThat(read.get()).extracting(TrackLine::name).containsExactly("Way");
    assertThat(messages(read))
        .containsExactly(
            "line 2: left out: track “Short” holds one point only, and a way needs two",
            "line 4: left out: track “None” holds no point",
            "line 5: left out: route holds no point",
            "line 7: left out: a segment of track “Way” holds no point",
            "line 11: left out: lat NaN, lon 1 is no place on the earth",
            "line 11: left out: route holds no point");
  }

  @Test
  void afterTwentyOnlyTheirNumberIsTold() {
    Outcome<List<TrackLine>> read =
        read(
            "<trk><trkseg>"
                + SOUND
                + "<trkpt lat=\"NaN\" lon=\"0\"/>\n".repeat(23)
                + OTHER
                + "</trkseg></trk>\n");
    assertThat(messages(read)).hasSize(21).last().isEqualTo("and 3 more were left out");
  }

  @Test
  void whatIsMissingBetweenSegmentsIsTold() {
    // A degree of the equator is 111.195 km on the sphere of 6,371.0 km: 69 mi.
    Outcome<List<TrackLine>> read =
        read(
            "<trk><name>Way</name><trkseg><trkpt lat=\"0\" lon=\"0\"/><trkpt lat=\"0\" lon=\"1\"/>"
                + "</trkseg><trkseg><trkpt lat=\"0\" lon=\"2\"/></trkseg><trkseg>"
                + "<trkpt lat=\"0\" lon=\"2.04\"/></trkseg></trk>\n");
    assertThat(read.problems()).isEmpty();
    assertThat(read.get().get(0).told())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("track “Way”: 69 mi (111 km) between its segments are missing");
  }

  @Test
  void namesAndPointsOfExtensionsAreNotTaken() {
    Outcome<List<TrackLine>> read =
        read(
            "<rte><extensions><name>No</name></extensions>\n"
                + "<rtept lat=\"1\" lon=\"1\"><name>A</name><extensions><name>No</name>"
                + "<x:name xmlns:x=\"urn:other\">No</x:name><rtept lat=\"9\" lon=\"9\"/></extensions>"
                + "<link href=\"a\"><text>No</text></link></rtept>\n"
                + "<rtept lat=\"2\" lon=\"1\"><name><![CDATA[B & C]]></name></rtept></rte>\n");
    assertThat(read.get()).hasSize(1);
    assertThat(read.get().get(0).name()).isEmpty();
    assertThat(read.get().get(0).points())
        .extracting(TrackPoint::name)
        .containsExactly("A", "B & C");
  }

  private static Trip at(Coordinate place, Entered<Elevation> height) {
    Trip trip =
        new Planner(SettingsFile.defaults(), List.of())
            .store()
            .open(Path.of("demo-data", "spring-fleece-haul.dawngauge"))
            .get();
    Stop first = StopEdits.withElevation(trip.route().stops().get(0), height);
    return RouteEdits.withStop(trip, 0, first.withCoordinate(place));
  }

  private static TrackPoint back(Coordinate place, double meters) {
    Entered<Elevation> height = Entered.of(QuantityKind.ELEVATION, meters + " m");
    Outcome<List<TrackLine>> read =
        GpxFile.read(GpxFile.write(at(place, height)).getBytes(StandardCharsets.UTF_8));
    assertThat(read.problems()).isEmpty();
    return read.get().get(0).points().get(0);
  }

  /** Random places, and the ends of the earth, which a rounded number would step over. */
  @Test
  void whatIsWrittenIsReadBackAsTheSamePlace() {
    Random random = new Random(7);
    double[] edges = {180, -180, 179.999999999, -179.999999999, 1e-9, -0.0, 1e-13};
    for (int i = 0; i < 300; i++) {
      double longitude = i < edges.length ? edges[i] : random.nextDouble() * 360 - 180;
      double latitude = i % 10 == 0 ? 89.9999999999 : random.nextDouble() * 180 - 90;
      Coordinate place = new Coordinate(latitude, longitude);
      double meters = random.nextInt(4000) / 10.0;
      TrackPoint read = back(place, meters);
      assertThat(GreatCircle.between(place, read.at()).meters()).isLessThan(1e-6);
      assertThat(read.at().longitude()).isGreaterThanOrEqualTo(-180).isLessThan(180);
      assertThat(read.at().longitude())
          .isCloseTo(longitude == 180 ? -180 : longitude, within(1e-14));
      assertThat(read.elevation()).isNotNull();
      if (read.elevation() != null) {
        assertThat(read.elevation().meters()).isCloseTo(meters, within(1e-9));
      }
    }
  }
}
