package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import org.junit.jupiter.api.Test;

/** What is missing makes a mark not known, never clear, never an exception. */
class UnknownTest {

  private static Scenario home() {
    return Scenario.from("Home", "60 °F");
  }

  private static Mark start(Scenario scenario) {
    return Seen.at(scenario.to("End", 0, "60 °F").advise(), 0).mark();
  }

  @Test
  void allKnownIsClear() {
    assertThat(start(home().allRead("80 psi"))).isEqualTo(Mark.CLEAR);
  }

  @Test
  void noReading() {
    assertThat(start(home())).isEqualTo(Mark.UNKNOWN);
    Advice one =
        home().read(WheelSlot.LEFT, 0, "80 psi", ReadingState.COLD).to("End", 0, "60 °F").advise();
    assertThat(Seen.at(one, 0, WheelSlot.RIGHT).mark()).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void noElevation() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .elevation(null)
            .allRead("80 psi")
            .to("End", 0, "60 °F")
            .elevation(null)
            .advise();
    assertThat(Seen.at(advice, 0).mark()).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void noLabel() {
    assertThat(start(home().label(null).allRead("80 psi"))).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void noLoad() {
    assertThat(start(home().weighing(null).gawr(null).allRead("80 psi"))).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void nothingCarriedHasNoMargin() {
    Seen seen =
        Seen.at(home().weighing("0 lb").allRead("80 psi").to("End", 0, "60 °F").advise(), 0);
    assertThat(seen.advice().tire().margin()).isNaN();
    assertThat(seen.mark()).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void noAirTemperatureAheadOrHere() {
    Advice advice =
        home()
            .allRead("80 psi")
            .to("Nowhere", 0.5, null)
            .to("Fuel", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0).mark()).isEqualTo(Mark.UNKNOWN);
    assertThat(Seen.at(advice, 1).mark()).isEqualTo(Mark.UNKNOWN);
    assertThat(advice.stops().get(1).mark()).isEqualTo(Mark.UNKNOWN);
  }

  @Test
  void noLimitIsSaidBesideTheFigure() {
    // No sidewall figures, no wheel limit: the label's pressure is all that is known.
    Seen seen =
        Seen.at(home().rated(null, null).allRead("70 psi").air().to("End", 0, "60 °F").advise(), 0);
    assertThat(seen.figure()).isEqualTo(80);
    assertThat(seen.texts(Mark.ADJUST)).contains("limit not known: read sidewall and wheel first");
  }

  @Test
  void overALimitWithoutAnAimIsLetOutToTheLimit() {
    Seen seen =
        Seen.at(
            home()
                .rated(null, null)
                .label(null)
                .wheelMax("80 psi", null)
                .allRead("90 psi")
                .to("End", 0, "60 °F")
                .advise(),
            0);
    assertThat(seen.figure()).isEqualTo(80);
    assertThat(seen.adds()).isFalse();
  }

  @Test
  void warmTireOfUnknownWarmthGetsNoFigure() {
    // Without a rated load there is no model of its warmth; the label asks for 80 psi.
    Seen seen =
        Seen.at(
            home()
                .rated(null, null)
                .allRead("70 psi")
                .to("Fuel", 0.5, "60 °F")
                .air()
                .to("End", 0, "60 °F")
                .advise(),
            1);
    assertThat(seen.check().reading()).isNaN();
    assertThat(seen.figure()).isNaN();
  }
}
