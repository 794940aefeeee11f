package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The commonest trailer: the label's cold pressure is the sidewall's maximum, 80 and 80 psi. */
class LabelIsLimitTest {

  /** Set at 80 psi at 70 °F; the next dawn is 15 °F colder. */
  private static Scenario colderDawn() {
    return Scenario.from("Home", "70 °F").allRead("80 psi").to("Camp", 22, "55 °F");
  }

  @Test
  void colderDawnWithoutAirIsSeenToAtTheNextAirAndNeverHeld() {
    // (80 + 14.696)·(514.67/529.67) − 14.696 = 77.3 psi (gas law): below the label's 80 psi by more
    // than the dead band of 1.6, over the 57 psi that 2,500 lb need by the straight line (Tire
    // Society paper, 2009).
    Advice advice = colderDawn().to("Town", 1, "60 °F").air().to("End", 0, "60 °F").advise();
    Seen dawn = Seen.at(advice, 1);
    assertThat(dawn.mark()).isEqualTo(Mark.RECHECK);
    assertThat(dawn.texts(Mark.RECHECK))
        .contains("77 psi is below 80 psi, the certification label's cold pressure")
        .contains("no air here, set it at Town");
    assertThat(dawn.figure()).isNaN();
    assertThat(Seen.at(advice, 2).mark()).isEqualTo(Mark.ADJUST);
  }

  @Test
  void colderDawnWithAirIsSetCold() {
    Advice advice = colderDawn().air().to("End", 0, "60 °F").advise();
    Seen dawn = Seen.at(advice, 1);
    assertThat(dawn.mark()).isEqualTo(Mark.ADJUST);
    assertThat(dawn.figure()).isCloseTo(80, within(1e-6));
    assertThat(dawn.texts(Mark.ADJUST)).startsWith("add to 80 psi cold (limit 80 psi):");
  }

  @Test
  void lowTiresAreSaidToRunHotAndWearTheirShoulders() {
    // Common practice, no source.
    Advice advice = colderDawn().air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 1).texts(Mark.ADJUST)).contains("(low: heat, worn shoulders)");
  }

  @Test
  void afternoonWarmthIsNeverLetOut() {
    // NHTSA consumer text: no air is let out of a warm tire. 80 psi at 40 °F settles at
    // 94.696·(559.67/499.67) − 14.696 = 91.4 psi at 100 °F.
    Advice advice =
        Scenario.from("Home", "40 °F")
            .allRead("80 psi")
            .to("Noon", 0.5, "100 °F")
            .air()
            .to("Shade", 4, "100 °F")
            .air()
            .to("End", 0, "90 °F")
            .advise();
    for (int stop = 1; stop <= 3; stop++) {
      Seen seen = Seen.at(advice, stop);
      assertThat(seen.figure()).isNaN();
      assertThat(seen.texts()).doesNotContain("let out to");
      // At the end it was told twice that day already.
      assertThat(seen.texts(Mark.CLEAR).contains("let no air out")).isEqualTo(stop < 3);
    }
    // Four hours in the shade make it cold, yet the ceiling is judged before a day's first start.
    assertThat(Seen.at(advice, 2).advice().tire().cold()).isTrue();
  }

  /** What was read counts, not what was expected: a tire found low is not called high. */
  @Test
  void aTireThatWasReadLowIsNotHighBecauseWarm() {
    Scenario warm =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Noon", 0.5, "80 °F")
            .drive(2)
            .to("End", 0, "80 °F");
    assertThat(Seen.at(warm.advise(), 1).texts(Mark.CLEAR)).contains("let no air out");
    Scenario low = warm.read(WheelSlot.LEFT, 2.1, "76 psi", ReadingState.WARM);
    assertThat(Seen.at(low.advise(), 1).texts()).doesNotContain("let no air out");
    Scenario lost = warm.read(WheelSlot.LEFT, 2.1, "58 psi", ReadingState.WARM);
    assertThat(Seen.at(lost.advise(), 1).texts()).doesNotContain("let no air out");
  }

  @Test
  void overTheLimitBeforeADaysFirstStartIsLetOutCold() {
    // 80 psi at 15 °F, 7,000 ft (11.340 psia) is (91.340)·(529.67/474.67) − 14.170 = 87.8 psi at
    // 70 °F, 1,000 ft.
    Advice advice =
        Scenario.from("High", "15 °F")
            .elevation("7000 ft")
            .allRead("80 psi")
            .to("Low", 22, "70 °F")
            .elevation("1000 ft")
            .to("End", 0, "70 °F")
            .advise();
    Seen dawn = Seen.at(advice, 1);
    assertThat(dawn.mark()).isEqualTo(Mark.ADJUST);
    assertThat(dawn.figure()).isCloseTo(80, within(1e-6));
    assertThat(dawn.adds()).isFalse();
    assertThat(dawn.texts(Mark.ADJUST))
        .startsWith("let out to 80 psi, only while it is cold")
        .contains("88 psi is over its limit of 80 psi");
  }

  @Test
  void withinTheDeadBandOverTheLimitItIsNotLetOut() {
    // The dead band at 80 psi is 1.2816·√(0.5² + (2/√3)²) = 1.61 psi.
    for (String fine : List.of("80.4 psi", "81.6 psi")) {
      Seen seen = start(Scenario.from("Home", "60 °F").allRead(fine));
      assertThat(seen.mark()).as(fine).isEqualTo(Mark.CLEAR);
      assertThat(seen.texts()).as(fine).doesNotContain("let out to");
    }
    Seen over = start(Scenario.from("Home", "60 °F").allRead("81.7 psi"));
    assertThat(over.figure()).isCloseTo(80, within(1e-6));
    assertThat(over.adds()).isFalse();
  }

  private static Seen start(Scenario scenario) {
    return Seen.at(scenario.to("End", 0, "60 °F").advise(), 0);
  }

  @Test
  void overALimitOfTheWheelByMoreThanAStepItIsLetOut() {
    // No band beyond a step of 1 psi for what a wheel may take.
    Scenario within = Scenario.from("Home", "60 °F").wheelMax("80 psi", null).allRead("81 psi");
    assertThat(start(within).figure()).isNaN();
    Scenario over = Scenario.from("Home", "60 °F").wheelMax("80 psi", null).allRead("81.1 psi");
    assertThat(start(over).figure()).isCloseTo(80, within(1e-6));
    assertThat(start(over).adds()).isFalse();
  }

  @Test
  void warmTireIsFilledToItsAimWithTheBuildUpOnTop() {
    // Aim of the stop's own air plus build-up: never the cold figure on a warm tire.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("74 psi")
            .to("Fuel", 0.5, "60 °F")
            .air()
            .to("End", 0, "60 °F")
            .advise();
    Seen fuel = Seen.at(advice, 1);
    SetFigure set = fuel.set();
    assertThat(set.warm()).isTrue();
    assertThat(fuel.figure()).isGreaterThan(82).isLessThan(92);
    assertThat(set.settled().pascals() / 6894.757).isCloseTo(80, within(0.55));
    assertThat(fuel.texts(Mark.ADJUST))
        .contains("80 psi cold (limit 80 psi cold; never let air out of a warm tire)");
  }

  @Test
  void sealedGaugeIsToldWhatItShows() {
    // U.S. Standard Atmosphere 1976: 5,000 ft 12.228 psia, so a gauge that subtracts 14.696 shows
    // 2.5 psi less than one open to the air.
    Advice advice =
        Scenario.from("High", "60 °F")
            .elevation("5000 ft")
            .sealedGauge()
            .read(WheelSlot.LEFT, 0, "72 psi", ReadingState.COLD)
            .air()
            .to("End", 0, "60 °F")
            .advise();
    Seen start = Seen.at(advice, 0);
    assertThat(start.figure()).isCloseTo(80, within(1e-6));
    assertThat(start.texts(Mark.ADJUST))
        .contains("add to 80 psi (78 psi on stick, which is sealed)");
  }
}
