package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures to set here and now, and what readings mean, worked by the gas law. */
class FigureNowTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();
  private static final WheelPosition LEFT = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT);

  private static FigureNow at(Scenario scenario, int visit) {
    return FigureNow.of(scenario.forecaster(), LEFT, visit).orElseThrow();
  }

  private static Scenario colderDawn(String limit) {
    return Scenario.from("Home", "41 °F")
        .air()
        .maxCold(limit)
        .allRead("70 psi")
        .to("Stop", 0.5, "45 °F")
        .air()
        .to("Night", 20, "19 °F")
        .to("End", 1, "30 °F");
  }

  /**
   * 80 psi set at 41 °F at sea level (14.696 psi) is at 19 °F (80 + 14.696)·478.67/500.67 − 14.696
   * = 75.84 psi; 0.03 psi or so is lost in a night.
   */
  @Test
  void theColdFigureTellsWhatTheNextDawnWillRead() {
    double dawn = 94.696 * 478.67 / 500.67 - 14.696;
    assertThat(dawn).isCloseTo(75.84, within(0.01));
    FigureNow now = at(colderDawn("110 psi"), 0);
    assertThat(Objects.requireNonNull(now.cold()).figure().in(Unit.PSI))
        .isCloseTo(80, within(1e-6));
    assertThat(now.nextStart()).isEqualTo(2);
    assertThat(now.nextAfterCold() / PSI).isCloseTo(dawn, within(0.1));
    assertThat(now.warm()).as("it stands there cold").isNull();
  }

  @Test
  void theWarmFigureHoldsTheBuildUpAndNoneIsOverTheLimit() {
    FigureNow now = at(colderDawn("80 psi"), 1);
    SetFigure cold = Objects.requireNonNull(now.cold());
    SetFigure warm = Objects.requireNonNull(now.warm());
    TireSnapshot arrival = Objects.requireNonNull(now.at().arrival());
    assertThat(cold.figure().in(Unit.PSI)).isCloseTo(80, within(1e-6));
    // (80 + 14.696)·T/θ − 14.696, the whole psi under it: no figure settles over its limit.
    double exact = 94.696 * arrival.tireKelvins() / arrival.airKelvins() - 14.696;
    assertThat(warm.figure().in(Unit.PSI)).isCloseTo(Math.floor(exact), within(1e-6));
    assertThat(warm.settled().in(Unit.PSI)).isLessThanOrEqualTo(80 + 1e-3);
    assertThat(warm.spread().pascals()).isPositive();
  }

  /**
   * 49 CFR 393.75(i)(2), Table 1: a tire rated up to 4,000 lb that averaged 41 to 55 mph in the
   * hour before counts as 5 psi less cold than it reads warm; beside that our own figure by the gas
   * law.
   */
  @Test
  void aWarmReadingIsTurnedColdByOursAndByThePublishedFigure() {
    FigureNow now = at(colderDawn("110 psi"), 1);
    TireSnapshot arrival = Objects.requireNonNull(now.at().arrival());
    FigureNow.Meaning meaning =
        now.meaning(GaugePressure.of(78, Unit.PSI), ReadingState.WARM).orElseThrow();
    assertThat(meaning.published() / PSI).isCloseTo(73, within(1e-6));
    double cold = (78 + 14.696) * arrival.airKelvins() / arrival.tireKelvins() - 14.696;
    assertThat(meaning.likely() / PSI).isCloseTo(cold, within(0.01));
    assertThat(meaning.low()).isLessThan(meaning.likely());
    assertThat(meaning.high()).isGreaterThan(meaning.likely());
  }

  /**
   * In the sun a tire is 0 to 15 °C over the air: 60 psi at 41 °F (278.15 K) is at the least (60 +
   * 14.696)·278.15/293.15 − 14.696 = 56.18 psi cold, less what a gauge repeats to (0.5 psi, 1.645
   * of it in 9 of 10 cases).
   */
  @Test
  void inTheSunOnlyARangeIsTold() {
    FigureNow.Meaning meaning =
        at(colderDawn("110 psi"), 0)
            .meaning(GaugePressure.of(60, Unit.PSI), ReadingState.COLD_IN_SUN)
            .orElseThrow();
    double least = 74.696 * 278.15 / 293.15 - 14.696;
    assertThat(meaning.likely()).isNaN();
    assertThat(meaning.low() / PSI).isCloseTo(least - 1.645 * 0.5, within(0.01));
    assertThat(meaning.high() / PSI).isCloseTo(60 + 1.645 * 0.5, within(0.01));
    assertThat(meaning.ranLow()).isEqualTo(RanLow.LIKELY);
  }

  @Test
  void eightyPercentOfTheLabelIsJudgedByTheColdFigureBehindTheWarmOne() {
    FigureNow now = at(colderDawn("110 psi"), 1);
    TireSnapshot arrival = Objects.requireNonNull(now.at().arrival());
    // (69 + 14.696)·θ/T − 14.696: 71 psi warm looks like 89 % of 80, cold it is under 64. 73 psi
    // warm are about one psi over 64 cold, within what gauge and warmth may be off.
    double cold = arrival.airKelvins() / arrival.tireKelvins();
    assertThat((71 + 14.696) * cold - 14.696).isBetween(63.0, 63.9);
    assertThat((73 + 14.696) * cold - 14.696).isBetween(64.6, 65.6);
    assertThat(ranLow(now, 71)).isEqualTo(RanLow.LIKELY);
    assertThat(ranLow(now, 73)).isEqualTo(RanLow.MAYBE);
    assertThat(ranLow(now, 80)).isEqualTo(RanLow.NO);
  }

  /** What the page says of a reading that is too high is what the forecast goes on with. */
  @ParameterizedTest
  @CsvSource({"99, true", "84, false", "82, false"})
  void aReadingThatIsTooHighIsWarmthHereAsInTheForecast(int read, boolean far) {
    FigureNow now = at(colderDawn("110 psi"), 1);
    TireSnapshot expected = Objects.requireNonNull(now.at().arrival());
    assertThat(expected.reading() / PSI).isLessThan(read);
    FigureNow.Meaning meaning =
        now.meaning(GaugePressure.of(read, Unit.PSI), ReadingState.WARM).orElseThrow();
    assertThat(meaning.warmth()).isEqualTo(far);
    Scenario noted =
        colderDawn("110 psi").read(WheelSlot.LEFT, 2.05, read + " psi", ReadingState.WARM);
    TireSnapshot after = Objects.requireNonNull(at(noted, 1).at().leaving());
    assertThat(at(noted, 1).at().readings()).hasSize(1);
    assertThat(meaning.likely() / PSI).isCloseTo(after.settled() / PSI, within(0.1));
    assertThat(meaning.low()).isLessThan(meaning.likely());
    assertThat(meaning.high()).isGreaterThan(meaning.likely());
    FigureNow.Meaning usual =
        at(colderDawn("110 psi"), 1)
            .meaning(GaugePressure.of(78, Unit.PSI), ReadingState.WARM)
            .orElseThrow();
    assertThat(usual.warmth()).isFalse();
  }

  private static RanLow ranLow(FigureNow now, double psi) {
    return now.meaning(GaugePressure.of(psi, Unit.PSI), ReadingState.WARM).orElseThrow().ranLow();
  }

  @Test
  void whatIsJustFilledTellsNothingYet() {
    assertThat(
            at(colderDawn("110 psi"), 1)
                .meaning(GaugePressure.of(80, Unit.PSI), ReadingState.JUST_FILLED))
        .isEmpty();
  }

  @Test
  void whereNothingIsKnownThereIsNoFigure() {
    Scenario nothing = Scenario.from("Home", "41 °F").to("End", 1, "41 °F");
    FigureNow now = FigureNow.of(nothing.forecaster(), LEFT, 0).orElseThrow();
    assertThat(now.cold()).isNull();
    assertThat(now.warm()).isNull();
    // What is read is judged all the same: 64 psi is 80 % of the label's 80 psi.
    assertThat(now.ranLow(GaugePressure.of(64, Unit.PSI), ReadingState.WARM))
        .isEqualTo(RanLow.LIKELY);
  }

  @Test
  void aTireThatWasFoundRunLowSaysSoBesideItsFigures() {
    Scenario low = Scenario.from("Home", "60 °F").allRead("60 psi").to("Fuel", 1, "60 °F").air();
    assertThat(at(low.to("End", 0, "60 °F"), 0).ranLow()).isTrue();
    assertThat(at(low, 1).ranLow()).isTrue();
    assertThat(at(colderDawn("80 psi"), 1).ranLow()).isFalse();
  }

  @Test
  void asAdvisedWhatIsToBeSetBeforeIsTakenAsDone() {
    // Set to 80 psi at 41 °F at Home; left at 70 it would settle at 84.696·504.67/500.67 − 14.696 =
    // 70.7 at 45 °F, set to 80 at 94.696·1.00799 − 14.696 = 80.8.
    Scenario scenario = colderDawn("110 psi");
    FigureNow left = at(scenario, 1);
    FigureNow advised =
        FigureNow.of(scenario.forecaster(), scenario.advise(), LEFT, 1).orElseThrow();
    assertThat(settled(left)).isCloseTo(70.7, within(0.1));
    assertThat(settled(advised)).isCloseTo(80.8, within(0.1));
    WheelPosition none = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT_INNER);
    assertThat(FigureNow.of(scenario.forecaster(), scenario.advise(), none, 1)).isEmpty();
  }

  private static double settled(FigureNow now) {
    return Objects.requireNonNull(now.at().check()).settled() / PSI;
  }

  @Test
  void aTireThatJustRolledIsWarmWhateverTheWord() {
    // Another tire was gauged warm there, so the rig rolled; planned times alone tell nothing.
    assertThat(at(colderDawn("110 psi"), 1).justRolled()).isFalse();
    Scenario noted = colderDawn("110 psi").read(WheelSlot.RIGHT, 2.1, "80 psi", ReadingState.WARM);
    FigureNow rolled = at(noted, 1);
    assertThat(rolled.justRolled()).isTrue();
    assertThat(rolled.stateOf(ReadingState.COLD)).isEqualTo(ReadingState.WARM);
    assertThat(rolled.stateOf(ReadingState.COLD_IN_SUN)).isEqualTo(ReadingState.WARM);
    assertThat(rolled.stateOf(ReadingState.JUST_FILLED)).isEqualTo(ReadingState.JUST_FILLED);
    FigureNow rested = at(colderDawn("110 psi"), 0);
    assertThat(rested.justRolled()).isFalse();
    assertThat(rested.stateOf(ReadingState.COLD)).isEqualTo(ReadingState.COLD);
    assertThat(rested.stateOf(ReadingState.WARM)).isEqualTo(ReadingState.WARM);
  }

  @Test
  void withNoFurtherStartThereIsNoLaterFigure() {
    FigureNow now = at(colderDawn("110 psi"), 2);
    assertThat(now.nextStart()).isEqualTo(-1);
    assertThat(now.nextAfterCold()).isNaN();
    assertThat(now.nextAfterWarm()).isNaN();
    assertThat(now.nextAir()).isNaN();
  }

  @Test
  void whatLeaksAwayUntilTheNextStartIsCountedOff() {
    // About a day and 2 psi of it between Home and the next dawn.
    double sound = at(colderDawn("110 psi"), 0).nextAfterCold() / PSI;
    double leaking =
        at(colderDawn("110 psi").leak(WheelSlot.LEFT, "2 psi"), 0).nextAfterCold() / PSI;
    assertThat(sound - leaking).isBetween(1.3, 2.1);
  }

  @Test
  void afterAShortNightItWillStillReadWarm() {
    // The figure of 80 psi is what the tire has: the next start reads what the forecast expects.
    Scenario shortNight =
        Scenario.from("Home", "40 °F")
            .allRead("80 psi")
            .to("Night", 1, "40 °F")
            .drive(18)
            .to("End", 1, "40 °F");
    FigureNow now = at(shortNight, 0);
    TireSnapshot start = Objects.requireNonNull(at(shortNight, 1).at().check());
    assertThat(now.nextStart()).isEqualTo(1);
    assertThat(start.reading()).isGreaterThan(start.settled() + PSI);
    assertThat(now.nextAfterCold() / PSI).isCloseTo(start.reading() / PSI, within(0.02));
  }

  @Test
  void aColdReadingMeansItselfWithinWhatAGaugeRepeats() {
    // 0.5 psi, 1.645 of it in 9 of 10 cases.
    FigureNow.Meaning meaning =
        at(colderDawn("110 psi"), 0)
            .meaning(GaugePressure.of(70, Unit.PSI), ReadingState.COLD)
            .orElseThrow();
    assertThat(meaning.likely() / PSI).isCloseTo(70, within(1e-6));
    assertThat(meaning.low() / PSI).isCloseTo(70 - 0.822, within(0.001));
    assertThat(meaning.high() / PSI).isCloseTo(70 + 0.822, within(0.001));
    assertThat(meaning.published()).as("of warm tires only").isNaN();
    assertThat(meaning.expected() / PSI).isCloseTo(70, within(0.01));
  }

  /** Its warmth may be off as well: fill times what it may be off by, squared beside the gauge. */
  @Test
  void aWarmReadingIsAsUnsureAsItsWarmth() {
    FigureNow now = at(colderDawn("110 psi"), 1);
    TireSnapshot arrival = Objects.requireNonNull(now.at().arrival());
    FigureNow.Meaning meaning =
        now.meaning(GaugePressure.of(78, Unit.PSI), ReadingState.WARM).orElseThrow();
    double gauge = 0.5 * arrival.airKelvins() / arrival.tireKelvins();
    double kelvins = arrival.warmSigma() / arrival.fill();
    double warmth = (78 + 14.696) / arrival.tireKelvins() * kelvins;
    double sigma = Math.sqrt(gauge * gauge + warmth * warmth);
    assertThat(warmth).isGreaterThan(0.5);
    assertThat((meaning.high() - meaning.likely()) / PSI).isCloseTo(1.645 * sigma, within(0.01));
    assertThat((meaning.likely() - meaning.low()) / PSI).isCloseTo(1.645 * sigma, within(0.01));
    // One that shows too much: what was known goes on, as sure as it was.
    FigureNow.Meaning more =
        now.meaning(GaugePressure.of(99, Unit.PSI), ReadingState.WARM).orElseThrow();
    double known = 1.645 * arrival.settledSigma() / PSI;
    assertThat((more.high() - more.likely()) / PSI).isCloseTo(known, within(0.01));
    assertThat((more.likely() - more.low()) / PSI).isCloseTo(known, within(0.01));
  }

  @Test
  void aWarmReadingOfATireOfUnknownWarmthMeansNothingSure() {
    Scenario noModel =
        Scenario.from("Home", "60 °F")
            .rated(null, null)
            .allRead("70 psi")
            .to("Fuel", 0.5, "60 °F")
            .to("End", 0, "60 °F");
    assertThat(at(noModel, 1).meaning(GaugePressure.of(75, Unit.PSI), ReadingState.WARM)).isEmpty();
  }

  @Test
  void withNothingReadTheRigsOwnGaugeCounts() {
    Scenario nothing = Scenario.from("Home", "41 °F").gaugeStep("2 psi").to("End", 1, "41 °F");
    assertThat(at(nothing, 0).errors().step() / PSI).isCloseTo(2, within(1e-9));
  }
}
