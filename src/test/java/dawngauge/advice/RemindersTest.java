package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the crew is reminded. The trips start at 06:00 UTC on 6 April 2027. */
class RemindersTest {

  private static final Instant START = Scenario.START.toInstant();

  private static Instant hours(double hours) {
    return START.plusSeconds(Math.round(hours * 3600));
  }

  private static Scenario threeDays(double night) {
    return Scenario.from("Home", "40 °F")
        .air()
        .to("Rest", 0.5, "60 °F")
        .drive(2)
        .to("Fuel", 0.5, "70 °F")
        .drive(2)
        .air()
        .to("Night", night, "40 °F")
        .drive(3)
        .air()
        .to("Morning", 1, "60 °F")
        .drive(2)
        .to("End", 1, "60 °F")
        .drive(2);
  }

  @Test
  void beforeEachDaysStartWhileTheTiresAreCold() {
    // Home is left at 06:00. Night: arrived 14:00, left after 16 h at 06:00: from 05:15.
    List<Reminder> reminders = threeDays(16).reminders();
    assertThat(reminders.get(0).visit()).isZero();
    assertThat(reminders.get(0).start()).isEqualTo(hours(-0.75));
    assertThat(reminders.get(0).end()).isEqualTo(hours(0));
    Reminder night = before(reminders, 3);
    assertThat(night.start()).isEqualTo(hours(23.25));
    assertThat(night.end()).isEqualTo(hours(24));
    assertThat(night.cold()).isTrue();
  }

  private static Reminder before(List<Reminder> reminders, int visit) {
    return reminders.stream()
        .filter(reminder -> reminder.visit() == visit)
        .filter(reminder -> reminder.reasons().contains(Reminder.Why.BEFORE_START))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theFirstStopOfADayAndTheOneAfterASettingAreToBeALook() {
    List<Reminder> reminders = threeDays(16).allRead("60 psi").weighing("4000 lb").reminders();
    Reminder rest =
        reminders.stream().filter(reminder -> reminder.visit() == 1).findFirst().orElseThrow();
    // Set at home to the label, which is also the start of the day: two reasons, one reminder.
    assertThat(rest.reasons())
        .containsExactlyInAnyOrder(Reminder.Why.FIRST_STOP, Reminder.Why.AFTER_SETTING);
    assertThat(rest.start()).isEqualTo(hours(2));
    assertThat(rest.end()).isEqualTo(hours(2).plus(Duration.ofMinutes(15)));
    assertThat(rest.cold()).isFalse();
    assertThat(reminders).isSortedAccordingTo((a, b) -> a.start().compareTo(b.start()));
  }

  /** What is let out is let out cold: not on arrival, but before the rig leaves. */
  @Test
  void airIsLetOutColdAndNotOnArrival() {
    Scenario scenario =
        Scenario.from("Home", "20 °F")
            .maxCold("80 psi")
            .allRead("80 psi")
            .to("Show", 5, "90 °F")
            .to("Night", 12, "90 °F")
            .to("End", 1, "90 °F");
    Reminder night = before(scenario.reminders(), 2);
    assertThat(night.cold()).isTrue();
    for (Reminder reminder : scenario.reminders()) {
      boolean onArrival = !reminder.reasons().contains(Reminder.Why.BEFORE_START);
      assertThat(onArrival && reminder.reasons().contains(Reminder.Why.SET_HERE)).isFalse();
    }
    assertThat(Seen.at(scenario.advise(), 2).set().adds()).isFalse();
  }

  /** Parked too short a night to be cold: its one reminder asks for the air all the same. */
  @Test
  void aWarmStartAsksForItsAir() {
    Scenario scenario =
        Scenario.from("Home", "40 °F")
            .allRead("70 psi")
            .to("Night", 2, "40 °F")
            .drive(18)
            .air()
            .to("End", 1, "40 °F");
    Advice advice = scenario.advise();
    assertThat(advice.stops().get(1).stop().visit().firstStartOfDay()).isTrue();
    assertThat(Seen.at(advice, 1).set().warm()).isTrue();
    Ledger ledger =
        Ledger.of(advice.forecast().trip(), advice, List.of(), List.of(), UnitSystem.US, null);
    assertThat(ReminderLine.all(advice, scenario.reminders(), ledger))
        .filteredOn(line -> line.key().endsWith("/start") && line.place().equals("Night"))
        .singleElement()
        .satisfies(line -> assertThat(line.text()).contains("Add: all tires to "));
  }

  /** What was set as asked is not reminded of again. */
  @Test
  void whatIsDoneDropsOut() {
    Scenario low =
        Scenario.from("Home", "40 °F")
            .allRead("70 psi")
            .to("Hose", 0.5, "40 °F")
            .air()
            .to("End", 1, "40 °F");
    assertThat(setHere(low.reminders())).isTrue();
    for (WheelSlot slot : WheelSlot.of(false)) {
      low = low.read(slot, 2.1, "76 psi", ReadingState.WARM).set(slot, 2.2, "86 psi");
    }
    assertThat(setHere(low.reminders())).isFalse();
  }

  private static boolean setHere(List<Reminder> reminders) {
    return reminders.stream().anyMatch(each -> each.reasons().contains(Reminder.Why.SET_HERE));
  }

  /** Changed at the first stop, 100 miles and two hours a leg: 50 miles on is an hour on. */
  @Test
  void aChangedWheelIsLookedAtAfterFiftyMiles() {
    Scenario scenario =
        Scenario.from("Home", "40 °F")
            .spare(null)
            .allRead("80 psi")
            .to("Rest", 1, "40 °F")
            .to("Fuel", 1, "40 °F")
            .to("End", 1, "40 °F")
            .changed(WheelSlot.LEFT, 2.5)
            .changed(WheelSlot.RIGHT, 2.6); // at the same stop: one reminder for both
    assertThat(
            scenario.reminders().stream()
                .filter(each -> each.reasons().contains(Reminder.Why.WHEEL_CHANGED)))
        .hasSize(1);
    Reminder wheel =
        scenario.reminders().stream()
            .filter(reminder -> reminder.reasons().contains(Reminder.Why.WHEEL_CHANGED))
            .findFirst()
            .orElseThrow();
    assertThat(wheel.start()).isEqualTo(hours(4));
    assertThat(wheel.visit()).isEqualTo(1);
  }

  @Test
  void aNightTooShortForColdTiresSaysSo() {
    Scenario scenario =
        Scenario.from("Home", "40 °F")
            .to("Night", 2, "40 °F")
            .drive(18)
            .to("End", 1, "60 °F")
            .drive(2);
    Reminder night = before(scenario.reminders(), 1);
    assertThat(night.cold()).isFalse();
    // Arrived 00:00, left 02:00 on the next day: the last quarter hour 45 minutes before that.
    assertThat(night.start()).isEqualTo(hours(19.25));
    assertThat(night.end()).isEqualTo(hours(20));
  }

  @Test
  void whereTheTiresAreColdOnlyShortlyBeforeTheStartItIsThen() {
    // Arrived 00:00, cold from 03:00, left at 03:30: 02:45 would be too early.
    Scenario scenario =
        Scenario.from("Home", "40 °F")
            .to("Night", 3.5, "40 °F")
            .drive(18)
            .to("End", 1, "60 °F")
            .drive(2);
    Reminder night = before(scenario.reminders(), 1);
    assertThat(night.cold()).isTrue();
    assertThat(night.start()).isEqualTo(hours(21));
  }

  @Test
  void whatTheLogHasLeftBehindIsNotRemindedOfAgain() {
    List<Reminder> reminders =
        threeDays(16)
            .allRead("80 psi")
            .read(WheelSlot.LEFT, 4.6, "84 psi", ReadingState.WARM)
            .reminders();
    assertThat(reminders).noneMatch(reminder -> reminder.visit() < 2);
    assertThat(before(reminders, 3)).isNotNull();
  }

  private static List<Reminder.Why> why(List<Reminder> reminders, int visit) {
    return reminders.stream()
        .filter(reminder -> reminder.visit() == visit)
        .flatMap(reminder -> reminder.reasons().stream())
        .toList();
  }

  @Test
  void allTiresReadColdNeedNoReminderBeforeTheStart() {
    Scenario home = Scenario.from("Home", "40 °F").to("Rest", 0.5, "40 °F").to("End", 1, "40 °F");
    assertThat(why(home.reminders(), 0)).containsExactly(Reminder.Why.BEFORE_START);
    home.read(WheelSlot.LEFT, 0, "80 psi", ReadingState.COLD);
    assertThat(why(home.reminders(), 0)).as("one of two").contains(Reminder.Why.BEFORE_START);
    home.read(WheelSlot.RIGHT, 0, "80 psi", ReadingState.COLD);
    assertThat(why(home.reminders(), 0)).isEmpty();
  }

  @Test
  void atTheEndNothingStarts() {
    Scenario home = Scenario.from("Home", "40 °F").allRead("80 psi").to("End", 30, "40 °F");
    assertThat(why(home.reminders(), 1)).containsExactly(Reminder.Why.FIRST_STOP);
  }

  @Test
  void whatTheLogSaysWasSetIsLookedAtOnce() {
    Scenario home =
        Scenario.from("Home", "40 °F")
            .allRead("80 psi")
            .to("Rest", 0.5, "40 °F")
            .to("Fuel", 0.5, "40 °F")
            .to("Yard", 0.5, "40 °F")
            .to("End", 1, "40 °F");
    assertThat(why(home.reminders(), 1)).containsExactly(Reminder.Why.FIRST_STOP);
    assertThat(why(home.reminders(), 2)).isEmpty();
    // At the Rest from 2 to 2.5 hours after the start; of both of its ends as well.
    for (double time : new double[] {2, 2.25, 2.5}) {
      List<Reminder> after = fourStops().set(WheelSlot.LEFT, time, "82 psi").reminders();
      assertThat(why(after, 2)).as("set at " + time).containsExactly(Reminder.Why.AFTER_SETTING);
      assertThat(why(after, 3)).isEmpty();
    }
  }

  private static Scenario fourStops() {
    return Scenario.from("Home", "40 °F")
        .allRead("80 psi")
        .to("Rest", 0.5, "40 °F")
        .to("Fuel", 0.5, "40 °F")
        .to("Yard", 0.5, "40 °F")
        .to("End", 1, "40 °F");
  }

  @Test
  void aHaltOfFourMinutesIsNoFirstStopUnlessItIsTheLast() {
    Scenario halt =
        Scenario.from("Home", "40 °F")
            .to("Gate", 4 / 60.0, "40 °F")
            .to("Bend", 0, "40 °F")
            .to("End", 4 / 60.0, "40 °F");
    assertThat(why(halt.reminders(), 1)).isEmpty();
    assertThat(why(halt.reminders(), 2)).isEmpty();
    assertThat(why(halt.reminders(), 3)).containsExactly(Reminder.Why.FIRST_STOP);
  }

  @Test
  void theLookAtAShortStopEndsWhenTheRigLeaves() {
    Scenario ten =
        Scenario.from("Home", "40 °F").to("Rest", 10 / 60.0, "40 °F").to("End", 0, "40 °F");
    Reminder rest = ten.reminders().get(1);
    assertThat(rest.start()).isEqualTo(hours(2));
    assertThat(rest.end()).isEqualTo(hours(2).plus(Duration.ofMinutes(10)));
    Scenario end = Scenario.from("Home", "40 °F").to("End", 0, "40 °F");
    assertThat(end.reminders().get(1).end()).isEqualTo(hours(2).plus(Duration.ofMinutes(15)));
  }

  @Test
  void whatIsSetColdOnTheWayIsDoneBeforeTheRigLeaves() {
    // At the show from 08:00 to 14:00: cold from 11:00, done by 14:00, begun at 13:15.
    Scenario low =
        Scenario.from("Home", "40 °F")
            .allRead("70 psi")
            .to("Show", 6, "40 °F")
            .air()
            .to("End", 1, "40 °F");
    assertThat(Seen.at(low.advise(), 1).set().warm()).isFalse();
    Reminder show = before(low.reminders(), 1);
    assertThat(show.reasons()).contains(Reminder.Why.SET_HERE);
    assertThat(show.start()).isEqualTo(hours(7.25));
    assertThat(show.end()).isEqualTo(hours(8));
    assertThat(show.cold()).isTrue();
  }

  @Test
  void whereTheRigStandsNowTheOtherTireIsStillToBeSet() {
    Scenario low =
        Scenario.from("Home", "40 °F")
            .allRead("70 psi")
            .to("Hose", 0.5, "40 °F")
            .air()
            .to("End", 1, "40 °F")
            .set(WheelSlot.LEFT, 2.2, "86 psi");
    assertThat(why(low.reminders(), 1)).contains(Reminder.Why.SET_HERE);
  }

  private static Instant wheel(double changed) {
    return Scenario.from("Home", "40 °F")
        .spare(null)
        .allRead("80 psi")
        .to("Rest", 1, "40 °F")
        .to("Fuel", 1, "40 °F")
        .to("End", 1, "40 °F")
        .changed(WheelSlot.LEFT, changed)
        .reminders()
        .stream()
        .filter(each -> each.reasons().contains(Reminder.Why.WHEEL_CHANGED))
        .map(Reminder::start)
        .findFirst()
        .orElse(Instant.MAX);
  }

  /** Legs of 100 miles from 0 to 2, 3 to 5 and 6 to 8 hours after the start: 50 miles an hour. */
  @Test
  void aWheelChangedOnTheRoadIsLookedAtFiftyMilesOn() {
    assertThat(wheel(3.5)).as("25 miles out, at 75").isEqualTo(hours(4.5));
    assertThat(wheel(4.5)).as("75 miles out, 25 on the next leg").isEqualTo(hours(6.5));
    assertThat(wheel(0.25)).as("12.5 miles out, at 62.5").isEqualTo(hours(1.25));
    assertThat(wheel(7.5)).as("25 miles before the end").isEqualTo(Instant.MAX);
    assertThat(wheel(8.5)).as("at the end").isEqualTo(Instant.MAX);
  }
}
