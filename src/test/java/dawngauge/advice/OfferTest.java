package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loads that are only offered: the plan goes without them and says whether they fit. */
class OfferTest {

  private static Scenario home(String start) {
    return Scenario.from("Home", "60 °F").allRead(start).to("Sale", 1, "60 °F");
  }

  private static Advice offered(String weight) {
    return home("80 psi").load("20 rams", weight, true).air().to("End", 0, "60 °F").advise();
  }

  private static OfferAdvice offer(Advice advice) {
    return advice.stops().get(1).offers().get(0);
  }

  @Test
  void moreThanFitsIsHeldByNameWithTheMostThatFits() {
    // GAWR 7,000 lb, 5,000 lb aboard: 2,000 lb fit (49 CFR 571.120: not over the rating).
    Advice advice = offered("4200 lb");
    assertThat(offer(advice).mark()).isEqualTo(Mark.HOLD);
    assertThat(offer(advice).offer().what()).isEqualTo("20 rams");
    double most = Scenario.most(advice) / Mass.of(1, Unit.POUND).kilograms();
    assertThat(most).isCloseTo(2000, within(5.0));
    assertThat(offer(offered(most + " lb")).mark()).isEqualTo(Mark.CLEAR);
    assertThat(offer(offered(most * 1.01 + " lb")).mark()).isEqualTo(Mark.HOLD);
  }

  @Test
  void smallOfferCouldBeTaken() {
    Advice advice = offered("800 lb");
    assertThat(offer(advice).mark()).isEqualTo(Mark.CLEAR);
    assertThat(offer(advice).most()).isNull();
  }

  @Test
  void offersNeverChangeTheBasePlan() {
    Advice without = home("80 psi").air().to("End", 0, "60 °F").advise();
    Advice with = offered("4200 lb");
    for (int stop = 0; stop < 3; stop++) {
      assertThat(with.stops().get(stop).mark()).isEqualTo(without.stops().get(stop).mark());
      assertThat(Seen.at(with, stop).texts()).isEqualTo(Seen.at(without, stop).texts());
      assertThat(Seen.at(with, stop).advice().tire().margin())
          .isEqualTo(Seen.at(without, stop).advice().tire().margin());
    }
    assertThat(with.mark()).isNotEqualTo(Mark.HOLD);
  }

  @Test
  void whatIsTakenOnLaterCountsToo() {
    Advice advice =
        home("80 psi")
            .load("10 rams", "1500 lb", true)
            .to("Farm", 1, "60 °F")
            .load("hay", "1500 lb", false)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(offer(advice).mark()).isEqualTo(Mark.HOLD);
    assertThat(Scenario.most(advice)).isCloseTo(Mass.of(500, Unit.POUND).kilograms(), within(2.0));
  }

  @Test
  void withoutAirTheTiresPressureBoundsTheOffer() {
    // One σ at 67 psi is 1.3 psi of the gauge and 0.9 of the scale, 1.6 together: with 10 % allowed
    // the load may need 67 − 1.28·1.6 = 65.0 psi, which likely carry 3520·(65/80)^0.585 = 3,117 lb:
    // 2·3,117 − 5,000 = 1,234 lb more, less than 1,500.
    Advice advice = home("67 psi").load("10 rams", "1500 lb", true).to("End", 0, "60 °F").advise();
    assertThat(offer(advice).mark()).isEqualTo(Mark.HOLD);
    double most = Scenario.most(advice) / Mass.of(1, Unit.POUND).kilograms();
    assertThat(most).isCloseTo(1234, within(30.0));
    Advice aired =
        home("67 psi").load("10 rams", "1500 lb", true).air().to("End", 0, "60 °F").advise();
    assertThat(offer(aired).mark()).isEqualTo(Mark.CLEAR);
  }

  /**
   * For a flat tire of the axle that is loaded its neighbor on the other axle carries all: 700 lb
   * of its own and 700 lb + half of 3,800 lb, 3,300 lb, more than the 3,117 lb that 67 psi likely
   * carry (above), under its rating of 3,520 lb. The other tire of that axle carries 2,600 lb.
   */
  @Test
  void whatANeighborCarriesForAFlatTireCountsOnTheOtherAxleToo() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .tandem()
            .weighing("1400 lb")
            .damaged(WheelSlot.LEFT, Tire.Damage.FLAT)
            .allRead("67 psi")
            .to("Sale", 1, "60 °F")
            .load("10 rams", "3800 lb", true)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(offer(advice).mark()).isEqualTo(Mark.HOLD);
    assertThat(offer(advice).reasons())
        .extracting(reason -> reason.text().in(UnitSystem.US))
        .anyMatch(text -> text.contains("trailer axle 2 left"));
  }

  @Test
  void axleThatWasNotWeighedHasNoRoomThatIsKnown() {
    Advice advice =
        Scenario.from("Home", "60 °F")
            .weighing(null)
            .gawr("6000 lb")
            .allRead("80 psi")
            .to("Sale", 1, "60 °F")
            .load("20 rams", "4200 lb", true)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(offer(advice).mark()).isEqualTo(Mark.HOLD);
    assertThat(offer(advice).reasons().get(0).text().in(UnitSystem.US)).contains("not weighed");
  }

  @Test
  void whatPassesARatingIsToldOnceForItsAxle() {
    // 5,000 and 4,200 lb; as much for both of its tires, which are rated for 7,040 lb together.
    List<Reason> reasons = offer(offered("4200 lb")).reasons();
    assertThat(reasons).hasSize(2);
    assertThat(reasons.get(1).text().in(UnitSystem.US)).startsWith("it carries 4600 lb");
    assertThat(reasons.get(0).text().in(UnitSystem.US))
        .startsWith("trailer axle 1 carries 9200 lb, over its GAWR of 7000 lb")
        .doesNotContain("already");
  }

  @Test
  void whatBindsBeforeTheRatingIsNamedWithItsWeight() {
    // All 4,200 lb pass the rating by 2,200; above 1,234 lb, worked above, its air is too little.
    Advice advice = home("67 psi").load("20 rams", "4200 lb", true).to("End", 0, "60 °F").advise();
    assertThat(offer(advice).reasons().get(0).text().in(UnitSystem.US))
        .startsWith(
            "trailer axle 1 carries 9200 lb, over its GAWR of 7000 lb: lighten it; above 12")
        .contains(" lb already at Sale, trailer axle 1 left: ");
  }

  @Test
  void whatHoldsATireAnywayIsNotBlamedOnTheOffer() {
    Advice advice =
        home("80 psi")
            .damaged(WheelSlot.RIGHT, Tire.Damage.CORD_SHOWING)
            .load("5 rams", "800 lb", true)
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 1, WheelSlot.RIGHT).mark()).isEqualTo(Mark.HOLD);
    assertThat(offer(advice).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void whatIsLoadedAtTheEndDoesNotCount() {
    Advice advice =
        home("80 psi")
            .load("10 rams", "1500 lb", true)
            .to("End", 1, "60 °F")
            .load("hay", "1500 lb", false)
            .advise();
    assertThat(offer(advice).mark()).isEqualTo(Mark.CLEAR);
  }
}
