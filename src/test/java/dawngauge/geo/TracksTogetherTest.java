package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Problem;
import dawngauge.quantity.Elevation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tracks in pieces and waypoints beside them; 0.01° of the equator is 1.112 km. */
class TracksTogetherTest {

  private static TrackPoint point(double latitude, double longitude, String name) {
    return new TrackPoint(
        new Coordinate(latitude, longitude), new Elevation(100 * longitude), name);
  }

  /** Along the equator, a point every half degree. */
  private static TrackLine track(String name, double from, double to) {
    List<TrackPoint> points = new ArrayList<>();
    for (double east = from; east <= to; east += 0.5) {
      points.add(point(0, east, ""));
    }
    return new TrackLine(TrackLine.Kind.TRACK, name, points);
  }

  private static List<TrackLine> beside(TrackLine track, TrackPoint... waypoints) {
    return TracksTogether.of(
        List.of(track, new TrackLine(TrackLine.Kind.WAYPOINTS, "", Arrays.asList(waypoints))));
  }

  private static List<String> ticked(TrackLine line) {
    return line.offers().stream()
        .filter(TrackLine.Offer::usual)
        .map(offer -> line.points().get(offer.index()).name())
        .toList();
  }

  private static List<String> told(TrackLine line) {
    return line.told().stream().map(Problem::message).toList();
  }

  @Test
  void aWaypointBesideATrackIsATickedStopWhereTheTrackIsNearest() {
    TrackLine line = beside(track("Way", 0, 2), point(0.008, 0.7, "Barn")).get(0);
    assertThat(ticked(line)).containsExactly("", "Barn", "");
    TrackPoint barn = line.points().get(2);
    assertThat(barn.at().latitude()).isCloseTo(0, within(1e-9));
    assertThat(barn.at().longitude()).isCloseTo(0.7, within(1e-6));
    assertThat(barn.elevation()).isNotNull();
    if (barn.elevation() != null) {
      assertThat(barn.elevation().meters()).as("of the track").isCloseTo(70, within(0.01));
    }
    assertThat(line.told()).isEmpty();
    assertThat(line.meters()[line.points().size() - 1])
        .as("the way is no longer for it")
        .isCloseTo(track("", 0, 2).meters()[4], within(0.01));
  }

  /** 0.0581° is 6.46 km or 4.01 mi. */
  @Test
  void oneFartherOffThanAKilometerIsTold() {
    List<TrackLine> lines =
        beside(track("Way", 0, 2), point(0.0581, 1, "Hay barn"), point(0.0091, 1, "Vet"));
    assertThat(ticked(lines.get(0))).containsExactly("", "");
    assertThat(told(lines.get(0)))
        .containsExactly(
            "Hay barn is 4 mi (6 km) off the track: left out",
            "Vet is 1 mi (1 km) off the track: left out");
    assertThat(lines).extracting(TrackLine::kind).contains(TrackLine.Kind.WAYPOINTS);
  }

  @Test
  void oneAtAnEndNamesItAndOneBesideAnotherIsTold() {
    TrackLine line =
        beside(
                track("Way", 0, 2),
                point(0.001, 0.001, "Home"),
                point(0.0001, 0.0005, "Gate"),
                point(0, 1.2, "Fuel"),
                point(0.001, 1.2005, "Scale"),
                point(0, 1.2, "Fuel"),
                point(0, 1.4, ""))
            .get(0);
    assertThat(ticked(line)).containsExactly("Home", "Fuel", "waypoint 6", "");
    assertThat(told(line))
        .containsExactly(
            "Gate lies where Home is a stop already: left out",
            "Scale lies where Fuel is a stop already: left out");
  }

  @Test
  void aSingleWaypointIsNoLineOfItsOwnButAPointOfTheTrack() {
    List<TrackLine> lines = beside(track("Way", 0, 1), point(0, 0.3, "Water"));
    assertThat(lines).hasSize(1);
    assertThat(ticked(lines.get(0))).containsExactly("", "Water", "");
  }

  @Test
  void ofManyFarOffTwentyAreTold() {
    TrackPoint[] far = new TrackPoint[25];
    Arrays.setAll(far, i -> point(1, 1 + i / 100.0, "P" + i));
    assertThat(told(beside(track("Way", 0, 2), far).get(0)))
        .hasSize(21)
        .last()
        .isEqualTo("and 5 more were left out");
  }

  /** The second day begins 4.4 km on, the third where the second ended. */
  @Test
  void tracksThatGoOnFromEachOtherAreOfferedAsOneFirst() {
    List<TrackLine> days =
        List.of(track("Mon", 0, 1), track("Tue", 1.04, 2.04), track("Wed", 2.04, 3.04));
    List<TrackLine> lines = TracksTogether.of(days);
    assertThat(lines)
        .extracting(TrackLine::words)
        .containsExactly(
            "all tracks one after another", "track “Mon”", "track “Tue”", "track “Wed”");
    TrackLine all = lines.get(0);
    assertThat(all.isWay()).isTrue();
    assertThat(all.points()).hasSize(9);
    assertThat(all.meters()[8]).isCloseTo(3.04 * 111_195, within(10.0));
    assertThat(all.offers())
        .filteredOn(TrackLine.Offer::usual)
        .extracting(TrackLine.Offer::index)
        .as("where a day ends is a stop")
        .containsExactly(0, 2, 5, 8);
  }

  /** 0.0451° are 5.01 km. */
  @Test
  void tracksThatDoNotGoOnAreNot() {
    List<TrackLine> apart = List.of(track("Mon", 0, 1), track("Tue", 1.0451, 2.0451));
    assertThat(TracksTogether.of(apart)).isEqualTo(apart);
    List<TrackLine> one = List.of(track("Mon", 0, 1));
    assertThat(TracksTogether.of(one)).isEqualTo(one);
  }

  @Test
  void aWaypointStandsAtTheRightPlaceOfAllTracks() {
    List<TrackLine> lines = new ArrayList<>(List.of(track("Mon", 0, 1), track("Tue", 1, 2)));
    lines.add(
        new TrackLine(
            TrackLine.Kind.WAYPOINTS,
            "",
            List.of(point(0, 0.7, "Fuel"), point(0.001, 1, "Night"), point(0, 1.2, "Barn"))));
    TrackLine all = TracksTogether.of(lines).get(0);
    assertThat(ticked(all)).containsExactly("", "Fuel", "Night", "Barn", "");
    assertThat(all.halts()).containsExactly(3);
    assertThat(told(TracksTogether.of(lines).get(1)))
        .as("of the first day alone")
        .containsExactly("Barn is 14 mi (22 km) off the track: left out");
  }
}
