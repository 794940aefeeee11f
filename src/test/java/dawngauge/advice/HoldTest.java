package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What does not roll whatever air there is, with what releases it. */
class HoldTest {

  private static Seen start(Scenario scenario) {
    return Seen.at(scenario.allRead("80 psi").air().to("End", 0, "60 °F").advise(), 0);
  }

  private static Scenario home() {
    return Scenario.from("Home", "60 °F");
  }

  @Test
  void moreThanTheTireMayCarryAtItsLimit() {
    // 49 CFR 393.75(g): 3,600 lb on a sidewall that says 3,520 lb.
    Seen seen = start(home().weighing("7200 lb").gawr("7200 lb"));
    assertThat(seen.mark()).isEqualTo(Mark.HOLD);
    assertThat(seen.texts(Mark.HOLD))
        .contains("it carries 3600 lb, more than the 3520 lb it may")
        .contains("lighten trailer axle 1");
  }

  @Test
  void lowerLimitOfWheelBoundsTheLoadToo() {
    // At 65 psi it likely carries 3520·(65/80)^0.585 = 3,117 lb; 3,300 lb ride on it.
    Seen seen =
        start(home().weighing("6600 lb").label("65 psi").gawr(null).wheelMax("65 psi", null));
    assertThat(seen.texts(Mark.HOLD)).contains("3300 lb, more than the 3117 lb");
  }

  @Test
  void axleOverItsRating() {
    Seen seen = start(home().weighing("5600 lb").gawr("5200 lb"));
    assertThat(seen.texts(Mark.HOLD)).contains("over its GAWR of 5200 lb: lighten it");
  }

  @Test
  void wheelOverItsRating() {
    Seen seen = start(home().weighing("5600 lb").wheelMax(null, "2600 lb"));
    assertThat(seen.texts(Mark.HOLD))
        .contains("its wheel carries 2800 lb, over its rating of 2600 lb");
  }

  @Test
  void unweighedAxleAtItsLabelIsAsCertifiedAndOneThatItsTiresDoNotCoverIsHeld() {
    // 49 CFR 571.120 S5.1.2: the ratings of an axle's tires sum up to at least its GAWR.
    Seen seen = start(home().weighing(null).gawr("7000 lb").sidesUnknown());
    assertThat(seen.mark()).isEqualTo(Mark.CLEAR);
    // Share of 7,600 lb: 3,800 lb, of which 3,040 with a σ of 456 are likely, none over 3,800:
    // (Φ(1.667) − Φ(1.053)) / Φ(1.667) = (0.952 − 0.854) / 0.952 = 10.3 % over the 3,520 lb rated.
    Seen tooSmall = start(home().weighing(null).gawr("7600 lb").sidesUnknown());
    assertThat(tooSmall.texts(Mark.HOLD)).contains("weighed by wheel").doesNotContain("air is no");
  }

  @Test
  void unweighedAxleFarUnderItsLabelIsHeldToWhatItsLoadLikelyIs() {
    // GAWR 7,000 lb: 2,800 lb a tire with a σ of 420, cut at 3,500: the likely mean is 2,755 lb.
    // 66 psi likely carry 3520·(66/80)^0.585 = 3,145 lb: (0.952 − Φ(0.822) = 0.794) / 0.952 = 17 %.
    Advice advice =
        home()
            .weighing(null)
            .gawr("7000 lb")
            .sidesUnknown()
            .allRead("66 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0).texts(Mark.HOLD))
        .contains("do not roll until aired, lighter, or weighed by wheel");
  }

  @ParameterizedTest
  @EnumSource(Tire.Damage.class)
  void damageSeen(Tire.Damage damage) {
    // 49 CFR 393.75(a)
    Advice advice =
        home()
            .allRead("80 psi")
            .damaged(WheelSlot.LEFT, damage)
            .air()
            .to("End", 0, "60 °F")
            .advise();
    if (damage.isRepair()) { // put right before leaving, see the rig's fitness
      assertThat(Seen.at(advice, 0).texts(Mark.HOLD)).isEmpty();
    } else {
      assertThat(Seen.at(advice, 0).texts(Mark.HOLD))
          .contains("not to be run")
          .doesNotContain("spare");
    }
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void theSpareIsNamedOnlyWhereAFitOneIsAboard() {
    Scenario fit = home().spare(null).damaged(WheelSlot.LEFT, Tire.Damage.FLAT);
    assertThat(start(fit).texts(Mark.HOLD)).contains("; fit the spare");
    // Its wheel may carry 2,400 lb, 2,500 lb would ride on it.
    Scenario weak = home().spare("2400 lb").damaged(WheelSlot.LEFT, Tire.Damage.FLAT);
    assertThat(start(weak).texts(Mark.HOLD)).contains("not to be run").doesNotContain("spare");
  }

  @Test
  void treadUnderTheLegalLimit() {
    // 49 CFR 393.75(b), (c): 4/32 in on a truck's front axle, else 2/32 in.
    assertThat(start(home().tread(WheelSlot.LEFT, "1.9/32 in")).mark()).isEqualTo(Mark.HOLD);
    assertThat(start(home().tread(WheelSlot.LEFT, "2/32 in")).mark()).isEqualTo(Mark.CLEAR);
    assertThat(start(home().truck().tread(WheelSlot.LEFT, "3/32 in")).mark()).isEqualTo(Mark.HOLD);
    assertThat(start(home().truck().tread(WheelSlot.LEFT, "4/32 in")).mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void fasterThanTheSpeedSymbol() {
    // ISO 4000-1: J is 100 km/h, 62 mph.
    Seen seen =
        Seen.at(
            home().symbol("J").allRead("80 psi").to("End", 0, "60 °F").top("65 mph").advise(), 0);
    assertThat(seen.mark()).isEqualTo(Mark.HOLD);
    assertThat(seen.texts(Mark.HOLD))
        .contains("hold for this speed: 65 mph top speed (typed) is above the 62 mph");
    Seen slower =
        Seen.at(
            home().symbol("J").allRead("80 psi").to("End", 0, "60 °F").top("60 mph").advise(), 0);
    assertThat(slower.mark()).isEqualTo(Mark.CLEAR);
  }

  @Test
  void fasterThanTheSymbolOnlyBeyondAPlacePassed() {
    Advice advice =
        home()
            .symbol("J")
            .allRead("80 psi")
            .to("Crossing", 0, null)
            .top("55 mph")
            .to("End", 0, "60 °F")
            .top("65 mph")
            .advise();
    assertThat(Seen.at(advice, 0).texts(Mark.HOLD)).contains("hold for this speed");
  }

  @Test
  void trailerTiresWithoutASymbolAbove85() {
    // Tire and Rim Association, as reproduced: above 85 mph not recommended.
    Seen seen = Seen.at(home().allRead("80 psi").to("End", 0, "60 °F").top("86 mph").advise(), 0);
    assertThat(seen.texts(Mark.HOLD)).contains("86 mph top speed (typed) is above the 85 mph");
  }

  @Test
  void atItsRatingAWheelIsNotOverIt() {
    // 5,600 lb, half of it on each side.
    Seen seen = start(home().weighing("5600 lb").wheelMax(null, "2800 lb"));
    assertThat(seen.texts(Mark.HOLD)).isEmpty();
  }

  @Test
  void anOverloadOfEvenMatesIsNotBlamedOnOneOfThem() {
    // 13,000 lb on four are 3,250 each, more than the 3,000 they are rated for.
    Seen seen = start(home().dual().weighing("13000 lb").gawr("14000 lb").allRead("80 psi"));
    assertThat(seen.texts(Mark.HOLD))
        .contains("air is no cure, lighten trailer axle 1")
        .doesNotContain("dual mate");
  }

  @Test
  void aWornTreadNamesAFitSpareOnlyWhereOneIsAboard() {
    Scenario worn = home().tread(WheelSlot.LEFT, "1/32 in");
    assertThat(start(worn).texts(Mark.HOLD)).contains("tread 1/32 in").doesNotContain("spare");
    assertThat(start(home().spare(null).tread(WheelSlot.LEFT, "1/32 in")).texts(Mark.HOLD))
        .endsWith(": fit the spare");
  }

  @Test
  void whatMoreAirDoesNotReleaseIsTheTireTheRigAndItsMate() {
    Seen low =
        Seen.at(home().weighing("6600 lb").allRead("70 psi").to("End", 0, "60 °F").advise(), 0);
    assertThat(holds(low)).isNotEmpty().noneMatch(HoldRules::whateverItsAir);
    Seen over = start(home().weighing("5600 lb").gawr("5200 lb"));
    assertThat(holds(over)).isNotEmpty().allMatch(HoldRules::whateverItsAir);
    Seen flat = start(home().damaged(WheelSlot.LEFT, Tire.Damage.FLAT));
    assertThat(holds(flat)).isNotEmpty().allMatch(HoldRules::whateverItsAir);
    Advice pair =
        Scenario.from("Home", "60 °F")
            .dual()
            .damaged(WheelSlot.LEFT_OUTER, Tire.Damage.FLAT)
            .allRead("80 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(pair, 0, WheelSlot.LEFT_INNER).advice().reasons())
        .filteredOn(reason -> reason.text().in(UnitSystem.US).contains("its dual mate is flat"))
        .singleElement()
        .matches(HoldRules::whateverItsAir);
    assertThat(HoldRules.whateverItsAir(new Reason(Mark.RECHECK, Phrase.of("any"), 0))).isFalse();
  }

  private static List<Reason> holds(Seen seen) {
    return seen.advice().reasons().stream().filter(reason -> reason.mark() == Mark.HOLD).toList();
  }
}
