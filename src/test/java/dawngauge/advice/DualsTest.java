package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/** Dual mates more than 5 psi apart cold are set alike (common practice, no source). */
class DualsTest {

  private static final WheelSlot OUTER = WheelSlot.LEFT_OUTER;
  private static final WheelSlot INNER = WheelSlot.LEFT_INNER;

  private static Scenario pair(String outer, String inner) {
    return Scenario.from("Home", "60 °F")
        .dual()
        .label("65 psi")
        .read(OUTER, 0, outer, ReadingState.COLD)
        .read(INNER, 0, inner, ReadingState.COLD)
        .read(WheelSlot.RIGHT_INNER, 0, "65 psi", ReadingState.COLD)
        .read(WheelSlot.RIGHT_OUTER, 0, "65 psi", ReadingState.COLD);
  }

  @Test
  void lowerMateIsRaised() {
    Advice advice = pair("65 psi", "59 psi").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, INNER).figure()).isEqualTo(65);
    assertThat(Seen.at(advice, 0, INNER).texts()).contains("more than 5 psi under its dual mate");
    assertThat(Seen.at(advice, 0, OUTER).figure()).isNaN();
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT_INNER).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void withoutAirTheLowerMateIsSeenToLater() {
    Advice advice =
        pair("65 psi", "59 psi").to("Fuel", 1, "60 °F").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, INNER).mark()).isEqualTo(Mark.RECHECK);
    assertThat(Seen.at(advice, 1, INNER).adds()).isTrue();
  }

  @Test
  void higherMateIsLetOutWhereTheLowerIsAsItShouldBe() {
    Advice advice = pair("71 psi", "65 psi").to("End", 0, "60 °F").advise();
    Seen outer = Seen.at(advice, 0, OUTER);
    assertThat(outer.mark()).isEqualTo(Mark.ADJUST);
    assertThat(outer.figure()).isEqualTo(65);
    assertThat(outer.adds()).isFalse();
    assertThat(outer.texts(Mark.ADJUST))
        .contains("let out to 65 psi, only while it is cold")
        .contains("over its dual mate");
    assertThat(Seen.at(advice, 0, INNER).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void fivePsiApartIsNoMatter() {
    Advice advice = pair("67 psi", "64 psi").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, OUTER).figure()).isNaN();
    assertThat(Seen.at(advice, 0, INNER).figure()).isNaN();
  }

  @Test
  void mateOfAFlatTireIsHeld() {
    Advice advice =
        pair("65 psi", "65 psi").damaged(INNER, Tire.Damage.FLAT).to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, INNER).mark()).isEqualTo(Mark.HOLD);
    assertThat(Seen.at(advice, 0, OUTER).mark()).isEqualTo(Mark.HOLD);
    assertThat(Seen.at(advice, 0, OUTER).texts(Mark.HOLD)).contains("carries both loads");
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT_OUTER).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void mateMoreThanAFifthUnderIsHeldAlsoWhenReadAMinuteLater() {
    // Common practice, no source. 51 psi is 78 % of 65 psi.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .dual()
            .label("65 psi")
            .read(OUTER, -0.05, "65 psi", ReadingState.COLD)
            .read(INNER, 0, "51 psi", ReadingState.COLD)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0, OUTER).texts(Mark.HOLD)).contains("dual mate");
  }

  @Test
  void lowReadingOnTheWayHoldsTheMateToo() {
    Advice advice =
        pair("65 psi", "65 psi")
            .to("Camp", 22, "60 °F")
            .read(INNER, 23, "50 psi", ReadingState.COLD)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1, OUTER).texts(Mark.HOLD)).contains("dual mate");
  }

  @Test
  void airAddedSinceDoesNotUndoThatTheMateRanLow() {
    // 29 CFR 1910.177(f)(2): what it ran at counts, not what it was pumped up to.
    Advice advice =
        pair("65 psi", "65 psi")
            .to("Camp", 22, "60 °F")
            .read(INNER, 23, "50 psi", ReadingState.COLD)
            .set(INNER, 23.5, "65 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1, INNER).mark()).isEqualTo(Mark.HOLD);
    assertThat(Seen.at(advice, 1, OUTER).texts(Mark.HOLD)).contains("dual mate");
  }
}
