package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.FillOrigin;
import dawngauge.forecast.TireSnapshot;
import dawngauge.physics.GasLaw;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.rules.GaugeErrors;
import org.junit.jupiter.api.Test;

/** Figures to set: whole steps, never over the limit, warm only with the build-up on top. */
class SetFigureTest {

  private static final double NOTHING = Double.NEGATIVE_INFINITY;
  private static final double ANY_HOSE = Double.POSITIVE_INFINITY;

  private static double psi(double number) {
    return GaugePressure.of(number, Unit.PSI).pascals();
  }

  /** A tire at sea level that is as warm as said, with the fill that settles at the figure. */
  private static TireSnapshot tire(double settledPsi, double airFahrenheit, double tireFahrenheit) {
    double around = StandardAtmosphere.pressureAt(0);
    double air = Temperature.of(airFahrenheit, Unit.FAHRENHEIT).kelvins();
    double inTire = Temperature.of(tireFahrenheit, Unit.FAHRENHEIT).kelvins();
    double fill = GasLaw.fill(psi(settledPsi), around, air);
    FillOrigin origin =
        new FillOrigin(
            FillOrigin.Kind.READING,
            "g",
            GaugeErrors.of(null),
            0,
            psi(settledPsi),
            air,
            air,
            around,
            0,
            fill,
            1,
            1,
            1,
            true,
            0);
    return new TireSnapshot(
        0,
        air,
        around,
        0,
        inTire,
        fill,
        origin,
        psi(settledPsi),
        GasLaw.gauge(fill, inTire, around),
        psi(settledPsi),
        1,
        1,
        1,
        1,
        1,
        1,
        0,
        psi(1));
  }

  private static SetFigure set(
      TireSnapshot tire, double wantedPsi, double neededPsi, double ceilingPsi, double step) {
    boolean warm = tire.tireKelvins() > tire.airKelvins() + 5;
    double needed = neededPsi == NOTHING ? NOTHING : psi(neededPsi);
    SetFigure.Bounds bounds = new SetFigure.Bounds(needed, psi(ceilingPsi), ANY_HOSE, step);
    return SetFigure.of(tire, psi(wantedPsi), warm, bounds);
  }

  @Test
  void colderDawnIsReckonedByTheGasLaw() {
    // 80 psi wanted at 19 °F, set at 41 °F, sea level: (80 + 14.696)·(500.67/478.67) − 14.696
    // = 94.696·1.04596 − 14.696 = 84.35 psi (gas law; absolute °R): 84 in whole psi.
    double inTheMorning = 94.696 * 500.67 / 478.67 - 14.696;
    assertThat(inTheMorning).isCloseTo(84.35, within(0.01));
    SetFigure cold = set(tire(70, 41, 41), inTheMorning, NOTHING, 110, psi(1));
    assertThat(cold.figure().in(Unit.PSI)).isCloseTo(84, within(1e-6));
    assertThat(cold.warm()).isFalse();
    // The same tire 30 °F warmer than the air: (84.35 + 14.696)·(530.67/500.67) − 14.696 = 90.28.
    SetFigure warm = set(tire(70, 41, 71), inTheMorning, NOTHING, 110, psi(1));
    assertThat(warm.figure().in(Unit.PSI)).isCloseTo(90, within(1e-6));
    assertThat(warm.warm()).isTrue();
    // (90 + 14.696)/1.05992 − 14.696 = 84.08
    assertThat(warm.settled().in(Unit.PSI)).isCloseTo(84.08, within(0.01));
  }

  @Test
  void ceilingCutsWhatIsWantedAndSaysSo() {
    SetFigure figure = set(tire(70, 41, 41), 84.35, NOTHING, 80, psi(1));
    assertThat(figure.figure().in(Unit.PSI)).isCloseTo(80, within(1e-6));
    assertThat(figure.cutByCeiling()).isTrue();
    assertThat(figure.wanted().in(Unit.PSI)).isCloseTo(84.35, within(1e-6));
  }

  @Test
  void noStepOfATenthOfABarIsOverTheLimit() {
    // 80 psi = 5.516 bar: 5.5 is 0.016 under it, 5.6 is 0.084 over it.
    double step = GaugePressure.of(0.1, Unit.BAR).pascals();
    SetFigure figure = set(tire(70, 41, 41), 80, NOTHING, 80, step);
    assertThat(figure.figure().in(Unit.BAR)).isCloseTo(5.5, within(1e-9));
    assertThat(figure.cutByCeiling()).isFalse();
    // Limit 5.56 bar: 5.6 is nearest, but over it.
    double limit = new GaugePressure(5.56e5).in(Unit.PSI);
    SetFigure under = set(tire(70, 41, 41), limit, NOTHING, limit, step);
    assertThat(under.figure().in(Unit.BAR)).isCloseTo(5.5, within(1e-9));
  }

  @Test
  void nearestStepTiesUpwardAndNeverBeyondTheLimit() {
    assertThat(set(tire(50, 60, 60), 62.5, NOTHING, 80, psi(1)).figure().in(Unit.PSI))
        .isCloseTo(63, within(1e-6));
    assertThat(set(tire(50, 60, 60), 62.4, NOTHING, 80, psi(1)).figure().in(Unit.PSI))
        .isCloseTo(62, within(1e-6));
    assertThat(set(tire(50, 60, 60), 62.4, NOTHING, 62, psi(1)).figure().in(Unit.PSI))
        .isCloseTo(62, within(1e-6));
  }

  @Test
  void whatTheFloorNeedsIsNotRoundedAway() {
    assertThat(set(tire(50, 60, 60), 62.3, 62.3, 80, psi(1)).figure().in(Unit.PSI))
        .isCloseTo(63, within(1e-6));
    assertThat(set(tire(50, 60, 60), 80.3, 80.3, 80, psi(1)).figure().in(Unit.PSI))
        .isCloseTo(80, within(1e-6));
  }

  @Test
  void coldGaugeNeverShowsMoreThanTheLimitEvenWithARestOfWarmth() {
    // A heavy tire three hours after a hot run still has about 4 °F: 80.7 psi for 80 settled.
    SetFigure figure = set(tire(70, 60, 64), 80, NOTHING, 80, psi(1));
    assertThat(figure.warm()).isFalse();
    assertThat(figure.figure().in(Unit.PSI)).isCloseTo(80, within(1e-6));
  }

  @Test
  void hoseThatEndsEarlyGivesItsLastWholeStep() {
    SetFigure.Bounds bounds = new SetFigure.Bounds(NOTHING, psi(80), psi(72.6), psi(1));
    SetFigure figure = SetFigure.of(tire(65, 60, 60), psi(80), false, bounds);
    assertThat(figure.figure().in(Unit.PSI)).isCloseTo(72, within(1e-6));
    assertThat(figure.cutByHose()).isTrue();
    assertThat(figure.adds()).isTrue();
    assertThat(SetFigure.of(tire(73, 60, 60), psi(80), false, bounds).adds()).isFalse();
  }

  @Test
  void withoutALimitTheWantedFigureStands() {
    SetFigure.Bounds open = new SetFigure.Bounds(NOTHING, Double.NaN, ANY_HOSE, psi(1));
    assertThat(SetFigure.of(tire(65, 60, 60), psi(80), false, open).figure().in(Unit.PSI))
        .isCloseTo(80, within(1e-6));
  }
}
