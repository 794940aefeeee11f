package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is gauged by habit, all tires at once. Every trip starts at 06:00. */
class RoutineTest {

  private static Scenario home() {
    return Scenario.from("Home", "60 °F").allRead("80 psi");
  }

  private static String routine(Advice advice, int stop) {
    return advice.stops().get(stop).routine().stream()
        .map(habit -> habit.text().in(UnitSystem.US))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void theEndOfAShortTripIsTheFirstStopOfTheDay() {
    Advice advice = home().to("End", 0, "60 °F").advise();
    assertThat(routine(advice, 1)).contains("all tires on arrival, first stop of the day");
  }

  @Test
  void whatHasChangedOnceIsNotToldAgainWhereItStaysSo() {
    // 80 psi at 60 °F are 94.696·556.67/519.67 − 14.696 = 86.7 at 97 °F, more than 8 % of 80 over
    // it: told at the first hot stop; from there on 86.7 is what was looked at.
    Advice advice =
        home()
            .to("Rest", 0.5, "60 °F")
            .to("Hot", 0.5, "97 °F")
            .to("Hot too", 0.5, "97 °F")
            .to("End", 0, "97 °F")
            .advise();
    assertThat(routine(advice, 2)).contains("much has changed");
    assertThat(routine(advice, 3)).isEmpty();
    assertThat(routine(advice, 4)).isEmpty();
  }

  @Test
  void muchColderIsMuchChangedToo() {
    // 94.696·478.67/519.67 − 14.696 = 72.5 psi at 19 °F: 7.5 under, more than 6.4.
    Advice advice =
        home().to("Rest", 0.5, "60 °F").to("Cold", 0.5, "19 °F").to("End", 0, "19 °F").advise();
    assertThat(routine(advice, 2)).contains("much has changed");
  }

  /** 17 hours on the road: there at 23:00, off again at 00:30, the next day's first start. */
  private static Scenario midnight() {
    return home().to("Ferry", 1.5, "60 °F").drive(17);
  }

  @Test
  void aStartAfterAnHourAndAHalfIsWarmAndSaysWhereAColdReadingIsPossible() {
    Advice advice =
        midnight()
            .to("Rest", 2.9, "60 °F")
            .to("Camp", 3, "60 °F")
            .to("Farm", 8, "60 °F")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(routine(advice, 1))
        .contains("all tires before the start, compared with their range")
        .contains("parked under three hours")
        .endsWith("next chance of one at Camp");
  }

  @Test
  void withNoLongStopAheadItIsAfterTheTrip() {
    Advice advice = midnight().to("Rest", 1, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(routine(advice, 1))
        .endsWith("next chance of one after the trip, parked three hours");
  }

  @Test
  void aStartAfterANightIsCold() {
    Advice advice = home().to("Camp", 20, "60 °F").to("End", 0, "60 °F").advise();
    assertThat(routine(advice, 1)).contains("all tires cold before the start");
  }
}
