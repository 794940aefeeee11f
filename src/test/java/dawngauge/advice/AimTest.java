package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The aim is judged at a day's first cold start only, by more than the dead band (ours). */
class AimTest {

  @Test
  void withinTheDeadBandOfItsAimItIsNotLow() {
    // Repeatability 0.5 psi and an ungraded gauge's 2/√3: √(0.25 + 1.333) = 1.258, times 1.2816 is
    // 1.61 psi, more than a step of 1 psi and less than 4 % of 80.
    for (String fine : List.of("79 psi", "78.4 psi")) {
      Seen seen = start(fine);
      assertThat(seen.figure()).as(fine).isNaN();
      assertThat(seen.mark()).as(fine).isEqualTo(Mark.CLEAR);
    }
    assertThat(start("78.3 psi").figure()).isEqualTo(80);
  }

  private static Seen start(String read) {
    return Seen.at(
        Scenario.from("Home", "60 °F").allRead(read).air().to("End", 0, "60 °F").advise(), 0);
  }

  @Test
  void aCoarseGaugesStepIsNoBandOfMoreThanFourPercent() {
    // 4 % of 80 psi is 3.2 psi: 77 is fine, 76.7 is low, though the gauge has steps of 10 psi; what
    // is missing it cannot show.
    assertThat(coarse("77 psi").mark()).isEqualTo(Mark.CLEAR);
    assertThat(coarse("76.7 psi").texts(Mark.RECHECK))
        .contains("is below 80 psi")
        .contains("its gauge cannot show what is missing: read it with a finer one");
    assertThat(coarse("70 psi").figure()).isEqualTo(80);
  }

  private static Seen coarse(String read) {
    Scenario home = Scenario.from("Home", "60 °F").gaugeStep("10 psi").allRead(read).air();
    return Seen.at(home.to("End", 0, "60 °F").advise(), 0);
  }

  @Test
  void coldHaltAtMiddayIsNotJudged() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Halt", 4, "40 °F")
            .air()
            .to("End", 0, "60 °F")
            .advise();
    Seen halt = Seen.at(advice, 1);
    assertThat(halt.advice().tire().cold()).isTrue();
    assertThat(halt.figure()).isNaN();
    assertThat(halt.texts()).doesNotContain("is below");
  }

  @Test
  void staysPendingUntilTheNextAirAndIsSaidOnce() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("74 psi")
            .to("Rest", 0.5, "60 °F")
            .to("Fuel", 0.5, "60 °F")
            .air()
            .to("Fuel two", 0.5, "60 °F")
            .air()
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0).texts()).contains("no air here, set it at Fuel");
    assertThat(Seen.at(advice, 1).texts()).doesNotContain("is below");
    assertThat(Seen.at(advice, 2).adds()).isTrue();
    assertThat(Seen.at(advice, 3).figure()).isNaN();
  }

  private static String routine(Advice advice) {
    return advice.stops().get(1).routine().stream()
        .map(habit -> habit.text().in(UnitSystem.US))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void parkedUnderThreeHoursGivesNoColdReadingAndNamesTheNextChance() {
    // NHTSA consumer text: cold is parked three hours.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Late", 2, "40 °F")
            .drive(17)
            .air()
            .to("Halt", 4, "50 °F")
            .to("End", 0, "50 °F")
            .advise();
    Seen late = Seen.at(advice, 1);
    assertThat(late.advice().tire().cold()).isFalse();
    assertThat(late.figure()).isNaN();
    assertThat(late.texts(Mark.RECHECK)).isEmpty();
    assertThat(routine(advice))
        .contains("no cold reading is possible here; next chance of one at Halt");
  }

  @Test
  void warmReadingTakenWhereNoColdOneIsPossibleIsEnough() {
    Scenario late =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Late", 2, "60 °F")
            .drive(17)
            .to("End", 0, "60 °F");
    double expected = Seen.at(late.advise(), 1).check().reading() / 6894.757;
    late.read(WheelSlot.LEFT, 18.9, Math.round(expected) + " psi", ReadingState.WARM);
    assertThat(routine(late.advise())).contains("cold reading");
    late.read(WheelSlot.RIGHT, 18.9, Math.round(expected) + " psi", ReadingState.WARM);
    assertThat(routine(late.advise())).doesNotContain("cold reading");
  }
}
