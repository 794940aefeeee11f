package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.FillOrigin;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.GaugeErrors;
import org.junit.jupiter.api.Test;

/**
 * Where exactly a figure to set is cut, in whole kilopascal. Air of 256 K at 100 kPa: all figures
 * are exact in binary.
 */
class SetFigureBoundsTest {

  private static final double STEP = 1000;
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final double NOTHING = Double.NEGATIVE_INFINITY;

  /** A tire that shows a figure and has so many kelvin more than the air. */
  private static TireSnapshot tire(
      double shown, double over, double warmSigma, GaugeErrors errors) {
    double fill = (shown + 100_000) / (256 + over);
    double settled = fill * 256 - 100_000;
    FillOrigin origin =
        new FillOrigin(
            FillOrigin.Kind.READING,
            "g",
            errors,
            0,
            settled,
            256,
            256,
            100_000,
            0,
            fill,
            1,
            1,
            1,
            true,
            0);
    return new TireSnapshot(
        0,
        256,
        100_000,
        0,
        256 + over,
        fill,
        origin,
        settled,
        shown,
        settled,
        1,
        1,
        1,
        1,
        1,
        1,
        0,
        warmSigma);
  }

  private static TireSnapshot cold(double shown) {
    return tire(shown, 0, 0, GaugeErrors.of(null));
  }

  /** A tire whose warmth is not known. */
  private static TireSnapshot unknown(double settled) {
    TireSnapshot of = cold(settled);
    return new TireSnapshot(
        0,
        256,
        100_000,
        0,
        300,
        of.fill(),
        of.origin(),
        settled,
        Double.NaN,
        settled,
        1,
        1,
        1,
        1,
        1,
        1,
        0,
        Double.NaN);
  }

  private static SetFigure set(
      TireSnapshot tire, double wanted, double needed, double most, double hose) {
    return SetFigure.of(tire, wanted, false, new SetFigure.Bounds(needed, most, hose, STEP));
  }

  private static double figure(double wanted, double needed, double most, double hose) {
    return set(cold(400_000), wanted, needed, most, hose).figure().pascals();
  }

  @Test
  void halfAStepOverTheLimitIsNotCalledCut() {
    SetFigure half = set(cold(400_000), 550_500, NOTHING, 550_000, ANY);
    assertThat(half.figure().pascals()).isEqualTo(550_000);
    assertThat(half.cutByCeiling()).isFalse();
    assertThat(set(cold(400_000), 550_501, NOTHING, 550_000, ANY).cutByCeiling()).isTrue();
  }

  @Test
  void aPascalIsRounding() {
    // 550 kPa stand beside a need or a limit that is half a pascal off; two pascal are a step.
    assertThat(figure(550_000, 550_000.5, ANY, ANY)).isEqualTo(550_000);
    assertThat(figure(550_000, 550_002, ANY, ANY)).isEqualTo(551_000);
    assertThat(figure(550_000, NOTHING, 549_999.5, ANY)).isEqualTo(550_000);
    assertThat(figure(550_000, NOTHING, 549_998, ANY)).isEqualTo(549_000);
    assertThat(figure(550_000, NOTHING, ANY, 549_999.5)).isEqualTo(550_000);
    assertThat(figure(550_000, NOTHING, ANY, 549_998)).isEqualTo(549_000);
  }

  @Test
  void halfAStepIsNoAirToAdd() {
    assertThat(set(cold(549_500), 550_000, NOTHING, ANY, ANY).adds()).isFalse();
    assertThat(set(cold(549_499), 550_000, NOTHING, ANY, ANY).adds()).isTrue();
    assertThat(SetFigure.chosen(cold(549_500), 550_000, 550_000, false, free()).adds()).isFalse();
    assertThat(SetFigure.chosen(cold(549_499), 550_000, 550_000, false, free()).adds()).isTrue();
  }

  private static SetFigure.Bounds free() {
    return new SetFigure.Bounds(NOTHING, Double.NaN, ANY, STEP);
  }

  @Test
  void aTireThatHasItsFigureAlreadyIsNotCutByTheHose() {
    SetFigure has = set(cold(550_000), 550_000, NOTHING, ANY, 500_000);
    assertThat(has.figure().pascals()).isEqualTo(550_000);
    assertThat(has.cutByHose()).isFalse();
  }

  @Test
  void aTireOfUnknownWarmthIsTakenForAsCoolAsTheAir() {
    assertThat(set(unknown(540_000), 550_000, NOTHING, ANY, ANY).adds()).isTrue();
    assertThat(set(unknown(550_000), 550_000, NOTHING, ANY, ANY).adds()).isFalse();
    SetFigure set = set(unknown(540_000), 550_000, NOTHING, ANY, ANY);
    assertThat(set.settled().pascals()).isEqualTo(550_000);
    assertThat(set.spread().pascals()).isZero();
  }

  /**
   * A gauge that is not listed: one standard deviation √(0.5² + (2/√3)²) = 1.258 psi, nine of ten
   * under 1.2816·1.258 = 1.613 psi. A warmth unsure by 1 psi takes 1.2816 psi of it: 0.331 psi.
   */
  @Test
  void aWarmTireMaySettleOverItsLimitByWhatTheGaugeCannotTell() {
    double limit = psi(80);
    SetFigure.Bounds bounds = new SetFigure.Bounds(NOTHING, limit, ANY, psi(1));
    assertThat(over(tire(limit, 64, 0, GaugeErrors.of(null)), true, bounds))
        .isCloseTo(1.613, within(0.001));
    assertThat(over(tire(limit, 64, psi(1), GaugeErrors.of(null)), true, bounds))
        .isCloseTo(0.331, within(0.001));
    assertThat(over(tire(limit, 64, psi(2), GaugeErrors.of(null)), true, bounds)).isZero();
    assertThat(over(cold(limit), false, bounds)).as("half a step").isCloseTo(0.5, within(1e-6));
    SetFigure.Bounds open = new SetFigure.Bounds(NOTHING, Double.NaN, ANY, psi(1));
    assertThat(SetFigure.highestSettled(cold(limit), true, open)).isGreaterThan(1e300);
  }

  private static double psi(double number) {
    return GaugePressure.of(number, Unit.PSI).pascals();
  }

  private static double over(TireSnapshot tire, boolean warm, SetFigure.Bounds bounds) {
    double over = SetFigure.highestSettled(tire, warm, bounds) - bounds.ceiling();
    return new GaugePressure(over).in(Unit.PSI);
  }

  private static SetFigure chosen(double figure, double wanted, double most, double hose) {
    SetFigure.Bounds bounds = new SetFigure.Bounds(NOTHING, most, hose, STEP);
    return SetFigure.chosen(cold(400_000), figure, wanted, false, bounds);
  }

  @Test
  void aChosenFigureIsCutByTheLimitWhereItIsWithinAStepOfIt() {
    assertThat(chosen(550_000, 560_000, 550_000, ANY).cutByCeiling()).isTrue();
    assertThat(chosen(549_500, 560_000, 550_000, ANY).cutByCeiling()).isTrue();
    assertThat(chosen(549_000, 560_000, 550_000, ANY).cutByCeiling()).isFalse();
    assertThat(chosen(550_000, 560_000, Double.NaN, ANY).cutByCeiling()).isFalse();
    assertThat(chosen(550_000, 560_000, 550_000, ANY).cutByHose()).isFalse();
  }

  @Test
  void aChosenFigureWithinAStepOfWhatIsWantedIsNotCut() {
    assertThat(chosen(550_000, 550_500, 550_000, 550_000).cutByCeiling()).isFalse();
    assertThat(chosen(550_000, 551_000, 550_000, 550_000).cutByCeiling()).isFalse();
    assertThat(chosen(550_000, 551_001, 550_000, 550_000).cutByCeiling()).isTrue();
    assertThat(chosen(550_000, 550_500, 550_000, 550_000).cutByHose()).isFalse();
    assertThat(chosen(550_000, 551_000, 550_000, 550_000).cutByHose()).isFalse();
    assertThat(chosen(550_000, 551_001, 550_000, 550_000).cutByHose()).isTrue();
  }

  @Test
  void aChosenFigureIsCutByTheHoseWhereItIsWithinAStepOfItsEnd() {
    assertThat(chosen(544_500, 560_000, 600_000, 545_000).cutByHose()).isTrue();
    assertThat(chosen(544_000, 560_000, 600_000, 545_000).cutByHose()).isFalse();
    assertThat(chosen(544_500, 560_000, 600_000, 545_000).cutByCeiling()).isFalse();
  }

  @Test
  void onlyAWarmTiresChosenFigureHasASpread() {
    TireSnapshot warm = tire(600_000, 64, 2000, GaugeErrors.of(null));
    assertThat(SetFigure.chosen(warm, 600_000, 1, true, free()).spread().pascals()).isEqualTo(2000);
    assertThat(SetFigure.chosen(warm, 600_000, 1, false, free()).spread().pascals()).isZero();
    TireSnapshot unknown = unknown(500_000);
    assertThat(SetFigure.chosen(unknown, 600_000, 1, true, free()).spread().pascals()).isZero();
    // (600 + 100)·256/320 − 100 = 460 kPa once it is as cool as the air.
    assertThat(SetFigure.chosen(warm, 600_000, 1, true, free()).settled().pascals())
        .isCloseTo(460_000, within(1e-6));
  }
}
