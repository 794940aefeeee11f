package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.physics.StandardAtmosphere;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What readings, adjustments and wheel changes do to what is known of a tire. */
class LogTest {

  /**
   * Home 06:00, 120 miles in two hours, noon stop 08:00 to 14:00, 120 miles, end 16:00 to 22:00.
   */
  private static Trips day(RigBuilder rig) {
    return Trips.of(rig)
        .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("noon").stays(Duration.ofHours(6)).steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("end").stays(Duration.ofHours(6)).steady("60 °F"));
  }

  private static double settledAtTheEnd(Trip trip) {
    return psi(known(Forecasts.first(trip).get(2).arrival()).settled());
  }

  @Test
  void aLaterColdReadingResetsTheFill() {
    Trip trip =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T13:59Z", "T1", "70 psi")
            .trip();

    List<TireAtStop> track = Forecasts.first(trip);

    assertThat(psi(known(track.get(1).arrival()).settled())).isCloseTo(80, within(1e-9));
    assertThat(psi(known(track.get(2).arrival()).settled())).isCloseTo(70, within(0.05));
    ReadingCheck check = track.get(1).readings().get(0);
    assertThat(psi(check.expected())).isCloseTo(80, within(0.05));
    assertThat(check.deviations()).isLessThan(-9);
    assertThat(check.rolledSinceSound()).isTrue();
  }

  @Test
  void aWarmReadingAsExpectedChangesLittle() {
    Trip plain = day(RigBuilder.trailer()).read("2027-06-01T05:50Z", "T1", "80 psi").trip();
    double warm = psi(known(Forecasts.first(plain).get(1).arrival()).reading());
    String asExpected = text(warm);
    Trip confirmed =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:00Z", "T1", asExpected, "hand", ReadingState.WARM)
            .trip();

    assertThat(warm).isBetween(85.0, 92.0);
    assertThat(settledAtTheEnd(confirmed)).isCloseTo(80, within(0.01));
  }

  /** A warm reading far off replaces what was known: 80 psi read warm settles well below. */
  @Test
  void aWarmReadingFarOffReplaces() {
    Trip trip =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:00Z", "T1", "75 psi", "hand", ReadingState.WARM)
            .trip();

    assertThat(settledAtTheEnd(trip)).isBetween(66.0, 69.5);
  }

  /**
   * A warm reading far above what is expected is warmth, for air does not come by itself: taken for
   * air it would hide the next dawn's low tire. Just filled, it is air.
   */
  @Test
  void aWarmReadingFarAboveIsNoAir() {
    Trip warm =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:00Z", "T1", "99 psi", "hand", ReadingState.WARM)
            .trip();
    Trip filled =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:00Z", "T1", "99 psi", "hand", ReadingState.JUST_FILLED)
            .trip();

    assertThat(settledAtTheEnd(warm)).isCloseTo(80, within(0.01));
    assertThat(Forecasts.first(warm).get(1).readings().get(0).deviations()).isGreaterThan(2);
    assertThat(settledAtTheEnd(filled)).isBetween(86.0, 92.0);
  }

  @Test
  void airAddedToAColdTireIsKept() {
    Trip trip =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "70 psi")
            .adjust("2027-06-01T05:55Z", "T1", "80 psi")
            .trip();

    assertThat(settledAtTheEnd(trip)).isCloseTo(80, within(1e-9));
  }

  @Test
  void airAddedToAWarmTireSettlesLower() {
    Trip trip =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "70 psi")
            .adjust("2027-06-01T08:00Z", "T1", "80 psi")
            .trip();

    assertThat(settledAtTheEnd(trip)).isBetween(70.0, 73.0);
  }

  /** Nothing was read before, so how warm the tire is nobody knows: no figure beats a wrong one. */
  @Test
  void airAddedToATireOfUnknownWarmthTellsNothing() {
    Trip trip = day(RigBuilder.trailer()).adjust("2027-06-01T08:00Z", "T1", "80 psi").trip();

    List<TireAtStop> track = Forecasts.first(trip);

    assertThat(track.get(1).leaving()).isNull();
    assertThat(track.get(2).arrival()).isNull();
  }

  /** After three hours the tire is as cool as the air, whatever it did before. */
  @Test
  void airAddedAfterThreeHoursIsKnown() {
    Trip trip = day(RigBuilder.trailer()).adjust("2027-06-01T11:30Z", "T1", "80 psi").trip();

    assertThat(settledAtTheEnd(trip)).isCloseTo(80, within(1e-9));
  }

  /** A wheel change fits a tire that has not run: it is as cool as the air. */
  @Test
  void aSpareIsColdWhenItIsFitted() {
    Trip before =
        day(RigBuilder.trailer())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:20Z", "T2", "75 psi")
            .trip();
    List<LogEvent> log = new ArrayList<>(before.log());
    log.add(
        1,
        new LogEvent.TireChange(
            new TypedTime(ZonedDateTime.parse("2027-06-01T08:10Z"), "2027-06-01T08:10Z"),
            before.rig().positions().get(0),
            "T1",
            "T2",
            Remarks.NONE));

    List<TireAtStop> track = Forecasts.first(before.withLog(log));

    assertThat(psi(known(track.get(1).leaving()).settled())).isCloseTo(75, within(1e-9));
    assertThat(psi(known(track.get(2).arrival()).settled())).isCloseTo(75, within(1e-9));
  }

  /**
   * A wheel change on the road, behind a pass, to a tire of which nothing is known: what was lowest
   * before it stays, for the tire that went over the pass; nothing is said of the other one.
   */
  @Test
  void aWheelChangeOnTheRoadLeavesWhatWasLowest() {
    Trip before =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").elevation("1000 m").leaves("2027-06-01T06:00Z").steady("15 °C"))
            .leg("100 mi", "50 mph", Trips.point("pass", "50 mi", "3000 m"))
            .stop(stop("b").elevation("1000 m").stays(Duration.ofHours(1)).steady("15 °C"))
            .leg("50 mi", "50 mph")
            .stop(stop("c").elevation("1000 m").steady("15 °C"))
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .trip();
    List<LogEvent> log = new ArrayList<>(before.log());
    log.add(
        new LogEvent.TireChange(
            new TypedTime(ZonedDateTime.parse("2027-06-01T07:34Z"), "2027-06-01T07:34Z"),
            before.rig().positions().get(0),
            "T1",
            "T2",
            Remarks.NONE));

    List<TireAtStop> track = Forecasts.first(before.withLog(log));

    assertThat(track.get(0).fitted().tire().id()).isEqualTo("T1");
    assertThat(track.get(0).low()).isEqualTo(Forecasts.first(before).get(0).low());
    assertThat(known(track.get(0).low()).meters()).isCloseTo(50 * 1609.344, within(1.0));
    assertThat(track.get(1).fitted().tire().id()).isEqualTo("T2");
    assertThat(track.get(1).arrival()).isNull();
    assertThat(track.get(1).low()).isNull();
  }

  /**
   * A gauge with sea level subtracted reads 3.35 psi low at 7,000 ft against an open one (14.696 −
   * 11.343 psia, U.S. Standard Atmosphere 1976).
   */
  @Test
  void aSealedGaugeReadsLowInTheMountains() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("high").elevation("7000 ft").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "76.65 psi", "sealed", ReadingState.COLD)
            .read("2027-06-01T05:50Z", "T2", "80 psi", "hand", ReadingState.COLD)
            .stop(stop("low").steady("60 °F"))
            .trip();

    Forecast forecast = Forecasts.of(trip);

    double sealed = psi(known(forecast.stops().get(0).tires().get(0).leaving()).settled());
    double open = psi(known(forecast.stops().get(0).tires().get(1).leaving()).settled());
    assertThat(sealed).isCloseTo(open, within(0.02));
    double low =
        StandardAtmosphere.SEA_LEVEL_PRESSURE - StandardAtmosphere.pressureAt(7000 * 0.3048);
    assertThat(psi(low)).isCloseTo(3.4, within(0.05));
  }

  /** What is expected of a sealed gauge is what that gauge shows. */
  @Test
  void aSealedGaugeIsExpectedToReadLow() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("high").elevation("7000 ft").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .read("2027-06-01T05:40Z", "T1", "76.65 psi", "sealed", ReadingState.COLD)
            .read("2027-06-01T05:50Z", "T1", "76.65 psi", "sealed", ReadingState.COLD)
            .stop(stop("low").steady("60 °F"))
            .trip();

    ReadingCheck second = Forecasts.first(trip).get(0).readings().get(1);

    assertThat(psi(second.expected())).isCloseTo(76.65, within(1e-9));
    assertThat(second.deviations()).isCloseTo(0, within(1e-6));
  }

  /** The same tire read low by 1.5 psi with either gauge: the same is known of it afterwards. */
  @Test
  void aWarmReadingWithASealedGaugeIsJoinedLikeAnyOther() {
    double low =
        psi(StandardAtmosphere.SEA_LEVEL_PRESSURE - StandardAtmosphere.pressureAt(7000 * 0.3048));
    double warm = psi(known(Forecasts.first(mountains().trip()).get(1).arrival()).reading()) - 1.5;
    String time = "2027-06-01T08:00Z";

    Trip open = mountains().read(time, "T1", text(warm), "hand", ReadingState.WARM).trip();
    Trip sealed =
        mountains().read(time, "T1", text(warm - low), "sealed", ReadingState.WARM).trip();

    assertThat(settledAtTheEnd(sealed)).isCloseTo(settledAtTheEnd(open), within(0.001));
    assertThat(settledAtTheEnd(open)).isBetween(78.5, 79.99);
  }

  private static Trips mountains() {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("a").elevation("7000 ft").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .stop(stop("b").elevation("7000 ft").stays(Duration.ofHours(1)).steady("60 °F"))
        .stop(stop("c").elevation("7000 ft").steady("60 °F"))
        .read("2027-06-01T05:40Z", "T1", "80 psi");
  }

  private static String text(double psi) {
    return String.format(Locale.ROOT, "%.4f psi", psi);
  }

  /** A reading before the trip begins cannot be placed in it; that is said, not passed over. */
  @Test
  void aReadingBeforeTheTripIsNotTakenAsRead() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("home")
                    .arrives("2027-06-01T05:30Z")
                    .leaves("2027-06-01T06:00Z")
                    .steady("60 °F"))
            .stop(stop("away").steady("60 °F"))
            .readAll("2027-06-01T05:00Z", "80 psi")
            .trip();

    Forecast forecast = Forecasts.of(trip);

    assertThat(forecast.stops().get(0).tires().get(0).leaving()).isNull();
    assertThat(forecast.problems()).anyMatch(problem -> problem.code() == ProblemCode.NO_READING);
  }

  /** How warm the tire was nobody knows, so the reading tells nothing of its air. */
  @Test
  void aWarmReadingWithoutAColdOneBeforeTellsNothing() {
    Trip trip =
        day(RigBuilder.trailer())
            .read("2027-06-01T08:00Z", "T1", "85 psi", "hand", ReadingState.WARM)
            .trip();

    List<TireAtStop> track = Forecasts.first(trip);

    assertThat(track.get(1).leaving()).isNull();
    assertThat(track.get(1).readings()).isEmpty();
  }

  /**
   * A tire that came in hot from a drive that is not in the file, or was just filled, stands in air
   * that warms in the morning: that alone tells nothing of how warm the tire is. Taken as cold it
   * would be held to carry some 10 psi that it loses as it cools.
   */
  @Test
  void aWarmReadingBeforeTheFirstDriveTellsNothingInAnyAir() {
    Trips yard =
        Trips.of(RigBuilder.trailer())
            .stop(
                stop("yard")
                    .arrives("2027-06-01T05:00Z")
                    .leaves("2027-06-01T07:00Z")
                    .hour("2027-06-01T05:00Z", "50 °F")
                    .hour("2027-06-01T07:00Z", "62 °F"))
            .stop(stop("away").steady("62 °F"));
    for (ReadingState state : List.of(ReadingState.WARM, ReadingState.JUST_FILLED)) {
      Forecast forecast =
          Forecasts.of(yard.read("2027-06-01T06:30Z", "T1", "85 psi", "hand", state).trip());

      TireAtStop first = forecast.stops().get(0).tires().get(0);
      assertThat(first.leaving()).as(state.name()).isNull();
      assertThat(first.bare()).as(state.name()).isNotEmpty();
      assertThat(forecast.problems())
          .as(state.name())
          .anyMatch(problem -> problem.code() == ProblemCode.FIRST_READING_NOT_COLD);
    }
  }

  /** The tire's own temperature, as from a heated barn: 80 psi at 90 °F in air of 60 °F. */
  @Test
  void aTiresOwnTemperatureIsTakenAsNoted() {
    Trip plain = day(RigBuilder.trailer()).read("2027-06-01T05:50Z", "T1", "80 psi").trip();
    LogEvent.Reading read = (LogEvent.Reading) plain.log().get(0);
    LogEvent noted =
        new LogEvent.Reading(
            read.time(),
            read.tire(),
            read.pressure(),
            read.gauge(),
            read.state(),
            null,
            Entered.of(QuantityKind.TEMPERATURE, "90 °F"),
            Remarks.NONE);

    TireAtStop home = Forecasts.first(plain.withLog(List.of(noted))).get(0);

    // (80 + 14.696)·519.67/549.67 − 14.696, gas law
    assertThat(psi(known(home.leaving()).settled())).isCloseTo(74.83, within(0.005));
    assertThat(psi(known(home.leaving()).reading())).isBetween(78.5, 79.5);
  }
}
