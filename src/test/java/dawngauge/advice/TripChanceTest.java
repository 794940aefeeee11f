package dawngauge.advice;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/** One number for the whole trip: the chance that some tire has too little for its load. */
class TripChanceTest {

  private static final WheelSlot LEFT = WheelSlot.LEFT;
  private static final WheelSlot RIGHT = WheelSlot.RIGHT;

  /**
   * 3,300 lb a tire likely need 71.6 psi, see {@link AirLadderTest}; 80 psi are the label's, at
   * which a tire carries as certified.
   */
  private static Scenario home(String left, String right) {
    return Scenario.from("Home", "60 °F")
        .weighing("6600 lb")
        .read(LEFT, 0, left, ReadingState.COLD)
        .read(RIGHT, 0, right, ReadingState.COLD);
  }

  /** The chance told of a tire when it leaves a stop. */
  private static double leaving(Advice advice, int stop, WheelSlot slot) {
    return Seen.at(advice, stop, slot).advice().tire().leavingChance().underFloor();
  }

  private static double ahead(Advice advice, int stop, WheelSlot slot) {
    return known(Seen.at(advice, stop, slot).advice().tire().low()).chance().underFloor();
  }

  private static double chance(Advice advice) {
    return TripChance.of(advice).chance();
  }

  @Test
  void ofOneTireOnOneDayItIsThatOfItsLikeliestMoment() {
    Advice colder = home("75 psi", "80 psi").to("End", 0, "54 °F").advise();
    assertThat(leaving(colder, 0, LEFT)).isGreaterThan(0.01);
    assertThat(ahead(colder, 0, LEFT)).isGreaterThan(leaving(colder, 0, LEFT) + 0.01);
    assertThat(chance(colder)).isCloseTo(ahead(colder, 0, LEFT), within(1e-9));
    Advice warmer = home("74 psi", "80 psi").to("Rest", 1, "66 °F").to("End", 0, "66 °F").advise();
    assertThat(leaving(warmer, 0, LEFT)).isGreaterThan(ahead(warmer, 1, LEFT));
    assertThat(chance(warmer)).isCloseTo(leaving(warmer, 0, LEFT), within(1e-9));
  }

  @Test
  void aTireAtItsLabelsPressureAddsNone() {
    Advice advice = home("80 psi", "80 psi").to("End", 0, "60 °F").advise();
    assertThat(leaving(advice, 0, LEFT)).as("without the label").isPositive();
    assertThat(chance(advice)).isZero();
  }

  @Test
  void whatIsToBeSetIsTakenAsDone() {
    Advice advice = home("60 psi", "80 psi").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0).adds()).isTrue();
    assertThat(chance(advice)).isZero();
  }

  @Test
  void twoTiresOfOwnLoadsAddUpButForWhatTheyShare() {
    Advice advice = home("74 psi", "74 psi").to("End", 0, "60 °F").advise();
    double one = leaving(advice, 0, LEFT);
    assertThat(chance(advice)).isGreaterThan(1.1 * one).isLessThan(1.99 * one);
  }

  @Test
  void anotherColdDayAddsOnlyWhatItsOwnAirMayBe() {
    // The same tire in the same air on the next day: gauge and load are the same, the air anew.
    Advice day = home("75 psi", "80 psi").to("Camp", 2, "60 °F").to("End", 0, "60 °F").advise();
    Advice night = home("75 psi", "80 psi").to("Camp", 24, "60 °F").to("End", 0, "60 °F").advise();
    double once = chance(day);
    double most = Math.max(leaving(night, 1, LEFT), ahead(night, 1, LEFT));
    assertThat(once).isCloseTo(Math.max(leaving(day, 1, LEFT), ahead(day, 1, LEFT)), within(1e-9));
    assertThat(chance(night)).isGreaterThan(1.01 * most).isLessThan(1.8 * most);
  }

  @Test
  void whatIsLoadedAtTheEndIsForTheNextTrip() {
    Scenario full = home("80 psi", "80 psi").to("End", 1, "60 °F").load("hay", "1500 lb", false);
    Advice advice = full.advise();
    assertThat(leaving(advice, 1, LEFT)).isGreaterThan(0.9);
    assertThat(chance(advice)).isZero();
  }

  @Test
  void tiresOfWhichNothingIsKnownAreCounted() {
    Advice known = home("80 psi", "80 psi").to("Rest", 1, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(TripChance.of(known).notKnown()).isZero();
    Advice unread =
        Scenario.from("Home", "60 °F")
            .weighing("6600 lb")
            .read(LEFT, 0, "80 psi", ReadingState.COLD)
            .to("Rest", 1, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(TripChance.of(unread).notKnown()).isEqualTo(1);
    Advice noLoad =
        Scenario.from("Home", "60 °F")
            .weighing(null)
            .gawr(null)
            .allRead("80 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(TripChance.of(noLoad).notKnown()).isEqualTo(2);
    assertThat(chance(noLoad)).isZero();
  }

  @Test
  void airThatIsNotKnownAheadLeavesItsTiresOpen() {
    Advice advice = home("80 psi", "80 psi").to("Rest", 1, null).to("End", 0, "60 °F").advise();
    assertThat(TripChance.of(advice).notKnown()).isEqualTo(2);
  }

  @Test
  void aStopThatIsOnlyPassedLeavesNothingOpen() {
    Advice advice = home("80 psi", "80 psi").to("Bend", 0, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(TripChance.of(advice).notKnown()).isZero();
  }
}
