package dawngauge.ambient;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.testdata.FakeFeed;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The air at stops, between them, and where nobody knows it. */
class AmbientTest {

  private static final double MILE = 1609.344;
  private static final double LEAVING = Instant.parse("2027-06-01T06:00:00Z").getEpochSecond();

  private static Outcome<Ambient> ambient(Trip trip, AmbientSource... further) {
    Itinerary itinerary = Itinerary.of(trip).get();
    List<AmbientSource> sources = new ArrayList<>(List.of(new TypedAmbient(trip)));
    sources.addAll(List.of(further));
    return Ambient.of(AmbientNeeds.of(trip, itinerary), sources);
  }

  private static Trips from(String temperature, String elevation) {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("a").elevation(elevation).leaves("2027-06-01T06:00Z").steady(temperature));
  }

  private static double fahrenheit(double kelvins) {
    return new Temperature(kelvins).in(Unit.FAHRENHEIT);
  }

  private static List<ProblemCode> codes(Outcome<Ambient> outcome) {
    return outcome.problems().stream().map(Problem::code).toList();
  }

  @Test
  void betweenTwoStopsTheAirIsLinearInTheDistance() {
    Ambient ambient = ambient(from("40 °F", "0 ft").stop(stop("b").steady("80 °F")).trip()).get();

    Air quarter = ambient.onTheWay(25 * MILE, 0, LEAVING);

    assertThat(fahrenheit(quarter.kelvins())).isCloseTo(50, within(1e-9));
    assertThat(quarter.sigma()).isCloseTo(ForecastError.ofMinimum(0), within(1e-12));
    assertThat(quarter.bridged()).isFalse();
  }

  /** 6.5 K a kilometer (U.S. Standard Atmosphere 1976) above the straight line between the ends. */
  @Test
  void higherGroundIsColder() {
    Ambient ambient =
        ambient(from("50 °F", "1000 m").stop(stop("b").elevation("2000 m").steady("50 °F")).trip())
            .get();

    double onTheLine = ambient.onTheWay(50 * MILE, 1500, LEAVING).kelvins();
    double above = ambient.onTheWay(50 * MILE, 3500, LEAVING).kelvins();

    assertThat(fahrenheit(onTheLine)).isCloseTo(50, within(1e-9));
    assertThat(onTheLine - above).isCloseTo(13, within(1e-9));
  }

  /**
   * A valley 500 m under both ends: 3.25 K warmer by day; in the hours of the minimum, when cold
   * air lies in it, as warm as the lower end at most.
   */
  @Test
  void aboutDawnAValleyIsNoWarmerThanTheLowerEnd() {
    Ambient ambient =
        ambient(from("50 °F", "1000 m").stop(stop("b").elevation("2000 m").steady("50 °F")).trip())
            .get();
    double afternoon = LEAVING + 9 * 3600;

    double valley = ambient.onTheWay(50 * MILE, 500, LEAVING).kelvins();
    assertThat(valley).isEqualTo(ambient.onTheWay(50 * MILE, 1000, LEAVING).kelvins());
    assertThat(ambient.onTheWay(50 * MILE, 1200, LEAVING).kelvins()).isLessThan(valley);
    double byDay = ambient.onTheWay(50 * MILE, 500, afternoon).kelvins();
    assertThat(byDay - ambient.onTheWay(50 * MILE, 1000, afternoon).kelvins())
        .isCloseTo(3.25, within(1e-9));
  }

  @Test
  void aPassWithItsOwnTemperatureIsTakenAsGiven() {
    Trip trip =
        from("50 °F", "1000 m")
            .leg("100 mi", "50 mph", Trips.point("pass", "50 mi", "3000 m", "20 °F"))
            .stop(stop("b").elevation("1000 m").steady("50 °F"))
            .trip();
    Ambient ambient = ambient(trip).get();

    assertThat(fahrenheit(ambient.onTheWay(50 * MILE, 3000, LEAVING).kelvins()))
        .isCloseTo(20, within(1e-9));
    assertThat(fahrenheit(ambient.onTheWay(75 * MILE, 2000, LEAVING).kelvins()))
        .isCloseTo(35, within(1e-9));
  }

  @Test
  void aPassWithoutATemperatureIsNoGap() {
    Trip trip =
        from("50 °F", "1000 m")
            .leg("100 mi", "50 mph", Trips.point("pass", "50 mi", "3000 m"))
            .stop(stop("b").elevation("1000 m").steady("50 °F"))
            .trip();
    Outcome<Ambient> outcome = ambient(trip);

    assertThat(outcome.problems()).isEmpty();
    double pass = outcome.get().onTheWay(50 * MILE, 3000, LEAVING).kelvins();
    assertThat(Temperature.of(50, Unit.FAHRENHEIT).kelvins() - pass).isCloseTo(13, within(1e-9));
  }

  @Test
  void acrossAStopWithoutAirTheSpreadIsWiderAndItIsSaid() {
    Trip trip =
        from("40 °F", "0 ft")
            .stop(stop("unknown").stays(Duration.ofHours(1)))
            .stop(stop("c").steady("80 °F"))
            .trip();
    Outcome<Ambient> outcome = ambient(trip);
    Ambient ambient = outcome.get();

    assertThat(codes(outcome)).containsExactly(ProblemCode.NO_AMBIENT);
    assertThat(outcome.problems().get(0).where()).isEqualTo("unknown");
    assertThat(ambient.atStop(1, LEAVING).known()).isFalse();
    for (double miles : new double[] {50, 100, 150}) {
      Air air = ambient.onTheWay(miles * MILE, 0, LEAVING);
      assertThat(air.bridged()).isTrue();
      assertThat(fahrenheit(air.kelvins())).isCloseTo(40 + miles / 5, within(1e-9));
      assertThat(air.sigma()).isCloseTo(Math.hypot(ForecastError.ofMinimum(0), 5), within(1e-9));
    }
  }

  @Test
  void beforeTheFirstAndAfterTheLastKnownAirNothingIsKnown() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z"))
            .stop(stop("b").stays(Duration.ofHours(1)).steady("50 °F"))
            .stop(stop("c"))
            .trip();
    Outcome<Ambient> outcome = ambient(trip);

    assertThat(codes(outcome)).containsExactly(ProblemCode.NO_AMBIENT, ProblemCode.NO_AMBIENT);
    assertThat(outcome.get().onTheWay(50 * MILE, 0, LEAVING).known()).isFalse();
    assertThat(outcome.get().onTheWay(100 * MILE, 0, LEAVING).known()).isTrue();
    assertThat(outcome.get().onTheWay(150 * MILE, 0, LEAVING).known()).isFalse();
  }

  @Test
  void airWithoutAHeightIsNotUsed() {
    Trip trip = from("40 °F", "0 ft").stop(stop("b").elevation(null).steady("50 °F")).trip();
    Outcome<Ambient> outcome = ambient(trip);

    assertThat(codes(outcome)).containsExactly(ProblemCode.NO_ELEVATION);
    assertThat(outcome.get().seriesAt(1)).isNull();
  }

  @Test
  void aFeedAnswersWhatIsNotTypedAndTheFirstSourceWins() {
    Trip trip =
        from("40 °F", "0 ft")
            .stop(stop("b").stays(Duration.ofHours(1)))
            .stop(stop("c").stays(Duration.ofHours(1)))
            .stop(stop("d").stays(Duration.ofHours(1)))
            .trip();
    Outcome<Ambient> outcome =
        ambient(trip, new FakeFeed(60, "a", "b"), new FakeFeed(70, "b", "c"));
    Ambient ambient = outcome.get();

    assertThat(fahrenheit(ambient.atStop(0, LEAVING).kelvins())).isCloseTo(40, within(1e-9));
    assertThat(fahrenheit(ambient.atStop(1, LEAVING).kelvins())).isCloseTo(60, within(1e-9));
    assertThat(fahrenheit(ambient.atStop(2, LEAVING).kelvins())).isCloseTo(70, within(1e-9));
    assertThat(known(ambient.seriesAt(0)).provenance()).isEqualTo(Provenance.TYPED);
    assertThat(known(ambient.seriesAt(1)).provenance()).isEqualTo(FakeFeed.PROVENANCE);
    assertThat(ambient.atStop(1, LEAVING).sigma()).isCloseTo(1.5, within(0.0));
    assertThat(outcome.problems()).containsExactly(Problem.of(ProblemCode.NO_AMBIENT, "d"));
  }

  @Test
  void aFeedMayAnswerForAPass() {
    Trip trip =
        from("50 °F", "1000 m")
            .leg("100 mi", "50 mph", Trips.point("pass", "50 mi", "3000 m"))
            .stop(stop("b").elevation("1000 m").steady("50 °F"))
            .trip();

    Ambient ambient = ambient(trip, new FakeFeed(10, "pass")).get();

    assertThat(fahrenheit(ambient.onTheWay(50 * MILE, 3000, LEAVING).kelvins()))
        .isCloseTo(10, within(1e-9));
  }

  /** A place passed needs no air of its own; one that was typed counts. */
  @Test
  void needsAreStopsWhereTheRigStandsAndWhereAirIsTyped() {
    Trip trip =
        from("40 °F", "0 ft")
            .stop(stop("passed"))
            .stop(stop("passed with air").steady("50 °F"))
            .stop(stop("end"))
            .trip();
    AmbientNeeds needs = AmbientNeeds.of(trip, Itinerary.of(trip).get());

    assertThat(needs.needs())
        .extracting(AmbientNeeds.Need::place)
        .containsExactly("a", "passed with air", "end");
    assertThat(needs.needs()).allMatch(AmbientNeeds.Need::required);
    assertThat(needs.needs().get(1).from()).isEqualTo(Instant.parse("2027-06-01T10:00:00Z"));
  }

  /**
   * Days without any air between: the low and high of the last known place are used on, bridged.
   */
  @Test
  void severalDaysAreBridged() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("a")
                    .at(37.5, -105.9, "America/Denver")
                    .leaves("2027-06-01T06:00-06:00[America/Denver]")
                    .lowHigh("2027-06-01", "40 °F", "80 °F"))
            .stop(stop("unknown 1").stays(Duration.ofDays(3)))
            .stop(stop("unknown 2").stays(Duration.ofDays(4)))
            .stop(stop("d").steady("60 °F"))
            .trip();
    Outcome<Ambient> outcome = ambient(trip);
    double weekLater = LEAVING + 7 * 86_400.0;

    Air air = outcome.get().onTheWay(150 * MILE, 0, weekLater);
    Air sameHour = outcome.get().onTheWay(150 * MILE, 0, LEAVING + 86_400.0);

    assertThat(air.bridged()).isTrue();
    assertThat(air.kelvins()).isCloseTo(sameHour.kelvins(), within(0.5));
  }
}
