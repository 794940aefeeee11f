package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told of one tire at one stop. */
class TireAdviceTest {

  private static Scenario home(String read) {
    return Scenario.from("Home", "60 °F").allRead(read);
  }

  private static Reason any(Mark mark, int rank) {
    return new Reason(mark, Phrase.of(mark.word() + rank), rank);
  }

  private static List<String> texts(TireAdvice advice) {
    return advice.reasons().stream().map(reason -> reason.text().in(UnitSystem.US)).toList();
  }

  private static TireAdvice clear() {
    TireAdvice clear = Seen.at(home("80 psi").to("End", 0, "60 °F").advise(), 0).advice();
    assertThat(clear.mark()).isEqualTo(Mark.CLEAR);
    return clear;
  }

  @Test
  void theStrongestComesFirstAndOfOneMarkTheLowestRank() {
    TireAdvice advice =
        clear()
            .with(any(Mark.RECHECK, 3))
            .with(any(Mark.HOLD, 1))
            .with(any(Mark.RECHECK, 0))
            .with(any(Mark.HOLD, 0));
    assertThat(texts(advice)).containsSequence("hold0", "hold1", "re-check0", "re-check3");
    assertThat(advice.mark()).isEqualTo(Mark.HOLD);
  }

  @Test
  void behindTheRigNothingIsToBeSetAndTheRestStands() {
    TireAdvice low = Seen.at(home("70 psi").air().to("End", 0, "60 °F").advise(), 0).advice();
    assertThat(low.mark()).isEqualTo(Mark.ADJUST);
    TireAdvice past = low.with(any(Mark.RECHECK, 0)).past();
    assertThat(past.reasons()).noneMatch(reason -> reason.mark() == Mark.ADJUST);
    assertThat(texts(past)).contains("re-check0");
    assertThat(past.set()).isNull();
    assertThat(past.timed()).isNull();
    assertThat(past.mark()).isEqualTo(Mark.RECHECK);
  }

  @Test
  void whatIsNotKnownAheadIsNotKnown() {
    assertThat(clear().aheadUnknown()).isFalse();
    assertThat(clear().with(any(Mark.HOLD, 0)).aheadUnknown()).isFalse();
    TireAdvice unknown = clear().with(any(Mark.UNKNOWN, 0));
    assertThat(unknown.aheadUnknown()).isTrue();
    assertThat(unknown.mark()).isEqualTo(Mark.UNKNOWN);
  }

  private static String leave(Advice advice, int stop) {
    return Seen.at(advice, stop).texts(Mark.CLEAR);
  }

  private static final String LEAVE_IT = "only because it is warm: let no air out";

  @Test
  void aWarmTireOverItsLimitIsLeftAloneAndThatIsToldOnceADay() {
    // 80 psi cold read over 90 after two hours on the road; the limit is 80.
    Advice advice =
        home("80 psi")
            .to("Rest", 0.5, "60 °F")
            .to("Fuel", 0.5, "60 °F")
            .to("Camp", 14, "60 °F")
            .to("Next day", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(leave(advice, 0)).doesNotContain(LEAVE_IT);
    assertThat(leave(advice, 1)).contains("over its cold limit of 80 psi " + LEAVE_IT);
    assertThat(leave(advice, 2)).doesNotContain(LEAVE_IT);
    assertThat(leave(advice, 4)).as("the next day").contains(LEAVE_IT);
  }

  @Test
  void aTireUnderItsLimitThoughWarmIsNoMatter() {
    // At 288.7 K and 38 K warmer 64.5 psi read 79.196·326.7/288.7 − 14.696 = 74.9, under 80.
    Advice advice =
        home("64.5 psi").label("64 psi").to("Rest", 0.5, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(leave(advice, 1)).doesNotContain(LEAVE_IT);
  }

  @Test
  void coldOnAWarmDayItIsToldAgain() {
    // 80 psi at 60 °F are 94.696·549.67/519.67 − 14.696 = 85.5 at 90 °F, parked six hours.
    Advice advice =
        home("80 psi")
            .to("Rest", 0.5, "90 °F")
            .to("Show", 6, "90 °F")
            .to("End", 0, "90 °F")
            .advise();
    assertThat(leave(advice, 1)).contains(LEAVE_IT);
    assertThat(leave(advice, 2)).contains(LEAVE_IT);
  }

  @Test
  void aTireThatDoesNotRollIsNotToldToBeLeftAlone() {
    Advice advice =
        home("80 psi")
            .damaged(WheelSlot.LEFT, Tire.Damage.CORD_SHOWING)
            .to("Rest", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(leave(advice, 1)).doesNotContain(LEAVE_IT);
    assertThat(Seen.at(advice, 1, WheelSlot.RIGHT).texts(Mark.CLEAR)).contains(LEAVE_IT);
  }

  @Test
  void overTheAimIsToldFromEightPercentOn() {
    // 8 % of 80 psi are 6.4.
    Scenario six = home("86 psi").maxCold("110 psi").to("End", 0, "60 °F");
    assertThat(leave(six.advise(), 0)).doesNotContain("smaller footprint");
    Scenario seven = home("87 psi").maxCold("110 psi").to("End", 0, "60 °F");
    assertThat(leave(seven.advise(), 0)).contains("87 psi is 7 psi over");
  }

  @Test
  void aWarmTiresFiguresAreToldByTheMinute() {
    // 92.6 psi on arrival at 08:00, 86.6 half an hour later: worked in StayFiguresTest.
    Advice advice =
        Scenario.from("Home", "41 °F")
            .weighing("6500 lb")
            .maxCold("110 psi")
            .allRead("74 psi")
            .to("Stop", 0.5, "41 °F")
            .air()
            .to("End", 1, "41 °F")
            .advise();
    assertThat(Seen.at(advice, 1).texts(Mark.ADJUST))
        .contains("add to 93 psi on arrival, 87 psi at 08:30, 80 psi cold");
  }

  @Test
  void aTrailerTireAtItsLimitKeepsToSixtyFive() {
    // Special trailer tires without a symbol need 10 psi more from 66 to 75 mph.
    for (String top : List.of("65 mph", "70 mph")) {
      Advice advice = home("80 psi").to("End", 0, "60 °F").top(top).advise();
      List<String> cautions =
          advice.stops().get(0).legCautions().stream()
              .map(caution -> caution.in(UnitSystem.US))
              .toList();
      if (top.equals("65 mph")) {
        assertThat(cautions).isEmpty();
      } else {
        assertThat(cautions)
            .singleElement()
            .asString()
            .startsWith("65 mph or less on this leg: at typed 70 mph trailer tires")
            .contains("need 10 psi more");
      }
      assertThat(advice.stops().get(1).legCautions()).as("no leg ahead").isEmpty();
    }
  }
}
