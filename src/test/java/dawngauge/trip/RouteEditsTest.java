package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import dawngauge.planner.Planner;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Changes to a route keep it whole. What none of them brings back: a typed leg that a stop was
 * inserted into (its length and profile are guessed anew), typed times of a stop that was moved.
 */
class RouteEditsTest {

  private static final Trip DEMO =
      new Planner(SettingsFile.defaults(), List.of())
          .store()
          .open(Path.of("demo-data", "spring-fleece-haul.dawngauge"))
          .get();

  private static final int STOPS = DEMO.route().stops().size();

  @Test
  void aStopInsertedBehindTheLastAndRemovedAgainLeavesTheSameTrip() {
    Stop stop = stopAt("new", 34.2, -101.7);
    Trip longer = RouteEdits.insert(DEMO, STOPS, stop);
    assertThat(longer.route().stops()).endsWith(stop);
    assertThat(LegEdits.isGuessed(longer.route().legs().get(STOPS - 1))).isTrue();
    assertThat(RouteEdits.remove(longer, STOPS)).isEqualTo(DEMO);
    Trip earlier = RouteEdits.insert(DEMO, 0, stop);
    assertThat(earlier.route().stops()).startsWith(stop);
    assertThat(RouteEdits.remove(earlier, 0)).isEqualTo(DEMO);
  }

  @Test
  void insertedBetweenTwoStopsItsLegsAreGuessedAndMarked() {
    // The middle of a degree of latitude: 60 nautical miles by the old definition, 69.1 mi.
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(StopBuilder.stop("a").at(40, -100, "America/Chicago"))
            .leg("75 mi", "50 mph")
            .stop(StopBuilder.stop("b").at(41, -100, "America/Chicago"))
            .trip();
    Trip edited = RouteEdits.insert(trip, 1, stopAt("m", 40.5, -100));
    List<Leg> legs = edited.route().legs();
    assertThat(legs).hasSize(2).allMatch(LegEdits::isGuessed);
    for (Leg leg : legs) {
      // Short roads are taken as 1.3 times the straight line: 69.05 mi / 2 x 1.3 = 44.9 mi.
      assertThat(miles(leg)).isBetween(44.7, 45.1);
    }
    Trip back = RouteEdits.remove(edited, 1);
    assertThat(back.route().stops()).isEqualTo(trip.route().stops());
    assertThat(LegEdits.isGuessed(back.route().legs().get(0))).isTrue();
    assertThat(back.route().legs()).isNotEqualTo(trip.route().legs());
  }

  @Test
  void withoutCoordinatesNoDistanceIsGuessed() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(StopBuilder.stop("a"))
            .stop(StopBuilder.stop("b"))
            .trip();
    Trip edited = RouteEdits.duplicate(trip, 0);
    assertThat(edited.route().legs().get(0).distance()).isNull();
    assertThat(LegEdits.isGuessed(edited.route().legs().get(0))).isFalse();
  }

  @Test
  void aStopMovedFarLosesTheAirThatNobodyTypedThere() {
    Provenance told = new Provenance(Provenance.Kind.FEED, "a service", null);
    AmbientEntry typed =
        DEMO.ambient().stream().filter(e -> e.stop().equals("dalhart")).findFirst().orElseThrow();
    AmbientEntry fed =
        new AmbientEntry("dalhart", typed.along(), typed.figure(), told, null, Remarks.NONE);
    List<AmbientEntry> air = new ArrayList<>(DEMO.ambient());
    air.add(fed);
    Trip trip = DEMO.withAmbient(air);
    Stop stop = DEMO.route().stops().get(4);
    Coordinate at = Forecasts.known(stop.coordinate());
    Trip near = RouteEdits.at(trip, 4, stop.withCoordinate(moved(at, 0.05))); // 5.6 km
    assertThat(near.ambient()).contains(fed, typed);
    Trip far = RouteEdits.at(trip, 4, stop.withCoordinate(moved(at, 0.15))); // 17 km
    assertThat(far.ambient()).contains(typed).doesNotContain(fed);
    assertThat(far.ambient()).hasSize(DEMO.ambient().size());
  }

  private static Coordinate moved(Coordinate at, double north) {
    return new Coordinate(at.latitude() + north, at.longitude());
  }

  @Test
  void theAirAndTheLogOfARemovedStopGoWithIt() {
    TypedTime time = Hauls.at("2027-04-06T13:00-05:00[America/Chicago]");
    List<LogEvent> log = new ArrayList<>(DEMO.log());
    log.add(new LogEvent.Arrived(time, "dalhart", Remarks.NONE));
    log.add(new LogEvent.Left(time, "dalhart", Remarks.NONE));
    Trip edited = RouteEdits.remove(DEMO.withLog(log), 4);
    assertThat(edited.route().stop("dalhart")).isEmpty();
    assertThat(edited.ambient()).noneMatch(entry -> entry.stop().equals("dalhart"));
    assertThat(edited.ambient()).hasSize(DEMO.ambient().size() - 1);
    assertThat(edited.log()).isEqualTo(DEMO.log());
  }

  @Test
  void joinedLegsHaveTheWayTheTimeAndTheHigherSpeedOfBoth() {
    Leg joined = RouteEdits.remove(DEMO, 4).route().legs().get(3); // 49 mi at 55, 82 mi at 60
    assertThat(miles(joined)).isEqualTo(131, within(1e-9));
    double hours = 49 / 55.0 + 82 / 60.0;
    assertThat(Forecasts.known(joined.duration()).toSeconds() / 3600.0)
        .isEqualTo(hours, within(2 / 3600.0));
    assertThat(Forecasts.known(joined.topSpeed()).text()).isEqualTo("70 mph");
    Leg alike = RouteEdits.remove(DEMO, 3).route().legs().get(2); // both at 55 mph
    assertThat(Forecasts.known(alike.averageSpeed()).text()).isEqualTo("55 mph");
    assertThat(alike.duration()).isNull();
  }

  @Test
  void aLowTopSpeedDoesNotStandForALegOnWhichItIsAssumed() {
    Leg slow = withTop(DEMO.route().legs().get(3), "55 mph");
    Trip trip = RouteEdits.withLeg(DEMO, 3, slow);
    Leg open = withTop(DEMO.route().legs().get(4), null);
    trip = RouteEdits.withLeg(trip, 4, open);
    assertThat(RouteEdits.remove(trip, 4).route().legs().get(3).topSpeed()).isNull();
  }

  @Test
  void joinedProfilesRunOn() {
    Leg joined = RouteEdits.remove(DEMO, 1).route().legs().get(0); // La Veta 47, Raton 73 + 48
    assertThat(joined.profile())
        .extracting(p -> p.distance().text())
        .containsExactly("47 mi", "121 mi");
  }

  @Test
  void reversedThePassesLieWhereTheyAre() {
    Trip edited = RouteEdits.reverse(DEMO);
    Leg last = edited.route().legs().get(STOPS - 2); // Walsenburg to Alamosa: 73 - 47
    assertThat(last.profile()).extracting(p -> p.distance().text()).containsExactly("26 mi");
    assertThat(edited.route().stops().get(0).kind()).isEqualTo(Stop.Kind.START);
    assertThat(edited.route().stops().get(STOPS - 1).kind()).isEqualTo(Stop.Kind.END);
    assertThat(edited.route().stops()).allMatch(s -> s.leave() == null && s.arrive() == null);
    assertThat(edited.ambient()).isEqualTo(DEMO.ambient());
    Trip back = RouteEdits.reverse(edited);
    assertThat(back.route().stops())
        .extracting(Stop::id)
        .containsExactlyElementsOf(DEMO.route().stops().stream().map(Stop::id).toList());
    assertThat(back.route().legs()).isEqualTo(DEMO.route().legs());
  }

  @Test
  void turnedAPointNeverComesToLieBeyondTheLeg() {
    Leg leg =
        new Leg(
            Entered.of(QuantityKind.DISTANCE, "99.97 mi"),
            Entered.of(QuantityKind.SPEED, "50 mph"),
            null,
            null,
            List.of(Trips.point("top", "0.01 mi", "9000 ft")),
            Remarks.NONE);
    Trip edited = RouteEdits.reverse(RouteEdits.withLeg(DEMO, 0, leg));
    Leg turned = edited.route().legs().get(STOPS - 2);
    assertThat(turned.profile().get(0).distance().value())
        .isLessThanOrEqualTo(Forecasts.known(turned.distance()).value());
  }

  @Test
  void whoComesToBeFirstGetsTheDeparture() {
    TypedTime departure = DEMO.route().stops().get(0).leave();
    Trip down = RouteEdits.move(DEMO, 0, 1);
    assertThat(down.route().stops()).extracting(Stop::id).startsWith("walsenburg", "alamosa");
    assertThat(down.route().stops().get(0).leave()).isEqualTo(departure);
    assertThat(down.route().stops().get(1).leave()).isNull();
    Trip up = RouteEdits.move(DEMO, 7, 0);
    assertThat(Forecasts.known(up.route().stops().get(0).leave()).text())
        .isEqualTo("2027-04-06T05:45-05:00[America/Chicago]"); // by the clock of its own zone
    assertThat(up.route().stops().get(1).leave()).isNull();
    assertThat(RouteEdits.move(DEMO, 3, 3)).isEqualTo(DEMO);
  }

  /** Seeded: whatever is done, the route stays whole and its file can be opened again. */
  @Test
  void anyEditsLeaveATripThatCanBeSavedAndOpened() {
    Random random = new Random(20270406);
    for (int round = 0; round < 60; round++) {
      Trip trip = DEMO;
      for (int step = 0; step < 8; step++) {
        int size = trip.route().stops().size();
        int at = random.nextInt(size);
        trip =
            switch (random.nextInt(5)) {
              case 0 ->
                  RouteEdits.insert(
                      trip,
                      random.nextInt(size + 1),
                      stopAt(
                          RouteEdits.freeId(trip, "New stop"),
                          30 + 10 * random.nextDouble(),
                          -105 + 10 * random.nextDouble()));
              case 1 -> size > 2 ? RouteEdits.remove(trip, at) : trip;
              case 2 -> RouteEdits.move(trip, at, random.nextInt(size));
              case 3 -> RouteEdits.reverse(trip);
              default -> RouteEdits.duplicate(trip, at);
            };
        List<String> ids = trip.route().stops().stream().map(Stop::id).toList();
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
        assertThat(trip.ambient()).allMatch(entry -> ids.contains(entry.stop()));
      }
      var opened = TripFile.parse(TripFile.text(trip));
      assertThat(opened.hasValue()).as("%s", opened.problems()).isTrue();
      assertThat(opened.get()).isEqualTo(trip);
    }
  }

  @Test
  void idsAreNew() {
    assertThat(RouteEdits.freeId(DEMO, "Alamosa")).isEqualTo("alamosa-2");
    assertThat(RouteEdits.freeId(DEMO, "Cañon City, CO")).isEqualTo("cañon-city-co");
    assertThat(RouteEdits.freeId(DEMO, " ?! ")).isEqualTo("stop");
    Trip twice = RouteEdits.duplicate(RouteEdits.duplicate(DEMO, 0), 0);
    assertThat(twice.route().stops())
        .extracting(Stop::id)
        .startsWith("alamosa", "alamosa-3", "alamosa-2");
  }

  /** Half the girth of the earth and a fifth are 24,000 km; a typed leg has 10,000 at most. */
  @Test
  void aWayLongerThanAnyLegIsNotGuessed() {
    Leg guessed = RouteEdits.guessed(stopAt("a", 40, -100), stopAt("b", -40, 80));
    assertThat(guessed.distance()).isNull();
  }

  @Test
  void aTypedDistanceIsNoGuess() {
    Leg guessed = RouteEdits.guessed(stopAt("a", 40, -100), stopAt("b", 41, -100));
    assertThat(LegEdits.isGuessed(guessed)).isTrue();
    Leg typed = LegEdits.withDistance(guessed, Entered.of(QuantityKind.DISTANCE, "80 mi")).get();
    assertThat(LegEdits.isGuessed(typed)).isFalse();
    assertThat(miles(typed)).isEqualTo(80, within(1e-9));
  }

  private static Stop stopAt(String id, double latitude, double longitude) {
    return new Stop(
        id,
        id,
        Stop.Kind.REST,
        new Coordinate(latitude, longitude),
        null,
        null,
        Duration.ofMinutes(20),
        null,
        null,
        Air.NONE,
        List.of(),
        Remarks.NONE);
  }

  private static Leg withTop(Leg leg, @Nullable String speed) {
    return new Leg(
        leg.distance(),
        leg.averageSpeed(),
        leg.duration(),
        speed == null ? null : Entered.of(QuantityKind.SPEED, speed),
        leg.profile(),
        leg.remarks());
  }

  private static double miles(Leg leg) {
    Distance distance = Forecasts.known(leg.distance()).value();
    return distance.in(Unit.MILE);
  }
}
