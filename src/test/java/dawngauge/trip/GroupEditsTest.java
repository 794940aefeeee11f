package dawngauge.trip;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.geo.Coordinate;
import dawngauge.geo.PlaceStay;
import dawngauge.geo.Spot;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.settings.SettingsFile;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Changes to several stops at once. */
class GroupEditsTest {

  private static final Trip DEMO =
      new Planner(SettingsFile.defaults(), List.of())
          .store()
          .open(Path.of("demo-data", "spring-fleece-haul.dawngauge"))
          .get();

  private static final List<Stop> STOPS = DEMO.route().stops();

  private static List<String> ids(Trip trip) {
    return trip.route().stops().stream().map(Stop::id).toList();
  }

  private static Entered<Temperature> degrees(String text) {
    return Entered.of(QuantityKind.TEMPERATURE, text);
  }

  @Test
  void onlyTheStopsAndLegsAskedForAreChanged() {
    Trip longer =
        GroupEdits.withStops(
            DEMO, List.of(1, 3, 99, -1), stop -> stop.withStay(Duration.ofHours(7)));
    assertThat(IntStream.range(0, STOPS.size()).boxed())
        .filteredOn(i -> !longer.route().stops().get(i).equals(STOPS.get(i)))
        .containsExactly(1, 3);
    Trip slower =
        GroupEdits.withLegs(
            DEMO,
            List.of(0, STOPS.size() - 1),
            leg -> leg.withAverageSpeed(Entered.of(QuantityKind.SPEED, "41 mph")));
    assertThat(IntStream.range(0, STOPS.size() - 1).boxed())
        .filteredOn(i -> !slower.route().legs().get(i).equals(DEMO.route().legs().get(i)))
        .containsExactly(0);
  }

  @Test
  void movedStopsStandTogetherInTheirOrder() {
    Trip moved = GroupEdits.move(DEMO, List.of(1, 3), 6);
    List<String> order = new ArrayList<>(ids(DEMO));
    String first = order.remove(3);
    String second = order.remove(1);
    order.add(4, second);
    order.add(5, first);
    assertThat(ids(moved)).isEqualTo(order);
    assertThat(GroupEdits.move(DEMO, List.of(2, 3), 3).equals(DEMO)).isTrue();
  }

  /** Seeded: whatever is moved where, no stop is lost or doubled and each pair has its leg. */
  @Test
  void noMoveLosesAStop() {
    Random random = new Random(20261126);
    for (int run = 0; run < 200; run++) {
      NavigableSet<Integer> rows = new TreeSet<>();
      for (int i = 0; i < STOPS.size(); i++) {
        if (random.nextInt(4) == 0) {
          rows.add(i);
        }
      }
      Trip moved = GroupEdits.move(DEMO, rows, random.nextInt(STOPS.size() + 1));
      assertThat(ids(moved)).as("rows %s", rows).containsExactlyInAnyOrderElementsOf(ids(DEMO));
      assertThat(moved.route().legs()).hasSize(STOPS.size() - 1);
      Trip rest = GroupEdits.remove(DEMO, rows);
      assertThat(rest.route().stops()).hasSize(STOPS.size() - rows.size());
      assertThat(rest.route().legs()).hasSize(Math.max(0, STOPS.size() - rows.size() - 1));
    }
  }

  @Test
  void anotherFirstStopTakesOverTheDepartureByItsOwnClock() {
    Trip moved = GroupEdits.move(DEMO, List.of(0), 3);
    Stop first = moved.route().stops().get(0);
    assertThat(first.id()).isEqualTo(STOPS.get(1).id());
    TypedTime departure = first.leave();
    assertThat(departure).isNotNull();
    assertThat(Objects.requireNonNull(departure).instant())
        .isEqualTo(Objects.requireNonNull(STOPS.get(0).leave()).instant());
    assertThat(moved.route().stops().get(2).leave()).isNull();
  }

  @Test
  void copiesHaveIdsAirAndLegsOfTheirOwn() {
    Trip grown = GroupEdits.duplicate(DEMO, List.of(1, 2));
    assertThat(ids(grown)).hasSize(STOPS.size() + 2);
    Set<String> distinct = new HashSet<>(ids(grown));
    assertThat(distinct).hasSize(STOPS.size() + 2);
    assertThat(grown.route().stops().subList(3, 5))
        .extracting(Stop::place)
        .containsExactly(STOPS.get(1).place(), STOPS.get(2).place());
    assertThat(StopAir.of(grown, ids(grown).get(3)).entries())
        .hasSameSizeAs(StopAir.of(DEMO, STOPS.get(1).id()).entries());
    assertThat(GroupEdits.duplicate(DEMO, List.of()).equals(DEMO)).isTrue();
  }

  @Test
  void oneTemperatureStandsAtAllOfSomeStops() {
    Trip edited = GroupAir.withSteady(DEMO, List.of(0, 4), degrees("51 °F"));
    assertThat(List.of(0, 4))
        .allSatisfy(
            row ->
                assertThat(StopAir.of(edited, STOPS.get(row).id()).temperature())
                    .isEqualTo(degrees("51 °F")));
    String other = STOPS.get(2).id();
    assertThat(StopAir.of(edited, other)).isEqualTo(StopAir.of(DEMO, other));
  }

  @Test
  void anotherHighLeavesTheLowOfEachDayAndAHighUnderALowNamesTheStop() {
    Outcome<Trip> edited = GroupAir.withDays(DEMO, List.of(0), null, degrees("60 °F"), false);
    StopAir air = StopAir.of(edited.get(), STOPS.get(0).id());
    StopAir before = StopAir.of(DEMO, STOPS.get(0).id());
    assertThat(air.dates()).isNotEmpty();
    assertThat(air.dates())
        .allSatisfy(
            date -> {
              assertThat(air.high(date)).isEqualTo(degrees("60 °F"));
              assertThat(air.low(date)).isEqualTo(before.low(date));
            });
    Outcome<Trip> refused = GroupAir.withDays(DEMO, List.of(0), null, degrees("-60 °F"), false);
    assertThat(refused.hasValue()).isFalse();
    assertThat(refused.problems().get(0).message()).contains(STOPS.get(0).place());
    Trip undated = GroupEdits.withStops(DEMO, List.of(0), stop -> stop.withTimes(null, null));
    assertThat(
            GroupAir.withDays(undated, List.of(2), degrees("1 °C"), null, false).problems().get(0))
        .satisfies(problem -> assertThat(problem.code()).isEqualTo(ProblemCode.NO_DAY_FOR_FIGURES));
  }

  @Test
  void oneFigureStandsForBothUntilTheOtherIsTyped() {
    Trip bare = RouteEdits.withAir(DEMO, STOPS.get(0).id(), List.of());
    Trip low = GroupAir.withDays(bare, List.of(0), degrees("14 °F"), null, false).get();
    assertThat(days(low)).allMatch(day -> day.equals("14 °F 14 °F")).isNotEmpty();
    Trip again = GroupAir.withDays(low, List.of(0), degrees("9 °F"), null, true).get();
    assertThat(days(again)).allMatch(day -> day.equals("9 °F 9 °F")).isNotEmpty();
    Trip both = GroupAir.withDays(again, List.of(0), null, degrees("52 °F"), false).get();
    assertThat(days(both)).allMatch(day -> day.equals("9 °F 52 °F")).isNotEmpty();
    Trip other = GroupAir.withDays(both, List.of(0), degrees("8 °F"), null, true).get();
    assertThat(days(other)).allMatch(day -> day.equals("8 °F 52 °F")).isNotEmpty();
  }

  private static List<String> days(Trip trip) {
    StopAir air = StopAir.of(trip, STOPS.get(0).id());
    return air.dates().stream()
        .map(date -> known(air.low(date)).text() + " " + known(air.high(date)).text())
        .toList();
  }

  private static RouteOfPlaces.Wanted place(String name, double longitude) {
    return new RouteOfPlaces.Wanted(
        new Spot(
            name,
            new Coordinate(40, longitude),
            Elevation.of(900, Unit.METER),
            ZoneId.of("America/Chicago")),
        PlaceStay.UNSAID);
  }

  @Test
  void aListOfPlacesGoesIntoTheRouteOrBecomesIt() {
    List<RouteOfPlaces.Wanted> places = List.of(place("A", -100), place("B", -99), place("C", -98));
    Trip longer = RouteOfPlaces.insert(DEMO, 2, places);
    assertThat(longer.route().stops().subList(2, 5))
        .extracting(Stop::place)
        .containsExactly("A", "B", "C");
    assertThat(longer.route().legs()).hasSize(STOPS.size() + 2);
    assertThat(LegEdits.isGuessed(longer.route().legs().get(2))).isTrue();
    Trip whole = RouteOfPlaces.replace(DEMO, places);
    assertThat(whole.route().stops())
        .extracting(Stop::kind)
        .containsExactly(Stop.Kind.START, Stop.Kind.REST, Stop.Kind.END);
    assertThat(whole.route().stops().get(1).stay()).isEqualTo(Duration.ofMinutes(20));
    assertThat(whole.ambient()).isEmpty();
    assertThat(Objects.requireNonNull(whole.route().stops().get(0).leave()).clock())
        .isEqualTo(Objects.requireNonNull(STOPS.get(0).leave()).clock());
  }

  private static RouteOfPlaces.Wanted place(String name, double longitude, PlaceStay stay) {
    return new RouteOfPlaces.Wanted(place(name, longitude).spot(), stay);
  }

  @Test
  void aNightOfAListEndsAtTheFirstSuchTimeAndAHoseIsThere() {
    PlaceStay atSix = new PlaceStay(null, true, LocalTime.of(6, 0), true);
    PlaceStay nineHours = new PlaceStay(Duration.ofHours(9), true, null, false);
    // The demo departs at 05:45 by the clock of Denver, which these places do not have; a degree of
    // longitude at 40 north is 85 km by the great circle, some 64 miles of road with a fifth more.
    List<RouteOfPlaces.Wanted> places =
        List.of(
            place("A", -100),
            place("B", -99, atSix),
            place("C", -98, nineHours),
            place("D", -97, atSix),
            place("E", -96));
    Trip made = RouteOfPlaces.replace(DEMO, places);
    List<Stop> stops = made.route().stops();
    assertThat(stops)
        .extracting(Stop::kind)
        .containsExactly(
            Stop.Kind.START,
            Stop.Kind.OVERNIGHT,
            Stop.Kind.OVERNIGHT,
            Stop.Kind.OVERNIGHT,
            Stop.Kind.END);
    assertThat(known(stops.get(1).leave()).time().toLocalDateTime())
        .isEqualTo(LocalDateTime.of(2027, 4, 7, 6, 0));
    assertThat(stops.get(2).leave()).isNull();
    assertThat(stops.get(2).stay()).isEqualTo(Duration.ofHours(9));
    assertThat(known(stops.get(3).leave()).time().toLocalDateTime())
        .as("arrives in the afternoon of the second day")
        .isEqualTo(LocalDateTime.of(2027, 4, 8, 6, 0));
    assertThat(stops)
        .extracting(stop -> stop.air().available())
        .containsExactly(false, true, false, true, false);
    assertThat(RouteOfPlaces.nightsEnd(made, 0, places)).isTrue();
    Trip undated = DEMO.withRoute(new Route(List.of(), List.of()));
    assertThat(RouteOfPlaces.nightsEnd(RouteOfPlaces.replace(undated, places), 0, places))
        .as("nobody knows when it comes")
        .isFalse();
  }

  @Test
  void whoComesLateAtNightLeavesInTheSameMorning() {
    ZoneId zone = ZoneId.of("America/Chicago");
    assertThat(leaves(LocalDateTime.of(2027, 4, 6, 22, 0).atZone(zone))).hasToString("2027-04-07");
    assertThat(leaves(LocalDateTime.of(2027, 4, 7, 3, 59).atZone(zone))).hasToString("2027-04-07");
    assertThat(leaves(LocalDateTime.of(2027, 4, 7, 4, 0).atZone(zone))).hasToString("2027-04-08");
  }

  private static LocalDate leaves(ZonedDateTime arrives) {
    return LeaveDay.afterNight(arrives, LocalTime.of(6, 0)).time().toLocalDate();
  }
}
