package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/** The aim is judged at a day's first cold start only, by more than one gauge step (ours). */
class AimTest {

  @Test
  void oneGaugeStepUnderIsNoMatter() {
    Advice advice =
        Scenario.from("Home", "60 °F").allRead("79 psi").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0).figure()).isNaN();
    Advice more =
        Scenario.from("Home", "60 °F").allRead("78.9 psi").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(more, 0).figure()).isEqualTo(80);
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
    assertThat(Seen.at(advice, 0).texts()).contains("see to it at Fuel");
    assertThat(Seen.at(advice, 1).texts()).doesNotContain("is below");
    assertThat(Seen.at(advice, 2).adds()).isTrue();
    assertThat(Seen.at(advice, 3).figure()).isNaN();
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
    assertThat(late.texts(Mark.RECHECK))
        .contains("no cold reading is possible here")
        .contains("next chance of a cold reading at Halt");
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
    assertThat(Seen.at(late.advise(), 1).texts(Mark.RECHECK)).doesNotContain("cold reading");
  }
}
