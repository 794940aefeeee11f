package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * At its label's pressure a tire is certified to carry its share of the GAWR (49 CFR 571.120
 * S5.3.1): two tires of 3,520 lb at 80 psi, GAWR 7,000 lb, label 80 psi.
 */
class AsCertifiedTest {

  private static Scenario rig(@Nullable String weight, String read) {
    return Scenario.from("Home", "70 °F").weighing(weight).sidesUnknown().allRead(read);
  }

  /** Also within the dead band of 1.6 psi under it, air lost on the way counted. */
  @ParameterizedTest
  @NullSource
  @ValueSource(strings = {"5000 lb", "6600 lb", "7000 lb"})
  void aRigAtItsLabelIsNeitherHeldNorRechecked(@Nullable String weight) {
    for (String read : new String[] {"80 psi", "78.5 psi"}) {
      Advice advice = rig(weight, read).to("Rest", 0.5, "70 °F").to("End", 0, "70 °F").advise();
      for (int stop = 0; stop < 3; stop++) {
        Seen seen = Seen.at(advice, stop);
        assertThat(seen.mark()).as("%s at %d", read, stop).isEqualTo(Mark.CLEAR);
        assertThat(seen.advice().tire().leavingChance().asCertified()).isTrue();
      }
    }
  }

  @Test
  void aTicketOverTheGawrIsNotAsCertified() {
    Seen seen = Seen.at(rig("7040 lb", "80 psi").to("End", 0, "70 °F").advise(), 0);
    assertThat(seen.advice().tire().leavingChance().asCertified()).isFalse();
    assertThat(seen.texts(Mark.HOLD)).contains("over its GAWR of 7000 lb");
  }

  @Test
  void afterTwentyFiveKelvinsOfCoolingItIsJudged() {
    // 80 psi at 70 °F are 94.696·(484.67/529.67) − 14.696 = 72.0 psi at 25 °F, 25 K colder. 3,500
    // lb
    // likely need 80·(3500/3520)^(1/0.585) = 79.2 psi; the likely 2,756 lb of an axle not weighed
    // 52.7, with a σ of 420 · 0.9 lb: some 7 % over the likely curve, 15 % over the straight line.
    Seen weighed =
        Seen.at(rig("7000 lb", "80 psi").to("Camp", 22, "25 °F").to("End", 0, "25 °F").advise(), 1);
    assertThat(weighed.advice().tire().leavingChance().asCertified()).isFalse();
    assertThat(weighed.mark()).isEqualTo(Mark.HOLD);
    Seen assumed =
        Seen.at(rig(null, "80 psi").to("Camp", 22, "25 °F").to("End", 0, "25 °F").advise(), 1);
    assertThat(assumed.texts(Mark.HOLD)).isEmpty();
    assertThat(assumed.advice().tire().leavingChance().underFloor()).isBetween(0.04, 0.1);
    assertThat(assumed.advice().tire().leavingChance().notShown()).isBetween(0.1, 0.2);
    assertThat(assumed.texts(Mark.RECHECK))
        .contains("cannot be shown to carry its load: type the maker's load rows, or weigh it by");
  }

  @Test
  void whatCannotBeShownNamesTheEntryThatWouldSettleIt() {
    // 2,500 lb need 80·2500/3520 = 56.8 psi by the straight line, likely 44.6: 56 psi of a label of
    // 60 cannot be shown, and is not likely too little.
    Seen seen =
        Seen.at(
            Scenario.from("Home", "60 °F")
                .weighing("5000 lb")
                .label("60 psi")
                .gawr("5200 lb")
                .allRead("56 psi")
                .to("End", 0, "60 °F")
                .advise(),
            0);
    assertThat(seen.mark()).isEqualTo(Mark.RECHECK);
    assertThat(seen.texts(Mark.RECHECK))
        .contains("at 56 psi leaving Home it cannot be shown to carry its load")
        .contains("type the maker's load rows, or weigh it by wheel");
  }
}
