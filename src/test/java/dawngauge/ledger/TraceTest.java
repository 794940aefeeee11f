package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The lines that are drawn are those of the forecast. */
class TraceTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip DEMO =
      PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  private static final Advice ADVICE = Forecasts.known(PLANNER.plan(DEMO).advice());

  @Test
  void pointsAreInTimeOrder() {
    for (WheelPosition position : DEMO.rig().positions()) {
      Trace trace = Trace.of(ADVICE, position, UnitSystem.US);
      assertThat(trace.points()).isNotEmpty();
      assertThat(trace.points()).extracting(Trace.Point::time).isSorted();
      assertThat(trace.nights()).extracting(Trace.Night::sunset).isSorted();
      assertThat(trace.floors()).extracting(Trace.Floor::from).isSorted();
      assertThat(trace.points())
          .filteredOn(point -> !Double.isNaN(point.low()))
          .allMatch(point -> point.low() <= point.reading() && point.reading() <= point.high());
    }
  }

  @Test
  void atTheStopsItIsTheForecast() {
    int compared = 0;
    for (WheelPosition position : DEMO.rig().positions()) {
      List<Trace.Point> points = Trace.of(ADVICE, position, UnitSystem.US).points();
      for (TireAtStop at : tires(ADVICE, position)) {
        for (TireSnapshot moment : new TireSnapshot[] {at.arrival(), at.leaving()}) {
          compared += found(points, moment) ? 1 : 0;
        }
      }
    }
    assertThat(compared).isGreaterThan(10 * 15); // ten tires, most stops of thirteen
  }

  /** Whether a moment is known; if so it must be a point. */
  private static boolean found(List<Trace.Point> points, @Nullable TireSnapshot moment) {
    if (moment == null) {
      return false;
    }
    Instant time = Instant.ofEpochMilli(Math.round(moment.seconds() * 1000));
    assertThat(points)
        .filteredOn(point -> point.time().equals(time))
        .anySatisfy(
            point -> {
              assertThat(point.settled()).isEqualTo(Forecasts.psi(moment.settled()), within(1e-6));
              assertThat(point.reading()).isEqualTo(Forecasts.psi(moment.reading()), within(1e-6));
            });
    return true;
  }

  @Test
  void otherUnitsAreTheSameLine() {
    WheelPosition position = DEMO.rig().positions().get(0);
    List<Trace.Point> us = Trace.of(ADVICE, position, UnitSystem.US).points();
    List<Trace.Point> si = Trace.of(ADVICE, position, UnitSystem.SI).points();
    assertThat(si).hasSameSizeAs(us);
    for (int i = 0; i < us.size(); i++) {
      // 1 bar = 100 kPa, 1 psi = 6894.757 Pa (NIST SP 811, 2008)
      assertThat(si.get(i).settled())
          .isEqualTo(us.get(i).settled() * 0.0689475729316836, within(1e-9));
      assertThat(si.get(i).air()).isEqualTo((us.get(i).air() - 32) / 1.8, within(1e-9));
      assertThat(si.get(i).elevation()).isEqualTo(us.get(i).elevation() * 0.3048, within(1e-6));
    }
  }

  @Test
  void whereTheAirIsUnknownTheLineIsBroken() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(StopBuilder.stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(StopBuilder.stop("b").stays(Duration.ofMinutes(20)))
            .stop(
                StopBuilder.stop("c").elevation(null).stays(Duration.ofMinutes(20)).steady("60 °F"))
            .stop(StopBuilder.stop("d").stays(Duration.ofHours(1)).steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .trip();
    Advice advice = Forecasts.known(PLANNER.plan(trip).advice());
    WheelPosition first = trip.rig().positions().get(0);
    List<Trace.Point> points = Trace.of(advice, first, UnitSystem.US).points();
    Instant leaves = Instant.parse("2027-06-01T06:00:00Z");
    // 100 mi at 50 mph twice and 20 min: nothing is known at c, which has no elevation.
    Instant atC = leaves.plus(Duration.ofMinutes(265));
    assertThat(points).extracting(Trace.Point::settled).contains(Double.NaN);
    assertThat(points)
        .filteredOn(point -> !Double.isNaN(point.settled()))
        .noneMatch(p -> Duration.between(p.time(), atC).abs().toMinutes() < 10);
    int gap = 0;
    while (!Double.isNaN(points.get(gap).settled())) {
      gap++;
    }
    assertThat(points.get(gap).time()).isBefore(atC);
    assertThat(points.get(gap + 1).time()).isAfter(atC);
  }

  @Test
  void nightsRunFromSunsetToSunrise() {
    List<Trace.Night> nights =
        Trace.of(ADVICE, DEMO.rig().positions().get(0), UnitSystem.US).nights();
    assertThat(nights).hasSizeGreaterThanOrEqualTo(3);
    for (int i = 0; i < nights.size(); i++) {
      Duration length = Duration.between(nights.get(i).sunset(), nights.get(i).sunrise());
      // Two weeks past the equinox at 33 to 37 degrees north a night is some 11 to 11.5 h long.
      assertThat(length.toMinutes()).isBetween(640L, 700L);
      if (i > 0) {
        assertThat(nights.get(i).sunset()).isAfter(nights.get(i - 1).sunrise());
      }
    }
  }

  @Test
  void floorsAndCeilingsAreThoseOfTheLimits() {
    WheelPosition position = Trace.tightest(ADVICE);
    Trace trace = Trace.of(ADVICE, position, UnitSystem.US);
    List<TireAtStop> tires = tires(ADVICE, position);
    assertThat(trace.floors()).isNotEmpty();
    for (Trace.Floor floor : trace.floors()) {
      assertThat(floor.from()).isBefore(floor.to());
      assertThat(tires)
          .anyMatch(at -> Math.abs(Forecasts.psi(at.limits().floor()) - floor.pressure()) < 1e-6);
    }
    assertThat(trace.ceilings()).isNotEmpty();
    for (Trace.Ceiling ceiling : trace.ceilings()) {
      assertThat(tires)
          .anyMatch(
              at -> Math.abs(Forecasts.psi(at.limits().ceiling()) - ceiling.pressure()) < 1e-6);
    }
  }

  @Test
  void theTightestHasTheLowestMargin() {
    WheelPosition position = Trace.tightest(ADVICE);
    double lowest = lowest(position);
    assertThat(DEMO.rig().positions()).allMatch(other -> !(lowest(other) < lowest));
  }

  private static double lowest(WheelPosition position) {
    return tires(ADVICE, position).stream()
        .mapToDouble(TireAtStop::worstMargin)
        .filter(margin -> !Double.isNaN(margin))
        .min()
        .orElse(Double.NaN);
  }

  private static List<TireAtStop> tires(Advice advice, WheelPosition position) {
    return advice.stops().stream()
        .map(StopAdvice::tires)
        .flatMap(List::stream)
        .map(TireAdvice::tire)
        .filter(at -> at.fitted().position().equals(position))
        .toList();
  }
}
