package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.Objects;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How far the air reaches, worked by the gas law. */
class ReachTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  /** A light axle, so that the line of a tire that ran low, 64 of 80 psi, is all that counts. */
  private static Scenario light() {
    return light("70 psi");
  }

  private static Scenario light(String read) {
    return Scenario.from("Home", "41 °F")
        .weighing("3000 lb")
        .allRead(read)
        .to("Stop", 0.5, "45 °F")
        .to("Night", 20, "19 °F")
        .to("Dawn", 1, "19 °F")
        .to("End", 1, "30 °F");
  }

  private static Reach.OfTire left(Scenario scenario, int visit) {
    return Reach.of(scenario.forecaster(), scenario.advise(), visit).tires().get(0);
  }

  private static double figure(@Nullable GaugePressure known) {
    return Objects.requireNonNull(known).in(Unit.PSI);
  }

  /**
   * At sea level, 14.696 psi. Rolling at 64 psi counts as run low. To leave the night at 19 °F with
   * that much takes (64 + 14.696)·500.67/478.67 − 14.696 = 67.62 psi at 41 °F, and 0.05 psi more
   * for what a tire loses in 26 hours: 68 in whole psi. To the stop at 45 °F the start itself is
   * the coldest: 65, since 64 is on the line.
   */
  @Test
  void theColdestMomentOnTheWayAsksForTheFigure() {
    Reach.OfTire tire = left(light(), 0);
    assertThat(78.696 * 500.67 / 478.67 - 14.696).isCloseTo(67.62, within(0.01));
    assertThat(tire.needed().get(0) / PSI).isCloseTo(64, within(0.02));
    assertThat(tire.needed().get(3) / PSI).isCloseTo(67.62, within(0.1));
    assertThat(figure(tire.toEnd())).isCloseTo(68, within(1e-6));
    assertThat(tire.reached()).isEqualTo(4);
    assertThat(tire.spare(4) / PSI).isCloseTo(70 - 67.66, within(0.1));
    assertThat(figure(left(light().gaugeStep("0.1 psi"), 0).toEnd())).isBetween(67.6, 67.8);
  }

  /** 66 psi is 62.45 at 19 °F: it is not to roll into that night, 1.65 psi short at the start. */
  @Test
  void itStopsWhereTheAirEnds() {
    assertThat(80.696 * 478.67 / 500.67 - 14.696).isCloseTo(62.45, within(0.01));
    Reach.OfTire tire = left(light("66 psi"), 0);
    assertThat(tire.reached()).isEqualTo(1);
    assertThat(tire.spare(4) / PSI).isCloseTo(-1.65, within(0.1));
  }

  @Test
  void theNextHoseIsOneThatStandsThere() {
    Scenario none = light().compressor("120 psi");
    assertThat(Reach.of(none.forecaster(), none.advise(), 0).nextHose()).isEmpty();
    Scenario one =
        Scenario.from("Home", "41 °F")
            .air()
            .allRead("80 psi")
            .to("A", 1, "45 °F")
            .air()
            .to("B", 1, "45 °F");
    assertThat(Reach.of(one.forecaster(), one.advise(), 0).nextHose()).isEqualTo(OptionalInt.of(1));
    assertThat(Reach.of(one.forecaster(), one.advise(), 1).nextHose()).isEmpty();
  }

  /** 7,800 lb on two tires of 3,520 lb: no pressure carries that. */
  @Test
  void noFigureHelpsAgainstALoadThatIsTooLarge() {
    Scenario heavy = light().weighing("7800 lb").gawr("8000 lb");
    Reach.OfTire tire = left(heavy, 0);
    assertThat(tire.toEnd()).isNull();
    assertThat(tire.reached()).isZero();
  }

  /**
   * A dual at 80 beside one at 66 psi carries 80/146 of both, 10 % over its half: as it is it takes
   * more to roll than a mate set alike would.
   */
  @Test
  void theFullerDualMateCarriesMore() {
    Scenario alike = dual("80 psi");
    Scenario apart = dual("66 psi");
    Reach.OfTire even = left(alike, 0);
    Reach.OfTire uneven = left(apart, 0);
    assertThat(uneven.needed().get(0)).isFinite().isGreaterThan(even.needed().get(0) + PSI);
    assertThat(uneven.toEnd()).isEqualTo(even.toEnd());
  }

  private static Scenario dual(String other) {
    Scenario scenario = Scenario.from("Home", "41 °F").dual().weighing("9000 lb").gawr("12000 lb");
    for (WheelSlot slot : WheelSlot.of(true)) {
      boolean second = slot == WheelSlot.of(true).get(1);
      scenario.read(slot, 0, second ? other : "80 psi", ReadingState.COLD);
    }
    return scenario.to("End", 1, "41 °F");
  }

  /** No temperature at the night: the leg to it is the last of which anything is known. */
  @Test
  void beyondWhatIsKnownNothingIsSaid() {
    Scenario gap =
        Scenario.from("Home", "41 °F")
            .weighing("3000 lb")
            .allRead("70 psi")
            .to("Stop", 0.5, "45 °F")
            .to("Night", 20, null)
            .to("End", 1, "30 °F");
    Reach.OfTire tire = left(gap, 0);
    assertThat(tire.knownTo()).isEqualTo(1);
    assertThat(tire.reached()).isEqualTo(1);
    assertThat(tire.toEnd()).isNull();
    Scenario unweighed = light().weighing(null).gawr(null);
    assertThat(left(unweighed, 0).knownTo()).as("its load is not known").isZero();
  }

  @Test
  void aTireOnHoldReachesNothing() {
    Reach.OfTire tire = left(light().tread(WheelSlot.LEFT, "1/32 in"), 0);
    assertThat(tire.hold()).isNotNull();
    assertThat(tire.reached()).isZero();
  }
}
