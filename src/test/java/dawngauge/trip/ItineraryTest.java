package dawngauge.trip;

import static dawngauge.trip.Hauls.arrived;
import static dawngauge.trip.Hauls.left;
import static dawngauge.trip.Hauls.leg;
import static dawngauge.trip.Hauls.reading;
import static dawngauge.trip.Hauls.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which times win, how they are counted, and where the times that are known end. */
class ItineraryTest {
  private static final String DAWN = "2027-03-09T06:00-07:00[America/Denver]";
  private static final Duration HALF_HOUR = Duration.ofMinutes(30);

  @Nested
  class Precedence {
    @Test
    void computedFromDistanceAndAverageSpeed() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", null, HALF_HOUR, null), stop("c")),
              List.of(leg("120 mi", "60 mph"), leg("45 mi", "30 mph")));
      // 120 mi at 60 mph is 2 h, 45 mi at 30 mph is 1 h 30 min.
      assertThat(clock(plan, 1)).isEqualTo("08:00 to 08:30");
      assertThat(clock(plan, 2)).isEqualTo("10:00 to 10:00");
      assertThat(plan.visits().get(1).stay()).isEqualTo(HALF_HOUR);
      assertThat(plan.visits().get(2).meters()).isCloseTo(165 * 1609.344, within(1e-6));
      assertThat(plan.drives().get(0).seconds()).isEqualTo(7200);
      assertThat(mph(plan.drives().get(0).metersPerSecond())).isCloseTo(60, within(1e-9));
      assertThat(plan.visits().get(1).passes()).isFalse();
      assertThat(plan.visits().get(2).passes()).isFalse();
    }

    @Test
    void aTypedDurationBeatsDistanceAndSpeed() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b")),
              List.of(leg("120 mi", "60 mph", Duration.ofHours(3), null)));
      assertThat(clock(plan, 1)).startsWith("09:00");
      assertThat(mph(plan.drives().get(0).metersPerSecond())).isCloseTo(40, within(1e-9));
    }

    @Test
    void typedBeatsComputed() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", on9th("08:20"), HALF_HOUR, on9th("09:00")), stop("c")),
              List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph")));
      assertThat(clock(plan, 1)).isEqualTo("08:20 to 09:00");
      assertThat(clock(plan, 2)).startsWith("10:00");
      // 120 mi in 2 h 20 min
      assertThat(mph(plan.drives().get(0).metersPerSecond()))
          .isCloseTo(120 / (7 / 3.0), within(1e-9));
    }

    @Test
    void actualBeatsTypedAndTheRestShifts() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", on9th("08:20"), HALF_HOUR, on9th("09:00")), stop("c")),
              List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph")),
              left("a", on9th("06:10")),
              arrived("b", on9th("08:45")),
              left("b", on9th("09:20")));
      assertThat(clock(plan, 0)).endsWith("06:10");
      assertThat(clock(plan, 1)).isEqualTo("08:45 to 09:20");
      assertThat(clock(plan, 2)).startsWith("10:20");
    }

    @Test
    void lateOnTheRoadATypedTimeThatCannotBeKeptClashesAndTheRestShifts() {
      Outcome<Itinerary> outcome =
          Itinerary.of(
              haul(
                  List.of(
                      start(DAWN),
                      stop("b", on9th("08:00"), HALF_HOUR, null),
                      stop("c", null, HALF_HOUR, on9th("09:40")),
                      stop("d")),
                  List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph"), leg("60 mi", "60 mph")),
                  left("a", on9th("07:00"))));
      Itinerary plan = outcome.get();
      // Left an hour late: 09:00 at b for the typed 08:00; 10:30 at c, after its typed departure.
      assertThat(clock(plan, 1)).isEqualTo("09:00 to 09:30");
      assertThat(clock(plan, 2)).isEqualTo("10:30 to 11:00");
      assertThat(clock(plan, 3)).startsWith("12:00");
      assertThat(outcome.problems())
          .extracting(Problem::message)
          .satisfiesExactly(
              arrival ->
                  assertThat(arrival)
                      .isEqualTo(
                          "B: the typed arrival, 2027-03-09 08:00, cannot be kept by the actual"
                              + " times: 2027-03-09 09:00 is expected; change it, or what hangs on"
                              + " it"),
              leaving -> assertThat(leaving).contains("C: the typed departure, 2027-03-09 09:40"));
    }

    @Test
    void whereItIsReadItStillStands() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", null, HALF_HOUR, null), stop("c")),
              List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph")),
              arrived("b", on9th("08:10")),
              reading(on9th("09:05")));
      assertThat(clock(plan, 1)).isEqualTo("08:10 to 09:05");
      assertThat(clock(plan, 2)).startsWith("10:05");
    }

    @Test
    void whatIsReadWhenTheNextStopIsReachedDoesNotHoldItAtThisOne() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", null, HALF_HOUR, null), stop("c")),
              List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph")),
              arrived("b", on9th("08:10")),
              reading(on9th("09:50")));
      // Left b at 08:40 as planned, an hour's drive: at 09:50 it is at c.
      assertThat(clock(plan, 1)).isEqualTo("08:10 to 08:40");
      assertThat(clock(plan, 2)).startsWith("09:40");
    }

    @Test
    void stopsThatWereNotNotedLieBeforeTheNextThatWas() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", null, HALF_HOUR, null), stop("c"), stop("d")),
              List.of(leg("60 mi", "60 mph"), leg("60 mi", "60 mph"), leg("60 mi", "60 mph")),
              arrived("c", on9th("08:10")));
      // Half an hour at b would lead to 08:30: it was left by 07:10.
      assertThat(clock(plan, 1)).isEqualTo("07:00 to 07:10");
      assertThat(clock(plan, 2)).startsWith("08:10");
    }

    @Test
    void anActualArrivalKeepsTheStay() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", null, HALF_HOUR, null)),
              List.of(leg("120 mi", "60 mph")),
              arrived("b", on9th("08:45")));
      assertThat(clock(plan, 1)).isEqualTo("08:45 to 09:15");
    }
  }

  /**
   * U.S. clocks change on the second Sunday of March and the first of November (15 U.S.C. 260a,
   * from memory).
   */
  @Nested
  class ClockChange {
    @Test
    void springHourIsNotDriven() {
      Itinerary plan =
          complete(
              List.of(
                  start("2027-03-14T01:30-07:00[America/Denver]"),
                  stop("b", null, Duration.ofHours(8), null)),
              List.of(leg("60 mi", "60 mph")));
      // One hour after 01:30 the clock shows 03:30; eight hours later 11:30.
      assertThat(clock(plan, 1)).isEqualTo("03:30 to 11:30");
      assertThat(plan.drives().get(0).seconds()).isEqualTo(3600);
    }

    @Test
    void theNightOfSpringIsAnHourShorter() {
      Itinerary plan =
          complete(
              List.of(
                  start("2027-03-13T20:00-07:00[America/Denver]"),
                  stop("b", null, null, "2027-03-14T06:00-06:00[America/Denver]")),
              List.of(leg("60 mi", "60 mph")));
      // Parked from 21:00 to 06:00 by the clock is 8 h.
      assertThat(plan.visits().get(1).stay()).isEqualTo(Duration.ofHours(8));
    }

    @Test
    void autumnHourIsDrivenTwice() {
      Itinerary plan =
          complete(
              List.of(
                  start("2027-11-07T00:30-06:00[America/Denver]"),
                  stop("b", null, null, "2027-11-07T01:50-07:00[America/Denver]")),
              List.of(leg("120 mi", "60 mph")));
      // Two hours after 00:30 it is 01:30 for the second time.
      assertThat(shown(plan, 1).toString()).isEqualTo("2027-11-07T01:30-07:00[America/Denver]");
      assertThat(plan.visits().get(1).stay()).isEqualTo(Duration.ofMinutes(20));
    }

    @Test
    void theEarlierOfTwoEqualClockTimesIsBeforeTheLater() {
      Outcome<Itinerary> outcome =
          Itinerary.of(
              haul(
                  List.of(
                      start("2027-11-07T00:30-06:00[America/Denver]"),
                      stop("b", null, null, "2027-11-07T01:50-06:00[America/Denver]")),
                  List.of(leg("120 mi", "60 mph"))));
      // Arrives at the second 01:30, so the first 01:50 is over.
      assertThat(outcome.problems().get(0).code()).isEqualTo(ProblemCode.LEAVES_BEFORE_ARRIVING);
    }
  }

  @Nested
  class Zones {
    @Test
    void ownZoneThenTypedTimesThenTheStopBefore() {
      Itinerary plan =
          complete(
              List.of(
                  start(DAWN),
                  stop("b"),
                  Hauls.in("America/Chicago", stop("c")),
                  stop("d"),
                  stop("e", "2027-03-09T14:00-04:00[America/New_York]", null, null)),
              List.of(
                  leg("60 mi", "60 mph"),
                  leg("60 mi", "60 mph"),
                  leg("60 mi", "60 mph"),
                  leg("60 mi", "60 mph")));
      assertThat(plan.visits().stream().map(visit -> visit.zone().getId()))
          .containsExactly(
              "America/Denver",
              "America/Denver",
              "America/Chicago",
              "America/Chicago",
              "America/New_York");
      // 06:00 in Denver is 07:00 in Chicago; two hours on it is 09:00 there.
      assertThat(clock(plan, 2)).startsWith("09:00");
    }

    @Test
    void aDepartureThatIsOnlyLoggedGivesItsZone() {
      Itinerary plan =
          complete(List.of(stop("a"), stop("b")), List.of(leg("60 mi", "60 mph")), left("a", DAWN));
      assertThat(clock(plan, 0)).isEqualTo("06:00 to 06:00");
      assertThat(clock(plan, 1)).startsWith("07:00");
    }
  }

  @Nested
  class FirstStop {
    @Test
    void thereSinceTheEarliestReading() {
      assertThat(first(start(DAWN), reading(on9th("05:10")), reading(on9th("05:40"))))
          .isEqualTo("05:10 to 06:00");
    }

    @Test
    void aReadingOnTheWayDoesNotCount() {
      assertThat(first(start(DAWN), reading(on9th("06:30")).in(ReadingState.WARM)))
          .isEqualTo("06:00 to 06:00");
    }

    /** No tire is cold within three hours of a drive (NHTSA consumer text), so it still stood. */
    @Test
    void aColdReadingSoonAfterThePlannedDepartureMeansThatItLeftLate() {
      assertThat(first(start(DAWN), reading(on9th("06:30")))).isEqualTo("06:30 to 06:30");
      assertThat(first(start(DAWN), reading(on9th("09:30")))).isEqualTo("06:00 to 06:00");
      assertThat(first(start(DAWN), left("a", DAWN), reading(on9th("06:30"))))
          .isEqualTo("06:00 to 06:00");
    }

    @Test
    void typedAndActualArrivalsBeatTheReading() {
      Stop typed = stop("a", on9th("04:00"), null, DAWN);
      assertThat(first(typed, reading(on9th("05:10")))).isEqualTo("04:00 to 06:00");
      assertThat(first(typed, arrived("a", on9th("04:30")), reading(on9th("05:10"))))
          .isEqualTo("04:30 to 06:00");
    }

    private String first(Stop start, LogEvent... log) {
      Itinerary plan = complete(List.of(start, stop("b")), List.of(leg("600 mi", "60 mph")), log);
      return clock(plan, 0);
    }
  }

  @Nested
  class UnknownTimes {
    @Test
    void aLegWithoutSpeedEndsTheVisits() {
      Outcome<Itinerary> outcome =
          Itinerary.of(
              haul(
                  List.of(start(DAWN), stop("b"), stop("c"), stop("d")),
                  List.of(
                      leg("60 mi", "60 mph"),
                      leg("60 mi", null, null, null),
                      leg("1 mi", "60 mph"))));
      assertThat(outcome.get().visits()).hasSize(2);
      assertThat(outcome.get().drives()).hasSize(1);
      Problem problem = only(outcome);
      assertThat(problem.code()).isEqualTo(ProblemCode.NO_DRIVING_TIME);
      assertThat(problem.code().severity()).isEqualTo(ProblemCode.Severity.GAP);
      assertThat(problem.message()).startsWith("B: the leg to C has neither");
    }

    @Test
    void aTypedArrivalBridgesALegOfUnknownLength() {
      Itinerary plan =
          complete(
              List.of(start(DAWN), stop("b", on9th("07:30"), null, null), stop("c")),
              List.of(leg(null, null, null, null), leg("60 mi", "60 mph")));
      assertThat(clock(plan, 2)).startsWith("08:30");
      assertThat(plan.drives().get(0).metersPerSecond()).isZero();
      assertThat(plan.drives().get(0).seconds()).isEqualTo(5400);
    }

    @ParameterizedTest
    @CsvSource({"05:50", "06:00"})
    void arrivingBeforeLeaving(String arrival) {
      Outcome<Itinerary> outcome =
          Itinerary.of(
              haul(
                  List.of(start(DAWN), stop("b", on9th(arrival), null, null), stop("c")),
                  List.of(leg("60 mi", "60 mph"), leg("60 mi", "60 mph"))));
      assertThat(outcome.get().visits()).hasSize(1);
      assertThat(only(outcome).code()).isEqualTo(ProblemCode.ARRIVES_BEFORE_LEAVING);
      assertThat(only(outcome).message())
          .startsWith(
              "B: arrives 2027-03-09 " + arrival + ", not after leaving A at 2027-03-09 06:00");
    }

    @Test
    void leavingBeforeArriving() {
      Outcome<Itinerary> outcome =
          Itinerary.of(
              haul(
                  List.of(start(DAWN), stop("b", null, null, on9th("07:30")), stop("c")),
                  List.of(leg("120 mi", "60 mph"), leg("60 mi", "60 mph"))));
      assertThat(outcome.get().visits()).hasSize(1);
      assertThat(only(outcome).code()).isEqualTo(ProblemCode.LEAVES_BEFORE_ARRIVING);
      assertThat(only(outcome).message())
          .startsWith("B: leaves 2027-03-09 07:30, before arriving at 2027-03-09 08:00");
    }

    @Test
    void noStopsAndNoDeparture() {
      Outcome<Itinerary> empty = Itinerary.of(haul(List.of(), List.of()));
      assertThat(empty.hasValue()).isFalse();
      assertThat(only(empty).code()).isEqualTo(ProblemCode.NO_STOPS);
      Outcome<Itinerary> open =
          Itinerary.of(haul(List.of(stop("a"), stop("b")), List.of(leg("60 mi", "60 mph"))));
      assertThat(open.hasValue()).isFalse();
      assertThat(only(open).code()).isEqualTo(ProblemCode.NO_DEPARTURE);
    }
  }

  /** Assumed: the larger of 65 mph and ten above the average; ours, no source. */
  @ParameterizedTest
  @CsvSource({"40, 65", "54, 65", "55, 65", "56, 66", "60, 70", "70, 80"})
  void assumedTopSpeed(double average, double top) {
    Itinerary.Drive drive = drive(leg("120 mi", average + " mph"));
    assertThat(drive.topAssumed()).isTrue();
    assertThat(mph(drive.topMetersPerSecond())).isCloseTo(top, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"58 mph, 58", "75 mph, 75", "45 mph, 50"})
  void typedTopSpeedIsNeverBelowTheAverage(String typed, double top) {
    Itinerary.Drive drive = drive(leg("100 mi", "50 mph", null, typed));
    assertThat(drive.topAssumed()).isFalse();
    assertThat(mph(drive.topMetersPerSecond())).isCloseTo(top, within(1e-6));
  }

  private static Itinerary.Drive drive(Leg leg) {
    return complete(List.of(start(DAWN), stop("b")), List.of(leg)).drives().get(0);
  }

  private static double mph(double metersPerSecond) {
    return new Speed(metersPerSecond).in(Unit.MILE_PER_HOUR);
  }

  private static Stop start(String leave) {
    return stop("a", null, null, leave);
  }

  private static String on9th(String time) {
    return "2027-03-09T" + time + "-07:00[America/Denver]";
  }

  private static Trip haul(List<Stop> stops, List<Leg> legs, LogEvent... log) {
    return Hauls.trip(Hauls.rig(List.of(), null), stops, legs, log);
  }

  private static Itinerary complete(List<Stop> stops, List<Leg> legs, LogEvent... log) {
    Outcome<Itinerary> outcome = Itinerary.of(haul(stops, legs, log));
    assertThat(outcome.problems()).isEmpty();
    assertThat(outcome.get().visits()).hasSameSizeAs(stops);
    return outcome.get();
  }

  private static Problem only(Outcome<?> outcome) {
    assertThat(outcome.problems()).hasSize(1);
    return outcome.problems().get(0);
  }

  private static ZonedDateTime shown(Itinerary plan, int visit) {
    return plan.visits().get(visit).arrive().atZone(plan.visits().get(visit).zone());
  }

  /** What the clocks of the place show at arriving and leaving. */
  private static String clock(Itinerary plan, int visit) {
    Itinerary.Visit at = plan.visits().get(visit);
    return time(at.arrive(), at) + " to " + time(at.leave(), at);
  }

  private static String time(Instant instant, Itinerary.Visit at) {
    return instant.atZone(at.zone()).toLocalTime().toString();
  }
}
