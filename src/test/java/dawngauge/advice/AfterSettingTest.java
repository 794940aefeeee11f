package dawngauge.advice;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A tire whose air was set is gauged at the first real stop after it, and only there. */
class AfterSettingTest {

  private static final WheelSlot LEFT = WheelSlot.LEFT;
  private static final WheelSlot RIGHT = WheelSlot.RIGHT;

  /** Half an hour at each stop, two hours between them: arrivals after 2, 4.5, 7 and 9.5 hours. */
  private static Scenario fourRests() {
    return Scenario.from("Home", "60 °F")
        .allRead("80 psi")
        .to("Rest 1", 0.5, "60 °F")
        .to("Rest 2", 0.5, "60 °F")
        .to("Rest 3", 0.5, "60 °F")
        .to("Rest 4", 0.5, "60 °F")
        .to("End", 0, "60 °F");
  }

  /** The stops at which a tire is to be gauged since its air was set. */
  private static List<Integer> gauged(Advice advice, WheelSlot slot) {
    List<Integer> stops = new ArrayList<>();
    for (int stop = 0; stop < advice.stops().size(); stop++) {
      if (Seen.at(advice, stop, slot).texts(Mark.RECHECK).contains("after air was set")) {
        stops.add(stop);
      }
    }
    return stops;
  }

  private static String todos(Advice advice, int stop) {
    return Seen.at(advice, stop).advice().reasons().stream()
        .map(reason -> reason.todo().in(UnitSystem.US))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void whatTheLogSaysWasSetIsLookedAtOnceAtTheNextStop() {
    Advice advice = fourRests().set(LEFT, 4.75, "82 psi").advise();
    assertThat(gauged(advice, LEFT)).containsExactly(3);
    assertThat(gauged(advice, RIGHT)).as("nothing was set there").isEmpty();
  }

  @Test
  void whatWasSetOnComingAndOnGoingIsSetAtThatStop() {
    assertThat(gauged(fourRests().set(LEFT, 4.5, "82 psi").advise(), LEFT)).containsExactly(3);
    assertThat(gauged(fourRests().set(LEFT, 5, "82 psi").advise(), LEFT)).containsExactly(3);
  }

  @Test
  void withNothingSetThereIsNoSuchWord() {
    assertThat(gauged(fourRests().advise(), LEFT)).isEmpty();
  }

  @Test
  void aHaltOfFourMinutesIsNoLook() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Rest", 0.5, "60 °F")
            .set(LEFT, 2.25, "82 psi")
            .to("Gate", 4 / 60.0, "60 °F")
            .to("Fuel", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(gauged(advice, LEFT)).containsExactly(3);
  }

  @Test
  void aStopInUnknownAirIsNoLookEither() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .allRead("80 psi")
            .to("Rest", 0.5, "60 °F")
            .set(LEFT, 2.25, "82 psi")
            .to("Nowhere", 0.5, null)
            .to("Fuel", 0.5, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(gauged(advice, LEFT)).containsExactly(3);
  }

  @Test
  void whatWasReadOnArrivalIsTheLook() {
    // Read as warm as it comes, it has been looked at: neither there nor at the next stop a word.
    Scenario scenario = fourRests().set(LEFT, 4.75, "82 psi");
    double expected = known(Seen.at(scenario.advise(), 3).advice().tire().arrival()).reading();
    String shown = Math.round(expected / 6894.757) + " psi"; // pascal per psi, NIST SP 811
    Advice advice = scenario.read(LEFT, 7, shown, ReadingState.WARM).advise();
    assertThat(gauged(advice, LEFT)).isEmpty();
  }

  @Test
  void lessThanExpectedIsCalledLessAndMoreIsCalledMore() {
    for (String word : List.of("less", "more")) {
      Scenario camp = Scenario.from("Home", "60 °F").allRead("75 psi").to("Camp", 22, "60 °F");
      String shown = word.equals("less") ? "69 psi" : "79 psi";
      Advice advice = camp.read(LEFT, 23, shown, ReadingState.COLD).to("End", 0, "60 °F").advise();
      String psi = word.equals("less") ? "6 psi " : "4 psi ";
      assertThat(todos(advice, 1)).contains("read " + psi + word + " than expected: find out why");
      assertThat(Seen.at(advice, 1).texts(Mark.RECHECK))
          .contains("read " + shown.replace(" psi", ".0 psi, ") + psi + word + " than expected");
    }
  }
}
