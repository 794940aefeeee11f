package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/** What is asked for is taken as done; advice is the same for the same trip (ours). */
class PolicyTest {

  private static Scenario low() {
    return Scenario.from("Home", "60 °F")
        .read(WheelSlot.LEFT, 0, "72 psi", ReadingState.COLD)
        .read(WheelSlot.RIGHT, 0, "80 psi", ReadingState.COLD)
        .air()
        .to("Rest", 0.5, "60 °F")
        .to("Rest two", 0.5, "60 °F")
        .air()
        .to("End", 0, "60 °F");
  }

  @Test
  void oneLowTireDoesNotMarkAllLaterStops() {
    Advice advice = low().advise();
    assertThat(Seen.at(advice, 0).mark()).isEqualTo(Mark.ADJUST);
    assertThat(Seen.at(advice, 2).mark()).isEqualTo(Mark.CLEAR);
    assertThat(Seen.at(advice, 2).check().settled() / 6894.757).isBetween(79.5, 80.5);
  }

  @Test
  void theOtherTireIsAdvisedAsIfNothingWereLow() {
    Advice all =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .air()
            .to("Rest", 0.5, "60 °F")
            .to("Rest two", 0.5, "60 °F")
            .air()
            .to("End", 0, "60 °F")
            .advise();
    Advice one = low().advise();
    for (int stop = 0; stop < 4; stop++) {
      assertThat(Seen.at(one, stop, WheelSlot.RIGHT).texts())
          .isEqualTo(Seen.at(all, stop, WheelSlot.RIGHT).texts());
    }
  }

  @Test
  void sameTripSameAdvice() {
    Advice first = low().advise();
    Advice second = low().advise();
    for (int stop = 0; stop < 4; stop++) {
      assertThat(Seen.at(first, stop).texts()).isEqualTo(Seen.at(second, stop).texts());
      assertThat(Double.valueOf(Seen.at(first, stop).figure()))
          .isEqualTo(Double.valueOf(Seen.at(second, stop).figure()));
    }
  }

  @Test
  void stopShowsTheStrongestMarkOfItsTires() {
    Advice advice = low().advise();
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT).mark()).isEqualTo(Mark.CLEAR);
    assertThat(advice.stops().get(0).mark()).isEqualTo(Mark.ADJUST);
    assertThat(advice.mark()).isEqualTo(Mark.ADJUST);
  }
}
