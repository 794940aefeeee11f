package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One list says whether the rig may go: where it stands now, and how far. */
class GoNoGoTest {

  private static List<Defect> list(Scenario scenario) {
    return GoNoGo.of(List.of(), scenario.advise());
  }

  /** 3,300 lb a tire likely need 71.6 psi; see {@link AirLadderTest}. */
  private static Scenario loaded(String read) {
    return Scenario.from("Home", "60 °F").weighing("6600 lb").allRead(read);
  }

  private static Scenario coldNightAhead(Scenario home) {
    return home.to("Rest", 0.5, "60 °F").to("Pass", 22, "20 °F").to("End", 0, "60 °F");
  }

  @Test
  void aHoldWhereTheRigStandsIsNoGo() {
    assertThat(list(loaded("70 psi").to("End", 0, "60 °F")))
        .hasSize(2)
        .allMatch(
            defect -> defect.severity() == Severity.STOP && defect.code() == FindingKind.HOLD_HERE);
  }

  @Test
  void aHoldFurtherOnReadsGoAsFarAsThere() {
    List<Defect> list = list(coldNightAhead(loaded("80 psi")));
    assertThat(list).noneMatch(defect -> defect.severity() == Severity.STOP);
    assertThat(list)
        .filteredOn(defect -> defect.code() == FindingKind.HOLD_AHEAD)
        .hasSize(2)
        .allMatch(defect -> said(defect).startsWith("go as far as Rest: between Rest and Pass"));
    assertThat(list).filteredOn(defect -> defect.code() == FindingKind.LOOK_HERE).hasSize(2);
  }

  /** Held at Home for what was read there, it is not told to go as far as Rest. */
  @Test
  void aTireThatIsHeldHereIsNotToldHowFarItMayGo() {
    List<Defect> list = list(coldNightAhead(loaded("60 psi")));
    assertThat(list).extracting(Defect::code).contains(FindingKind.HOLD_HERE);
    assertThat(list).extracting(Defect::code).doesNotContain(FindingKind.HOLD_AHEAD);
  }

  @Test
  void aTireThatIsWrongEverywhereDoesNotHideAHoldFurtherOn() {
    // The damage is told by the check of the rig; the hold at Rest is the forecast's own.
    Scenario scenario =
        coldNightAhead(loaded("80 psi")).damaged(WheelSlot.RIGHT, Tire.Damage.CORD_SHOWING);
    assertThat(list(scenario)).extracting(Defect::code).contains(FindingKind.HOLD_AHEAD);
  }

  @Test
  void whatIsToBeSetBeforeItRollsIsPutRight() {
    assertThat(list(loaded("70 psi").air().to("End", 0, "60 °F")))
        .hasSize(2)
        .allMatch(
            defect -> defect.severity() == Severity.MEND && defect.code() == FindingKind.SET_HERE);
  }

  @Test
  void nothingToSayIsNothingOnTheList() {
    assertThat(list(loaded("80 psi").to("End", 0, "60 °F"))).isEmpty();
  }

  @Test
  void stopsThatAreBehindDoNotCount() {
    // Set at Fuel in the log: the hold at Home is past.
    Scenario scenario =
        loaded("70 psi")
            .to("Fuel", 1, "60 °F")
            .air()
            .set(WheelSlot.LEFT, 2.5, "90 psi")
            .set(WheelSlot.RIGHT, 2.5, "90 psi")
            .to("End", 0, "60 °F");
    assertThat(list(scenario)).noneMatch(defect -> defect.severity() == Severity.STOP);
  }

  @Test
  void theRigsOwnFaultsStandBehindAHold() {
    Defect worn =
        new Defect(
            FindingKind.SET_HERE,
            Severity.MEND,
            "trailer",
            Phrase.of("any"),
            Phrase.of("any"),
            Authority.inferred("any"));
    List<Defect> list = GoNoGo.of(List.of(worn), loaded("70 psi").to("End", 0, "60 °F").advise());
    assertThat(list)
        .extracting(Defect::severity)
        .containsExactly(Severity.STOP, Severity.STOP, Severity.MEND);
  }

  @Test
  void onlyTheFirstPlaceWithAHoldIsWhereItMayGoTo() {
    // Nothing is wrong until the third stop; a fourth in the same cold is not told as well.
    Scenario scenario =
        loaded("80 psi")
            .to("Fuel", 0.5, "60 °F")
            .to("Rest", 0.5, "60 °F")
            .to("Pass", 22, "20 °F")
            .to("Hut", 0.5, "20 °F")
            .to("End", 0, "60 °F");
    assertThat(list(scenario))
        .filteredOn(defect -> defect.code() == FindingKind.HOLD_AHEAD)
        .hasSize(2)
        .allMatch(defect -> said(defect).startsWith("go as far as Rest: between Rest and Pass"));
  }

  private static String said(Defect defect) {
    return defect.what().in(UnitSystem.US);
  }
}
