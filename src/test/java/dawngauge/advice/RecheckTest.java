package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where a reading is worth taking; thresholds are ours, no source. */
class RecheckTest {

  private static final WheelSlot LEFT = WheelSlot.LEFT;

  private static Scenario home() {
    return Scenario.from("Home", "60 °F").allRead("80 psi");
  }

  private static String routine(Advice advice, int stop) {
    return advice.stops().get(stop).routine().stream()
        .map(habit -> habit.text().in(UnitSystem.US))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void firstStopOfFiveMinutesAfterTheStart() {
    Advice advice =
        home()
            .to("Gate", 4 / 60.0, "60 °F")
            .drive(1)
            .to("Fuel", 5 / 60.0, "60 °F")
            .drive(1)
            .to("Rest", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(routine(advice, 1)).isEmpty();
    assertThat(routine(advice, 2)).contains("first stop of the day");
    assertThat(routine(advice, 3)).isEmpty();
    for (int stop = 0; stop <= 3; stop++) {
      assertThat(Seen.at(advice, stop).mark()).as("no tire's mark").isEqualTo(Mark.CLEAR);
    }
  }

  @Test
  void firstStopAfterASetting() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("76 psi")
            .to("Rest", 0.5, "60 °F")
            .to("Fuel", 0.5, "60 °F")
            .air()
            .to("Rest two", 0.5, "60 °F")
            .to("Rest three", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 2).adds()).isTrue();
    assertThat(Seen.at(advice, 3).texts(Mark.RECHECK)).contains("first stop after air was set");
    // The change by setting is no change since the last reading.
    assertThat(Seen.at(advice, 4).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void stopWithUnknownAirDoesNotUseUpTheFirstLook() {
    Advice advice =
        home().to("Nowhere", 0.5, null).to("Fuel", 0.5, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 1).mark()).isEqualTo(Mark.UNKNOWN);
    assertThat(routine(advice, 2)).contains("first stop of the day");
  }

  @Test
  void muchChangedSinceTheLastReading() {
    // Larger of 5 psi and 8 %: 80 psi at 60 °F is 86.8 at 97 °F (6.8 > 6.4), 86.0 at 93 °F.
    assertThat(routine(warmer("97 °F"), 2)).contains("much has changed since the last reading");
    assertThat(Seen.at(warmer("97 °F"), 2).texts(Mark.RECHECK)).isEmpty();
    assertThat(routine(warmer("93 °F"), 2)).isEmpty();
  }

  private static Advice warmer(String air) {
    return home().to("Rest", 0.5, "60 °F").to("Hot", 0.5, air).to("End", 0, "60 °F").advise();
  }

  @Test
  void chanceUnderWhatIsAllowedIsNoWordOfLoad() {
    // 2,933 lb likely need 80·(2933/3520)^(1/0.585) = 58.6 psi; 75 psi at 60 °F are
    // 89.696·(489.67/519.67) − 14.696 = 69.8 psi at 30 °F. 11 psi are more than five σ; by the
    // straight line they need 66.7: 3.2 psi are about 1.8 σ, so that is shown too.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .weighing("5866 lb")
            .gawr("6600 lb")
            .label("75 psi")
            .allRead("75 psi")
            .to("Rest", 0.5, "30 °F")
            .to("Rest two", 0.5, "30 °F")
            .to("End", 0, "30 °F")
            .advise();
    Seen seen = Seen.at(advice, 2);
    assertThat(seen.advice().tire().leavingChance().underFloor()).isLessThan(1e-3);
    assertThat(seen.advice().tire().leavingChance().notShown()).isBetween(0.01, 0.1);
    assertThat(seen.mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void readingFarFromWhatWasExpected() {
    Advice advice =
        home()
            .to("Camp", 22, "60 °F")
            .read(LEFT, 23, "74 psi", ReadingState.COLD)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1).texts(Mark.RECHECK))
        .contains("read 74.0 psi, 6 psi less than expected: find out why before it rolls on");
  }

  @Test
  void readingAsExpectedIsNoMark() {
    Advice advice =
        home()
            .to("Camp", 22, "60 °F")
            .read(LEFT, 23, "80 psi", ReadingState.COLD)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1).mark()).isEqualTo(Mark.CLEAR);
    assertThat(Seen.at(advice, 1).advice().readingTaken()).isTrue();
    assertThat(Seen.at(advice, 1, WheelSlot.RIGHT).mark()).isEqualTo(Mark.CLEAR);
    assertThat(routine(advice, 1)).contains("all tires cold before the start");
  }

  @Test
  void knownLeakAtEveryStop() {
    Advice advice =
        home()
            .leak(LEFT, "2 psi")
            .to("Rest", 0.5, "60 °F")
            .to("Rest two", 0.5, "60 °F")
            .to("Rest three", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    for (int stop = 1; stop <= 4; stop++) {
      assertThat(Seen.at(advice, stop).texts(Mark.RECHECK)).contains("loses about 2.0 psi a day");
    }
    assertThat(Seen.at(advice, 3, WheelSlot.RIGHT).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void farOverTheAimCold() {
    // Common practice, no source: more air than label and load want.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .label("65 psi")
            .gawr("5600 lb")
            .allRead("72 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0).texts(Mark.CLEAR))
        .contains("72 psi is 7 psi over")
        .contains("smaller footprint, hard ride, wear in the middle");
    assertThat(Seen.at(advice, 0).mark()).isEqualTo(Mark.CLEAR);
    assertThat(Seen.at(advice, 0).figure()).as("under its limit of 80 psi").isNaN();
  }
}
