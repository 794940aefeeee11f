package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/**
 * A reading is judged whether the air is known or not; "not known" stands beside, never instead.
 */
class UnknownAirTest {

  private static Seen read(String figure, ReadingState state) {
    Advice advice =
        Scenario.from("Home", null)
            .read(WheelSlot.LEFT, 0, figure, state)
            .to("End", 0, null)
            .advise();
    return Seen.at(advice, 0);
  }

  @Test
  void coldAtEightyPercentIsHeld() {
    // 64 psi is 80 % of 80 psi (29 CFR 1910.177(f)(2)).
    Seen seen = read("64 psi", ReadingState.COLD);
    assertThat(seen.mark()).isEqualTo(Mark.HOLD);
    assertThat(seen.texts(Mark.HOLD)).contains("read 64.0 psi: 80 % or less of 80 psi");
    assertThat(seen.texts(Mark.UNKNOWN)).contains("not known");
  }

  @Test
  void warmFarUnderTheLabelIsHeld() {
    for (ReadingState state : new ReadingState[] {ReadingState.WARM, ReadingState.JUST_FILLED}) {
      Seen seen = read("45 psi", state);
      assertThat(seen.mark()).as(state.word()).isEqualTo(Mark.HOLD);
      assertThat(seen.texts(Mark.HOLD))
          .contains("read 45.0 psi " + state.word() + ", so no more than that cold")
          .contains("80 % or less of 80 psi");
      assertThat(seen.texts(Mark.UNKNOWN)).contains("not known");
      assertThat(seen.figure()).isNaN();
    }
  }

  @Test
  void warmAndTooLittleForItsLoadIsHeldThoughItDidNotRunLow() {
    // 3,300 lb likely need 80·(3300/3520)^(1/0.585) = 71.6 psi: 69 warm are less cold.
    Advice advice =
        Scenario.from("Home", null)
            .weighing("6600 lb")
            .read(WheelSlot.LEFT, 0, "69 psi", ReadingState.WARM)
            .to("End", 0, null)
            .advise();
    assertThat(Seen.at(advice, 0).texts(Mark.HOLD))
        .contains("read 69.0 psi warm, so no more than that cold")
        .contains("chance that its load needs more");
  }

  @Test
  void nearItsLabelIsOnlyNotKnown() {
    assertThat(read("80 psi", ReadingState.COLD).mark()).isEqualTo(Mark.UNKNOWN);
    assertThat(read("85 psi", ReadingState.WARM).mark()).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void aChanceThatIsNotKnownIsNeverCalledSmall() {
    assertThat(read("80 psi", ReadingState.COLD).texts()).doesNotContain("under 1 %");
  }
}
