package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What to do where the adjustment plan is followed. */
class FollowedPlanTest {

  /** Read 73 psi against a label of 80; air at the first fuel stop, then a cold night. */
  private static Scenario coldNight() {
    return Scenario.from("Home", "35 °F")
        .elevation("4000 ft")
        .weighing("6160 lb")
        .allRead("73 psi")
        .to("First", 0.5, "50 °F")
        .drive(2)
        .elevation("4000 ft")
        .air()
        .to("Second", 0.5, "98 °F")
        .drive(3)
        .elevation("1500 ft")
        .air()
        .to("Dawn", 12, "30 °F")
        .drive(3)
        .elevation("3000 ft")
        .air()
        .to("End", 1, "45 °F")
        .drive(2)
        .elevation("3000 ft");
  }

  @Test
  void adjustStandsWhereThePlanSetsAndNowhereElse() {
    AdjustmentPlan plan = coldNight().adjust().plan();
    Advice advice = coldNight().follow();
    for (int stop = 0; stop < advice.stops().size(); stop++) {
      int at = stop;
      boolean sets = plan.stops().stream().anyMatch(planned -> planned.visit() == at);
      assertThat(Seen.at(advice, stop).mark() == Mark.ADJUST).as("stop %d", stop).isEqualTo(sets);
    }
    assertThat(Seen.at(advice, 1).texts(Mark.ADJUST))
        .contains("by the plan that you follow")
        .contains("never let air out of a warm tire")
        .contains("limit 80 psi cold");
  }

  @Test
  void aTireUnderItsAimIsTold() {
    assertThat(Seen.at(coldNight().advise(), 0).texts()).contains("no air here");
    assertThat(Seen.at(coldNight().follow(), 0).texts(Mark.RECHECK))
        .contains(
            "73 psi is below 80 psi, the certification label's cold pressure; the plan that you"
                + " follow sets it at First");
  }

  @Test
  void theForecastIsThatOfThePlannedSettings() {
    AdjustmentPlan.PlannedSetting planned =
        coldNight().adjust().plan().stops().get(0).settings().values().iterator().next();
    Advice advice = coldNight().follow();
    assertThat(Seen.at(advice, 1).timed()).isEqualTo(planned.timed());
    assertThat(planned.timed().onArrival()).isNotNull();
    assertThat(Math.abs(Seen.at(advice, 3).check().reading() - planned.atNextStart()))
        .isLessThan(GaugePressure.of(0.01, Unit.PSI).pascals());
  }

  @Test
  void aFigureOverTheLimitIsRefusedAndTold() {
    WheelPosition left = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT);
    double figure = GaugePressure.of(95, Unit.PSI).pascals();
    PlanWishes wishes = new PlanWishes(Set.of(1), Set.of(), Map.of(1, Map.of(left, figure)));
    AdjustmentPlan plan = coldNight().adjust(wishes).plan();
    assertThat(plan.safe()).isTrue();
    assertThat(plan.clashes()).hasSize(1);
    assertThat(plan.clashes().get(0).limit()).isEqualTo(AdjustmentPlan.Limit.WISH);
    assertThat(plan.clashes().get(0).text().in(UnitSystem.US))
        .startsWith("the 95 psi that you chose at First is not set: it is over its limit");
    plan.stops()
        .forEach(
            stop ->
                stop.settings()
                    .values()
                    .forEach(
                        set -> assertThat(set.set().settled().in(Unit.PSI)).isLessThan(80.51)));
  }
}
