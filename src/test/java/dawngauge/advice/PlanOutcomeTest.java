package dawngauge.advice;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What a plan comes to beside the habits of setting each morning, once and never. All tires belong
 * at 80 psi, their label's and their highest; days start at Home and at Camp.
 */
class PlanOutcomeTest {

  private static final WheelPosition LEFT = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT);

  private static Scenario home(String read) {
    return Scenario.from("Home", "60 °F").weighing("6600 lb").allRead(read);
  }

  private static Adjustment twoDays(Scenario home, String campAir, boolean hose) {
    Scenario camp = home.to("Camp", 22, campAir);
    return (hose ? camp.air() : camp).to("End", 0, campAir).adjust();
  }

  @Test
  void eachMorningSetsTwiceOnceSetsOnceAndNeverLeavesItLow() {
    // 80 psi at 60 °F are 94.696·499.67/519.67 − 14.696 = 76.4 at 40 °F: low for 80.
    Adjustment set = twoDays(home("70 psi").air(), "40 °F", true);
    assertThat(set.eachMorning().stops()).isEqualTo(2);
    assertThat(set.once().stops()).isEqualTo(1);
    assertThat(set.never().stops()).isZero();
    assertThat(set.eachMorning().startsUnderAim()).isZero();
    assertThat(set.once().startsUnderAim()).isEqualTo(1);
    assertThat(set.never().startsUnderAim()).as("both tires, each day once").isEqualTo(2);
    assertThat(set.never().startsOverLimit()).isZero();
  }

  @Test
  void withoutAHoseAWarmDawnIsStillLetOutCold() {
    // 85.5 psi at 90 °F, over the limit of 80 by more than a gauge may err.
    Adjustment hot = twoDays(home("80 psi"), "90 °F", false);
    assertThat(hot.eachMorning().stops()).isEqualTo(1);
    assertThat(hot.eachMorning().startsOverLimit()).isZero();
    assertThat(hot.never().startsOverLimit()).isEqualTo(1);
    assertThat(hot.never().startsUnderAim()).isZero();
  }

  @Test
  void aHoseThatDoesNotReachIsNoReasonToLetAirOut() {
    Adjustment weak = twoDays(home("70 psi").airUpTo("60 psi"), "60 °F", false);
    assertThat(weak.eachMorning().stops()).isZero();
    assertThat(weak.never().startsUnderAim()).isEqualTo(2);
  }

  @Test
  void withoutAHoseNothingIsAdded() {
    Adjustment low = twoDays(home("70 psi"), "60 °F", false);
    assertThat(low.eachMorning().stops()).isZero();
    assertThat(low.eachMorning().startsUnderAim()).isEqualTo(2);
  }

  @Test
  void whatIsAtItsAimIsNotSetAgain() {
    Adjustment fine = twoDays(home("80 psi").air(), "60 °F", true);
    assertThat(fine.eachMorning().stops()).isZero();
    assertThat(fine.outcome().stops()).isZero();
    assertThat(fine.never().startsUnderAim()).isZero();
  }

  @Test
  void theWorstMarginIsThatOfTheLowerTireOnTheWay() {
    // 3,300 lb; 80 psi carry 3,520: 6.7 %. By the straight line of the cautious side 75 psi carry
    // 3,300: none.
    assertThat(twoDays(home("80 psi"), "60 °F", false).never().worstMargin())
        .isCloseTo(0.0667, within(0.005));
    Scenario one =
        Scenario.from("Home", "60 °F")
            .weighing("6600 lb")
            .read(WheelSlot.LEFT, 0, "80 psi", ReadingState.COLD)
            .read(WheelSlot.RIGHT, 0, "75 psi", ReadingState.COLD);
    assertThat(one.to("End", 0, "60 °F").adjust().never().worstMargin())
        .isCloseTo(0, within(0.005));
  }

  @Test
  void theWorstChanceIsTheLikeliestMomentNotCertified() {
    Scenario low = home("74 psi").to("Rest", 1, "54 °F").to("End", 0, "60 °F");
    double most = 0;
    for (int stop = 0; stop < 2; stop++) {
      TireAtStop at = Seen.at(low.advise(), stop).advice().tire();
      most = Math.max(most, at.leavingChance().underFloor());
      most = Math.max(most, known(at.low()).chance().underFloor());
    }
    assertThat(most).isGreaterThan(0.1);
    assertThat(low.adjust().never().worstChance()).isCloseTo(most, within(1e-9));
    assertThat(home("80 psi").to("End", 0, "60 °F").adjust().never().worstChance()).isZero();
  }

  @Test
  void underTheFloorCountsWhileTheRigRolls() {
    // Two legs of two hours, both tires at once; 68 psi are under the 75 of the straight line.
    Adjustment low = twoDays(home("68 psi"), "60 °F", false);
    assertThat(low.never().secondsUnderFloor()).isCloseTo(4 * 3600, within(2.0));
    assertThat(twoDays(home("80 psi"), "60 °F", false).never().secondsUnderFloor()).isZero();
  }

  @Test
  void itCountsFromWhereItCrossesTheFloor() {
    // The floor of 3,300 lb is 75 psi by the straight line. 77 psi at 60 °F are 91.696·499.67 /
    // 519.67 − 14.696 = 73.47 at 40 °F: under it for (75 − 73.47)/(77 − 73.47) = 43 % of two hours.
    double falling = home("77 psi").to("End", 0, "40 °F").adjust().never().secondsUnderFloor();
    assertThat(falling).isCloseTo(0.434 * 7200, within(150.0));
    // 73 psi are 87.696·549.67/519.67 − 14.696 = 78.06 at 90 °F: 2/5.06 of it.
    double rising = home("73 psi").to("End", 0, "90 °F").adjust().never().secondsUnderFloor();
    assertThat(rising).isCloseTo(0.395 * 7200, within(150.0));
  }

  @Test
  void thePlansOwnOutcomeIsThatOfItsSettings() {
    Adjustment set = twoDays(home("70 psi").air(), "60 °F", false);
    assertThat(set.plan().stops()).hasSize(1);
    assertThat(set.outcome().stops()).isEqualTo(1);
    assertThat(set.outcome().startsUnderAim()).isZero();
    assertThat(set.outcome().secondsUnderFloor()).isZero();
    assertThat(set.outcome().worstMargin()).isGreaterThan(set.never().worstMargin() + 0.05);
    assertThat(set.never().secondsUnderFloor()).isPositive();
  }

  @Test
  void aTireThatIsNotPlannedDoesNotCount() {
    // Nothing was read of the right tire.
    Scenario half =
        Scenario.from("Home", "60 °F")
            .weighing("6600 lb")
            .read(WheelSlot.LEFT, 0, "80 psi", ReadingState.COLD)
            .to("End", 0, "60 °F");
    assertThat(half.adjust().plan().leftOut()).hasSize(1);
    assertThat(half.adjust().plan().of(LEFT)).isPresent();
    WheelPosition right = new WheelPosition(Scenario.AXLE, WheelSlot.RIGHT);
    assertThat(half.adjust().plan().of(right)).isEmpty();
    assertThat(half.adjust().never().worstMargin()).isCloseTo(0.0667, within(0.005));
  }

  @Test
  void wishesOfATripAreTakenByTheIndexOfTheirStop() {
    Trip trip =
        home("80 psi")
            .to("Fuel", 1, "60 °F")
            .to("Camp", 8, "60 °F")
            .to("End", 0, "60 °F")
            .forecaster()
            .trip();
    PlanChoices.Wish here =
        new PlanChoices.Wish(
            "Camp",
            PlanChoices.Kind.HERE,
            Map.of(LEFT, Entered.of(QuantityKind.GAUGE_PRESSURE, "78 psi")),
            Remarks.NONE);
    PlanChoices.Wish not =
        new PlanChoices.Wish("Fuel", PlanChoices.Kind.NOT_HERE, Map.of(), Remarks.NONE);
    Trip wished = trip.withPlan(new PlanChoices(false, List.of(here, not), Remarks.NONE));
    PlanWishes wishes = PlanWishes.of(wished);
    assertThat(wishes.pinned()).containsExactly(2);
    assertThat(wishes.forbidden()).containsExactly(1);
    assertThat(wishes.figures()).containsOnlyKeys(1, 2);
    assertThat(wishes.figures().get(2))
        .containsExactly(Map.entry(LEFT, GaugePressure.of(78, Unit.PSI).pascals()));
    assertThat(PlanWishes.of(trip)).isEqualTo(PlanWishes.NONE);
  }
}
