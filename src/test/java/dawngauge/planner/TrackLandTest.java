package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.geo.LegGround;
import dawngauge.geo.LineSearch;
import dawngauge.geo.PassNear;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.GroundText;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.RouteOfTrack;
import dawngauge.trip.Stop;
import dawngauge.trip.TrackMark;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A leg that was taken from a track is held against that. La Veta Pass lies at 37.6139° N,
 * 105.1978° W in the list, 3 mi off the straight line from Alamosa to Walsenburg.
 */
class TrackLandTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Coordinate ALAMOSA = new Coordinate(37.469, -105.87);
  private static final Coordinate PASS = new Coordinate(37.6139, -105.1978);
  private static final Coordinate WALSENBURG = new Coordinate(37.624, -104.78);

  /** Straight from corner to corner, 40 points each; heights by the part of the way, NaN none. */
  private static TrackLine track(DoubleUnaryOperator height, Coordinate... corners) {
    List<TrackPoint> points = new ArrayList<>();
    int count = 40 * (corners.length - 1);
    for (int i = 0; i <= count; i++) {
      int before = Math.min(i / 40, corners.length - 2);
      double part = (i - 40 * before) / 40.0;
      Coordinate a = corners[before];
      Coordinate b = corners[before + 1];
      double meters = height.applyAsDouble((double) i / count);
      points.add(
          new TrackPoint(
              new Coordinate(
                  a.latitude() + part * (b.latitude() - a.latitude()),
                  a.longitude() + part * (b.longitude() - a.longitude())),
              Double.isNaN(meters) ? null : new Elevation(meters),
              ""));
    }
    return new TrackLine(TrackLine.Kind.TRACK, "Way", points);
  }

  private static Trip taken(TrackLine track, int... stops) {
    List<RouteOfTrack.OnLine> chosen = new ArrayList<>();
    for (int index : stops) {
      Coordinate at = track.points().get(index).at();
      chosen.add(new RouteOfTrack.OnLine(index, Spot.of("P" + index, at, Optional.empty())));
    }
    return RouteOfTrack.replace(PLANNER.store().starterTrip().get(), track, chosen);
  }

  private static List<String> questions(Trip trip, int leg) {
    return Land.of(trip, leg).orElseThrow().passes().stream()
        .map(pass -> pass.question(UnitSystem.US))
        .toList();
  }

  @Test
  void aPassThatTheTrackGoesOverIsOfferedWhereItLies() {
    Trip trip = taken(track(part -> Double.NaN, ALAMOSA, PASS, WALSENBURG), 0, 80);
    assertThat(questions(trip, 0))
        .containsExactly("La Veta Pass, 9413 ft, 0 mi off the track: over it?");
    LegGround ground = Land.of(trip, 0).orElseThrow();
    assertThat(ground.under()).isEqualTo(LegGround.Under.TRACK);
    assertThat(ground.estimated()).isTrue();
    assertThat(ground.highest().elevation().meters()).as("that of the pass").isGreaterThan(2719);
    Trip over = Land.over(trip, 0, ground.passes().get(0));
    assertThat(over.route().legs().get(0).profile()).hasSize(1);
    assertThat(questions(over, 0)).isEmpty();
  }

  /** 0.058° of latitude are 6.4 km or 4.0 mi. */
  @Test
  void oneBesideTheTrackIsToldByItsDistanceFromThat() {
    Coordinate south = new Coordinate(37.6139 - 0.058, -105.1978);
    Coordinate before = new Coordinate(37.6139 - 0.058, -105.4);
    Coordinate after = new Coordinate(37.6139 - 0.058, -105.0);
    Trip trip = taken(track(part -> Double.NaN, ALAMOSA, before, south, after, WALSENBURG), 0, 160);
    assertThat(questions(trip, 0))
        .containsExactly("La Veta Pass, 9413 ft, 4 mi off the track: over it?");
  }

  /** Round by the north, 25 mi off the pass, which the straight line runs by. */
  @Test
  void oneThatTheTrackGoesRoundIsNotOffered() {
    Coordinate north = new Coordinate(37.98, -105.2);
    Trip trip = taken(track(part -> Double.NaN, ALAMOSA, north, WALSENBURG), 0, 80);
    assertThat(questions(trip, 0)).noneMatch(question -> question.startsWith("La Veta"));
    Trip bare = RouteEdits.withLeg(trip, 0, trip.route().legs().get(0).withTrack(List.of()));
    assertThat(questions(bare, 0)).contains("La Veta Pass, 9413 ft, 3 mi off the line: over it?");
  }

  @Test
  void lowestAndHighestAreThoseOfTheTrack() {
    TrackLine track =
        track(
            part -> 2300 - 400 * part + (Math.abs(part - 0.6) < 0.01 ? 123 : 0),
            ALAMOSA,
            PASS,
            WALSENBURG);
    Trip trip = taken(track, 0, 80);
    LegGround ground = Land.of(trip, 0).orElseThrow();
    assertThat(ground.estimated()).isFalse();
    assertThat(ground.lowest().elevation().meters()).isCloseTo(1900, within(0.5));
    assertThat(ground.highest().elevation().meters()).isCloseTo(2300, within(0.5));
    Trip half = taken(track, 0, 40, 80);
    LegGround second = Land.of(half, 1).orElseThrow();
    // At 48 of 80 points: 2,300 − 400 · 0.6 + 123 = 2,183 m.
    assertThat(second.highest().elevation().meters()).isCloseTo(2183, within(0.5));
    Stop first = half.route().stops().get(1);
    assertThat(
            LegEdits.isTopUnknown(
                first,
                half.route().legs().get(1).withProfile(List.of()),
                half.route().stops().get(2)))
        .as("the track tells it")
        .isFalse();
    String text =
        GroundText.of(half, List.of(Land.of(half, 0), Land.of(half, 1)), List.of(), UnitSystem.SI);
    assertThat(text.replaceAll("\\s+", " "))
        .contains("held against the track", "lowest 1900 m, highest 2183 m by its track");
  }

  @Test
  void aTrackThatLeadsElsewhereDoesNotCount() {
    Trip trip = taken(track(part -> 2000, ALAMOSA, PASS, WALSENBURG), 0, 80);
    Stop end = trip.route().stops().get(1);
    Trip moved = RouteEdits.withStop(trip, 1, end.withCoordinate(new Coordinate(38.25, -104.61)));
    assertThat(Land.of(moved, 0).orElseThrow().under()).isEqualTo(LegGround.Under.LINE);
  }

  /** A shape of a sine, 0.05° or 5.6 km to either side, of which half a kilometer may be lost. */
  @Test
  void theShapeIsKeptWithFewPointsAndTurnsWithTheLeg() {
    List<TrackPoint> points = new ArrayList<>();
    for (int i = 0; i <= 20_000; i++) {
      double east = -105 + i * 1e-4;
      points.add(new TrackPoint(new Coordinate(37 + 0.05 * Math.sin(20 * east), east), null, ""));
    }
    TrackLine line = new TrackLine(TrackLine.Kind.TRACK, "", points);
    Leg leg = taken(line, 0, 20_000).route().legs().get(0);
    assertThat(leg.track()).hasSizeBetween(15, 102);
    LineSearch kept = new LineSearch(leg.track().stream().map(TrackMark::at).toList());
    assertThat(points).allMatch(point -> kept.nearest(point.at()).off() < 710);
    Trip back = RouteEdits.reverse(taken(line, 0, 10_000, 20_000));
    List<TrackMark> turned = back.route().legs().get(0).track();
    assertThat(turned.get(0).at().longitude()).isCloseTo(-103, within(1e-5));
    Trip joined = RouteEdits.remove(back, 1);
    assertThat(joined.route().legs().get(0).track())
        .hasSize(turned.size() + back.route().legs().get(1).track().size());
  }

  @Test
  void theTrackIsKeptInTheFile(@TempDir Path folder) {
    Trip trip = taken(track(part -> 2300 - 400 * part, ALAMOSA, PASS, WALSENBURG), 0, 80);
    Path file = folder.resolve("way.dawngauge");
    assertThat(PLANNER.store().save(trip, file)).isEmpty();
    Outcome<Trip> read = PLANNER.store().open(file);
    assertThat(read.get().route().legs()).isEqualTo(trip.route().legs());
    assertThat(Forecasts.known(trip.route().legs().get(0).track().get(0).elevation()).text())
        .isEqualTo("2300 m");
    PassNear pass = Land.of(read.get(), 0).orElseThrow().passes().get(0);
    assertThat(pass.part()).isBetween(0.55, 0.65);
  }
}
