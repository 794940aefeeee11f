package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
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
    // At 65 psi the straight line gives 2,860 lb; 3,000 lb ride on it.
    Seen seen =
        start(home().weighing("6000 lb").label("65 psi").gawr(null).wheelMax("65 psi", null));
    assertThat(seen.texts(Mark.HOLD)).contains("3000 lb, more than the 2860 lb");
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
  void unweighedAxleThatItsTiresJustCoverAsksForAScaleInstead() {
    // 49 CFR 571.120 S5.1.2: the ratings of an axle's tires sum up to at least its GAWR.
    Seen seen = start(home().weighing(null).gawr("7000 lb").sidesUnknown());
    assertThat(seen.texts(Mark.HOLD)).isEmpty();
    assertThat(seen.texts(Mark.RECHECK))
        .contains("trailer axle 1 is not weighed")
        .contains("weigh it");
    Seen tooSmall = start(home().weighing(null).gawr("7600 lb").sidesUnknown());
    assertThat(tooSmall.mark()).isEqualTo(Mark.HOLD);
  }

  @Test
  void unweighedAxleIsStillHeldToWhatItsRatingNeeds() {
    // 60 psi carry 60·3520/80 = 2,640 lb, the share of 7,000 lb is 3,500 lb.
    Advice advice =
        home()
            .weighing(null)
            .gawr("7000 lb")
            .sidesUnknown()
            .allRead("66 psi")
            .to("End", 0, "60 °F")
            .advise();
    assertThat(Seen.at(advice, 0).texts(Mark.HOLD)).contains("do not roll until aired");
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
    assertThat(Seen.at(advice, 0).texts(Mark.HOLD)).contains("fit the spare");
    assertThat(Seen.at(advice, 0, WheelSlot.RIGHT).mark()).isEqualTo(Mark.CLEAR);
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
}
