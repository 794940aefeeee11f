package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.planner.Planner;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.rules.Limits;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Remarks;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two stops at one place, as a hotel and the fuel next door: a leg of no length changes nothing.
 */
class NoWayTest {

  private static final Duration NEXT_DOOR = Duration.ofMinutes(10);

  /**
   * In pascal. The air of a stay is taken as straight between nodes, and one was added: where it is
   * curved the figures move by a fraction of a pascal; a display shows 700 Pa, a tenth of a psi.
   */
  private static final double ROUNDING = 1;

  private static final Leg NO_WAY =
      new Leg(Entered.of(QuantityKind.DISTANCE, "0 mi"), null, null, null, List.of(), Remarks.NONE);

  /** Every stop of the demo hauls with air of its own at which the rig stands long enough. */
  static Stream<Arguments> stays() {
    return Stream.of("spring-fleece-haul", "autumn-stock-haul")
        .flatMap(
            name -> {
              Trip trip = demo(name);
              return Itinerary.of(trip).get().visits().stream()
                  .filter(visit -> visit.index() > 0 && !visit.passes())
                  .filter(visit -> visit.index() < trip.route().stops().size() - 1)
                  .filter(visit -> visit.stay().compareTo(NEXT_DOOR) > 0)
                  .filter(visit -> hasAir(trip, visit.stop().id()))
                  .map(visit -> Arguments.of(name, visit.index()));
            });
  }

  @ParameterizedTest
  @MethodSource("stays")
  void aStopNextDoorLeavesAllLaterFiguresAsTheyWere(String name, int index) {
    Trip trip = demo(name);
    Trip with = nextDoor(trip, index, NO_WAY);
    Forecaster before = Forecasts.forecaster(trip);
    Forecaster after = Forecasts.forecaster(with);
    assertThat(after.itinerary().visits()).hasSize(before.itinerary().visits().size() + 1);
    int checked = 0;
    for (WheelPosition position : trip.rig().positions()) {
      List<TireAtStop> one = before.track(position).orElseThrow().stops();
      List<TireAtStop> other = after.track(position).orElseThrow().stops();
      assertSame(other.get(index).arrival(), one.get(index).arrival());
      assertSame(other.get(index + 1).leaving(), one.get(index).leaving());
      assertThat(other.get(index + 1).cold()).isEqualTo(one.get(index).cold());
      for (int i = index + 1; i < one.size(); i++) {
        assertSame(other.get(i + 1).arrival(), one.get(i).arrival());
        assertSame(other.get(i + 1).check(), one.get(i).check());
        assertSame(other.get(i + 1).leaving(), one.get(i).leaving());
        assertThat(figures(other.get(i + 1).limits())).isEqualTo(figures(one.get(i).limits()));
        assertThat(other.get(i + 1).cold()).isEqualTo(one.get(i).cold());
        checked += one.get(i).arrival() == null ? 0 : 1;
      }
    }
    assertThat(checked).isPositive();
  }

  private static List<Object> figures(Limits limits) {
    return List.of(
        limits.load(), limits.floor(), limits.aim(), limits.ceiling(), limits.reference());
  }

  @Test
  void theWarmthOfTheRoadIsStillThereNextDoor() {
    Trip trip = demo("spring-fleece-haul");
    Trip with = nextDoor(trip, 1, NO_WAY);
    TireAtStop there = Forecasts.first(with).get(1);
    TireAtStop nextDoor = Forecasts.first(with).get(2);
    assertSame(nextDoor.arrival(), there.leaving());
    assertThat(known(nextDoor.arrival()).reading())
        .isGreaterThan(known(nextDoor.arrival()).settled());
  }

  @Test
  void typedMinutesNextDoorAreTaken() {
    Trip trip = demo("spring-fleece-haul");
    Trip with = nextDoor(trip, 1, NO_WAY.withDuration(Duration.ofMinutes(5)));
    Itinerary times = Itinerary.of(with).get();
    assertThat(Duration.between(times.visits().get(1).leave(), times.visits().get(2).arrive()))
        .isEqualTo(Duration.ofMinutes(5));
    assertThat(times.drives().get(1).metersPerSecond()).isZero();
    TireAtStop next = Forecasts.first(with).get(2);
    assertThat(known(next.arrival()).reading()).isNotNaN();
  }

  @Test
  void aLegWhoseLengthIsNotGivenStaysNotKnown() {
    Trip trip = demo("spring-fleece-haul");
    Leg open = NO_WAY.withDistance(null);
    Itinerary cut = Itinerary.of(nextDoor(trip, 1, open)).get();
    assertThat(cut.visits()).hasSize(2);
    assertThat(Itinerary.of(nextDoor(trip, 1, open)).problems())
        .anyMatch(problem -> problem.code() == ProblemCode.NO_DRIVING_TIME);
    Trip timed = nextDoor(trip, 1, open.withDuration(Duration.ofMinutes(5)));
    assertThat(Itinerary.of(timed).get().drives().get(1).lengthKnown()).isFalse();
    // How fast it went is not known, so neither is how warm the tires are.
    assertThat(known(Forecasts.first(timed).get(2).arrival()).reading()).isNaN();
  }

  private static Trip nextDoor(Trip trip, int index, Leg leg) {
    Stop stop = trip.route().stops().get(index);
    Duration stay = Itinerary.of(trip).get().visits().get(index).stay();
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    stops.set(index, stop.withStay(stay.minus(NEXT_DOOR)).withTimes(stop.arrive(), null));
    stops.add(
        index + 1,
        stop.withId("next-door")
            .withStay(NEXT_DOOR)
            .withTimes(null, stop.leave())
            .withLoadChanges(List.of()));
    List<Leg> legs = new ArrayList<>(trip.route().legs());
    legs.add(index, leg);
    List<AmbientEntry> air = new ArrayList<>();
    for (AmbientEntry entry : trip.ambient()) {
      boolean here = entry.stop().equals(stop.id());
      if (!here || entry.isAtStop()) {
        air.add(entry);
      }
      if (here) {
        air.add(entry.at("next-door"));
      }
    }
    return trip.withRoute(new Route(stops, legs)).withAmbient(air);
  }

  private static boolean hasAir(Trip trip, String stop) {
    boolean told =
        trip.log().stream()
            .anyMatch(
                event ->
                    (event instanceof LogEvent.Arrived arrived && arrived.stop().equals(stop))
                        || (event instanceof LogEvent.Left left && left.stop().equals(stop)));
    return !told
        && trip.ambient().stream().anyMatch(air -> air.isAtStop() && air.stop().equals(stop));
  }

  private static Trip demo(String name) {
    return new Planner(SettingsFile.defaults(), List.of())
        .store()
        .open(Path.of("demo-data", name + ".dawngauge"))
        .get();
  }

  private static void assertSame(@Nullable TireSnapshot actual, @Nullable TireSnapshot expected) {
    if (expected == null || actual == null) {
      assertThat(actual).isEqualTo(expected);
      return;
    }
    double[] one = figures(actual);
    double[] other = figures(expected);
    IntStream.range(0, one.length)
        .forEach(
            i -> {
              if (Double.isNaN(other[i])) {
                assertThat(one[i]).isNaN();
              } else {
                assertThat(one[i]).isCloseTo(other[i], within(ROUNDING));
              }
            });
  }

  private static double[] figures(TireSnapshot moment) {
    return new double[] {
      moment.settled(),
      moment.reading(),
      moment.judged(),
      moment.settledSigma(),
      moment.limitSigma(),
      moment.readingSigma(),
      moment.coldSide()
    };
  }
}
