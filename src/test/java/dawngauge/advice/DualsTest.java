package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.List;
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

  /** Read cold in the evening, parked over three hours, at the one stop with a hose. */
  @Test
  void lowerMateIsRaisedWhereverItWasReadCold() {
    Advice advice =
        pair("65 psi", "65 psi")
            .to("Camp", 6, "60 °F")
            .air()
            .read(OUTER, 5, "72 psi", ReadingState.COLD)
            .read(INNER, 5, "61 psi", ReadingState.COLD)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1, INNER).figure()).isEqualTo(65);
    assertThat(Seen.at(advice, 1, INNER).texts()).contains("more than 5 psi under its dual mate");
  }

  @Test
  void withoutAirTheLowerMateIsSeenToLater() {
    Advice advice =
        pair("65 psi", "59 psi").to("Fuel", 1, "60 °F").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, INNER).mark()).isEqualTo(Mark.RECHECK);
    assertThat(Seen.at(advice, 1, INNER).adds()).isTrue();
  }

  @Test
  void higherMateUnderItsLimitIsNotLetOutButTold() {
    // Air is let out only over the limit of 80 psi; 71 against 65: 52 : 48 of the pair's load.
    Advice advice = pair("71 psi", "65 psi").to("End", 0, "60 °F").advise();
    Seen outer = Seen.at(advice, 0, OUTER);
    assertThat(outer.mark()).isEqualTo(Mark.RECHECK);
    assertThat(outer.figure()).isNaN();
    assertThat(outer.texts(Mark.RECHECK))
        .contains("6 psi over its dual mate")
        .contains("set both alike while they are cold");
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
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT_OUTER).texts(Mark.HOLD)).isEmpty();
  }

  private static double pounds(Seen seen) {
    return seen.advice().tire().limits().load().kilograms() / Mass.of(1, Unit.POUND).kilograms();
  }

  @Test
  void aMateThirtyPsiLowLeavesTheOtherSixtyTwoPartsOfAHundred() {
    // 80 : 50 = 62 : 38 of the 4,000 lb of a side: 4,000·80/130 = 2,462 lb and 1,538 lb.
    Advice advice = label80("80 psi", "50 psi", "8000 lb").to("End", 0, "60 °F").advise();
    assertThat(pounds(Seen.at(advice, 0, OUTER))).isCloseTo(2462, within(1.0));
    assertThat(pounds(Seen.at(advice, 0, INNER))).isCloseTo(1538, within(1.0));
    assertThat(pounds(Seen.at(advice, 0, WheelSlot.RIGHT_OUTER))).isCloseTo(2000, within(1.0));
  }

  private static Scenario label80(String outer, String inner, String weight) {
    return Scenario.from("Home", "60 °F")
        .dual()
        .weighing(weight)
        .read(OUTER, 0, outer, ReadingState.COLD)
        .read(INNER, 0, inner, ReadingState.COLD)
        .read(WheelSlot.RIGHT_INNER, 0, "80 psi", ReadingState.COLD)
        .read(WheelSlot.RIGHT_OUTER, 0, "80 psi", ReadingState.COLD);
  }

  @Test
  void whatTheHigherMateTakesOverMayBeMoreThanItMayCarry() {
    // 5,750 lb a side, 2,875 lb each of 3,000 lb rated; 80 : 66 leaves the higher one 3,151 lb.
    Advice advice = label80("80 psi", "66 psi", "11500 lb").to("End", 0, "60 °F").advise();
    assertThat(Seen.at(advice, 0, OUTER).texts(Mark.HOLD))
        .contains("it carries 3151 lb, more than the 3000 lb it may at any allowed pressure")
        .contains("see to its dual mate, which carries less than its part");
    assertThat(GoNoGo.of(List.of(), advice))
        .as("the check of the rig does not know it")
        .anyMatch(defect -> defect.what().in(UnitSystem.US).startsWith("it carries 3151 lb"));
    // With a hose the lower one is set to 80 first, and both carry alike.
    Advice aired = label80("80 psi", "66 psi", "11500 lb").air().to("End", 0, "60 °F").advise();
    assertThat(Seen.at(aired, 0, INNER).figure()).isEqualTo(80);
    assertThat(Seen.at(aired, 0, OUTER).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void aFlatTireOnATandemLeavesItsNeighborBothLoads() {
    // 4,000 lb an axle, 2,000 lb a tire: the neighbor takes 4,000 of its 3,520 lb.
    Advice advice =
        Scenario.from("Home", "60 °F")
            .flatBehind()
            .weighing("4000 lb")
            .allRead("80 psi")
            .to("End", 0, "60 °F")
            .advise();
    Seen neighbor = Seen.at(advice, 0);
    assertThat(pounds(neighbor)).isCloseTo(4000, within(1.0));
    assertThat(neighbor.texts(Mark.HOLD)).contains("it carries 4000 lb, more than the 3520 lb");
    Seen right = Seen.at(advice, 0, WheelSlot.RIGHT);
    assertThat(pounds(right)).isCloseTo(2000, within(1.0));
    assertThat(right.texts(Mark.HOLD)).isEmpty();
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
